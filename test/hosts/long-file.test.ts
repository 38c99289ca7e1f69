import { expect } from "vitest";
import { COUNT, isColoured, longJournal } from "./long-journal.ts";
import { complaintIn, exerciseIn, tempoIn } from "./preview-page.ts";
import { describeWorkbench, type InWindow } from "./workbench.ts";

const NAME = "a file of over 5,000 lines with a thousand errors";

/** In milliseconds: the editor draws the whole list anew. */
const MEND_LIMIT = 15_000;

/** What is typed is saved a moment later, as it is unless somebody says otherwise. */
const LONG = {
  sample: "long",
  texts: { "long/week.practice": longJournal() },
  open: "week.practice",
  settings: { "files.autoSave": "afterDelay" },
  inFull: true,
};

describeWorkbench(NAME, LONG, (inWindow) => {
  inWindow("is coloured by what each word means, where it is in sight", isColoured);
  withThousandErrors(inWindow);
});

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
