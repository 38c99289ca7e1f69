import type { Locator, Page } from "playwright-core";
import { Scale } from "tonal";
import { cursorAt, linesBecome, linesOf, runByKeys } from "./typing.ts";
import { describeWorkbench } from "./workbench.ts";

// Commands that change what is written, each by keys alone, and taken back by a single undo.

describeWorkbench("changing", { sample: "test/hosts/journals/diary", open: "diary.practice" }, (inWindow) => {
  inWindow("a key is respelled with its notes and signature", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("F# major");
    const before = await linesOf(editor);
    await runByKeys(page, "Daystave: Respell the Notes");
    const notes = [...Scale.get("Gb major").notes, "Gb"].join(" "); // tonal 6.4.3
    await linesBecome(
      editor,
      before.map((line) => (line.includes("F# major") ? `  Gb major: ${notes}, 6 flats` : line)),
    );
    await undone(page, editor, before);
  });

  inWindow("both sides of a conflict are kept", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("F# major");
    await page.keyboard.press("Control+End");
    const conflict = ["<<<<<<< desk", "C major, at 60", "=======", "D minor, at 54", ">>>>>>> laptop"];
    await page.keyboard.insertText(conflict.join("\n"));
    await linesBecome(editor, conflict, -5);
    const before = await linesOf(editor);
    await runByKeys(page, "Daystave: Keep Both Sides of a Merge");
    await linesBecome(editor, [...before.slice(0, -5), "C major, at 60", "D minor, at 54"]);
    await undone(page, editor, before);
  });

  inWindow("the notes are named in the language that is chosen", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("F# major");
    const before = await linesOf(editor);
    await runByKeys(page, "Daystave: Change the Names of Notes");
    await chosen(page, "German");
    await editor.locator(".view-line", { hasText: "Fis-Dur: Fis Gis Ais H Cis Dis Eis Fis, 6 sharps" }).waitFor();
    await editor.locator(".view-line", { hasText: "names german" }).waitFor();
    await undone(page, editor, before);
  });

  inWindow("the title that a line taught is declared", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("The Sleepy Frog");
    const before = await linesOf(editor);
    await runByKeys(page, "Daystave: Declare the Title of This Piece");
    await linesBecome(editor, [before[0]!, 'piece "The Sleepy Frog"', ...before.slice(1)]);
    await cursorAt(page, 2, 'piece "The Sleepy Frog"'.length + 1);
    await undone(page, editor, before);
  });

  inWindow("the days of last year move into a file of their own", async ({ page, editor, goToEndOf }) => {
    await ready(editor);
    await goToEndOf("F# major");
    const before = await linesOf(editor);
    await runByKeys(page, "Daystave: Move a Year into Its Own File");
    await chosen(page, "2025");
    await page.locator(".tab.active", { hasText: "2025.practice" }).waitFor();
    await linesBecome(editor, ["2025-03-02 Sun", "  The Sleepy Frog, bars 1-8, at 60 clean", ""]);
    await page.keyboard.press("Control+z"); // both files, and the new one is gone
    await page.locator(".tab", { hasText: "2025.practice" }).waitFor({ state: "detached" });
    await linesBecome(editor, before);
  });
});

/** By its first letters, and Enter. */
async function chosen(page: Page, label: string): Promise<void> {
  await page.locator(".quick-input-list .monaco-list-row", { hasText: label }).first().waitFor();
  await page.keyboard.type(label);
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: label }).waitFor();
  await page.keyboard.press("Enter");
}

async function undone(page: Page, editor: Locator, before: readonly string[]): Promise<void> {
  await page.keyboard.press("Control+z");
  await linesBecome(editor, before);
}

/** Everything has started, and the journal is read: its one mistake is underlined. */
async function ready(editor: Locator): Promise<void> {
  await editor.locator(".squiggly-warning").first().waitFor();
}
