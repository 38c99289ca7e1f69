import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import type { NodeHost } from "./node-host.ts";
import { complaintIn, exerciseIn, lineButtonIn, tempoIn, unfold } from "./preview-page.ts";
import { processBelow } from "./processes.ts";
import type { InWindow } from "./workbench.ts";

const THIRDS = "D natural minor, thirds";

/** In milliseconds: the editor's watcher of the disk gathers what happens before it tells of it. */
const WATCH_LIMIT = 20_000;

/** The sample has two files with the same exercise; the one of March is open. None of them is left behind this. */
export function renamedAndDeleted(inWindow: InWindow): void {
  inWindow("the preview follows a renamed file, and those of its journal that are left", async (window) => {
    const { page, editor, showPreview } = window;
    await editor.locator(".squiggly-warning").first().waitFor();
    const preview = await showPreview();
    const thirds = exerciseIn(preview, THIRDS);
    await tempoIn(thirds, 60).waitFor();

    await renameFile(page, "march.practice", "spring.practice");
    await page.getByRole("tab", { name: "spring.practice" }).waitFor();
    await tempoIn(thirds, 60).waitFor();
    await lineButtonIn(preview, THIRDS).click();
    await page.locator(".tab.active", { hasText: "spring.practice" }).waitFor();
    await page.getByRole("button", { name: "Ln 5, Col 1", exact: true }).waitFor();

    // The file that is shown goes: those that are left of its journal are shown.
    await deleteFile(page, "spring.practice");
    await tempoIn(thirds, 54).waitFor();
    await lineButtonIn(preview, "F# major").waitFor({ state: "detached" });

    // And the last one: what to write is said, as for a journal in which nothing stands.
    await deleteFile(page, "february.practice");
    await preview.getByText("Write a line in the journal, such as").waitFor();
    expect(await preview.getByRole("row").count()).toBe(0);
    await expect.poll(() => complaintIn(preview).textContent()).toBe("");
  });
}

/** On the disk, beside the window. */
export function writtenByOthers(inWindow: InWindow, host: () => NodeHost): void {
  inWindow("files that another program writes are followed, whether they go or come back", async (window) => {
    const { editor, showPreview } = window;
    await editor.locator(".squiggly-warning").first().waitFor();
    const february = join(host().folder, "february.practice");
    const text = readFileSync(february, "utf8");
    const preview = await showPreview();
    const thirds = exerciseIn(preview, THIRDS);
    const opened = await unfold(preview, thirds);
    const weeks = () => opened.getByRole("rowheader").allTextContents();
    await expect.poll(weeks).toContain("2 Feb");
    rmSync(february);
    await expect.poll(weeks, { timeout: WATCH_LIMIT }).not.toContain("2 Feb");
    expect(await weeks()).toContain("2 Mar");
    writeFileSync(february, text);
    await expect.poll(weeks, { timeout: WATCH_LIMIT }).toContain("2 Feb");
  });

  inWindow("a file that is gone before the figures can follow cannot be led to, which is said", async (window) => {
    const { page, editor, showPreview, runCommand } = window;
    await editor.locator(".squiggly-warning").first().waitFor();
    const march = join(host().folder, "march.practice");
    const text = readFileSync(march, "utf8");
    const preview = await showPreview();
    const scale = lineButtonIn(preview, "F# major");
    await scale.waitFor();
    await runCommand("View: Close Editor");
    await editor.waitFor({ state: "detached" });
    const server = processBelow(host().pid, "dist/server/main.js")!;
    process.kill(server, "SIGSTOP"); // so busy that the figures cannot follow
    try {
      rmSync(march);
      await scale.click();
      await runCommand("Notifications: Show Notifications"); // this window, driven by a program, shows none unasked
      await page.locator(".notifications-center", { hasText: "The file of that line cannot be opened" }).waitFor();
    } finally {
      process.kill(server, "SIGCONT");
    }
    await scale.waitFor({ state: "detached", timeout: WATCH_LIMIT });
    writeFileSync(march, text);
    await scale.waitFor({ timeout: WATCH_LIMIT });
  });
}

/** In the explorer, by keyboard. */
async function renameFile(page: Page, from: string, to: string): Promise<void> {
  await fileInExplorer(page, from).click();
  await page.keyboard.press("F2");
  const name = page.locator(".explorer-folders-view .monaco-inputbox input");
  await name.fill(to);
  await name.press("Enter");
  await fileInExplorer(page, to).waitFor();
}

/** In the explorer, by keyboard, and the question whether it is meant is answered. */
async function deleteFile(page: Page, name: string): Promise<void> {
  await fileInExplorer(page, name).click();
  await page.keyboard.press("Delete");
  await page
    .locator(".monaco-dialog-box")
    .getByRole("button", { name: /^(Delete|Move to Trash)$/ })
    .click();
  await fileInExplorer(page, name).waitFor({ state: "detached" });
}

function fileInExplorer(page: Page, name: string): Locator {
  return page.locator(".explorer-folders-view .monaco-list-row", { hasText: name });
}
