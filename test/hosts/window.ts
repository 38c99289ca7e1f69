import type { FrameLocator, Locator, Page } from "playwright-core";
import { expect, vi } from "vitest";
import type { DoChore } from "./chores.ts";

/** The preview sits two frames deep; `ready` and `active-frame` say that its content has been swapped in. */
const PREVIEW = 'iframe.webview.ready[src*="extensionId=daystave-dev.daystave"]';
/** Milliseconds. */
export const START_LIMIT = 60_000;

/** What every window of the tests is set to, so that one test leaves nothing to the next. */
export const SETTINGS = {
  "files.autoSave": "off", // what is not saved can be reverted
  "workbench.commandPalette.history": 0, // the commands run before would come first
  "[practice-journal]": { "editor.wordWrap": "off" }, // a line in sight is a line of the text
  "workbench.reduceMotion": "on", // what moves is waited for, and the walkthrough takes the focus when it has moved
};

/** One window of a real editor, with a journal open. */
export interface Window {
  readonly page: Page;
  /** The first text editor. */
  readonly editor: Locator;
  /** Puts the cursor at the end of the first visible line that holds these words. */
  goToEndOf(words: string): Promise<void>;
  /** Shows, by keyboard, the hover of the first word of the first visible line that holds these words. */
  hoverOnStartOf(words: string): Promise<Locator>;
  runCommand(title: string): Promise<void>;
  showPreview(): Promise<FrameLocator>;
  preview(): FrameLocator;
}

/** The preview in sight that has this name at its head. */
export async function previewNamed(page: Page, name: string): Promise<FrameLocator> {
  let found: FrameLocator | undefined;
  const look = async () => {
    found = undefined;
    for (let at = 0; at < (await page.locator(PREVIEW).count()); at++) {
      const preview = page.frameLocator(PREVIEW).nth(at).frameLocator("#active-frame");
      if (await preview.getByRole("heading", { level: 1, name, exact: true }).isVisible()) found = preview;
    }
    return found !== undefined;
  };
  await expect.poll(look, { timeout: START_LIMIT, message: `no preview of ${name}` }).toBe(true);
  return found!;
}

/** From the next load on the window starts from another page than the one that is served at this address. */
export async function withPage(page: Page, url: string, change: (text: string) => string): Promise<void> {
  await page.route(url, async (route) => {
    const answer = await route.fetch();
    const before = await answer.text();
    const body = change(before);
    if (body === before) throw new Error("The served page has changed: nothing of it was replaced.");
    await route.fulfill({ response: answer, body });
  });
}

/** The page that we serve opens its editors afresh on every visit; here it is to remember them. */
export async function reloadServed(page: Page): Promise<void> {
  await withPage(page, page.url(), (text) => text.replace("force: true", "force: false"));
  await page.reload();
}

/** Waits until the text shows that the window opens with. */
export async function hasStarted({ editor }: Window): Promise<void> {
  await editor.locator(".view-line").first().waitFor({ timeout: START_LIMIT });
}

/** Waits until a key would reach the text: what gives it the focus may do so a moment after it has moved the cursor. */
export async function textHasFocus({ page }: Pick<Window, "page">, timeout = START_LIMIT): Promise<void> {
  const focused = page.locator(".editor-group-container.active .editor-instance .monaco-editor.focused");
  await focused.waitFor({ timeout });
}

/** Likewise for the preview, within so many milliseconds. */
export async function previewHasFocus({ page }: Window, timeout = START_LIMIT): Promise<void> {
  await page.locator(".editor-group-container.active .tab.active", { hasText: "Practice: " }).waitFor({ timeout });
}

/**
 * Puts the focus there, by which the preview becomes the part of the window that keys reach. Again, where a drawing anew of the
 * row has taken it away in that moment.
 */
export async function focusInPreview(window: Window, target: Locator): Promise<void> {
  await untilDone(async () => {
    await target.evaluate((element) => (element as HTMLElement).blur());
    await target.focus({ timeout: 3_000 });
    await previewHasFocus(window, 3_000);
    expect(await target.evaluate((element) => element === element.ownerDocument.activeElement)).toBe(true);
  });
}

/** Closes whatever is open and saves nothing. */
export async function revert({ page }: Window, doChore: DoChore): Promise<void> {
  await page.keyboard.press("Escape"); // a hover, a menu, a list
  const tabs = page.locator(".tab");
  await untilDone(async () => {
    for (let left = await tabs.count(); left > 0; left--) {
      await doChore(page, "close");
      await expect.poll(() => tabs.count(), { interval: 20, timeout: 3_000 }).toBeLessThan(left);
    }
  });
  if ((await page.locator(".notification-toast").count()) > 0) await doChore(page, "clear");
}

