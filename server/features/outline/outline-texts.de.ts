import type { outlineTexts as english } from "./outline-texts.ts";

/** By the ids of `PATTERNS` and `VARIANTS`. */
const NAMES: Readonly<Record<string, string>> = {
  straight: "der Reihe nach",
  thirds: "Terzen",
  fourths: "Quarten",
  fifths: "Quinten",
  sixths: "Sexten",
  sevenths: "Septimen",
  octaves: "Oktaven",
  tenths: "Dezimen",
  threes: "Dreiergruppen",
  fours: "Vierergruppen",
  fives: "Fünfergruppen",
  growing: "wachsend",
  pedal: "Orgelpunkt",
  triads: "Dreiklänge",
  "seventh chords": "Septakkorde",
  "upper neighbours": "obere Nebentöne",
  "lower neighbours": "untere Nebentöne",
  turns: "Doppelschläge",
  "inverted turns": "umgekehrte Doppelschläge",
  "five notes on each": "fünf Töne auf jedem",
  skips: "mit Auslassen",
  leaps: "Sprünge",
  alternating: "abwechselnd",
  returning: "zurückkehrend",
  linked: "verbunden",
  broken: "gebrochen",
};

export const outlineTexts: typeof english = {
  pattern: (id, variant) => (variant === undefined ? nameOf(id) : `${nameOf(id)}, ${nameOf(variant)}`),
};

function nameOf(id: string): string {
  return NAMES[id] ?? id;
}
