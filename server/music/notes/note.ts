/** The seven letters in the order of the staff, from C, where a scientific octave begins. */
export const LETTERS = ["C", "D", "E", "F", "G", "A", "B"] as const;
export type Letter = (typeof LETTERS)[number];

/** A letter with its accidentals. `alter` is in semitones: 1 is sharp, -2 double flat. */
export interface NoteName {
  readonly letter: Letter;
  readonly alter: number;
  /** Cents above (or, negative, below) the key that it is named for: of scales that do not keep to the keys alone. */
  readonly off?: number;
}

/** A written note. `octave` is scientific (C4 is middle C) and belongs to the letter: Cb4 sounds as B3. */
export interface Note extends NoteName {
  readonly octave: number;
}

/** A distance: `steps` counts letters (a third is 2), `semitones` sound (a major third is 4). Downwards is negative. */
export interface Interval {
  readonly steps: number;
  readonly semitones: number;
}

/** Semitones of the natural letters above C. */
const NATURAL: Readonly<Record<Letter, number>> = { C: 0, D: 2, E: 4, F: 5, G: 7, A: 9, B: 11 };

/** Where the natural letters stand on the line of fifths. */
const FIFTHS: Readonly<Record<Letter, number>> = { F: -1, C: 0, G: 1, D: 2, A: 3, E: 4, B: 5 };
const LINE_OF_FIFTHS: readonly Letter[] = ["F", "C", "G", "D", "A", "E", "B"];

const ACCIDENTALS: Readonly<Record<string, number>> = {
  "": 0,
  "#": 1,
  "##": 2,
  "♯": 1,
  "♯♯": 2,
  x: 2,
  "𝄪": 2,
  b: -1,
  bb: -2,
  "♭": -1,
  "♭♭": -2,
  "𝄫": -2,
};

/** Letter, accidentals, one digit of octave. A flat is a lower-case `b`, so that `bb` is B flat and `BB` is nothing. */
const NOTE = /^([A-Ga-g])([#bx♯♭𝄪𝄫]*)([0-9]?)$/u;

/** `#`, `bb`, `♯`, `𝄪` … in semitones: 0 for none; a third accidental, or a mixture, is undefined. */
export function readAccidentals(text: string): number | undefined {
  return Object.hasOwn(ACCIDENTALS, text) ? ACCIDENTALS[text] : undefined;
}

/** The remainder that is never negative. */
export function modulo(value: number, by: number): number {
  return ((value % by) + by) % by;
}

/** Reads `F#`, `f♯4`, `Bb`, `ebb5`, `Fx`; anything else, or a third accidental, is undefined. */
export function parseNote(text: string): (NoteName & { readonly octave?: number }) | undefined {
  const match = NOTE.exec(text);
  if (!match) return undefined;
  const letter = match[1]!.toUpperCase() as Letter;
  const alter = readAccidentals(match[2]!);
  if (alter === undefined) return undefined;
  return match[3] ? { letter, alter, octave: Number(match[3]) } : { letter, alter };
}

/** `F#`, `Ebb`, `F##`: what every page of the project shows where names are English. */
export function printName(name: NoteName): string {
  return name.letter + (name.alter < 0 ? "b".repeat(-name.alter) : "#".repeat(name.alter));
}

/** `F#4`. */
export function printNote(note: Note): string {
  return printName(note) + note.octave;
}

/** The key within the octave, 0 (C) to 11 (B). */
export function pitchClass(name: NoteName): number {
  return modulo(NATURAL[name.letter] + name.alter, 12);
}

/** The MIDI number of a note: semitones, with C4 = 60 and A4 = 69 (MIDI 1.0 note numbers, middle C as C4). */
export function midi(note: Note): number {
  return 12 * (note.octave + 1) + NATURAL[note.letter] + note.alter;
}

/** Whether both sound on the same key: with octaves where both have one, else within the octave. */
export function samePitch(a: NoteName & { octave?: number }, b: NoteName & { octave?: number }): boolean {
  if (a.octave === undefined || b.octave === undefined) return pitchClass(a) === pitchClass(b);
  return midi({ ...a, octave: a.octave }) === midi({ ...b, octave: b.octave });
}

/** Whether both are written alike, octaves aside. */
export function sameName(a: NoteName, b: NoteName): boolean {
  return a.letter === b.letter && a.alter === b.alter;
}

/** The letter's place in the scientific octave, 0 (C) to 6 (B). */
export function letterIndex(letter: Letter): number {
  return LETTERS.indexOf(letter);
}

/** The place on the staff, counted in lines and spaces: C0 is 0, C4 is 28. Accidentals do not move it. */
export function staffStep(note: Note): number {
  return 7 * note.octave + letterIndex(note.letter);
}

/** The place on the line of fifths: C is 0, G 1, F -1, F# 6, Bb -2. */
export function fifthsOf(name: NoteName): number {
  return FIFTHS[name.letter] + 7 * name.alter;
}

/** The name at a place on the line of fifths: the inverse of `fifthsOf`. */
export function nameAtFifths(fifths: number): NoteName {
  return { letter: LINE_OF_FIFTHS[modulo(fifths + 1, 7)]!, alter: Math.floor((fifths + 1) / 7) };
}

/** The same note or name moved by an interval, spelled by its letters: C up {2, 4} is E, up {3, 4} is Fb. */
export function transposed(note: Note, interval: Interval): Note;
export function transposed(name: NoteName, interval: Interval): NoteName;
export function transposed(from: NoteName & { octave?: number }, { steps, semitones }: Interval): NoteName | Note {
  const place = letterIndex(from.letter) + steps;
  const octaves = Math.floor(place / 7);
  const letter = LETTERS[place - 7 * octaves]!;
  const alter = from.alter + semitones - (NATURAL[letter] + 12 * octaves - NATURAL[from.letter]);
  const name = from.octave === undefined ? { letter, alter } : { letter, alter, octave: from.octave + octaves };
  return from.off === undefined ? name : { ...name, off: from.off };
}
