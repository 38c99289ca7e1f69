import { readFileSync } from "node:fs";
import type { FrameLocator } from "playwright-core";
import { expect } from "vitest";
import { exerciseIn, lineButtonIn, unfold } from "./preview-page.ts";
import { focusInPreview, reloadServed, textHasFocus } from "./window.ts";
import type { InWindow } from "./workbench.ts";

const THIRDS = "D melodic minor, thirds";
const PARTS = ["Today", "Exercises", "Pieces", "Keys", "For the lesson", "Weeks", "Aims"];

/** In milliseconds: the workbench writes down what it will remember every few seconds. */
export const REMEMBER_LIMIT = 30_000;

/** What a player does with the preview beside the sample's week. */
export function previewPaths(inWindow: InWindow): void {
  followsAnEdit(inWindow);
  leadsAndIsLed(inWindow);
}

export function followsAnEdit(inWindow: InWindow): void {
  inWindow(
    "has its parts in their order, and follows an edit: the row that changed and no other",
    async ({ page, editor, showPreview, goToEndOf }) => {
      await editor.locator(".squiggly-error").first().waitFor();
      const preview = await showPreview();
      const thirds = exerciseIn(preview, THIRDS);
      await thirds.waitFor();
      const headings = await preview.getByRole("heading", { level: 2 }).allTextContents();
      expect(headings).toEqual(PARTS.filter((part) => headings.includes(part)));
      expect(headings).toEqual(expect.arrayContaining(["Today", "Exercises", "Pieces", "Keys", "Aims"]));
      const opened = await unfold(preview, thirds);
      const chart = opened.getByRole("img");
      expect(await chart.locator("title").textContent()).toBe(THIRDS);
      expect(await chart.locator("desc").textContent()).toMatch(/^Weekly best from /);

      const table = opened.getByRole("table");
      const columns = ["week of", "best", "usual", "reached", "minutes"];
      expect(await table.getByRole("columnheader").allTextContents()).toEqual(columns);
      expect(await table.getByRole("rowheader").first().textContent()).toBe("2 Mar");

      await goToEndOf("thirds");
      await preview.locator(".row[aria-current]").waitFor();
      await scrollTo(preview, 120);
      await markAll(preview);
      await page.keyboard.type(", 90 clean");
      await table.getByRole("cell", { name: "90", exact: true }).first().waitFor(); // so it is unfolded still
      const drawn = preview.locator(".row:not([data-seen]) .row-name");
      expect(await drawn.allTextContents()).toEqual([await thirds.locator(".row-name").textContent()]);
      expect(await preview.locator("#keys[data-seen], #weeks[data-seen]").count()).toBe(2);
      expect(await scrolled(preview)).toBe(120);
    },
  );
}

