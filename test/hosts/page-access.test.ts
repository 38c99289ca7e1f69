import { describe, expect, test } from "vitest";
import { inTurns } from "../support/random-runs.ts";
import { contrast, expectNoViolationIn, READABLE, SEEN } from "./accessible.ts";
import { type PageAlone, pagesAlone, THEME_NAMES, type Theme } from "./page-alone.ts";

// The built page by keys, by eye and by ear, with everything folded out: a staff with its fingerings, what can be heard,
// charts and tables. The journal is invented.

const open = pagesAlone();

const JOURNAL = `instrument alto recorder
piece "Ground in G minor" as Ground: G minor, 32 bars
aim D minor, thirds, 8ths at 80 by 2026-06-01
2026-03-02, 20 min
  D minor, thirds, slurred, 8ths at 60 clean
  Ground, bars 1-8, at 60 clean
2026-03-05
lesson
  set D minor, thirds, 3 days
  said: slower
  ask: why?
2026-03-09, 20 min
  Eb major, 8ths, slur 2, at 72 clean
`;
const CURSOR = 12;
const NOTES = 15;

async function unfolded(width: number): Promise<PageAlone> {
  const alone = await open({ journal: JOURNAL, cursor: CURSOR, width });
  const { page } = alone;
  const folded = page.locator('button[aria-expanded="false"]:not(.row-toggle):visible');
  for (let left = await folded.count(); left > 0; left = await folded.count()) await folded.first().click();
  await page.locator("#exercises .row-toggle").first().click();
  await page.getByRole("button", { name: "Show the fingerings" }).click();
  await page.locator(".staff-holes").first().waitFor();
  return alone;
}

/** Opened once for what is asked in every theme. */
const opened = new Map<number, Promise<PageAlone>>();
async function unfoldedIn(theme: Theme, width = 1000): Promise<PageAlone> {
  const alone = opened.get(width) ?? unfolded(width);
  opened.set(width, alone);
  await (await alone).wear(theme);
  return alone;
}

describe.each(THEME_NAMES)("in the theme %s", (theme) => {
  // 320 px is also a window of 640 px at 200 %.
  test.each(inTurns([1000, 320], THEME_NAMES.indexOf(theme) % 2, 2))("axe finds nothing at %i px", async (width) => {
    const { page, thrown } = await unfoldedIn(theme, width);
    await expectNoViolationIn(page.mainFrame());
    expect(thrown).toEqual([]);
  });

  test("words in charts and in fields can be read, which axe leaves to others", async () => {
    const { page } = await unfoldedIn(theme);
    const texts = await page.evaluate(coloursOfTexts);
    expect(texts.length).toBeGreaterThan(10);
    for (const { words, colour, ground } of texts)
      expect(contrast(colour, ground), words).toBeGreaterThanOrEqual(READABLE);
  });

  test("wherever Tab leads, the focus is seen and nothing cuts it off", async () => {
    const { page } = await unfoldedIn(theme);
    const rings: Ring[] = [];
    await page.locator("body").evaluate((body) => {
      body.tabIndex = -1; // from the top on
      body.focus();
    });
    for (;;) {
      await page.keyboard.press("Tab");
      const ring = await page.evaluate(ringOfFocus);
      if (!ring) break;
      rings.push(ring);
      expect(rings.length).toBeLessThan(100);
    }
    const names = rings.map(({ name }) => name);
    expect(names).toEqual(
      expect.arrayContaining(["a line to hear", "Loudness ", "On the staff", "Hide the fingerings"]),
    );
    expect(names.some((name) => name.startsWith("Notes on the staff. "))).toBe(true);
    for (const { name, width, colour, ground, isCut } of rings) {
      expect(width, name).toBeGreaterThanOrEqual(1);
      expect(contrast(colour, ground), name).toBeGreaterThanOrEqual(SEEN);
      expect(isCut, name).toBe(false);
    }
  });
});

test("the notes of a staff are a list for who hears them: arrow keys go along it, and the focus stays", async () => {
  const { page } = await unfolded(480);
  const staff = page.getByRole("listbox", { name: /^Notes on the staff\. Eb major\. Treble clef, 3 flats, / });
  const notes = staff.getByRole("option");
  expect(await notes.count()).toBe(NOTES);
  await staff.focus();
  await page.keyboard.press("End");
  await page.keyboard.press("ArrowLeft");
  const chosen = staff.getByRole("option", { selected: true });
  expect(await chosen.getAttribute("aria-label")).toMatch(/^Note 14 of 15: F5, second degree\. Fingering /);
  expect(await staff.getAttribute("aria-activedescendant")).toBe(await chosen.getAttribute("id"));
  expect(await staff.evaluate((list) => list === document.activeElement)).toBe(true);
  await page.close();
});

test("a button that draws the staff anew keeps the focus, and the same staff its note", async () => {
  const { page, show } = await unfolded(480);
  await page.getByRole("listbox").press("Home");
  await show(`${JOURNAL}  A minor, slow\n`);
  await page.getByText(/^Note 1 of 15/).waitFor();
  await page.getByRole("button", { name: "Hide the fingerings" }).press("Enter");
  await page.locator(".staff-holes").first().waitFor({ state: "detached" });
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Show the fingerings");
  await page.close();
});

test("at 320 px nothing is scrolled sideways but what keys can scroll, and that has a name", async () => {
  const { page } = await unfolded(320);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  const scrolled = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>("main *")]
      .filter((each) => each.scrollWidth > each.clientWidth && /auto|scroll/.test(getComputedStyle(each).overflowX))
      .map((each) => ({ name: each.getAttribute("aria-label"), byKeys: each.tabIndex >= 0 || each.matches("nav") })),
  );
  expect(scrolled).toContainEqual({ name: "Keys", byKeys: true });
  for (const each of scrolled) expect(each).toEqual({ name: expect.any(String), byKeys: true });
  await page.close();
});

