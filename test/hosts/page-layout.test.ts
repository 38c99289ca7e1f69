import { describe, expect, test } from "vitest";
import { filesOfYear, journalOfFiles } from "../features/preview/preview-asked.ts";
import { luminance, SEEN } from "./accessible.ts";
import { type PageAlone, pagesAlone, THEME_NAMES } from "./page-alone.ts";
import { textsInTheWay } from "./page-texts.ts";

const open = pagesAlone();

const WIDTHS = [320, 400, 500, 1000, 1600] as const;
/** A wide font in a large size, as somebody's system may have it. */
const WIDE = ['"DejaVu Sans", Verdana, sans-serif', 14] as const;
const YEAR = { journal: journalOfFiles(filesOfYear()), today: "2026-11-21" } as const;

/** Long titles without and with spaces, in scripts that are wide, or go from right to left. */
const TITLES = [
  "Passacaglia über ein altes Thema mit siebenundzwanzig Veränderungen und einem langen Nachspiel",
  "Donaudampfschifffahrtsgesellschaftskapitänskajütenwandbespannungsmelodie",
  "春の海辺で吹く尺八と箏のための長い長い組曲第二番",
  "مقطوعة طويلة للناي في مقام الحجاز مع خاتمة سريعة",
  "שיר ארוך מאוד לחליל צד ולתוף בקצב משתנה",
];
const OF_TITLES = `player ${TITLES[0]}
${TITLES.map((title, at) => `piece "${title}": C major 90 bars, goal quarter=${60 + at}, due 2026-04-09`).join("\n")}
aim "${TITLES[1]}" at 120 by 2026-05-09
set "${TITLES[0]}, ${TITLES[2]}"
2026-03-02 Mon, 50 min
${TITLES.map((title, at) => `  "${title}", bars ${1 + at}-${20 + at}, at ${50 + at} clean`).join("\n")}
${TITLES.map((title) => `  "Studie ${title}", line 3, at 50 clean`).join("\n")}
  pattern "${TITLES[1]!.slice(0, 40)}": 1 3 2 4, step 2
2026-03-05 Thu, 50 min
  F# harmonic minor, thirds, double-tongued, dotted, two octaves, 16ths at 132 clean, 138 uneven
  C# major > F# major > B major > E major > A major > D major, slurred, 8ths at 60 clean
  said: ${TITLES[0]}
  ask: ${TITLES[1]}
`;

/** 300 exercises, no two alike. */
const TONICS = ["C", "G", "D", "A", "E", "B", "F", "Bb", "Eb", "Ab"];
const KINDS = ["major", "natural minor", "harmonic minor", "melodic minor", "major arpeggio", "minor arpeggio"];
const PATTERNS = ["", ", thirds", ", fourths", ", fifths", ", sixths"];
const OF_MANY = TONICS.flatMap((tonic) =>
  KINDS.flatMap((kind) => PATTERNS.map((pattern) => `${tonic} ${kind}${pattern}`)),
)
  .map((name, at) => `2026-03-0${1 + (at % 8)}\n  ${name}, slurred, 8ths at ${60 + (at % 90)} clean\n`)
  .join("");

/** The page of a year so wide, in the usual font or in a wide one, opened once: what is asked of it below changes nothing. */
const opened = new Map<string, Promise<PageAlone>>();
function yearAt(width: number, font?: typeof WIDE): Promise<PageAlone> {
  const key = `${width} ${font}`;
  const page = opened.get(key) ?? open({ ...YEAR, width, ...(font ? { font } : {}) });
  opened.set(key, page);
  return page;
}

describe("nothing lies on anything else, at any width and in any theme", () => {
  for (const [what, shown] of [
    ["a year", YEAR],
    ["a year in a wide font", { ...YEAR, font: WIDE }],
    ["long titles, wide scripts and such as go from right to left", { journal: OF_TITLES }],
    ["the same in a wide font", { journal: OF_TITLES, font: WIDE }],
    ["300 exercises", { journal: OF_MANY }],
  ] as const)
    test(what, async () => {
      const { page, wear, thrown } = await open(shown);
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        for (const theme of THEME_NAMES) {
          await wear(theme);
          expect(await textsInTheWay(page), `${width} px, ${theme}`).toEqual([]);
        }
      }
      expect(thrown).toEqual([]);
      await page.close();
    });
});

