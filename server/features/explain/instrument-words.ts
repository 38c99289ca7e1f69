import type { Instrument } from "../../music/instruments/instrument.ts";
import { instrumentTexts } from "../../music/instruments/instrument-texts.ts";
import { transpositionWords } from "../../music/instruments/transposition.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { sentenceCase } from "./explain.ts";
import { escapedExtract } from "./markdown.ts";

/** `Soprano recorder: C4 to D6 as written; it sounds an octave higher.` And what of its range is not firm. */
export function instrumentInWords(id: string, instrument: Instrument | undefined, names: NoteNames): string {
  const name = sentenceCase(escapedExtract(instrumentTexts.name(id)));
  if (!instrument) return `${name}.`;
  const sounding = transpositionWords(instrument.sounding);
  const [low, high] = [noteText(instrument.low, names), noteText(instrument.high, names)];
  return [
    instrumentTexts.range(name, low, high, sounding),
    ...(instrument.soft ? [`${sentenceCase(instrument.soft)}.`] : []),
  ].join(" ");
}
