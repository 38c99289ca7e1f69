import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import scales from "../reference/scales.json";
import { exerciseIn, unfold } from "./preview-page.ts";
import type { InWindow } from "./workbench.ts";

// LilyPond 2.24.1; its octaves are of no matter here. See the file's own provenance.
const SHARP = scales.major.find(({ tonic }) => tonic === "F#")!.scales.major.up.map((note) => note.replace(/\d$/, ""));
// The signature, two flats, as in reference/keysignatures.tsv; the raised seventh is common practice, no source.
const HARMONIC = "G A Bb C D Eb F# G".split(" ");

// From 1 February to 7 March 2026, counted from 28 February, which is 2026-W09-6 in reference/iso-weeks.tsv.
// The Mondays of 2026-W10 down to 2026-W05.
const MONDAYS = ["2 Mar", "23 Feb", "16 Feb", "9 Feb", "2 Feb", "26 Jan"];

/** The week that the sample opens with; its two wrong notes are told to the reader in its first line. */
export function week(inWindow: InWindow): void {
  mendsByKeyboard(inWindow);
  completes(inWindow);
  hoverShowsWeeks(inWindow);
}

/** What is underlined, and how it is mended. */
export function mendsByKeyboard(inWindow: InWindow): void {
  inWindow("underlines a note with the wrong letter and mends it by keyboard", async ({ page, editor, goToEndOf }) => {
    const misspelt = editor.locator(".squiggly-warning");
    await misspelt.first().waitFor();
    expect(await misspelt.count()).toBe(1);
    await goToEndOf("F# major:");
    await moveLeft(page, "F F#");
    await takeQuickFix(page, "E#");
    await editor.locator(".view-line", { hasText: `F# major: ${SHARP.join(" ")}` }).waitFor();
    await misspelt.first().waitFor({ state: "detached" });
  });

  inWindow("underlines a wrong pitch and mends it by keyboard", async ({ page, editor, goToEndOf }) => {
    const wrong = editor.locator(".squiggly-error");
    await wrong.first().waitFor();
    expect(await wrong.count()).toBe(1);
    await goToEndOf("G harmonic minor:");
    await moveLeft(page, "F G");
    await takeQuickFix(page, "F#");
    await editor.locator(".view-line", { hasText: `G harmonic minor: ${HARMONIC.join(" ")}` }).waitFor();
    await wrong.first().waitFor({ state: "detached" });
  });
}

export function completes(inWindow: InWindow): void {
  inWindow("completes a key and a pattern", async ({ page, editor, goToEndOf }) => {
    await editor.locator(".squiggly-error").first().waitFor();
    await goToEndOf("F# major:");
    await page.keyboard.press("Enter");
    await page.keyboard.type("Eb m", { delay: 60 }); // as a person types
    await takeSuggestion(page, "Eb major");
    await page.keyboard.type(", thi");
    await takeSuggestion(page, "thirds");
    await editor.locator(".view-line", { hasText: "Eb major, thirds" }).waitFor();
  });
}

/** In pictures, too. */
export function hoverShowsWeeks(inWindow: InWindow): void {
  inWindow(
    "shows the weeks of an exercise on hover, and the same figures in the preview",
    async ({ page, editor, hoverOnStartOf, showPreview }) => {
      await editor.locator(".squiggly-error").first().waitFor();
      const hover = await hoverOnStartOf("D melodic minor, thirds");
      const told = await rowsOf(hover);
      const pictures = hover.locator('img[src^="data:image/svg+xml"]');
      const [picture, staff] = [pictures.nth(0), pictures.nth(1)];
      expect(await picture.evaluate((image: HTMLImageElement) => [image.complete, image.naturalWidth])).toEqual([
        true,
        364,
      ]);
      expect(await picture.getAttribute("alt")).toMatch(/^Weekly best from \d+ \(week of /);
      // What draws it comes as a file of its own, in a browser by another way than in Node.
      expect(await staff.evaluate((image: HTMLImageElement) => image.complete && image.naturalHeight)).toBeLessThan(91);
      expect(await staff.getAttribute("alt")).toMatch(/^D melodic minor\b.* clef/);
      await page.keyboard.press("Escape");
      const preview = await showPreview();
      const opened = await unfold(preview, exerciseIn(preview, "D melodic minor, thirds"));
      await opened.getByRole("button", { name: /^All \d+ weeks$/ }).click();
      expect(told.map(([monday]) => monday!.replace(/ \d{4}$/, ""))).toEqual(MONDAYS);
      const shown = await rowsOf(opened.getByRole("table"));
      expect(shown.map(([monday, best]) => [monday, best])).toEqual(told.map(([monday, best]) => [monday, best]));
    },
  );
}

/** Moves the cursor back over these characters. */
async function moveLeft(page: Page, over: string): Promise<void> {
  for (let count = 0; count < over.length; count += 1) await page.keyboard.press("ArrowLeft");
}

/** Opens the menu of fixes at the cursor and takes the one that offers these words. */
async function takeQuickFix(page: Page, words: string): Promise<void> {
  const action = page.locator(".action-widget .monaco-list-row.action.focused", { hasText: words });
  // The menu closes while the window is still being laid out: asked for again, as a person would.
  for (let asked = 0; asked < 4 && !(await action.isVisible()); asked++) {
    await page.keyboard.press("Control+.");
    await action.waitFor({ timeout: 5_000 }).catch(() => undefined);
  }
  await action.waitFor();
  await page.keyboard.press("Enter");
}

/** Takes the suggestion with this label, which must be the first one; Enter is a new line, always. */
async function takeSuggestion(page: Page, label: string): Promise<void> {
  await page.locator(".suggest-widget.visible .monaco-list-row.focused", { hasText: label }).waitFor();
  await page.keyboard.press("Tab");
}

/** The cells of a table's body. */
async function rowsOf(table: Locator): Promise<string[][]> {
  const rows = await table.locator("tbody tr").all();
  return Promise.all(rows.map((row) => row.locator("th, td").allTextContents()));
}
