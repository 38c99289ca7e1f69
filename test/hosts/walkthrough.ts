import type { Page } from "playwright-core";
import { expect } from "vitest";
import { manifest } from "../support/manifest.ts";
import { runByKeys } from "./typing.ts";
import type { Window } from "./window.ts";
import type { InWindow } from "./workbench.ts";

const walkthrough = manifest.contributes.walkthroughs[0]!;

/** The walkthrough in a window of its own, on the sample that it opens itself. */
export function walkthroughIsTaken(inWindow: InWindow): void {
  inWindow(
    "the walkthrough's first step is found and done by keys: the sample opens, saved nowhere",
    async (window) => {
      const { page } = window;
      await openByKeys(window);
      const first = stepsIn(page).first();
      await expect.poll(() => first.getAttribute("aria-expanded")).toBe("true");
      await tabTo(page, "Open the Sample Journal");
      await page.keyboard.press("Enter");
      const sample = page.locator(".editor-group-container .tab", { hasText: "Untitled-1" });
      await sample.waitFor();
      await page.locator(".editor-instance .view-line", { hasText: "D melodic minor" }).first().waitFor();
      await isDone(page, 0);
      expect(await page.locator(".notification-toast, .monaco-dialog-box").count()).toBe(0);
    },
  );

  inWindow("the walkthrough leads through the sample to a journal of one's own", async (window) => {
    const { page, preview } = window;
    await openByKeys(window);
    const steps = stepsIn(page);
    expect(await steps.count()).toBe(walkthrough.steps.length);
    const take = async (at: number) => {
      const { title, description } = walkthrough.steps[at]!;
      const step = steps.filter({ hasText: title });
      if ((await step.getAttribute("aria-expanded")) !== "true") await step.click();
      await step.getByRole("button", { name: /\[(.*)\]/.exec(description)![1]!, exact: true }).click();
    };
    const lines = page.locator(".editor-instance .view-line");

    await take(0);
    await page.locator('.tab[data-resource-name="Untitled-1"]').waitFor();
    await lines.filter({ hasText: "D melodic minor" }).first().waitFor();

    await take(1);
    const today = await page.evaluate(() => new Date().toLocaleDateString("sv-SE")); // as ISO 8601 has it
    await lines.filter({ hasText: today }).first().waitFor();
    await isDone(page, 1);

    await page.locator('[id="status.problems"]', { hasText: /[1-9]/ }).waitFor(); // the sample has been read
    await take(2);
    await page.locator(".marker-widget", { hasText: /F/ }).first().waitFor();
    await isDone(page, 2);

    await take(3);
    await preview().getByRole("heading", { level: 1, name: "Ottilie" }).waitFor();
    await isDone(page, 3);

    await take(4);
    await page.locator('.tab[data-resource-name="Untitled-2"]').waitFor();
    await isDone(page, 4);
    expect(await page.locator(".notification-toast, .monaco-dialog-box").count()).toBe(0);
  });
}

async function openByKeys({ page }: Window): Promise<void> {
  await runByKeys(page, "Welcome: Open Walkthrough...");
  await page.locator(".quick-input-list .monaco-list-row", { hasText: walkthrough.title }).waitFor();
  await page.locator(".quick-input-box input").fill(walkthrough.title);
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: walkthrough.title }).waitFor();
  await page.keyboard.press("Enter");
  await stepsIn(page).first().waitFor();
}

function stepsIn(page: Page) {
  return page.locator(".gettingStartedContainer .getting-started-step");
}

/** Presses Tab until something of these words has the focus. */
async function tabTo(page: Page, words: string): Promise<void> {
  for (let left = 40; left > 0; left--) {
    const focused = await page.evaluate(() => document.activeElement?.textContent?.trim());
    if (focused === words) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`Tab does not come to "${words}".`);
}

/** A step that is done is ticked. */
async function isDone(page: Page, at: number): Promise<void> {
  const tick = stepsIn(page).nth(at).locator(".complete").first();
  await tick.waitFor({ state: "attached" });
}
