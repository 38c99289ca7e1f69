import { expect } from "vitest";
import { runByKeys } from "./typing.ts";
import type { InWindow } from "./workbench.ts";

// A browser's window has the editor's own dialogue for files, and files that live in memory: what a desktop's window asks is
// the system's.

/** In the journal of two files, that of March open. */
export function filesForOthers(inWindow: InWindow): void {
  inWindow("the exercise at the cursor is written where one says, as MusicXML", async ({ page, goToEndOf }) => {
    await goToEndOf("D minor, thirds");
    await runByKeys(page, "Daystave: Export Exercise...");
    const input = page.locator(".quick-input-widget");
    await input.locator(".monaco-list-row", { hasText: "MusicXML" }).click();
    const name = page.locator(".quick-input-widget input.input");
    await expect.poll(() => name.inputValue()).toMatch(/D natural minor, thirds\.musicxml$/);
    await page.keyboard.press("Enter");
    const file = page.locator(".explorer-folders-view .monaco-list-row", {
      hasText: "D natural minor, thirds.musicxml",
    });
    await file.waitFor();
    await file.dblclick();
    await page.locator(".view-line", { hasText: '<score-partwise version="4.0">' }).waitFor();
  });

  inWindow("a sheet of this week is saved as a page", async ({ page, goToEndOf }) => {
    await goToEndOf("D minor, thirds");
    await runByKeys(page, "Daystave: Print a Sheet...");
    await page.locator(".quick-input-widget .monaco-list-row", { hasText: "This Week" }).click();
    const name = page.locator(".quick-input-widget input.input");
    await expect.poll(() => name.inputValue()).toMatch(/Exercises, .*\.html$/);
    await page.keyboard.press("Enter");
    await page.locator(".explorer-folders-view .monaco-list-row", { hasText: /^Exercises, .*\.html/ }).waitFor();
  });
}
