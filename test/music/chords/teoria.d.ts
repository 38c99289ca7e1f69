/** As much of the npm package `teoria` 2.5.0, which has no types, as the tests ask of it. */
declare module "teoria" {
  export interface Note {
    /** A lower-case letter. */
    name(): string;
    /** Semitones: 1 is sharp. */
    accidentalValue(): number;
    octave(): number;
    midi(): number;
    /** Hertz, in equal temperament. */
    fq(concertPitch?: number): number;
    /** `M3`, `P-5`: a size below zero goes down. */
    interval(interval: string): Note;
    scale(name: string): { notes(): Note[] };
    chord(symbol: string): { notes(): Note[] };
  }
  const teoria: { note(scientific: string): Note };
  export default teoria;
}
