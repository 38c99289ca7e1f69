import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { describeWorkbench } from "./workbench.ts";

// G major has one sharp, F#, as in reference/keysignatures.tsv; a major scale's steps are common practice, no source.
const SIGNATURE = "clef, 1 sharp,";
const STEPS = "Steps: T T S T T T S";

/** Milliseconds: asking for a hover takes seconds. */
const SOON = { timeout: 30_000 };

/** Each folder has a setting of its own for what a hover explains. */
const TWO_FOLDERS = {
  sample: "test/hosts/journals/two-folders",
  workspace: "both.code-workspace",
  open: ["ben/.vscode/settings.json", "ben/b.practice", "anna/a.practice"],
};

describeWorkbench("two folders in one window", TWO_FOLDERS, (inWindow) => {
  inWindow("each explain what their own setting says", async ({ page, hoverOnStartOf }) => {
    const explains = async () => theoryIn(page, await hoverOnStartOf("G major, 8ths"));
    await showTab(page, "a.practice");
    await expect.poll(explains, SOON).toEqual([SIGNATURE]);
    await showTab(page, "b.practice");
    expect(await explains()).toEqual([SIGNATURE, STEPS]); // a staff has its signature, whatever is said beside it

    await showTab(page, "settings.json");
    await page.locator(".editor-instance .view-line").first().click();
    await page.keyboard.press("Control+a");
    await page.keyboard.insertText('{ "daystave.explain": "none" }');
    await page.keyboard.press("Control+s");
    await page.locator(".tab.active:not(.dirty)").waitFor();
    await showTab(page, "b.practice");
    await expect.poll(explains, SOON).toEqual([]);
    await showTab(page, "a.practice");
    expect(await explains()).toEqual([SIGNATURE]);
  });
});

async function showTab(page: Page, name: string): Promise<void> {
  await page.getByRole("tab", { name }).click();
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
