import type { FrameLocator, Locator } from "playwright-core";
import { expect } from "vitest";
import { expectNoViolation } from "./accessible.ts";
import { chooseTheme, openPalette, type Window } from "./window.ts";
import { describeWorkbench } from "./workbench.ts";

const PUPILS = { sample: "samples/pupils", open: "tobin/diary.practice", inFull: true };

/** Opens the page as a teacher would: the command is found and taken by keys. */
async function showPupils({ page, preview }: Window): Promise<FrameLocator> {
  await openPalette(page, ">Daystave: Show Pupils");
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: "Daystave: Show Pupils" }).waitFor();
  await page.keyboard.press("Enter");
  await preview().getByRole("heading", { level: 2 }).first().waitFor();
  return preview();
}

function rowOf(pupils: FrameLocator, name: string): Locator {
  return pupils.getByRole("region", { name, exact: true });
}

/** What is set for the child stands above the days, so it is set today, whichever day that is. */
function fiveNotes(pupils: FrameLocator): Locator {
  return rowOf(pupils, "Tobin").getByRole("button", { name: "C major, five notes" });
}

describeWorkbench("the page of pupils", PUPILS, (inWindow) => {
  inWindow("has a row for each journal, leads to a line by Enter and by a click, follows an edit", async (window) => {
    const { page, editor, goToEndOf } = window;
    const pupils = await showPupils(window);
    expect(await pupils.getByRole("heading", { level: 2 }).allTextContents()).toEqual(["Ingrid Maas", "Sefa", "Tobin"]);
    expect(await pupils.locator("main").textContent()).not.toContain("thumb sore"); // it is not shared
    await expectNoViolation(pupils);

    await fiveNotes(pupils).focus();
    await page.keyboard.press("Enter");
    await page.locator(".tab.active", { hasText: "journal.practice" }).waitFor();
    await page.getByRole("button", { name: "Ln 6, Col 1" }).waitFor();
    await rowOf(pupils, "Sefa").getByRole("button", { name: "Sefa" }).click();
    await page.getByRole("button", { name: "Ln 2, Col 1" }).waitFor();
    await editor.locator(".view-line", { hasText: "player Sefa" }).waitFor();

    await page.getByRole("tab", { name: "diary.practice" }).click();
    expect(await fiveNotes(pupils).textContent()).not.toContain("played");
    const [today, words] = await page.evaluate(() => {
      const now = new Date();
      const weekday = new Intl.DateTimeFormat("en-GB", { weekday: "short" }).format(now);
      return [new Intl.DateTimeFormat("sv-SE").format(now), `played ${weekday} ${now.getDate()}`] as const; // 2026-03-08
    });
    await goToEndOf("as if the note was asleep");
    await page.keyboard.press("Control+End");
    await page.keyboard.insertText(`\n${today}\n  C major, five notes, slow, easy`);
    await fiveNotes(pupils).getByText(words).waitFor();
  });

  inWindow("goes by keys: Tab from pupil to pupil, arrows from line to line", async (window) => {
    const { page } = window;
    const pupils = await showPupils(window);
    const focused = () => pupils.locator("body").evaluate((body) => body.ownerDocument.activeElement?.textContent);
    await rowOf(pupils, "Ingrid Maas").getByRole("button", { name: "Ingrid Maas" }).focus();
    await page.keyboard.press("Tab");
    expect(await focused()).toBe("Sefa");
    await page.keyboard.press("Tab");
    expect(await focused()).toBe("Tobin");
    await page.keyboard.press("ArrowDown"); // to the last day
    await page.keyboard.press("ArrowDown");
    expect(await focused()).toBe("Wed 4 Mar 2026"); // the lesson, which is more than half a year ago
    await page.keyboard.press("ArrowDown");
    expect(await focused()).toContain("C major, five notes");
    await page.keyboard.press("Home");
    expect(await focused()).toBe("Tobin");
  });

  inWindow("is as wide as its column, however narrow, and runs no script but its own", async (window) => {
    const pupils = await showPupils(window);
    for (const width of [320, 500, 1000]) {
      const wide = await pupils.locator("main").evaluate((main, at) => {
        main.ownerDocument.body.style.width = `${at}px`;
        return Math.max(...[...main.querySelectorAll("*")].map((each) => each.getBoundingClientRect().right));
      }, width);
      expect(wide, `at ${width} px`).toBeLessThanOrEqual(width);
    }
    const policy = await pupils.locator("meta[http-equiv]").getAttribute("content");
    expect(policy).toMatch(/^default-src 'none'; style-src [^;]*; script-src 'nonce-[0-9a-f]{32}'$/);
  });

  // The window keeps the last theme that it was given: nothing comes behind these.
  for (const theme of ["Default Dark Modern", "Default High Contrast", "Default High Contrast Light"])
    inWindow(`can be read in the theme ${theme}`, async (window) => {
      await chooseTheme(window, theme.replace("Default ", ""));
      const pupils = await showPupils(window);
      await pupils.locator(`body[data-vscode-theme-id="${theme}"]`).waitFor();
      await expectNoViolation(pupils);
    });
});
