/** The seven letters in the order of the staff, from C, where a scientific octave begins. */
export const LETTERS = ["C", "D", "E", "F", "G", "A", "B"] as const;
export type Letter = (typeof LETTERS)[number];

/** A letter with its accidentals. `alter` is in semitones: 1 is sharp, -2 double flat. */
export interface NoteName {
  readonly letter: Letter;
  readonly alter: number;
}

/** A written note. `octave` is scientific (C4 is middle C) and belongs to the letter: Cb4 sounds as B3. */
export interface Note extends NoteName {
  readonly octave: number;
}
