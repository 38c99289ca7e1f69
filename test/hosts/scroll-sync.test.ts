import type { FrameLocator } from "playwright-core";
import { describe, expect } from "vitest";
import { cursorAt } from "./typing.ts";
import { focusInPreview, openPalette, previewHasFocus, SETTINGS, textHasFocus, type Window } from "./window.ts";
import { describeWorkbench, type InWindow } from "./workbench.ts";

// Page and text go after each other. The journal has one scale a day, the latest last; the page has the latest first.

const JOURNAL = { sample: "test/hosts/journals/many-exercises", open: "days.practice", inFull: true };
/** Milliseconds in which whatever goes after something else has done so, many times over. */
const SETTLED = 1_500;

describeWorkbench("the preview and the text", JOURNAL, (inWindow) => {
  describe("the preview goes after the text", () => goesAfterText(inWindow));
  describe("the text goes after the preview, where the setting says so", () => goesAfterPreview(inWindow));
  describe("each stays where it is, where the setting says so", () => eachStays(inWindow));
});

function goesAfterText(inWindow: InWindow): void {
  inWindow(
    "to the exercise of the cursor, which keeps the focus; typing on its line leaves the page",
    async (window) => {
      const { page } = window;
      const preview = await shown(window);
      await scrollTo(preview, 0);
      await goToLine(window, 7); // C major, the earliest: the last of the page
      await rowInSight(preview, "C major");
      await cursorAt(page, 7, 1);
      await scrollTo(preview, 0);
      await page.keyboard.press("End");
      await page.keyboard.type(", 61 clean");
      await preview.locator(".row", { hasText: "C major" }).locator(".row-number", { hasText: "61" }).first().waitFor();
      expect(await scrolled(preview)).toBe(0);
    },
  );

  inWindow("to what is in the middle of it when it is scrolled by keys, and its cursor stays", async (window) => {
    const { page } = window;
    const preview = await shown(window);
    await goToLine(window, 1);
    await scrollTo(preview, 0);
    for (let presses = 0; presses < 2; presses++) await page.keyboard.press("Alt+PageDown"); // scrolls, and moves no cursor
    await expect.poll(() => inTheMiddle(window, preview)).toBe(true);
    await page.getByRole("button", { name: "Ln 1, Col 1", exact: true }).waitFor();
    await textHasFocus(window);
  });

  inWindow("to an aim, in its part", async (window) => {
    const preview = await shown(window);
    await scrollTo(preview, 0);
    await goToLine(window, 3);
    await expect.poll(() => preview.locator("#aims .line").evaluate(isInSight)).toBe(true);
  });

  inWindow("and the text goes nowhere when the page is scrolled", async (window) => {
    const preview = await shown(window);
    await goToLine(window, 1);
    await wheel(window, preview, 700);
    await window.page.waitForTimeout(SETTLED);
    expect(await linesInSight(window)).toContain(1);
  });
}

function goesAfterPreview(inWindow: InWindow): void {
  inWindow("to the line of what comes first, and both rest there; the cursor stays", async (window) => {
    await set(window, { scrollEditor: true });
    const { page } = window;
    const preview = await shown(window);
    await goToLine(window, 1);
    await wheel(window, preview, 700);
    await expect.poll(() => leadsIntoSight(window, preview)).toBe(true);
    expect(await linesInSight(window)).not.toContain(1);
    const before = [await scrolled(preview), await linesInSight(window)];
    await page.waitForTimeout(SETTLED);
    expect([await scrolled(preview), await linesInSight(window)]).toEqual(before);
    await page.getByRole("button", { name: "Ln 1, Col 1", exact: true }).waitFor();
  });

  inWindow("also by keys, and the page keeps the focus", async (window) => {
    await set(window, { scrollEditor: true });
    const { page } = window;
    const preview = await shown(window);
    await goToLine(window, 1);
    await focusInPreview(window, preview.locator("#exercises .row-toggle").first());
    await page.keyboard.press("End"); // the last row
    await page.keyboard.press("PageDown");
    await expect.poll(() => leadsIntoSight(window, preview)).toBe(true);
    await previewHasFocus(window);
  });
}

function eachStays(inWindow: InWindow): void {
  inWindow("the exercise of the cursor is marked, out of sight", async (window) => {
    await set(window, { scrollWithEditor: false });
    const preview = await shown(window);
    await scrollTo(preview, 0);
    await goToLine(window, 7);
    await preview.locator(".row[aria-current]", { hasText: "C major" }).waitFor();
    await window.page.waitForTimeout(SETTLED);
    expect(await scrolled(preview)).toBe(0);
  });
}

