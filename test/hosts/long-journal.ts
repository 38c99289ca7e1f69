import { expect } from "vitest";
import type { Window } from "./window.ts";

/** So many errors it has. */
export const COUNT = 1000;

/** An invented journal: one exercise, below it nothing but scales on a note that there is not, and below those remarks. */
export function longJournal(day = "2026-03-02 Mon"): string {
  const errors = Array.from({ length: COUNT }, (_, at) => `  H# major, at ${60 + (at % 40)} clean`);
  const remarks = Array.from({ length: 5_000 }, () => "-- of years");
  return ["-- Invented.", day, "  D minor, thirds, 8ths at 60 clean", ...errors, ...remarks, ""].join("\n");
}

/**
 * It is coloured by what each word means, where it is in sight. A note value is a number by what it means; the grammar, which
 * knows no journal, leaves it in the colour of text or of a word.
 */
export async function isColoured({ editor }: Window): Promise<void> {
  const classOf = (word: string) =>
    editor
      .locator(".view-line", { hasText: "D minor, thirds" })
      .locator("span > span")
      .filter({ hasText: new RegExp(`^${word}$`) })
      .getAttribute("class", { timeout: 1_000 })
      .catch(() => `no ${word}`);
  await expect
    .poll(async () => (await classOf("8ths")) === (await classOf("60")), { timeout: 20_000, interval: 200 })
    .toBe(true);
}
