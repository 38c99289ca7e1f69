import { expect } from "vitest";
import manifestInGerman from "../../package.nls.de.json";
import type { DoChore } from "./chores.ts";
import type { NodeHost } from "./node-host.ts";
import { openOwn, openPalette, revert, textHasFocus, type Window } from "./window.ts";
import type { InWindow } from "./workbench.ts";

// What a German editor takes from the package by itself: package.nls.de.json, l10n/ and the walkthrough's pages; and what
// the server and the pages say to it. The editor's own words stay English here, as it has no language pack; it is told its
// language alone.
export function inGerman(inWindow: InWindow, host: () => NodeHost): void {
  inWindow("has its commands, its questions, its titles and its walkthrough in German", async (window) => {
    const { page, editor, preview, runCommand } = window;
    await startInGerman(window, host().doChore);
    await editor.locator(".view-lines").click();
    await textHasFocus(window);
    await page.locator(".statusbar-item", { hasText: manifestInGerman["language.name"] }).waitFor();

    await runCommand(`Daystave: ${manifestInGerman["command.printSheet"]}`);
    const asked = page.locator(".quick-input-widget");
    await asked.getByText("Ein Übeblatt zum Drucken").waitFor();
    await asked.locator(".monaco-list-row", { hasText: "Jede Übung der Woche, einmal" }).waitFor();
    await page.keyboard.press("Escape");

    await openPalette(page, ">Welcome: Open Walkthrough...");
    await page.keyboard.press("Enter");
    await page
      .locator(".quick-input-list .monaco-list-row", { hasText: manifestInGerman["walkthrough.title"] })
      .click();
    const walkthrough = page.locator(".gettingStartedContainer");
    await walkthrough.getByText(manifestInGerman["walkthrough.day.title"]).waitFor();
    const picture = page.frameLocator('iframe.webview.ready:not([src*="extensionId=daystave-dev.daystave"])');
    await picture.frameLocator("#active-frame").getByText("Ein Übetagebuch ist reiner Text").waitFor();
    expect(await walkthrough.getByText("Look at a sample").count()).toBe(0);

    await page.locator(".tab", { hasText: "week.practice" }).click();
    await runCommand(`Daystave: ${manifestInGerman["command.showPreview"]}`);
    await preview().getByRole("heading", { level: 1, name: "Ottilie" }).waitFor();
    await page.locator(".tab", { hasText: "Üben: Ottilie" }).waitFor();
    await preview().getByRole("heading", { level: 2, name: "Heute" }).waitFor();
    await preview().getByRole("heading", { level: 2, name: "Übungen" }).waitFor();
    await preview()
      .getByText(/^Diese Woche: /)
      .waitFor();
    expect(await preview().locator("html").getAttribute("lang")).toBe("de");
  });

  inWindow("is told of its lines in German: what is wrong in one, and how an exercise has gone", async (window) => {
    const { page, editor, hoverOnStartOf } = window;
    await startInGerman(window, host().doChore);
    await editor.locator(".view-lines").click();
    await page.keyboard.press("Control+Shift+M");
    const problems = page.locator(".markers-panel");
    await problems.getByText("F# major hat E#, nicht F: Die siebte Stufe hat den Stammton E.").waitFor();
    await page.keyboard.press("Control+Shift+M");
    // Asked before the history is read, a hover says less: asked again, as a person would.
    const saysWhereToBegin = async () => {
      const hover = await hoverOnStartOf("D melodic minor, thirds");
      const said = await hover.textContent();
      await page.keyboard.press("Escape");
      await hover.waitFor({ state: "hidden" });
      return said;
    };
    await expect.poll(saysWhereToBegin, { timeout: 30_000 }).toMatch(/Fang mit \d+ an/);
  });
}

/** From here on; a window that is German already stays as it is. */
async function startInGerman(window: Window, doChore: DoChore): Promise<void> {
  const { page } = window;
  if (await page.evaluate(() => "_VSCODE_NLS_LANGUAGE" in globalThis)) return;
  await page.addInitScript(() => {
    Object.assign(globalThis, { _VSCODE_NLS_LANGUAGE: "de" });
  });
  await page.setViewportSize({ width: 1900, height: 900 }); // in a narrow one a walkthrough shows no page
  await page.reload();
  await page.locator('[id="status.problems"]', { hasText: /[1-9]/ }).waitFor(); // the text has been read
  await revert(window, doChore); // a preview of an earlier test, perhaps, that the window remembers
  await openOwn(window, doChore, false);
}
