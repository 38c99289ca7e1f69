import { patternText } from "../journal/entry-exercise.ts";
import type { Entry, Subject } from "../journal/model.ts";

const WITHOUT_PATTERN: readonly Subject["type"][] = ["title", "figure", "technique"];

const INVERSIONS = ["", "1st inversion", "2nd inversion", "3rd inversion"];

/** `1st inversion`; empty for root position, 0. */
export function inversionText(inversion: number): string {
  return INVERSIONS[inversion]!;
}

/**
 * The pattern that tells one exercise from another; null where the subject has none: titles, figures and
 * techniques.
 */
export function patternOfRecord({
  subject,
  pattern,
  inversion,
}: Pick<Entry, "subject" | "pattern" | "inversion">): string | null {
  if (!subject || WITHOUT_PATTERN.includes(subject.type)) return null;
  const plain = subject.type === "chord" && subject.broken ? "broken chord" : "straight";
  const name = pattern ? patternText(pattern) : plain;
  return inversion ? `${name}, ${inversionText(inversion)}` : name;
}

/** The movement that tells one strand of a title from another; null where none is named. */
export function movementOfRecord({ where }: Pick<Entry, "where">): string | null {
  return where?.movement === undefined ? null : `mvt ${where.movement}`;
}