test("nothing moves by itself, whether less motion is wanted or not", async () => {
  const { page } = await unfolded(1000);
  for (const reducedMotion of ["reduce", "no-preference"] as const) {
    await page.emulateMedia({ reducedMotion });
    expect(await page.evaluate(movingParts)).toEqual([]);
  }
  await page.addStyleTag({ content: "h1 { transition: opacity 1s; }" });
  expect(await page.evaluate(movingParts)).toEqual(["h1"]);
  await page.close();
});

test("where one is in the text is told by a bar beside the row, which covers nothing", async () => {
  for (const width of [1000, 320]) {
    const { page } = await unfolded(width);
    const row = page.locator("#exercises .row:not(.head-row)").first();
    await row.evaluate((each) => each.setAttribute("aria-current", "true"));
    const [bar, sign] = await row.evaluate((each) => {
      const left = (of: Element, part: string) => Number.parseFloat(getComputedStyle(of, part).left);
      return [left(each, "::after"), left(each.querySelector(".row-toggle")!, "::before")] as const;
    });
    // The bar is 2 px wide; the sign is a square of 5 px on its corner, so it reaches 1 px further.
    expect(bar + 2).toBeLessThanOrEqual(sign - 1);
    expect((await row.evaluate((each) => each.getBoundingClientRect().left)) + bar).toBeGreaterThanOrEqual(0);
    await page.close();
  }
});

type Colour = readonly [red: number, green: number, blue: number];

interface Ring {
  readonly name: string;
  /** In pixels. */
  readonly width: number;
  readonly colour: Colour;
  readonly ground: Colour;
  readonly isCut: boolean;
}

/** Runs in the page: the ring around what has the focus, or around its row; undefined once the focus has left. */
function ringOfFocus(): Ring | undefined {
  const focused = document.activeElement as HTMLElement;
  if (focused === document.body) return undefined;
  const rgb = (colour: string) =>
    colour
      .match(/[\d.]+/g)!
      .slice(0, 3)
      .map(Number) as unknown as Colour;
  const ringed = [focused, focused.closest<HTMLElement>(".row")].find(
    (each) => each && getComputedStyle(each).outlineStyle !== "none",
  );
  const style = getComputedStyle(ringed ?? focused);
  const width = ringed ? Number.parseFloat(style.outlineWidth) : 0;
  const reach = Number.parseFloat(style.outlineOffset) + width;
  const { left, right, top, bottom } = (ringed ?? focused).getBoundingClientRect();
  let isCut = left - reach < 0 || right + reach > document.documentElement.clientWidth;
  for (let each = (ringed ?? focused).parentElement; each && each !== document.body; each = each.parentElement) {
    const clip = each.getBoundingClientRect();
    const { overflowX, overflowY } = getComputedStyle(each);
    if (overflowX !== "visible") isCut ||= left - reach < clip.left - 0.5 || right + reach > clip.right + 0.5;
    if (overflowY !== "visible") isCut ||= top - reach < clip.top - 0.5 || bottom + reach > clip.bottom + 0.5;
  }
  const label = focused.getAttribute("aria-label") ?? (focused as HTMLInputElement).labels?.[0]?.textContent;
  return {
    name: label ?? focused.textContent!.trim(),
    width,
    colour: rgb(style.outlineColor),
    ground: rgb(getComputedStyle(document.body).backgroundColor),
    isCut,
  };
}

interface TextSeen {
  readonly words: string;
  readonly colour: Colour;
  readonly ground: Colour;
}

/** Runs in the page: the words of drawings and the placeholders of fields, with their colours as they are seen. */
function coloursOfTexts(): TextSeen[] {
  const numbers = (colour: string) => {
    const [red, green, blue, ...alpha] = colour.match(/[\d.]+/g)!.map(Number);
    const scale = colour.startsWith("color(srgb ") ? 255 : 1; // a mix of two has parts from 0 to 1
    return [red! * scale, green! * scale, blue! * scale, ...alpha];
  };
  const ground = numbers(getComputedStyle(document.body).backgroundColor).slice(0, 3) as unknown as Colour;
  const seen = (colour: string, opacity: number): Colour => {
    const [red, green, blue, alpha = 1] = numbers(colour);
    const share = alpha * opacity;
    return [red!, green!, blue!].map((part, at) => part * share + ground[at]! * (1 - share)) as unknown as Colour;
  };
  const opacityOf = (element: Element | null): number =>
    element ? Number(getComputedStyle(element).opacity) * opacityOf(element.parentElement) : 1;
  const drawn = [...document.querySelectorAll("main svg text")].filter((each) => each.textContent!.trim() !== "");
  const fields = [...document.querySelectorAll("input[placeholder]")];
  return [
    ...drawn.map((text) => {
      const { fill, fillOpacity } = getComputedStyle(text);
      return { words: text.textContent!, colour: seen(fill, Number(fillOpacity) * opacityOf(text)), ground };
    }),
    ...fields.map((field) => {
      const { color, opacity } = getComputedStyle(field, "::placeholder");
      return { words: "a placeholder", colour: seen(color, Number(opacity) * opacityOf(field)), ground };
    }),
  ];
}

/** Runs in the page: the names of elements that a style sheet moves. */
function movingParts(): string[] {
  const moving = [...document.querySelectorAll("*")].filter((each) => {
    const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(each);
    return animationName !== "none" || scrollBehavior === "smooth" || !/^(?:0s(?:, )?)+$/.test(transitionDuration);
  });
  return moving.map(({ localName }) => localName);
}
