const NUMBERS = [
  ...["unison", "second", "third", "fourth", "fifth", "sixth", "seventh"],
  ...["octave", "ninth", "tenth", "eleventh", "twelfth", "thirteenth"],
];

/** How far above the root a note of a chord is: the number and the quality of an interval. */
interface ChordInterval {
  readonly number: number;
  readonly quality: "perfect" | "major" | "minor" | "augmented" | "diminished";
}

/** What a chord is made of. */
export const chordTexts = {
  /** `symbol` is what is written for it behind its root. */
  sentence: (name: string, _symbol: string, intervals: readonly ChordInterval[]) => {
    const above = intervals.map(({ number, quality }) => {
      const said = `${quality} ${NUMBERS[number - 1]}`;
      return /^[aeiou]/.test(said) ? `an ${said}` : `a ${said}`;
    });
    return `The ${name}: ${above.slice(0, -1).join(", ")} and ${above.at(-1)} above the root.`;
  },
};
