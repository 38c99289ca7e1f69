import { type Degree, noteOnDegree } from "../notes/degree.ts";
import { modulo, type Note, type NoteName, pitchClass, printName, sameName, transposed } from "../notes/note.ts";
import { ENGLISH_NAMES, type NoteNames } from "../notes/note-names.ts";
import { degreeTexts } from "./degree-texts.ts";
import type { ScaleKind } from "./kind.ts";
import { kindById } from "./kinds.ts";
import { plainChromatic, shownWholeTone } from "./shown-degrees.ts";

/**
 * The degrees of a kind going up or going down, both low to high.
 *
 * @param tonic where it is known, chromatic and whole-tone scales are spelled as is usual on it
 */
export function degreesOf(kind: ScaleKind, direction: "up" | "down", tonic?: NoteName): readonly Degree[] {
  if (tonic && kind.family === "chromatic") return plainChromatic(tonic, direction);
  if (tonic && kind.family === "whole-tone") return shownWholeTone(tonic);
  return direction === "down" ? (kind.falling ?? kind.degrees) : kind.degrees;
}

function namesOn(tonic: NoteName, degrees: readonly Degree[]): NoteName[] {
  return degrees.map(({ step, semitones }) => transposed(tonic, { steps: step, semitones }));
}

/** The names of one octave, low to high in either direction, without the closing tonic. */
export function scaleNames(tonic: NoteName, kind: ScaleKind, direction: "up" | "down"): NoteName[] {
  return namesOn(tonic, degreesOf(kind, direction, tonic));
}

/**
 * The note on a degree of the scale that starts on `tonic`.
 *
 * @param degree from 1; any integer is welcome: 0 is the step below 1, 8 the octave of a seven-note scale
 * @param falling whether to take the falling form, where the kind has one
 */
export function degreeNote(tonic: Note, kind: ScaleKind, degree: number, falling: boolean): Note {
  return noteOnDegree(tonic, degreesOf(kind, falling ? "down" : "up", tonic), degree);
}

/** The three customs of writing a chromatic scale, each low to high, without the closing tonic. */
export interface ChromaticSpellings {
  /** White keys natural, black ones sharps going up and flats going down. */
  readonly plain: { readonly up: readonly NoteName[]; readonly down: readonly NoteName[] };
  /** The same both ways: the notes of major and minor, the raised fourth and the lowered second. */
  readonly harmonic: { readonly up: readonly NoteName[]; readonly down: readonly NoteName[] };
  /** The notes of the major key, and the others raised going up and lowered going down. */
  readonly melodic: { readonly up: readonly NoteName[]; readonly down: readonly NoteName[] };
}

/** The melodic falling form with the fourth raised instead of the fifth lowered. */
function harmonicDegrees(falling: readonly Degree[]): Degree[] {
  return falling.map((degree) => (degree.semitones === 6 ? { step: 3, semitones: 6 } : degree));
}

export function chromaticSpellings(tonic: NoteName): ChromaticSpellings {
  const kind = kindById("chromatic")!;
  const harmonic = namesOn(tonic, harmonicDegrees(degreesOf(kind, "down")));
  return {
    plain: { up: scaleNames(tonic, kind, "up"), down: scaleNames(tonic, kind, "down") },
    harmonic: { up: harmonic, down: harmonic },
    melodic: { up: namesOn(tonic, degreesOf(kind, "up")), down: namesOn(tonic, degreesOf(kind, "down")) },
  };
}

/** `first` to `twelfth`. */
export function ordinal(place: number): string {
  return degreeTexts.ordinal(place);
}

/**
 * The clause that says why a degree has its name: for F# major and 7, `its seventh degree takes the letter E`.
 * Scales that do not have each letter once say which degree of the major or minor scale the note is.
 */
export function degreeReason(
  tonic: NoteName,
  kind: ScaleKind,
  degree: number,
  { falling = false, names = ENGLISH_NAMES }: { readonly falling?: boolean; readonly names?: NoteNames } = {},
): string {
  const degrees = degreesOf(kind, falling ? "down" : "up");
  const place = modulo(degree - 1, degrees.length);
  const { step, semitones } = degrees[place]!;
  const { letter } = transposed(tonic, { steps: step, semitones });
  const name = names.name({ letter, alter: 0 });
  if (step === place && degrees.length === 7) return degreeTexts.takes(place + 1, name);
  const parent = kind.signature?.parallel === -3 ? "minor" : "major";
  const usual = kindById(parent === "minor" ? "natural minor" : "major")!.degrees[step]!;
  const raised = semitones - usual.semitones;
  const change = raised === 0 ? undefined : raised > 0 ? "raised" : "lowered";
  return degreeTexts.isDegreeOf(place + 1, change, step + 1, names.key(tonic, parent), name);
}

