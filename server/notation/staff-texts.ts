import { degreeTexts } from "../music/scales/degree-texts.ts";
import { signatureTexts } from "../music/scales/signature-texts.ts";

/** What a staff shows, for those who do not see it, and why there is none. */
export const staffTexts = {
  /** The clef with the octave at it, the signature, and how it is played: what stands before the notes. */
  head: (
    clef: "treble" | "bass" | "alto" | "tenor",
    mark: "8va" | "8vb" | undefined,
    fifths: number,
    way: string | undefined,
  ) => {
    const marked = mark === undefined ? "" : ` with an 8 ${mark === "8va" ? "above" : "below"}`;
    const signature = fifths === 0 ? "no signature" : signatureTexts.accidentals(fifths);
    const head = [`${clef} clef${marked}`, signature, ...(way ? [way] : [])].join(", ");
    return head.charAt(0).toUpperCase() + head.slice(1);
  },
  markedNote: (name: string, mark: string) => `${name} (${mark})`,
  degree: (place: number) => `${degreeTexts.ordinal(place)} degree`,
  chordNote: (place: number) => `${degreeTexts.ordinal(place)} note`,
  noDegree: "no degree",

  nothingFits: "None of it fits in this span.",
  inCents: "A scale in cents has no staff: its notes lie between the keys.",
  tooLong: (most: number) => `It has more than ${most} notes. Name a shorter span.`,
  beyondDouble: "Its notes need three sharps or flats; no staff has those.",

  asWritten: "as written",
  asItShouldBe: "as it should be",
  titleOf: (title: string, label: string) => `${title}, ${label}`,
  leftOut: "left out",
  oneTooMany: "one too many",
  here: (note: string) => `here ${note}`,
  written: (note: string) => `written ${note}`,
};
