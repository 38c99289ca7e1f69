import type { Locator } from "playwright-core";
import { expect } from "vitest";
import scales from "../reference/scales.json";
import { cursorAt, linesBecome, linesOf, runByKeys, todayOf } from "./typing.ts";
import { openPalette } from "./window.ts";
import type { InWindow } from "./workbench.ts";

// LilyPond 2.24.1; its octaves are of no matter here. See the file's own provenance.
const SHARP = scales.major.find(({ tonic }) => tonic === "F#")!.scales.major.up.map((note) => note.replace(/\d$/, ""));

/** In the journal of two files, that of March open. */
export function commands(inWindow: InWindow): void {
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
    await runByKeys(page, "Daystave: New Day"); // today is there: an empty line at its end is gone to
    await cursorAt(page, 12, 1);
    await linesBecome(editor, [...before, day, "C major, slow", ""]);
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
    "an entry of an earlier day is repeated today, a notch faster than was reached or slower, and one undo takes it back",
    async ({ page, editor, goToEndOf }) => {
      await ready(editor);
      await goToEndOf("D minor, thirds");
      const before = await linesOf(editor);
      const today = await todayOf(page);
      await runByKeys(page, "Daystave: Repeat Entry a Notch Faster");
      // The journal's days are months ago: on the first days back nothing is above four fifths of 54, reached on two days.
      await cursorAt(page, 11, "D minor, thirds, 8ths at 42".length + 1);
      await page.locator(".notification-toast", { hasText: "Not above 42 today" }).waitFor();
      await linesBecome(editor, [...before, today, "D minor, thirds, 8ths at 42", ""]);
      await page.keyboard.press("Control+z");
      await linesBecome(editor, before);
      await goToEndOf("D minor, thirds");
      await runByKeys(page, "Daystave: Repeat Entry a Notch Slower");
      await cursorAt(page, 11, "D minor, thirds, 8ths at 42".length + 1);
      await page.keyboard.type(" clean");
      await linesBecome(editor, [...before, today, "D minor, thirds, 8ths at 42 clean", ""]);
    },
  );

  inWindow(
    "the notes of a scale are written out today, and one undo takes them back; of an earlier day they are said",
    async ({ page, editor, goToEndOf }) => {
      await ready(editor);
      await goToEndOf("F# major");
      await runByKeys(page, "Daystave: Write Out the Notes");
      await page.locator(".notification-toast", { hasText: `Notes: ${SHARP.join(" ")}` }).waitFor();
      await runByKeys(page, "Daystave: New Day");
      await cursorAt(page, 11, 1);
      await page.keyboard.insertText("F# major, slow");
      await cursorAt(page, 11, "F# major, slow".length + 1);
      const before = await linesOf(editor);
      await runByKeys(page, "Daystave: Write Out the Notes");
      await editor.locator(".view-line", { hasText: `F# major: ${SHARP.join(" ")}, slow` }).waitFor();
      await page.keyboard.press("Control+z");
      await linesBecome(editor, before);
    },
  );

  inWindow(
    "the hardest finger change of a line is put in today, and one undo takes it back",
    async ({ page, editor, goToEndOf }) => {
      await ready(editor);
      await goToEndOf("F# major");
      await runByKeys(page, "Daystave: Practise the Hardest Finger Change");
      await page
        .locator(".notification-toast", { hasText: "Which finger change is hardest is known for recorders only" })
        .waitFor();
      await page.keyboard.insertText(", slow, on alto recorder");
      await cursorAt(page, 6, "  F# major, slow, on alto recorder".length + 1);
      const before = await linesOf(editor);
      await runByKeys(page, "Daystave: Practise the Hardest Finger Change");
      const added = "notes G#4 A#4, back and forth, slurred, on alto recorder, slow"; // as test/features/commands/finger-change.test.ts has it
      await cursorAt(page, 11, added.length + 1);
      await linesBecome(editor, [...before, await todayOf(page), added, ""]);
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
      await page
        .locator(".notification-toast", { hasText: "This exercise has not been played before this line" })
        .waitFor();
      await goToEndOf("D minor, thirds");
      await runByKeys(page, "Daystave: Go to Last Time");
      await page.locator(".tab.active", { hasText: "february.practice" }).waitFor();
      await cursorAt(page, 4, 1);
    },
  );

  inWindow(
    "without a journal none is offered but a new one, and the pupils of a folder",
    async ({ page, editor, goToEndOf }) => {
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
      const ours = await offered.filter({ hasText: "Daystave" }).allTextContents();
      for (const title of ours) expect(title).toMatch(/New Journal|Sample Journal|Show Pupils/); // which are about no journal at hand
    },
  );
}

/** Everything has started, and the journal is read: its one mistake is underlined. */
async function ready(editor: Locator): Promise<void> {
  await editor.locator(".squiggly-warning").first().waitFor();
}