test("what does lie on something else is found", async () => {
  const { page } = await open({ ...YEAR, width: 400 });
  await page.addStyleTag({ content: ".row { height: 30px !important; min-height: 0 !important; }" });
  expect((await textsInTheWay(page)).length).toBeGreaterThan(10);
  await page.close();
});

test("the heads of the columns stand apart, in the usual font and in a wide one", async () => {
  for (const font of [undefined, WIDE])
    for (const width of WIDTHS) {
      const { page } = await yearAt(width, font);
      const apart = await page.locator("#pieces .head-row").evaluate((head) => {
        const [latest, wanted] = [...head.querySelectorAll(".row-number")].map((cell) => {
          const range = document.createRange();
          range.selectNodeContents(cell);
          return range.getBoundingClientRect();
        });
        return wanted!.left - latest!.right;
      });
      expect(apart, `at ${width} px`).toBeGreaterThanOrEqual(6);
    }
});

test("what tells one row from another is whole: its name, and how it is played", async () => {
  for (const font of [undefined, WIDE])
    for (const width of WIDTHS) {
      const { page } = await yearAt(width, font);
      const cut = await page.locator(".row-name, .row-way, .line-text").evaluateAll((all) =>
        all
          .filter((each) => each.scrollWidth > each.clientWidth + 1 || each.scrollHeight > each.clientHeight + 1)
          .filter((each) => each.clientWidth > 0)
          .map((each) => each.textContent),
      );
      expect(cut, `at ${width} px`).toEqual([]);
    }
});

test("a trend is never cut within a word: where it has no room, `in four weeks` is left out, or it wraps", async () => {
  for (const font of [undefined, WIDE])
    for (const width of WIDTHS) {
      const { page } = await yearAt(width, font);
      const trends = await page.locator("#exercises .row-trend").evaluateAll((all) =>
        all.map((trend) => {
          const [said, within] = [...trend.children] as HTMLElement[];
          const line = trend.getBoundingClientRect();
          const end = within?.getBoundingClientRect();
          const whole =
            said!.scrollWidth <= said!.clientWidth && said!.getBoundingClientRect().bottom <= line.bottom + 1;
          return { whole, within: !end || end.top >= line.bottom - 1 || end.bottom <= line.bottom + 1 };
        }),
      );
      expect(trends.length).toBeGreaterThan(10);
      for (const trend of trends) expect(trend, `at ${width} px`).toEqual({ whole: true, within: true });
    }
});

/** Runs in the page: the words on each line that a text takes. */
function linesOf(element: Element): string[] {
  const lines = new Map<number, string>();
  const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode())
    for (const { 0: word, index } of node.textContent!.matchAll(/\S+/g)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + word.length);
      const top = Math.round(range.getBoundingClientRect().top);
      lines.set(top, [lines.get(top) ?? "", word].join(" ").trim());
    }
  return [...lines.values()];
}

test("`weeks` is not alone on a line, and no aim breaks before its tempo", async () => {
  for (const width of WIDTHS) {
    const { page } = await yearAt(width);
    const lines = async (what: string) => {
      const found = await page.locator(what).all();
      return (await Promise.all(found.map((each) => each.evaluate(linesOf)))).flat();
    };
    const words = [...(await lines(".row-trend")), ...(await lines("#aims .below"))];
    expect(words.length).toBeGreaterThan(10);
    expect(words, `at ${width} px`).not.toContainEqual(expect.stringMatching(/^weeks\.?$/));
    const aims = await lines("#aims .line-text");
    expect(aims, `at ${width} px`).toContainEqual(expect.stringMatching(/8ths at 100$/));
    if (width >= 500) expect(aims, `at ${width} px`).toContainEqual("D melodic minor, thirds, slurred, 8ths at 100");
  }
});

