import type { Page } from "playwright-core";
import { expect } from "vitest";
import { complaintIn, exerciseIn, lineButtonIn } from "./preview-page.ts";
import type { Window } from "./window.ts";
import { describeNodeHost, describeWorkbench } from "./workbench.ts";

const NAME = "a journal outside every folder";
const TWO_FILES = { sample: "test/hosts/journals/two-files", open: "march.practice" };
/** Of a journal that says nothing yet. */
const WHAT_TO_WRITE = [
  "No minutes are written this week or last. Write them behind a date",
  "No exercise is written yet. Write a line such as",
  "No piece is in hand. Declare one",
  "No scale or arpeggio was practised in these 26 weeks",
  "No aim is written. Write one",
];
const THIRDS = "D natural minor, thirds";

const withoutItsFolder = (page: string) => page.replace(/\[workspace .* sample\(folder\),\n/, "");
const TITLE = "has its figures at the side, whether it is a file or not yet one";

describeWorkbench(NAME, { ...TWO_FILES, changePage: withoutItsFolder }, (inWindow) => inWindow(TITLE, withoutFolder));
describeNodeHost(NAME, { ...TWO_FILES, alone: true }, (inWindow) => inWindow(TITLE, withoutFolder));

/** A window without a folder that opened one file: what lies beside that file is no part of its journal. */
async function withoutFolder({ page, editor, runCommand, showPreview }: Window): Promise<void> {
  await editor.locator(".squiggly-warning").first().waitFor();
  const preview = await showPreview();
  await preview.getByRole("heading", { level: 1, name: "Practice: march.practice" }).waitFor();
  const thirds = exerciseIn(preview, THIRDS);
  await thirds.getByRole("button", { name: /^Table/ }).click();
  expect(await thirds.getByRole("rowheader").allTextContents()).toEqual(["2026-W10"]);
  await lineButtonIn(preview, THIRDS).click();
  await page.getByRole("button", { name: "Ln 5, Col 1", exact: true }).waitFor();

  // A text that is no file yet, and becomes a journal when its language is chosen.
  await runCommand("File: New Untitled Text File");
  await page.getByRole("tab", { name: "Untitled-1" }).waitFor();
  await chooseLanguage(page, runCommand);
  await preview.getByRole("heading", { level: 1, name: "Practice: Untitled-1" }).waitFor();
  for (const sentence of WHAT_TO_WRITE) await preview.getByText(sentence).waitFor();
  expect(await preview.locator("table, svg").count()).toBe(0);
  await page.keyboard.insertText("2026-03-02\n  C major, 8ths at 60 clean");
  await exerciseIn(preview, "C major").getByText("Best 8ths at 60").waitFor();
  await page.keyboard.press("Control+Home");
  await lineButtonIn(preview, "C major").click();
  await page.getByRole("button", { name: "Ln 2, Col 1", exact: true }).waitFor();
  await page.locator(`.tab.active[data-resource-name="Untitled-1"]`).waitFor();
  expect(await complaintIn(preview).textContent()).toBe("");
}

async function chooseLanguage(page: Page, runCommand: Window["runCommand"]): Promise<void> {
  await runCommand("Change Language Mode");
  await page.locator(".quick-input-box input").fill("Practice Journal");
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: "Practice Journal" }).waitFor();
  await page.keyboard.press("Enter");
}
