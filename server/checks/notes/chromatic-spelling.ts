import { modulo, sameName } from "../../music/notes/note.ts";
import { type ChromaticSpellings, chromaticSpellings } from "../../music/scales/scale.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { type Finding, type FindingEdit, finding } from "../finding.ts";
import { type BestReading, fitReading } from "./best-reading.ts";
import type { ClaimedExercise, ExpectedNote, Reading } from "./claimed-exercise.ts";
import { type NoteStyle, renamed, shownName, styleInPlaceOf, writtenNote } from "./note-style.ts";

type Convention = keyof ChromaticSpellings;

function inConvention(reading: Reading, convention: Convention): Reading {
  if (reading.subject.type === "chord") return reading;
  const names = chromaticSpellings(reading.subject.tonic)[convention];
  const rename = (expected: ExpectedNote): ExpectedNote => {
    const name = names[expected.falling ? "down" : "up"][modulo(expected.degree - 1, 12)]!;
    return { ...expected, note: renamed(expected.note, name) };
  };
  return { ...reading, notes: reading.notes.map(rename) };
}

function isChromatic({ subject }: Reading): boolean {
  return subject.type === "scale" && subject.kind.family === "chromatic";
}

/** The typed notes that are right, and are not written as the reading has them. */
function otherwiseWritten(notes: readonly ClaimedNote[], { alignment }: BestReading, reading: Reading): number {
  return alignment.steps.filter(({ type, typed, expected }) => {
    const note = type === "same" && notes[typed]!.note;
    const right = reading.notes[expected]?.note;
    return note && right && Math.abs(right.alter) <= 2 && !sameName(note, right);
  }).length;
}

/** A chromatic list with its notes named by the convention that the player follows, or nearly follows. */
export function inPlayersConvention(notes: readonly ClaimedNote[], best: BestReading): BestReading {
  if (!isChromatic(best.reading)) return best;
  const harmonic = inConvention(best.reading, "harmonic");
  const nearer = otherwiseWritten(notes, best, harmonic) < otherwiseWritten(notes, best, best.reading);
  return nearer ? fitReading(notes, harmonic) : best;
}

/** As much of a list as a message shows. */
const SHOWN = 26;

function shownNotes(reading: Reading, style: NoteStyle): string {
  const names = reading.notes.slice(0, SHOWN).map(({ note }) => shownName(note, style));
  return names.join(" ") + (reading.notes.length > SHOWN ? " …" : "");
}

function edits(notes: readonly ClaimedNote[], best: BestReading, reading: Reading, style: NoteStyle): FindingEdit[] {
  return best.alignment.steps.flatMap(({ typed, expected }) => {
    const claimed = notes[typed]!;
    const { note } = reading.notes[expected]!;
    if (!claimed.note || sameName(claimed.note, note)) return [];
    const text = writtenNote({ ...note, octave: note.octave + best.octaves }, styleInPlaceOf(claimed, style));
    return [{ start: claimed.start, end: claimed.end, text }];
  });
}

/** A chromatic list whose keys are all right, in neither of the two usual spellings. */
export function checkChromaticSpelling(
  notes: readonly ClaimedNote[],
  best: BestReading,
  { subjectText }: ClaimedExercise,
  style: NoteStyle,
): Finding[] {
  if (!isChromatic(best.reading) || best.alignment.differences > 0) return [];
  const melodic = inConvention(best.reading, "melodic");
  const harmonic = inConvention(best.reading, "harmonic");
  if ([melodic, harmonic].some((reading) => otherwiseWritten(notes, best, reading) === 0)) return [];
  const fix = (title: string, reading: Reading) => ({ title, safe: false, edits: edits(notes, best, reading, style) });
  const message =
    `The keys of ${subjectText} are all right; two ways of naming them are usual. ` +
    `Raised going up and lowered coming down: ${shownNotes(melodic, style)}. ` +
    `As the key has them, the same both ways: ${shownNotes(harmonic, style)}.`;
  const whole = { start: notes[0]!.start, end: notes.at(-1)!.end };
  return [
    finding("chromatic-spelling", whole, message, [
      fix("Raise the notes going up, lower them coming down", melodic),
      fix("Name the notes as the key has them, the same both ways", harmonic),
    ]),
  ];
}
