import { modulo, type NoteName, pitchClass, sameName } from "../../music/notes/note.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { type ChromaticSpellings, chromaticSpellings, scaleNames } from "../../music/scales/scale.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { type Finding, type FindingEdit, finding } from "../finding.ts";
import { type BestReading, fitReading } from "./best-reading.ts";
import { claimTexts } from "./claim-texts.ts";
import type { ExpectedNote, Reading } from "./claimed-exercise.ts";
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

/** The names that a white key has in the major or minor key on the tonic: E# and B# in C# major, Cb in Gb major. */
function ofTheKey({ subject }: Reading): readonly NoteName[] {
  if (subject.type === "chord") return [];
  const kinds = ["major", "natural minor", "harmonic minor"].map((id) => kindById(id)!);
  return kinds.flatMap((kind) => scaleNames(subject.tonic, kind, "up")).filter((name) => !isWhiteOrBlack(name));
}

/** Whether a white key has its plain letter, and a black one a single accidental. */
function isWhiteOrBlack(name: NoteName): boolean {
  const isBlack = [1, 3, 6, 8, 10].includes(pitchClass(name));
  return isBlack ? Math.abs(name.alter) === 1 : name.alter === 0;
}

/** The typed notes that are right, and are written neither as the reading has them nor as may stand there besides. */
function otherwiseWritten(
  notes: readonly ClaimedNote[],
  { alignment }: BestReading,
  reading: Reading,
  besides: readonly NoteName[] = [],
): number {
  return alignment.steps.filter(({ type, typed, expected }) => {
    const note = type === "same" && notes[typed]!.note;
    const right = reading.notes[expected]?.note;
    if (!note || !right || Math.abs(right.alter) > 2 || sameName(note, right)) return false;
    return !besides.some((name) => sameName(name, note));
  }).length;
}

/** A way of naming a chromatic scale, and how many of the typed notes go another way. */
interface Custom {
  readonly convention: Convention;
  readonly reading: Reading;
  readonly otherwise: number;
}

/** The three customs, the likeliest first. */
function customs(notes: readonly ClaimedNote[], best: BestReading): readonly Custom[] {
  return (["plain", "melodic", "harmonic"] as const).map((convention) => {
    const reading = inConvention(best.reading, convention);
    const besides = convention === "plain" ? ofTheKey(reading) : [];
    return { convention, reading, otherwise: otherwiseWritten(notes, best, reading, besides) };
  });
}

/** A chromatic list with its notes named by the convention that the player follows, or nearly follows. */
export function inPlayersConvention(notes: readonly ClaimedNote[], best: BestReading): BestReading {
  if (!isChromatic(best.reading)) return best;
  const nearest = customs(notes, best).reduce((least, each) => (each.otherwise < least.otherwise ? each : least));
  return nearest.convention === "plain" ? best : fitReading(notes, nearest.reading);
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

/** A chromatic list whose keys are all right, in none of the three usual spellings. */
export function checkChromaticSpelling(notes: readonly ClaimedNote[], best: BestReading, style: NoteStyle): Finding[] {
  if (!isChromatic(best.reading) || best.alignment.differences > 0) return [];
  const all = customs(notes, best);
  if (all.some(({ otherwise }) => otherwise === 0)) return [];
  const told = all.map((each) => ({ ...each, shown: shownNotes(each.reading, style) }));
  const distinct = told.filter(({ shown }, i) => told.findIndex((each) => each.shown === shown) === i);
  const ways = distinct.map(({ convention, shown }) => `${claimTexts.chromaticWays[convention]}: ${shown}.`);
  const whole = { start: notes[0]!.start, end: notes.at(-1)!.end };
  const fixes = distinct.map(({ convention, reading }) => {
    return { title: claimTexts.chromaticFixes[convention], safe: false, edits: edits(notes, best, reading, style) };
  });
  return [finding("chromatic-spelling", whole, claimTexts.chromatic(ways), fixes)];
}
