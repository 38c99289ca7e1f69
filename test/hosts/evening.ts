import type { Page } from "playwright-core";
import { expect } from "vitest";
import { cursorAt, linesOf, todayOf } from "./typing.ts";
import { hasStarted, type Window } from "./window.ts";
import type { InWindow } from "./workbench.ts";

/**
 * Invented: an evening in other hands than the reference's, with slips, in several languages, with words that are not
 * finished and a quote that nobody closes.
 */
const EVENING = [
  "warmup bit stiff",
  "Fmaj 2 oct slurred 8ths 72 ok 76 good 80 nope",
  "same ton",
  "d minor harm in 3rds at 60 not bad",
  "G min arp. quaver=66 clean!",
  "Bb maj",
  "Bb maj arpegio 54 messy",
  "trill b-c# 3 mins",
  "Bouree bars 1-8 at 63 ✓ 66 ✓ 69 ✗",
  "g major, thi",
  "C-Dur gebunden 8tel bei 80 sauber",
  "gamme de ré mineur, tierces, noire=66 propre",
  "toonladder van Es, langzaam",
  "thumb a bit sore after 20 min",
  "chromatic f to f 1/8 at 92 une",
  'ask Ruth about bar 12 of "Air',
  "set: Bouree by heart for thursday",
  "pieces",
  "long tone",
  "stopped at 45 min, lip gone",
];
/** Between one key and the next, in milliseconds. */
const DELAY = 40;

/** In milliseconds: so long an offer is waited for before Enter. */
const OFFER_LIMIT = 500;

/** What is typed is what stands there, whatever is offered meanwhile: Enter is a new line, always. */
export function evening(inWindow: InWindow): void {
  inWindow("an evening of twenty lines leaves exactly those lines", async (window) => {
    const { page } = window;
    await begin(window);
    for (const line of EVENING) {
      await page.keyboard.type(line, { delay: DELAY });
      await page.keyboard.press("Enter");
    }
    await isAsTyped(window);
  });

  inWindow("and again with every completion that is offered not taken", async (window) => {
    const { page } = window;
    await begin(window);
    const offers = page.locator(".suggest-widget.visible .monaco-list-row.focused");
    let [asked, offered, atEnter] = [0, 0, 0];
    for (const line of EVENING) {
      for (const word of line.match(/\S+\s*/g)!) {
        await page.keyboard.type(word.trimEnd(), { delay: DELAY });
        asked++;
        await page.keyboard.press("Control+Space");
        await page.locator(".suggest-widget.visible").waitFor();
        if (await hasOffers(page)) offered++;
        await page.keyboard.type(word.slice(word.trimEnd().length));
      }
      // On a slow machine an offer may be a moment late.
      const isOffered = offers.waitFor({ timeout: OFFER_LIMIT }).then(
        () => true,
        () => false,
      );
      if (await isOffered) atEnter++;
      await page.keyboard.press("Enter");
    }
    expect(asked).toBe(EVENING.join(" ").match(/\S+/g)!.length);
    expect(offered).toBeGreaterThan(25);
    expect(atEnter).toBeGreaterThan(3);
    await isAsTyped(window);
  });
}

/** A row to choose, and not the word that says that there is none. */
async function hasOffers(page: Page): Promise<boolean> {
  await expect
    .poll(() => page.locator(".suggest-widget.visible .monaco-list-row.focused, .suggest-widget.message").count())
    .toBeGreaterThan(0);
  return (await page.locator(".suggest-widget.visible .monaco-list-row.focused").count()) > 0;
}

async function begin(window: Window): Promise<void> {
  const { page, editor } = window;
  await hasStarted(window);
  await cursorAt(page, 12, 1); // the file opens at its end
  await page.keyboard.press("Shift+F1");
  await cursorAt(page, 14, 1);
  await editor.locator(".view-line", { hasText: await todayOf(page) }).waitFor();
}

async function isAsTyped({ page, editor }: Window): Promise<void> {
  // What indents lines below a phase is the editor's own, two spaces or four.
  const expected = [await todayOf(page), ...EVENING, ""];
  const found = async () => (await linesOf(editor)).map((line) => line.trimStart()).slice(-expected.length);
  await expect.poll(found).toEqual(expected);
  await page.locator(".monaco-editor .view-line .mtk1").first().waitFor(); // it is drawn
  // Of a way of writing nothing is underlined.
  await expect.poll(() => editor.locator(".squiggly-error, .squiggly-warning, .squiggly-info").count()).toBe(0);
}
