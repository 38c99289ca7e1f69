import type { wayTexts as english } from "./way-texts.ts";

export const wayTexts: typeof english = {
  reaches: {
    short: "weniger als eine Oktave",
    octave: "eine Oktave",
    twelfth: "eine Duodezime",
    wide: "mehr als eine Duodezime",
  },
  noReach: "ohne bestimmten Umfang",
  tonguings: {
    slurred: "gebunden",
    single: "gestoßen",
    mixed: "gebunden und gestoßen",
    multiple: "mit Doppelzunge",
  },
  uneven: "in ungleichmäßigem Rhythmus",
  even: "in gleichmäßigem Rhythmus",
  wholePiece: "das ganze Stück",
  otherWay: (way, tempo, date) => `${way}: ${tempo} am ${date}`,
  /** A full stop that ends an abbreviation ends the sentence, too (Duden; the rule from memory). */
  also: (ways) => `Außerdem ${ways.join("; ")}.`.replace(/\.\.$/, "."),
};
