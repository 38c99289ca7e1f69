import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintIn, exerciseIn, lineButtonIn, tempoIn, unfold } from "./preview-page.ts";
import type { Window } from "./window.ts";
import { describeNodeHost, describeWorkbench } from "./workbench.ts";

const NAME = "a journal outside every folder";
const TWO_FILES = { sample: "test/hosts/journals/two-files", open: "march.practice" };
/** Of a journal that says nothing yet. */
const WHAT_TO_WRITE = "Write a line in the journal, such as";
const THIRDS = "D natural minor, thirds";

const withoutItsFolder = (page: string) => page.replace(/\[workspace .* sample\(folder\),\n/, "");
const TITLE = "has its figures at the side, whether it is a file or not yet one";

describeWorkbench(NAME, { ...TWO_FILES, inFull: true, changePage: withoutItsFolder }, (inWindow) =>
  inWindow(TITLE, withoutFolder),
);
describeNodeHost(NAME, { ...TWO_FILES, inFull: true, alone: true }, (inWindow) => inWindow(TITLE, withoutFolder));

/** A window without a folder that opened one file: what lies beside that file is no part of its journal. */
async function withoutFolder({ page, editor, runCommand, showPreview }: Window): Promise<void> {
  await editor.locator(".squiggly-warning").first().waitFor();
  const preview = await showPreview();
  await preview.getByRole("heading", { level: 1, name: "march.practice" }).waitFor();
  const thirds = exerciseIn(preview, THIRDS);
  const opened = await unfold(preview, thirds);
  expect(await opened.getByRole("rowheader").allTextContents()).toEqual(["2 Mar"]);
  await lineButtonIn(preview, THIRDS).click();
  await page.getByRole("button", { name: "Ln 5, Col 1", exact: true }).waitFor();

  // A text that is no file yet, and becomes a journal when its language is chosen.
  await runCommand("File: New Untitled Text File");
  await page.getByRole("tab", { name: "Untitled-1" }).waitFor();
  await chooseLanguage(page, runCommand);
  await preview.getByRole("heading", { level: 1, name: "Untitled-1" }).waitFor();
  await preview.getByText(WHAT_TO_WRITE).waitFor();
  expect(await preview.locator("table, svg").count()).toBe(0);
  await page.keyboard.insertText("2026-03-02\n  C major, 8ths at 60 clean");
  await tempoIn(exerciseIn(preview, "C major"), 60).waitFor();
  await page.keyboard.press("Control+Home");
  await lineButtonIn(preview, "C major").click();
  await page.getByRole("button", { name: "Ln 2, Col 1", exact: true }).waitFor();
  await page.locator(`.tab.active[data-resource-name="Untitled-1"]`).waitFor();
  await expect.poll(() => complaintIn(preview).textContent()).toBe("");
}

async function chooseLanguage(page: Page, runCommand: Window["runCommand"]): Promise<void> {
  await runCommand("Change Language Mode");
  await page.locator(".quick-input-box input").fill("Practice Journal");
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: "Practice Journal" }).waitFor();
  await page.keyboard.press("Enter");
}
