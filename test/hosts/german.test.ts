import type { Page } from "playwright-core";
import { expect } from "vitest";
import manifestInGerman from "../../package.nls.de.json";
import { openPalette, textHasFocus } from "./window.ts";
import { describeNodeHost } from "./workbench.ts";

// What a German editor takes from the package by itself: package.nls.de.json, l10n/ and the walkthrough's pages; and what
// the server and the pages say to it. The editor's own words stay English here, as it has no language pack; it is told its
// language alone.
describeNodeHost(
  "the installed package in a German editor",
  { sample: "samples/quickstart", open: "week.practice", packaged: true },
  (inWindow) => {
    inWindow("has its commands, its questions, its titles and its walkthrough in German", async (window) => {
      const { page, editor, preview, runCommand } = window;
      await startInGerman(page);
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
      await startInGerman(page);
      await editor.locator(".view-lines").click();
      await page.keyboard.press("Control+Shift+M");
      const problems = page.locator(".markers-panel");
      await problems.getByText("F# major hat E#, nicht F: Die siebte Stufe hat den Stammton E.").waitFor();
      await page.keyboard.press("Control+Shift+M");
      const hover = await hoverOnStartOf("D melodic minor, thirds");
      await hover
        .getByText(/Fang mit \d+ an/)
        .first()
        .waitFor();
    });
  },
);

/** From here on, until another page is loaded. */
async function startInGerman(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.assign(globalThis, { _VSCODE_NLS_LANGUAGE: "de" });
  });
  await page.setViewportSize({ width: 1900, height: 900 }); // in a narrow one a walkthrough shows no page
  await page.reload();
  await page.locator('[id="status.problems"]', { hasText: /[1-9]/ }).waitFor(); // the text has been read
}
