import type { Page } from "playwright-core";
import { expect } from "vitest";
import { cursorAt, linesBecome, runByKeys, todayOf } from "./typing.ts";
import { hasStarted, type Window } from "./window.ts";
import type { InWindow } from "./workbench.ts";

/** In the book of the evening, as it opens. */
export function desk(inWindow: InWindow): void {
  inWindow("two keys begin today and repeat a line a notch faster, from what was reached", async (window) => {
    const { page, editor, goToEndOf } = window;
    await opened(window);
    await goToEndOf("F maj slurred quavers");
    await page.keyboard.press("Shift+F2"); // there is no today yet, and on the first day back what two days reached, 72, is begun at 56
    await cursorAt(page, 14, "F maj slurred quavers 56".length + 1);
    await linesBecome(editor, [await todayOf(page), "F maj slurred quavers 56", ""], -3);
    await page.keyboard.type(" clean -- at last");
    await page.keyboard.press("Shift+F1");
    await cursorAt(page, 15, 1);
    await linesBecome(editor, ["F maj slurred quavers 56 clean -- at last", ""], -2);
  });

  inWindow("a journal begins from the editor's own menu of new files", async (window) => {
    const { page, editor } = window;
    await opened(window);
    await runByKeys(page, "Create: New File...");
    const row = page.locator(".quick-input-list .monaco-list-row", { hasText: "Practice Journal" });
    await row.first().click();
    await page.locator(".tab.active", { hasText: "Untitled-1" }).waitFor();
    await cursorAt(page, 2, 1);
    await linesBecome(editor, [await todayOf(page), ""]);
  });

  inWindow("a journal that is shown again keeps its cursor", async (window) => {
    const { page, runCommand } = window;
    await opened(window);
    await page.keyboard.press("Control+Home");
    await cursorAt(page, 1, 1);
    await runCommand("File: New Untitled Text File");
    await page.locator(".tab", { hasText: "book.practice" }).click();
    await staysAtTheTop(page);
  });
}

/** At the end, as it has no today. */
async function opened(window: Window): Promise<void> {
  await hasStarted(window);
  await cursorAt(window.page, 12, 1);
}

/** Once the server has answered, and would have moved it. */
async function staysAtTheTop(page: Page): Promise<void> {
  await cursorAt(page, 1, 1);
  await page.waitForTimeout(2_000);
  await cursorAt(page, 1, 1);
  expect(await page.locator(".tab.active", { hasText: "book.practice" }).count()).toBe(1);
}
