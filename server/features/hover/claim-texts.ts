/** What is said of what a line claims; notes and exercises are named as the journal does. */
export const claimTexts = {
  steps: "Steps, read upward: a tone is `T` or `W`, a semitone `S` or `H`, three semitones are `A`, `3` or `m3`.",
  hasSteps: (exercise: string, steps: string) => ` ${exercise} has ${steps}.`,
  cents: (steps: string) => `${steps} cents`,
  noNote: (typed: string) => `${typed} is not a note.`,
  oneMore: (note: string, exercise: string) => `${note}: one note more than ${exercise} has here.`,
  resolves: (note: string, exercise: string) => `${note} is the tonic on which ${exercise} resolves.`,
  /** `place` says which: `the third degree of D minor`. */
  shouldBe: (note: string, right: string, place: string) => `${note} should be ${right}, ${place}.`,
  is: (note: string, place: string) => `${note} is ${place}.`,
  degreeOf: (ordinal: string, exercise: string) => `the ${ordinal} degree of ${exercise}`,
  chordNoteOf: (ordinal: string, exercise: string) => `the ${ordinal} note of ${exercise}`,
};
