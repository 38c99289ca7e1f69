import { degreeTexts } from "../../music/scales/degree-texts.ts";
import type { reasonTexts as english } from "./reason-texts.ts";

const { ordinal } = degreeTexts;

/** Sentences without their stop, with a capital behind the colon. */
export const reasonTexts: typeof english = {
  isRoot: (root) => `${root} ist der Grundton`,
  isTonic: (tonic) => `${tonic} ist der Grundton`,
  chordNote: (place, interval, root) => `Die ${CHORD_NOTES[place] ?? place} liegt ${interval} über ${root}`,
  degreeLies: (degree, distance, below) => `Die ${ordinal(degree)} Stufe liegt ${distance} über ${below}`,
  noteLies: (note, distance, below) => `Der ${ordinal(note)} Ton liegt ${distance} über ${below}`,
  fallsAsNatural: "Abwärts ist es natürliches Moll",
  bothRaised: "Aufwärts sind die sechste und die siebte Stufe erhöht",
  leadingRaised: "Die siebte Stufe ist erhöht",
  ofTheWay: { up: "Dieser Ton gehört zum Weg aufwärts", down: "Dieser Ton gehört zum Weg abwärts" },
};

const CHORD_NOTES: Readonly<Record<number, string>> = { 3: "Terz", 5: "Quinte", 7: "Septime" };
