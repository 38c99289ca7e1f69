import type { wayTexts as english } from "./way-texts.ts";

const WAYS: Readonly<Record<string, string>> = {
  slurred: "gebunden",
  tongued: "gestoßen",
  separate: "getrennt",
  "separate bows": "einzeln gestrichen",
  mixed: "gemischt",
  multiple: "mit Doppelzunge",
  "double-tongued": "mit Doppelzunge",
  even: "gleichmäßig",
  uneven: "ungleichmäßig",
  dotted: "punktiert",
  "reverse dotted": "umgekehrt punktiert",
  swung: "geswingt",
  up: "aufwärts",
  down: "abwärts",
  "top down": "von oben nach unten",
  "by heart": "auswendig",
  "with the music": "mit Noten",
};

export const wayTexts: typeof english = {
  way: (word) => WAYS[word] ?? word,
  not: (word) => `nicht ${WAYS[word] ?? word}`,
  inRhythms: "in Rhythmen",
  oneOctave: "eine Oktave",
  twelfth: "eine Duodezime",
  twoOctaves: "zwei Oktaven",
};