/** Opens the window's own files, or shows them again, until they are there: the cursor at the top, if that is where it is to be. */
export async function openOwn({ page, editor }: Window, doChore: DoChore, asOpened: boolean): Promise<void> {
  await untilDone(async () => {
    await doChore(page, "open");
    await editor.locator(".view-line").first().waitFor({ timeout: 3_000 });
    if (asOpened) return;
    await page.getByRole("button", { name: /^Ln [12], Col [12]$/ }).waitFor({ timeout: 3_000 });
    // The extension, slow to start, may show its place at this very moment.
    await editor.locator(".line-numbers").getByText("1", { exact: true }).waitFor({ timeout: 3_000 });
  });
}

/** Opens the line at the top of the window, which finds commands behind `>` and files without, and writes these words there. */
export async function openPalette(page: Page, words: string): Promise<void> {
  await untilDone(async () => {
    await page.keyboard.press("F1");
    await page.locator(".quick-input-box input").fill(words, { timeout: 1_000 });
  });
}

/**
 * Does something again and again, as a person would, until it can be done. A key is lost when what had the focus has just
 * gone; and the palette closes when another part of the window, a preview that has just been drawn, takes the focus.
 */
export function untilDone(attempt: () => Promise<void>): Promise<void> {
  return vi.waitFor(attempt, { timeout: START_LIMIT });
}

/** By keyboard; the window keeps it. */
export async function chooseTheme({ page, runCommand }: Window, name: string): Promise<void> {
  await runCommand("Preferences: Color Theme");
  await page.locator(".quick-input-box input").fill(name);
  await page.locator(".quick-input-list .monaco-list-row.focused", { hasText: name }).waitFor();
  await page.keyboard.press("Enter");
}

export function windowOf(page: Page): Window {
  const editor = page.locator(".editor-instance .monaco-editor").first();
  const preview = () => page.frameLocator(PREVIEW).frameLocator("#active-frame");
  async function runCommand(title: string): Promise<void> {
    const row = page.locator(".quick-input-list .monaco-list-row", { hasText: title }).first();
    await untilDone(async () => {
      await openPalette(page, `>${title}`);
      await row.click({ timeout: 3_000 });
    });
  }
  /** The editor's number, from 1, of the first visible line that holds these words. */
  async function lineOf(words: string): Promise<number> {
    let number: number | undefined;
    await expect
      .poll(async () => (number = await editor.evaluate(numberOfLine, words)), { timeout: START_LIMIT })
      .toBeDefined();
    return number!;
  }
  async function goToEndOf(words: string): Promise<void> {
    // At its start: the middle of a line may lie outside the window, and scrolling there from outside upsets the editor.
    const lines = editor.locator(".view-line", { hasText: words });
    await lines.first().waitFor();
    // Where the text was scrolled, they stand in another order in the page than in sight.
    const tops = await lines.evaluateAll((all) =>
      all.map((line) => Number.parseFloat((line as HTMLElement).style.top)),
    );
    await lines.nth(tops.indexOf(Math.min(...tops))).click({ position: { x: 5, y: 8 } });
    await page.getByRole("button", { name: `Ln ${await lineOf(words)}, Col` }).waitFor();
    await page.keyboard.press("End");
  }
  return {
    page,
    editor,
    preview,
    runCommand,
    goToEndOf,
    async hoverOnStartOf(words) {
      await goToEndOf(words);
      await page.keyboard.press("Home");
      const hover = page.locator(".monaco-hover:visible", { has: page.locator(".hover-row") }).first();
      // While a preview beside it is still being laid out the editor may close a hover again: asked again, as a person would.
      for (let asked = 0; asked < 4 && !(await hover.isVisible()); asked++) {
        await page.keyboard.press("Control+k");
        await page.keyboard.press("Control+i");
        await hover.waitFor({ timeout: 4_000 }).catch(() => undefined);
      }
      await hover.waitFor();
      return hover;
    },
    async showPreview() {
      await runCommand("Daystave: Show Preview");
      await preview().getByRole("heading", { level: 1 }).waitFor();
      return preview();
    },
  };
}

/** Runs in the page, all at once: the editor draws its lines and their numbers anew whenever something changes beside them. */
function numberOfLine(editor: Element, words: string): number | undefined {
  const lines = [...editor.querySelectorAll(".view-line")].map((each) => ({
    top: each.getBoundingClientRect().top,
    text: (each.textContent ?? "").replaceAll("\u00A0", " "),
  }));
  const top = Math.min(...lines.filter(({ text }) => text.includes(words)).map((line) => line.top));
  const number = [...editor.querySelectorAll(".line-numbers")].find(
    (each) => Math.abs(each.getBoundingClientRect().top - top) < 2,
  );
  return number ? Number(number.textContent) : undefined;
}
