const OCTAVES = ["no octaves", "an octave", "two octaves", "three octaves"];
const INTERVALS = ["unison", "second", "third", "fourth", "fifth", "sixth", "seventh"];

/** What is known of an instrument. */
export const instrumentTexts = {
  /** What it is called, from its id: its name in English. */
  name: (id: string): string => id,
  /** From the lowest written note to the highest; `sounding` is how far from there it sounds. */
  range: (name: string, low: string, high: string, sounding: string | undefined) =>
    `${name}: ${low} to ${high} as written${sounding ? `; it sounds ${sounding}` : ""}.`,
  /** `an octave and a major sixth lower`: octaves, and an interval of so many staff steps within one. */
  sounding: (
    octaves: number,
    rest: { readonly quality: "perfect" | "major" | "minor"; readonly steps: number } | undefined,
    way: "higher" | "lower",
  ) => {
    const words = [
      ...(octaves > 0 ? [OCTAVES[octaves] ?? `${octaves} octaves`] : []),
      ...(rest ? [`a ${rest.quality} ${INTERVALS[rest.steps]}`] : []),
    ];
    return `${words.join(" and ")} ${way}`;
  },
};