/**
 * Whether `name` may stand for a degree: its own name, or a respelling that the kind allows. Whole-tone, octatonic and
 * chromatic scales allow any, as do those of jazz; the blues its raised fourth and its lowered fifth, either way round.
 */
export function acceptsName(
  kind: ScaleKind,
  tonic: NoteName,
  degree: number,
  falling: boolean,
  name: NoteName,
): boolean {
  const [expected, other] = [falling, !falling].map((down) => degreeNote({ ...tonic, octave: 4 }, kind, degree, down));
  if (sameName(expected!, name)) return true;
  if (pitchClass(expected!) !== pitchClass(name)) return false;
  if (kind.family === "blues") return sameName(other!, name);
  return allowsRespelling(kind);
}

const RESPELLED: readonly ScaleKind["family"][] = ["whole-tone", "octatonic", "chromatic", "jazz"];

/** Whether any letter may stand for a note of such a scale. */
export function allowsRespelling({ family }: ScaleKind): boolean {
  return RESPELLED.includes(family);
}

export type SpellingVerdict =
  /** `usual` is false for a spelling that is right and not the one to prefer. */
  | { readonly ok: true; readonly usual: boolean }
  /** `at` is the first note that is to blame, from 0; none where the number of notes is wrong. */
  | { readonly ok: false; readonly reason: string; readonly at?: number };

function fits(kind: ScaleKind, expected: NoteName, name: NoteName): boolean {
  return allowsRespelling(kind) ? pitchClass(expected) === pitchClass(name) : sameName(expected, name);
}

/** The forms in which one octave of a kind may be written, low to high; the first is the kind's own. */
function writtenForms(kind: ScaleKind, tonic: NoteName): readonly (readonly NoteName[])[] {
  if (kind.family === "chromatic") {
    const { plain, melodic, harmonic } = chromaticSpellings(tonic);
    return [plain.up, plain.down, melodic.up, melodic.down, harmonic.up];
  }
  if (kind.id === "octatonic") {
    const wholeHalf = kindById("whole-half")!;
    return [scaleNames(tonic, kind, "up"), scaleNames(tonic, wholeHalf, "up")];
  }
  return [scaleNames(tonic, kind, "up"), scaleNames(tonic, kind, "down")];
}

function lettersUsed(names: readonly NoteName[]): number {
  return new Set(names.map(({ letter }) => letter)).size;
}

/** How many notes in a row (round to the first one) lie a diminished third apart: two letters and two semitones. */
function diminishedThirds(names: readonly NoteName[]): number {
  const isOne = (name: NoteName, index: number): boolean => {
    const next = names[(index + 1) % names.length]!;
    return sameName(next, transposed(name, { steps: 2, semitones: 2 }));
  };
  return names.filter(isOne).length;
}

/** Whether a spelling with the right pitches is one to prefer. */
function isUsual(kind: ScaleKind, forms: readonly (readonly NoteName[])[], names: readonly NoteName[]): boolean {
  if (forms.some((form) => form.every((name, index) => sameName(name, names[index]!)))) return true;
  if (kind.family === "whole-tone") return lettersUsed(names) === 6 && diminishedThirds(names) === 1;
  if (kind.family === "octatonic") return lettersUsed(names) === 7;
  return false;
}

/**
 * Whether a list of names spells a kind sensibly. One octave, low to high, without the closing tonic. Scales with a
 * letter for each degree have one spelling going up and one going down. Whole-tone and octatonic scales may be
 * respelled at will, and are usual with six letters and one diminished third, or with all seven letters; chromatic
 * scales are usual in either convention; the blues takes its raised fourth or its lowered fifth. (The `accept_rule` of
 * test/reference/scales-other-and-arpeggios.json; common practice.)
 */
export function sensibleSpelling(kind: ScaleKind, tonic: NoteName, names: readonly NoteName[]): SpellingVerdict {
  const forms = writtenForms(kind, tonic);
  const length = kind.degrees.length;
  if (names.length !== length)
    return { ok: false, reason: `it has ${length} notes, and ${names.length} are given here` };
  let best = -1;
  let blame = forms[0]!;
  for (const form of forms) {
    const wrong = names.findIndex((name, index) => !fits(kind, form[index]!, name));
    if (wrong === -1) return { ok: true, usual: isUsual(kind, forms, names) };
    if (wrong > best) [best, blame] = [wrong, form];
  }
  const found = names[best]!;
  const expected = blame[best]!;
  const same = pitchClass(found) === pitchClass(expected) ? ", the same key by another letter" : "";
  return { ok: false, reason: `${printName(found)} should be ${printName(expected)}${same}`, at: best };
}
