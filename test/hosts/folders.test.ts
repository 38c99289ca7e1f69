import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { describe, expect } from "vitest";
import { exerciseIn } from "./preview-page.ts";
import { severalPreviews } from "./several-previews.ts";
import { cursorAt, runByKeys } from "./typing.ts";
import { openPalette, textHasFocus, type Window } from "./window.ts";
import { describeNodeHost, describeWorkbench, type InWindow } from "./workbench.ts";

// G major has one sharp, F#, as in reference/keysignatures.tsv; a major scale's steps are common practice, no source.
const SIGNATURE = "clef, 1 sharp,";
const STEPS = "Steps: T T S T T T S";

/** Milliseconds: asking for a hover takes seconds. */
const SOON = { timeout: 30_000 };

const SETTINGS_OF_BEN = "ben/.vscode/settings.json";
const NOTHING_EXPLAINED = '{ "daystave.explain": "none" }';

/** Each folder has a setting of its own for what a hover explains. */
const TWO_FOLDERS = {
  sample: "test/hosts/journals/two-folders",
  workspace: "both.code-workspace",
  open: ["ben/b.practice", "anna/a.practice"],
  inFull: true,
};

const NAME = "two folders in one window";
describeWorkbench(NAME, TWO_FOLDERS, (inWindow) => {
  twoJournals(inWindow);
  describe("several previews", () => severalPreviews(inWindow));
  ownSettings(inWindow, typeNothingExplained);
});
describeNodeHost(NAME, TWO_FOLDERS, (inWindow, host) => {
  inWindow("have a row each on the page of pupils", async ({ page, preview }) => {
    await runByKeys(page, "Daystave: Show Pupils");
    const names = preview().getByRole("heading", { level: 2 });
    await expect.poll(() => names.allTextContents(), SOON).toEqual(["anna", "ben"]);
  });
  ownSettings(inWindow, async () => writeFileSync(join(host().folder, SETTINGS_OF_BEN), NOTHING_EXPLAINED));
});

async function typeNothingExplained({ page }: Window): Promise<void> {
  await show(page, "settings.json");
  await page.locator(".editor-instance .view-line").first().click();
  await page.keyboard.press("Control+a");
  await page.keyboard.insertText(NOTHING_EXPLAINED);
  await page.keyboard.press("Control+s");
  await page.locator(".tab.active:not(.dirty)").waitFor();
}

function ownSettings(inWindow: InWindow, setBensToNothing: (window: Window) => Promise<void>): void {
  inWindow("each explain what their own setting says", async (window) => {
    const { page, hoverOnStartOf } = window;
    const explains = async () => theoryIn(page, await hoverOnStartOf("G major, 8ths"));
    await show(page, "a.practice");
    await expect.poll(explains, SOON).toEqual([SIGNATURE]);
    await show(page, "b.practice");
    expect(await explains()).toEqual([SIGNATURE, STEPS]); // a staff has its signature, whatever is said beside it

    await setBensToNothing(window);
    await show(page, "b.practice");
    await expect.poll(explains, SOON).toEqual([]);
    await show(page, "a.practice");
    expect(await explains()).toEqual([SIGNATURE]);
  });
}

function twoJournals(inWindow: InWindow): void {
  inWindow("are two journals: what was played in one is no last time in the other", async (window) => {
    const { page, goToEndOf, preview, showPreview } = window;
    for (const [file, name, tempo] of [
      ["a.practice", "anna", "60"],
      ["b.practice", "ben", "72"],
    ] as const) {
      await show(page, file);
      await textHasFocus(window);
      await goToEndOf(`8ths at ${tempo}`);
      await page.keyboard.press("Control+End");
      await page.keyboard.insertText("2026-03-03 Tue\nG major, 8ths at 63 clean");
      await runByKeys(page, "Daystave: Go to Last Time");
      await page.locator(".tab.active", { hasText: file }).waitFor();
      await cursorAt(page, 4, 1);
      await showPreview();
      await preview().getByRole("heading", { level: 1, name, exact: true }).waitFor();
      const fastest = exerciseIn(preview(), "G major").locator(".row-number").last();
      await expect.poll(() => fastest.textContent()).toBe(tempo === "60" ? "63" : "72");
    }
  });
}

/** By its tab, or from the list of files where it has none. */
async function show(page: Page, name: string): Promise<void> {
  const tab = page.getByRole("tab", { name: new RegExp(`^${name}`) });
  if (await tab.isVisible()) await tab.click();
  else {
    await openPalette(page, name);
    await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: name }).waitFor();
    await page.keyboard.press("Enter");
  }
  await page.locator(".tab.active", { hasText: name }).waitFor();
}

/** Which of the two parts of theory a hover has, in words or in what a picture says in words; closes it. */
async function theoryIn(page: Page, hover: Locator): Promise<string[]> {
  const pictures = await hover.locator("img").evaluateAll((all) => all.map((each) => (each as HTMLImageElement).alt));
  const text = [await hover.textContent(), ...pictures].join(" ").replaceAll("\u00A0", " ");
  await page.keyboard.press("Escape");
  await hover.waitFor({ state: "hidden" });
  return [SIGNATURE, STEPS].filter((line) => text.includes(line));
}