function leadsAndIsLed(inWindow: InWindow): void {
  inWindow(
    "marks the exercise at the cursor, and leads from it to its line by keyboard and by mouse",
    async (window) => {
      const { page, editor, showPreview, goToEndOf } = window;
      const lines = readFileSync("samples/quickstart/week.practice", "utf8").split("\n");
      // What is planned was not practised.
      const last = lines.findLastIndex((line) => /^ +D melodic minor, thirds.* clean/.test(line));
      const atLast = page.getByRole("button", { name: `Ln ${last + 1}, Col 1`, exact: true });
      await editor.locator(".squiggly-error").first().waitFor();
      const preview = await showPreview();
      await exerciseIn(preview, THIRDS).waitFor();
      await goToEndOf("thirds");
      const marked = preview.locator(".row[aria-current]");
      await marked.waitFor();
      expect(await marked.locator(".row-name").textContent()).toContain(THIRDS);
      await expect.poll(() => marked.evaluate(isInSight)).toBe(true);
      await page.keyboard.press("Control+Home");
      await marked.waitFor({ state: "detached" });

      await focusInPreview(window, lineButtonIn(preview, THIRDS));
      await page.keyboard.press("Enter");
      await atLast.waitFor();
      await textHasFocus(window);
      await page.keyboard.press("Control+Home");
      await page.getByRole("button", { name: "Ln 1, Col 1", exact: true }).waitFor();
      await lineButtonIn(preview, THIRDS).click();
      await atLast.waitFor();
    },
  );

  inWindow("unfolds one row at a time by keyboard, where it is, and folds it again", async (window) => {
    const preview = await window.showPreview();
    const toggles = preview.locator("#exercises .row-toggle");
    await toggles.nth(1).waitFor();
    await focusInPreview(window, toggles.nth(0));
    await window.page.keyboard.press("Enter");
    await preview.locator(".opened table").waitFor();
    await scrollTo(preview, 400); // below what the first one shows: there is room to go up by that
    const topOfSecond = () => toggles.nth(1).evaluate((toggle) => toggle.getBoundingClientRect().top);
    await toggles.nth(1).evaluate((toggle) => toggle.focus({ preventScroll: true }));
    const before = await topOfSecond();
    await window.page.keyboard.press("Enter");
    await expect.poll(() => toggles.nth(0).getAttribute("aria-expanded")).toBe("false");
    expect(await preview.locator(".opened").count()).toBe(1);
    expect(Math.abs((await topOfSecond()) - before)).toBeLessThan(2);
    await window.page.keyboard.press("Enter");
    await preview.locator(".opened").waitFor({ state: "detached" });
    await window.page.keyboard.press("Enter");
    await preview.locator(".opened table").waitFor(); // before it there is nothing in it to go to
    await window.page.keyboard.press("Tab");
    await window.page.keyboard.press("Escape");
    await preview.locator(".opened").waitFor({ state: "detached" });
    expect(await toggles.nth(1).evaluate((toggle) => toggle === document.activeElement)).toBe(true);
  });

  inWindow("has a row of links to its parts, of which the one that is read is marked", async (window) => {
    const preview = await window.showPreview();
    const current = preview.locator("nav [aria-current]");
    await current.waitFor();
    expect(await current.textContent()).toBe("Today");
    await focusInPreview(window, preview.getByRole("link", { name: "Today" }));
    await window.page.keyboard.press("ArrowRight");
    await window.page.keyboard.press("ArrowRight");
    await window.page.keyboard.press("Enter");
    await expect.poll(() => current.textContent()).toBe("Pieces");
    await expect.poll(() => preview.locator("#pieces h2").evaluate(isInSight)).toBe(true);
  });
}

export function comesBack(inWindow: InWindow): void {
  inWindow(
    "comes back when the window is loaded again, with the weeks that were chosen",
    async ({ page, editor, showPreview, preview }) => {
      const ofFourWeeks = preview()
        .getByText(/ in (?:these )?4 weeks$/)
        .first();
      await editor.locator(".squiggly-error").first().waitFor();
      await (await showPreview()).getByLabel("Weeks", { exact: true }).selectOption("4");
      await ofFourWeeks.waitFor();
      await expect
        .poll(() => page.evaluate(windowRemembers, "editors.webviewInput.*daystave.preview.*span\\W+4"), {
          timeout: REMEMBER_LIMIT,
        })
        .toBe(true);
      await reloadServed(page);
      await ofFourWeeks.waitFor();
      expect(await preview().getByLabel("Weeks", { exact: true }).inputValue()).toBe("4");
    },
  );
}

/** In pixels from the top. */
async function scrollTo(preview: FrameLocator, top: number): Promise<void> {
  await preview.locator("html").evaluate((html, y) => html.ownerDocument.defaultView!.scrollTo(0, y), top);
}

function scrolled(preview: FrameLocator): Promise<number> {
  return preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.scrollY);
}

/** Marks every row, and two parts: what is drawn anew has no mark. */
async function markAll(preview: FrameLocator): Promise<void> {
  await preview.locator("main").evaluate((main) => {
    for (const part of main.querySelectorAll(".row, #keys, #weeks")) part.setAttribute("data-seen", "before");
  });
}

/** Runs in the page: whether some of an element is in the part of the page that is seen. */
function isInSight(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > 0 && top < window.innerHeight;
}

/** Runs in the page: whether the workbench has written down, as it does every few seconds, something of this pattern. */
export async function windowRemembers(pattern: string): Promise<boolean> {
  const settled = <Value>(request: IDBRequest<Value>) =>
    new Promise<Value>((done, fail) => {
      request.onsuccess = () => done(request.result);
      request.onerror = () => fail(request.error);
    });
  for (const { name } of await indexedDB.databases()) {
    if (!name?.startsWith("vscode-web-state-db-")) continue;
    const database = await settled(indexedDB.open(name));
    const tables = [...database.objectStoreNames];
    const values = tables.map((table) => settled(database.transaction(table).objectStore(table).getAll()));
    const held = new RegExp(pattern).test(JSON.stringify(await Promise.all(values)));
    database.close();
    if (held) return true;
  }
  return false;
}
