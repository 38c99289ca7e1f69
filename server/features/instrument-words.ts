import type { Instrument } from "../music/instrument.ts";
import { printNote } from "../music/note.ts";
import { transpositionWords } from "../music/transposition.ts";
import { sentenceCase } from "./explain.ts";
import { escapedExtract } from "./markdown.ts";

/** `Soprano recorder: C4 to D6 as written; it sounds an octave higher.` And what of its range is not firm. */
export function instrumentInWords(id: string, instrument: Instrument | undefined): string {
  const name = sentenceCase(escapedExtract(id));
  if (!instrument) return `${name}.`;
  const sounding = transpositionWords(instrument.sounding);
  const range = `${printNote(instrument.low)} to ${printNote(instrument.high)} as written`;
  const told = [`${name}: ${range}${sounding ? `; it sounds ${sounding}` : ""}.`];
  return [...told, ...(instrument.soft ? [`${sentenceCase(instrument.soft)}.`] : [])].join(" ");
}
