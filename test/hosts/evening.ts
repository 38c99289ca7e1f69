import type { Page } from "playwright-core";
import { expect } from "vitest";
import { cursorAt, linesOf, todayOf } from "./typing.ts";
import { hasStarted, untilDone, type Window } from "./window.ts";
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
/** Of these, such as leave an offer open at their end, speak other languages, or are not finished. */
const OFFERED = EVENING.filter((line) =>
  /^(?:Fmaj|Bb maj$|g major, thi|C-Dur|gamme|chromatic|ask Ruth|long tone)/.test(line),
);
/** Where another server reads along, some of each kind. */
const IN_NODE = EVENING.filter((line) => /^(?:Fmaj|g major, thi|C-Dur|ask Ruth)/.test(line));
/** Between one key and the next, in milliseconds: faster than a person, so that a key may meet whatever is not done yet. */
const DELAY = 12;

/** In milliseconds: so long an offer is waited for before Enter. */
const OFFER_LIMIT = 500;

/** What is typed is what stands there, whatever is offered meanwhile: Enter is a new line, always. */
export function evening(inWindow: InWindow): void {
  inWindow("an evening of twenty lines leaves exactly those lines", async (window) => {
    await hasStarted(window);
    await cursorAt(window.page, 12, 1); // the file opens at its end
    await typed(window, 14, EVENING);
  });

  inWindow("and eight of them with every completion that is offered not taken", async (window) => {
    const { page } = window;
    await hasStarted(window);
    await cursorAt(page, 12, 1);
    await begin(window, 14);
    const offers = page.locator(".suggest-widget.visible .monaco-list-row.focused");
    let [asked, offered, atEnter] = [0, 0, 0];
    for (const line of OFFERED) {
      for (const word of line.match(/\S+\s*/g)!) {
        await page.keyboard.type(word.trimEnd(), { delay: DELAY });
        asked++;
        let isOffer = false;
        // Pressed while an earlier offer is about to go, the key is lost with that.
        await untilDone(async () => {
          await page.keyboard.press("Control+Space");
          await page.locator(".suggest-widget.visible").waitFor({ timeout: 3_000 });
          isOffer = await hasOffers(page);
        });
        if (isOffer) offered++;
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
    expect(OFFERED).toHaveLength(8);
    expect(asked).toBe(OFFERED.join(" ").match(/\S+/g)!.length);
    expect(offered).toBeGreaterThan(15);
    expect(atEnter).toBeGreaterThan(3);
    await isAsTyped(window, OFFERED);
  });
}

/** Below the journal of March, of which one line is underlined. */
export function eveningInNode(inWindow: InWindow): void {
  inWindow("what is typed is what stands there", async (window) => {
    const { page, editor } = window;
    await editor.locator(".squiggly-warning").first().waitFor();
    await page.keyboard.press("Control+End");
    await typed(window, 11, IN_NODE, 1);
  });
}

async function typed(window: Window, firstLine: number, lines: readonly string[], underlined = 0): Promise<void> {
  await begin(window, firstLine);
  for (const line of lines) {
    await window.page.keyboard.type(line, { delay: DELAY });
    await window.page.keyboard.press("Enter");
  }
  await isAsTyped(window, lines, underlined);
}

/** A row to choose, and not the word that says that there is none. */
async function hasOffers(page: Page): Promise<boolean> {
  await expect
    .poll(() => page.locator(".suggest-widget.visible .monaco-list-row.focused, .suggest-widget.message").count(), {
      timeout: 3_000,
    })
    .toBeGreaterThan(0);
  return (await page.locator(".suggest-widget.visible .monaco-list-row.focused").count()) > 0;
}

/** Begins today, of which this is the first line to write on. */
async function begin({ page, editor }: Window, line: number): Promise<void> {
  await page.keyboard.press("Shift+F1");
  await cursorAt(page, line, 1);
  await editor.locator(".view-line", { hasText: await todayOf(page) }).waitFor();
}

async function isAsTyped({ page, editor }: Window, lines: readonly string[], underlined = 0): Promise<void> {
  // What indents lines below a phase is the editor's own, two spaces or four.
  const expected = [await todayOf(page), ...lines, ""];
  const found = async () => (await linesOf(editor)).map((line) => line.trimStart()).slice(-expected.length);
  await expect.poll(found).toEqual(expected);
  await page.locator(".monaco-editor .view-line .mtk1").first().waitFor(); // it is drawn
  // Of a way of writing nothing is underlined.
  const marks = editor.locator(".squiggly-error, .squiggly-warning, .squiggly-info");
  await expect.poll(() => marks.count()).toBe(underlined);
}