test("on paper the dates stand in the heading, with their year and the instrument that was chosen", async () => {
  const { page } = await open({ ...YEAR, choice: { span: 12, instrument: "alto recorder" } });
  const dates = page.locator(".head .dates");
  expect(await dates.isVisible()).toBe(false);
  await page.emulateMedia({ media: "print" });
  expect(await dates.isVisible()).toBe(true);
  expect(await dates.textContent()).toBe("31 August to 21 November 2026, alto recorder");
  expect(await page.locator("nav, .choices").evaluateAll((all) => all.some((each) => each.checkVisibility()))).toBe(
    false,
  );
  await page.close();
});

test("the band of a trend is seen in the dark theme of high contrast", async () => {
  const { page } = await open({ ...YEAR, theme: "high contrast, dark" });
  const band = page.locator("#exercises .tempo-row .chart-band").first();
  const { fill, opacity, ground } = await band.evaluate((path) => {
    const { fill, fillOpacity } = getComputedStyle(path);
    return { fill, opacity: Number(fillOpacity), ground: getComputedStyle(document.body).backgroundColor };
  });
  const [blue, black] = [fill, ground].map((colour) => colour.match(/\d+/g)!.map(Number));
  const mixed = blue!.map((of255, at) => of255 * opacity + black![at]! * (1 - opacity));
  expect((luminance(mixed) + 0.05) / (luminance(black!) + 0.05)).toBeGreaterThanOrEqual(SEEN);
  await page.close();
});

test("the legend names what there is to see, and nothing else", async () => {
  const legendOf = async (journal: string, today: string) => {
    const { page } = await open({ journal, today });
    const entries = await page.locator("#exercises .legend-entry").allTextContents();
    await page.close();
    return entries;
  };
  const week = "2026-03-02\n  C major, slurred, 8ths at 60 clean\n";
  expect(await legendOf(week, "2026-03-03")).toEqual(["reached", "week’s best"]);
  const weeks =
    "2025-10-06\n  C major, slurred, 8ths at 60 clean, 66 slips\n2025-10-13\n  C major, slurred, 8ths at 60 clean\n";
  expect(await legendOf(weeks + week, "2026-03-03")).toEqual([
    "reached",
    "not reached, or not said",
    "week’s best",
    "a pause, drawn short",
  ]);
});

test("the keys end with a whole cell, and how many more there are is said, until they are scrolled to", async () => {
  const { page } = await open({ ...YEAR, width: 320 });
  const [room, hint] = [page.locator(".keys-room"), page.locator(".keys-hint")];
  const cutAt = () =>
    room.evaluate((frame) => {
      const { right } = frame.getBoundingClientRect();
      const cells = [...frame.querySelectorAll("tbody tr:first-child td")].map((cell) => cell.getBoundingClientRect());
      return cells.filter((cell) => cell.left < right - 1 && cell.right > right + 1).length;
    });
  expect(await cutAt()).toBe(0);
  await expect.poll(() => hint.textContent()).toMatch(/^\d+ more keys at the right →$/);
  await room.evaluate((frame) => frame.scrollTo(frame.scrollWidth, 0));
  await expect.poll(() => hint.textContent()).toMatch(/^← \d+ more keys at the left$/);
  expect(await cutAt()).toBe(0);
  await page.setViewportSize({ width: 1000, height: 900 });
  await expect.poll(() => hint.textContent()).toBe("");
  await page.close();
});

test("in high contrast no text is dimmer than the theme's own", async () => {
  for (const theme of ["high contrast, dark", "high contrast, light"] as const) {
    const { page } = await open({ ...YEAR, theme });
    const dim = await page.evaluate(() => {
      const [quiet, own] = [".small", "h1"].map((what) => getComputedStyle(document.querySelector(what)!).color);
      const all = [...document.querySelectorAll(".row-way, .row-trend, .row-number, .small, select, dt, .keys th")];
      return [quiet === own, all.filter((each) => getComputedStyle(each).color !== own).length];
    });
    expect(dim, theme).toEqual([true, 0]);
    await page.close();
  }
});

test("a year is no higher than 2,500 px in a panel of 500 px", async () => {
  const { page } = await open({ ...YEAR, width: 500 });
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBeLessThanOrEqual(2500);
  await page.close();
});
