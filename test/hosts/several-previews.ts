import type { FrameLocator, Page } from "playwright-core";
import { expect } from "vitest";
import { exerciseIn, tempoIn } from "./preview-page.ts";
import { REMEMBER_LIMIT, windowRemembers } from "./preview-paths.ts";
import { runByKeys } from "./typing.ts";
import { previewNamed, reloadServed, textHasFocus, type Window } from "./window.ts";
import type { InWindow } from "./workbench.ts";

const STAY = "Daystave: Stay with This Journal";
const FOLLOW = "Daystave: Follow the Journal in the Editor";

/** Two journals in one window, and a preview for each. */
export function severalPreviews(inWindow: InWindow): void {
  inWindow("two that stay, side by side, each show what is written in their own journal", async (window) => {
    const { page } = window;
    await twoThatStay(window);
    await goToText(window, "a.practice", "8ths at 60");
    await page.keyboard.type(", 63 clean");
    const [anna, ben] = [await previewNamed(page, "anna"), await previewNamed(page, "ben")];
    await tempoIn(exerciseIn(anna, "G major"), 63).waitFor();
    await goToText(window, "b.practice", "8ths at 72");
    await page.keyboard.type(", 76 clean");
    await tempoIn(exerciseIn(ben, "G major"), 76).waitFor();
    expect(await temposOf(anna)).toEqual(["63", "63"]);
    expect(await temposOf(ben)).toEqual(["76", "76"]);
  });

  inWindow(
    "what is asked for again is the one that stays with it; one that is closed comes as a new one",
    async (window) => {
      const { page, runCommand } = window;
      await twoThatStay(window);
      await goToText(window, "b.practice", "8ths at 72");
      await runCommand("Daystave: Show Preview");
      await page.waitForTimeout(1_000);
      expect(await previewTabs(page)).toEqual(["Practice: anna (stays)", "Practice: ben (stays)"]);
      await tab(page, "Practice: anna").click();
      await runCommand("View: Revert and Close Editor");
      await expect.poll(() => previewTabs(page)).toEqual(["Practice: ben (stays)"]);
      await goToText(window, "a.practice", "8ths at 60");
      await runCommand("Daystave: Show Preview");
      await expect
        .poll(() => previewTabs(page))
        .toEqual(expect.arrayContaining(["Practice: anna", "Practice: ben (stays)"]));
    },
  );

  inWindow("the one that is told to follows again", async (window) => {
    const { page } = window;
    await twoThatStay(window);
    await tab(page, "Practice: anna").click();
    await runByKeys(page, FOLLOW);
    await expect.poll(() => previewTabs(page)).toEqual(["Practice: anna", "Practice: ben (stays)"]);
    await goToText(window, "b.practice", "8ths at 72");
    await expect.poll(() => previewTabs(page)).toEqual(["Practice: ben", "Practice: ben (stays)"]);
    await goToText(window, "a.practice", "8ths at 60");
    await expect.poll(() => previewTabs(page)).toEqual(["Practice: anna", "Practice: ben (stays)"]);
  });

  inWindow("both come back when the window is loaded again, and stay", async (window) => {
    const { page } = window;
    await twoThatStay(window);
    for (const name of ["a", "b"])
      await expect
        .poll(
          () => page.evaluate(windowRemembers, `daystave.preview.{0,900}${name}\\.practice.{0,900}locked\\W+true`),
          {
            timeout: REMEMBER_LIMIT,
          },
        )
        .toBe(true);
    await reloadServed(page);
    await previewNamed(page, "anna");
    await previewNamed(page, "ben");
    await expect.poll(() => previewTabs(page)).toEqual(["Practice: anna (stays)", "Practice: ben (stays)"]);
    await tab(page, "a.practice").click();
    await tab(page, "b.practice").click();
    await page.waitForTimeout(1_000);
    expect(await previewTabs(page)).toEqual(["Practice: anna (stays)", "Practice: ben (stays)"]);
  });
}

/** One for each journal, side by side, by keys and tabs. */
async function twoThatStay(window: Window): Promise<void> {
  const { page, runCommand } = window;
  await goToText(window, "a.practice", "8ths at 60");
  await runCommand("Daystave: Show Preview");
  await previewNamed(page, "anna");
  await tab(page, "Practice: anna").click();
  await runByKeys(page, STAY);
  await expect.poll(() => previewTabs(page)).toEqual(["Practice: anna (stays)"]);
  await goToText(window, "b.practice", "8ths at 72");
  await runCommand("Daystave: Show Preview");
  await previewNamed(page, "ben");
  await tab(page, "Practice: ben").click();
  await runByKeys(page, "View: Move Editor into Right Group");
  await previewNamed(page, "anna"); // which the other one had hidden
  await previewNamed(page, "ben");
  await runByKeys(page, STAY);
  await expect.poll(() => previewTabs(page)).toEqual(["Practice: anna (stays)", "Practice: ben (stays)"]);
}

async function goToText(window: Window, file: string, words: string): Promise<void> {
  await tab(window.page, file).click();
  await textHasFocus(window);
  await window.goToEndOf(words);
}

function tab(page: Page, name: string) {
  return page.locator(".tab", { hasText: name });
}

/** Their titles, from left to right. */
function previewTabs(page: Page): Promise<string[]> {
  return page
    .locator(".tab", { hasText: "Practice: " })
    .allInnerTexts()
    .then((all) => all.map((text) => text.trim()));
}

/** The latest and the fastest. */
function temposOf(preview: FrameLocator): Promise<string[]> {
  return exerciseIn(preview, "G major").locator(".row-number").allTextContents();
}
