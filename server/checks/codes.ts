export type Severity = "error" | "warning" | "information" | "hint";

/** Every diagnostic, and how much it matters. Scripts rely on the codes; each has a section in syntaxes/FORMAT.md. */
export const CODES = {
  // cannot be read, or musically false
  "unknown-term": "error",
  "no-subject": "error",
  "no-day": "error",
  "bad-date": "error",
  "bad-minutes": "error",
  "conflict-marker": "error",
  "unknown-key": "error",
  "ambiguous-subject": "error",
  "unknown-pattern": "error",
  "unknown-declaration": "error",
  "bad-declaration": "error",
  "unclosed-quote": "error",
  "line-too-long": "error",
  "scale-note": "error",
  "missing-note": "error",
  "extra-note": "error",
  "arpeggio-note": "error",
  "pattern-notes": "error",
  "key-signature": "error",
  "step-formula": "error",
  // probably not meant
  "scale-spelling": "warning",
  "out-of-range": "warning",
  "wrong-weekday": "warning",
  "day-order": "warning",
  "duplicate-day": "warning",
  "future-day": "warning",
  "outcome-order": "warning",
  "repeated-term": "warning",
  "tempo-range": "warning",
  "duplicate-declaration": "warning",
  // advice
  prose: "information",
  "theoretical-key": "information",
  "unknown-title": "information",
  "minutes-sum": "information",
  "tempo-leap": "information",
  "long-stretch": "information",
  "aim-past": "information",
  "aim-far": "information",
  "chromatic-spelling": "information",
  "not-yet": "information",
} as const satisfies Record<string, Severity>;

export type Code = keyof typeof CODES;
