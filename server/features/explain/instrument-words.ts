import type { Instrument } from "../../music/instruments/instrument.ts";
import { transpositionWords } from "../../music/instruments/transposition.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { sentenceCase } from "./explain.ts";
import { escapedExtract } from "./markdown.ts";

/** `Soprano recorder: C4 to D6 as written; it sounds an octave higher.` And what of its range is not firm. */
export function instrumentInWords(id: string, instrument: Instrument | undefined, names: NoteNames): string {
  const name = sentenceCase(escapedExtract(id));
  if (!instrument) return `${name}.`;
  const sounding = transpositionWords(instrument.sounding);
  const range = `${noteText(instrument.low, names)} to ${noteText(instrument.high, names)} as written`;
  const told = [`${name}: ${range}${sounding ? `; it sounds ${sounding}` : ""}.`];
  return [...told, ...(instrument.soft ? [`${sentenceCase(instrument.soft)}.`] : [])].join(" ");
}
