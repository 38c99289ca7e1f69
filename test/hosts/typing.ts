import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { openPalette, textHasFocus } from "./window.ts";

// What tests of typing and of commands look at: the lines in sight, and where the cursor is.

/** From the palette, with the keyboard alone. */
export async function runByKeys(page: Page, title: string): Promise<void> {
  await openPalette(page, `>${title}`);
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: title }).waitFor();
  await page.keyboard.press("Enter");
}

/** Both from 1, as the status bar has them; a key reaches the text then. */
export async function cursorAt(page: Page, line: number, column: number): Promise<void> {
  await textHasFocus({ page });
  await page.getByRole("button", { name: `Ln ${line}, Col ${column}`, exact: true }).waitFor();
}

/** The lines in sight from top to bottom, without white space at their ends. */
export async function linesOf(editor: Locator): Promise<string[]> {
  const lines = await editor.locator(".view-line").evaluateAll((found) =>
    found.map((line) => ({
      top: Number.parseFloat((line as HTMLElement).style.top),
      text: (line.textContent ?? "").replaceAll("\u00A0", " ").trimEnd(),
    })),
  );
  return lines.sort((a, b) => a.top - b.top).map(({ text }) => text);
}

/** Waits until these are the lines in sight, or those from one place to another: what is typed shows a moment later. */
export async function linesBecome(
  editor: Locator,
  expected: readonly string[],
  from?: number,
  to?: number,
): Promise<void> {
  await expect.poll(async () => (await linesOf(editor)).slice(from, to)).toEqual(expected);
}

/** The day line of today by the window's own calendar: an ISO date and a weekday in English. */
export async function todayOf(page: Page): Promise<string> {
  return page.evaluate(() => {
    const now = new Date();
    const date = now.toLocaleDateString("sv-SE"); // which is written as ISO 8601 has it
    return `${date} ${now.toLocaleDateString("en-GB", { weekday: "short" })}`;
  });
}
