import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { ROOT } from "../architecture/source.ts";
import { daystave } from "../cli/command-line.ts";
import { hasNoFault, MILLIMETRE, type PrintedPage, printedPages } from "./printed-page.ts";

// `daystave report --html` in a browser, on a screen and on paper.

const open = printedPages();

/** A sample, and what is asked of it. */
const REPORTS: readonly (readonly [sample: string, argv: readonly string[]])[] = [
  ["quickstart", ["--week", "2026-W10", "--body"]],
  ["year", ["--since", "2026-09-01", "--today", "2026-11-22"]],
];

/** The report of a sample in a window so wide, and what it asked the network for. */
async function opened([sample, argv]: (typeof REPORTS)[number], width = 1000): Promise<PrintedPage> {
  const html =
    reports.get(sample) ??
    (await daystave(["report", "--html", ...argv], { cwd: join(ROOT, "samples", sample) })).stdout;
  reports.set(sample, html);
  return open(html, width);
}

/** Those that were written: what is asked of a page changes none. */
const reports = new Map<string, string>();

describe.each(REPORTS)("the report of samples/%s", (...report) => {
  test("has no fault that axe finds, and fetches nothing", async () => {
    const shown = await opened(report);
    await hasNoFault(shown);
    await shown.page.close();
  });

  test("is a column of 170 mm on a screen, and as wide as the window where that is less", async () => {
    const wide = await opened(report);
    expect(await columnWidth(wide.page)).toBeCloseTo(170 * MILLIMETRE, 0);
    await wide.page.close();
    for (const width of [400, 320]) {
      const narrow = await opened(report, width);
      expect(await columnWidth(narrow.page)).toBeLessThan(width);
      const overhang = await narrow.page.evaluate("document.documentElement.scrollWidth - innerWidth");
      expect(overhang, `at ${width} px`).toBeLessThanOrEqual(0);
      await narrow.page.close();
    }
  });

  test("is printed on A4, in a column of 170 mm, with no row, chart or day cut", async () => {
    const { page } = await opened(report);
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString("latin1");
    const boxes = pdf.match(/\/MediaBox \[[^\]]*\]/g)!;
    expect(boxes.length).toBeGreaterThan(2);
    // A4 in points, by Chromium's rounding: 595 by 842.
    expect(
      new Set(
        boxes.map((box) =>
          box
            .match(/[\d.]+/g)!
            .map((side) => Math.round(Number(side)))
            .join(" "),
        ),
      ),
    ).toEqual(new Set(["0 0 595 842"]));
    await page.setViewportSize({ width: Math.round(170 * MILLIMETRE), height: 900 });
    await page.emulateMedia({ media: "print" });
    expect(await columnWidth(page)).toBeCloseTo(Math.round(170 * MILLIMETRE), 0);
    const kept = `[...document.querySelectorAll("tr, .chart, figure, article, .begin, pre")].every((each) => getComputedStyle(each).breakInside === "avoid")`;
    const headed = `[...document.querySelectorAll("h1, h2, h3")].every((each) => getComputedStyle(each).breakAfter === "avoid")`;
    expect(await page.evaluate(`${kept} && ${headed}`)).toBe(true);
    await page.close();
  });
});

test("a full week, and a title in one long word, fit a window of 320 px", async () => {
  const title = "Donaudampfschifffahrtsgesellschaftskapitänskajütenwandbespannungsmelodie";
  const days = [2, 3, 4, 5, 6, 7, 8].map(
    (day) =>
      `2026-03-0${day}, 120 min\ngroundwork, 60 min\n  "${title}", bars ${day}-20, at 50 clean\npieces, 60 min\n  F major, slow\n`,
  );
  const { stdout } = await daystave(["report", "--html", "--week", "2026-W10", "-"], { stdin: days.join("") });
  const { page } = await open(stdout, 320);
  expect(await page.locator("table").count()).toBeGreaterThan(1);
  expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(320);
  await page.close();
});

/** Of what is written in. */
function columnWidth(page: Page): Promise<number> {
  return page.evaluate('document.querySelector("h1").getBoundingClientRect().width');
}