/** In the folder's settings, by keyboard: those of the preview that are not as usual. */
async function set({ page }: Window, settings: Readonly<Record<string, boolean>>): Promise<void> {
  const said = Object.entries(settings).map(([name, value]) => [`daystave.preview.${name}`, value]);
  await openPalette(page, ".vscode/settings.json");
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: "settings.json" }).waitFor();
  await page.keyboard.press("Enter");
  await page.locator(".tab.active", { hasText: "settings.json" }).waitFor();
  await textHasFocus({ page });
  await page.keyboard.press("Control+a");
  await page.keyboard.insertText(JSON.stringify({ ...SETTINGS, ...Object.fromEntries(said) }));
  await page.keyboard.press("Control+s");
  await page.locator(".tab.active:not(.dirty)").waitFor();
  await page.locator(".tab", { hasText: "days.practice" }).click();
  await textHasFocus({ page });
}

async function shown(window: Window): Promise<FrameLocator> {
  const preview = await window.showPreview();
  await preview.locator("#exercises .row", { hasText: "C major" }).waitFor({ state: "attached" });
  return preview;
}

/** By keyboard, as the editor counts. */
async function goToLine({ page, editor }: Window, line: number): Promise<void> {
  await editor
    .locator(".view-line")
    .first()
    .click({ position: { x: 5, y: 8 } });
  await page.keyboard.press("Control+g");
  await page.locator(".quick-input-box input").fill(`:${line}`);
  await page.keyboard.press("Enter");
  await cursorAt(page, line, 1);
}

async function rowInSight(preview: FrameLocator, name: string): Promise<void> {
  await expect.poll(() => preview.locator("#exercises .row", { hasText: name }).evaluate(isInSight)).toBe(true);
}

async function wheel({ page }: Window, preview: FrameLocator, by: number): Promise<void> {
  await scrollTo(preview, 0);
  await page.waitForTimeout(SETTLED); // that was not the reader's
  const box = (await preview.locator("main").boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, 400);
  await page.mouse.wheel(0, by);
  await expect.poll(() => scrolled(preview)).toBeGreaterThan(0);
}

/** Which lines of the text are in sight, as the editor counts. */
function linesInSight({ editor }: Window): Promise<number[]> {
  return editor.locator(".line-numbers").evaluateAll((all) => {
    const { top, bottom } = document.querySelector(".editor-instance .monaco-editor")!.getBoundingClientRect();
    const seen = all.filter((each) => {
      const box = each.getBoundingClientRect();
      return box.top >= top && box.bottom <= bottom;
    });
    return seen.map((each) => Number(each.textContent)).sort((a, b) => a - b);
  });
}

/** Whether the line of what comes first in the page is in sight in the text. */
async function leadsIntoSight(window: Window, preview: FrameLocator): Promise<boolean> {
  const line = await preview.locator("main").evaluate((main) => {
    const edge = main.querySelector("nav")!.getBoundingClientRect().bottom;
    const first = [...main.querySelectorAll<HTMLElement>("[data-line]")].find(
      (each) => each.getBoundingClientRect().top >= edge && each.getBoundingClientRect().height > 0,
    );
    return Number(first!.dataset["line"]);
  });
  return (await linesInSight(window)).includes(line + 1);
}

/** Whether a row in sight in the page leads to one of the lines about the middle of the text. */
async function inTheMiddle(window: Window, preview: FrameLocator): Promise<boolean> {
  const lines = await linesInSight(window);
  const middle = lines[Math.floor(lines.length / 2)]!;
  const led = await preview.locator("#exercises .row .place").evaluateAll((all) =>
    all
      .filter((each) => {
        const { top, bottom } = each.getBoundingClientRect();
        return bottom > 0 && top < innerHeight;
      })
      .map((each) => Number((each as HTMLElement).dataset["line"]) + 1),
  );
  return led.some((line) => Math.abs(line - middle) <= 4);
}

/** In pixels from the top. */
async function scrollTo(preview: FrameLocator, top: number): Promise<void> {
  await preview.locator("html").evaluate((html, y) => html.ownerDocument.defaultView!.scrollTo(0, y), top);
}

function scrolled(preview: FrameLocator): Promise<number> {
  return preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.scrollY);
}

/** Runs in the page. */
function isInSight(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > 0 && top < window.innerHeight;
}
