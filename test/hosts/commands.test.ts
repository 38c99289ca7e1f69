import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import scales from "../reference/scales.json";
import { walkthroughIsTaken } from "./walkthrough.ts";
import { openPalette, textHasFocus } from "./window.ts";
import { describeWorkbench } from "./workbench.ts";

// LilyPond 2.24.1; its octaves are of no matter here. See the file's own provenance.
const SHARP = scales.major.find(({ tonic }) => tonic === "F#")!.scales.major.up.map((note) => note.replace(/\d$/, ""));

describeWorkbench("commands", { sample: "test/hosts/journals/two-files", open: "march.practice" }, (inWindow) => {
  inWindow("New Day is a line to type below, and one undo takes it back", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("F# major");
    const before = await linesOf(editor);
    await runByKeys(page, "Daystave: New Day");
    await cursorAt(page, 11, 1);
    const day = await todayOf(page);
    await linesBecome(editor, [...before, day, ""]);
    await page.keyboard.press("Control+z");
    await linesBecome(editor, before);
    await runByKeys(page, "Daystave: New Day");
    await cursorAt(page, 11, 1);
    await page.keyboard.type("C major, slow");
    await goToEndOf("F# major");
    await runByKeys(page, "Daystave: New Day"); // today is there: its end is gone to, and nothing put in
    await cursorAt(page, 11, "C major, slow".length + 1);
    await linesBecome(editor, [...before, day, "C major, slow"]);
  });

  inWindow("New Day brings the phases of the last session along", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("F# major");
    const before = await linesOf(editor);
    await runByKeys(page, "Daystave: New Day with the Phases of the Last Session");
    await cursorAt(page, 12, 3);
    await linesBecome(editor, [await todayOf(page), "groundwork, 15 min", ""], -3);
    await page.keyboard.press("Control+z");
    await linesBecome(editor, before);
  });

  inWindow(
    "an entry is repeated a step faster and slower, and one undo takes it back",
    async ({ page, editor, goToEndOf }) => {
      await ready(editor);
      await goToEndOf("D minor, thirds");
      const before = await linesOf(editor);
      await runByKeys(page, "Daystave: Repeat Entry a Step Faster");
      await cursorAt(page, 6, "  D minor, thirds, 8ths at 69".length + 1);
      await page.keyboard.press("Control+z");
      await linesBecome(editor, before);
      await goToEndOf("D minor, thirds");
      await runByKeys(page, "Daystave: Repeat Entry a Step Slower");
      await cursorAt(page, 6, "  D minor, thirds, 8ths at 63".length + 1);
      await page.keyboard.type(" clean");
      await linesBecome(editor, ["  D minor, thirds, 8ths at 63 clean"], 5, 6);
    },
  );

  inWindow(
    "the notes of a scale are written out, and one undo takes them back",
    async ({ page, editor, goToEndOf }) => {
      await ready(editor);
      await goToEndOf("F# major");
      const before = await linesOf(editor);
      await runByKeys(page, "Daystave: Write Out the Notes");
      await editor.locator(".view-line", { hasText: `F# major: ${SHARP.join(" ")}` }).waitFor();
      await page.keyboard.press("Control+z");
      await linesBecome(editor, before);
    },
  );

  inWindow(
    "the hardest step of a line is put in below it, and one undo takes it back",
    async ({ page, editor, goToEndOf }) => {
      await ready(editor);
      await goToEndOf("F# major");
      await runByKeys(page, "Daystave: Practise the Hardest Step");
      await page
        .locator(".notification-toast", { hasText: "Which step is hardest is known for recorders only" })
        .waitFor();
      await page.keyboard.insertText(", slow, on alto recorder");
      await cursorAt(page, 6, "  F# major, slow, on alto recorder".length + 1);
      await page.keyboard.press("Escape"); // what is offered there
      const before = await linesOf(editor);
      await runByKeys(page, "Daystave: Practise the Hardest Step");
      const added = "  notes G#4 A#4, back and forth, slurred, on alto recorder"; // as test/features/commands/isolate-step.test.ts has it
      await cursorAt(page, 7, added.length + 1);
      await linesBecome(editor, [...before.slice(0, 6), added, ...before.slice(6)]);
      await page.keyboard.press("Control+z");
      await linesBecome(editor, before);
    },
  );

  inWindow(
    "last time is gone to in another file, and said where there is none",
    async ({ page, editor, goToEndOf }) => {
      await ready(editor);
      await goToEndOf("F# major");
      await runByKeys(page, "Daystave: Go to Last Time");
      await page.locator(".notification-toast", { hasText: "This exercise was not played before this line" }).waitFor();
      await goToEndOf("D minor, thirds");
      await runByKeys(page, "Daystave: Go to Last Time");
      await page.locator(".tab.active", { hasText: "february.practice" }).waitFor();
      await cursorAt(page, 4, 1);
    },
  );

  inWindow("without a journal they are not offered", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("F# major");
    await openPalette(page, ">Daystave: New Day");
    await page.locator(".quick-input-list .monaco-list-row", { hasText: "Daystave: New Day" }).first().waitFor();
    await page.keyboard.press("Escape");
    await runByKeys(page, "View: Close All Editors");
    await editor.waitFor({ state: "detached" });
    await openPalette(page, ">Daystave: New Day");
    const offered = page.locator(".quick-input-list .monaco-list-row");
    await offered.filter({ hasText: "similar commands" }).first().waitFor(); // what the editor offers in the place of what it has not
    expect(await offered.filter({ hasText: "Daystave" }).count()).toBe(0);
  });

  walkthroughIsTaken(inWindow);
});

/** Everything has started, and the journal is read: its one mistake is underlined. */
async function ready(editor: Locator): Promise<void> {
  await editor.locator(".squiggly-warning").first().waitFor();
}

/** From the palette, with the keyboard alone. */
async function runByKeys(page: Page, title: string): Promise<void> {
  await openPalette(page, `>${title}`);
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: title }).waitFor();
  await page.keyboard.press("Enter");
}

/** Both from 1, as the status bar has them; a key reaches the text then. */
async function cursorAt(page: Page, line: number, column: number): Promise<void> {
  await textHasFocus({ page });
  await page.getByRole("button", { name: `Ln ${line}, Col ${column}`, exact: true }).waitFor();
}

/** The lines in sight from top to bottom, without white space at their ends. */
async function linesOf(editor: Locator): Promise<string[]> {
  const lines = await editor.locator(".view-line").evaluateAll((found) =>
    found.map((line) => ({
      top: Number.parseFloat((line as HTMLElement).style.top),
      text: (line.textContent ?? "").replaceAll("\u00A0", " ").trimEnd(),
    })),
  );
  return lines.sort((a, b) => a.top - b.top).map(({ text }) => text);
}

/** Waits until these are the lines in sight, or those from one place to another: what is typed shows a moment later. */
async function linesBecome(editor: Locator, expected: readonly string[], from?: number, to?: number): Promise<void> {
  await expect.poll(async () => (await linesOf(editor)).slice(from, to)).toEqual(expected);
}

/** The day line of today by the window's own calendar: an ISO date and a weekday in English. */
async function todayOf(page: Page): Promise<string> {
  return page.evaluate(() => {
    const now = new Date();
    const date = now.toLocaleDateString("sv-SE"); // which is written as ISO 8601 has it
    return `${date} ${now.toLocaleDateString("en-GB", { weekday: "short" })}`;
  });
}
