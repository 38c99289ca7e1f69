import { degreeTexts } from "../../music/scales/degree-texts.ts";

const { ordinal } = degreeTexts;

/** Why a note is another than was typed, as what follows a colon. Degrees and notes are counted from 1. */
export const reasonTexts = {
  isRoot: (root: string) => `${root} is its root`,
  isTonic: (tonic: string) => `${tonic} is its tonic`,
  /** Of a chord's third, fifth or seventh: `its third is a minor third above D`. */
  chordNote: (place: number, interval: string, root: string) => `its ${ordinal(place)} is ${interval} above ${root}`,
  degreeLies: (degree: number, distance: string, below: string) =>
    `its ${ordinal(degree)} degree lies ${distance} above ${below}`,
  /** Of scales that do not have seven degrees. */
  noteLies: (note: number, distance: string, below: string) =>
    `its ${ordinal(note)} note lies ${distance} above ${below}`,
  fallsAsNatural: "it falls as the natural minor does",
  bothRaised: "its sixth and seventh degrees are raised on the way up",
  leadingRaised: "its seventh degree is raised",
  ofTheWay: { up: "that note belongs to the way up", down: "that note belongs to the way down" },
};
