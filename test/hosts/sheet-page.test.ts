import { describe, expect, test } from "vitest";
import { run } from "../../server/cli/program.ts";
import * as drawer from "../../server/notation/drawing/draw-staff.ts";
import { recordingIo } from "../cli/command-line.ts";
import { hasNoFault, MILLIMETRE, type PrintedPage, printedPages } from "./printed-page.ts";

// `daystave sheet` in a browser, on a screen and on paper.

const open = printedPages();

const SHEETS: readonly (readonly string[])[] = [
  ["--week", "2026-W10", "--fingerings"],
  ["--date", "2026-03-14", "--minutes", "60"],
];

/** The sheet of a sample in a window so wide, and what it asked the network for. */
async function opened(argv: readonly string[], width = 1000): Promise<PrintedPage> {
  const html = sheets.get(argv.join(" ")) ?? (await sheetOf(argv));
  sheets.set(argv.join(" "), html);
  return open(html, width);
}

/** Those that were written: what is asked of a page changes none. */
const sheets = new Map<string, string>();

async function sheetOf(argv: readonly string[]): Promise<string> {
  const io = recordingIo({ cwd: "samples/quickstart" });
  expect(await run(["sheet", ...argv], { ...io, staves: () => drawer })).toBe(0);
  return io.written.stdout;
}

describe.each(SHEETS)("the sheet of samples/quickstart with %s %s", (...argv) => {
  test("has no fault that axe finds, and fetches nothing", async () => {
    const shown = await opened(argv);
    await hasNoFault(shown);
    await shown.page.close();
  });

  test("fits any window: nothing hangs out of it, and staves shrink with it", async () => {
    for (const width of [1000, 400]) {
      const { page } = await opened(argv, width);
      expect(await page.evaluate("document.documentElement.scrollWidth - innerWidth")).toBeLessThanOrEqual(0);
      await page.close();
    }
  });

  // ISO 216: A4 is 210 mm by 297; ANSI/ASME Y14.1: Letter is 8.5 in by 11. In points, 72 an inch.
  test.each([
    ["A4", 595.3, 841.9],
    ["Letter", 612, 792],
  ] as const)(
    "is printed on %s, with no exercise cut and no staff wider than the paper",
    async (format, wide, high) => {
      const { page } = await opened(argv);
      const pdf = (await page.pdf({ format })).toString("latin1");
      const boxes = pdf.match(/\/MediaBox \[[^\]]*\]/g)!;
      expect(boxes.length).toBeGreaterThan(0);
      for (const box of boxes) {
        const [, , width, height] = box.match(/[\d.]+/g)!.map(Number);
        expect(Math.abs(width! - wide)).toBeLessThan(1);
        expect(Math.abs(height! - high)).toBeLessThan(1);
      }
      await page.emulateMedia({ media: "print" });
      await page.setViewportSize({ width: Math.floor((wide / 72) * 96 - 40 * MILLIMETRE), height: 900 });
      const overhang = `Math.max(...[...document.querySelectorAll("svg")].map((svg) => svg.getBoundingClientRect().right)) - innerWidth`;
      expect(await page.evaluate(overhang)).toBeLessThanOrEqual(0);
      const kept = `[...document.querySelectorAll("article")].every((each) => getComputedStyle(each).breakInside === "avoid")`;
      expect(await page.evaluate(kept)).toBe(true);
      await page.close();
    },
  );

  test("has room for a pencil below each exercise, and words for each staff", async () => {
    const { page } = await opened(argv);
    const counts = `({ items: document.querySelectorAll("article").length, rooms: [...document.querySelectorAll(".pencil")].filter((each) => each.getBoundingClientRect().height > 30).length })`;
    const { items, rooms } = (await page.evaluate(counts)) as { items: number; rooms: number };
    expect(items).toBeGreaterThan(0);
    expect(rooms).toBe(items);
    for (const image of await page.getByRole("img").all())
      expect(await image.getAttribute("aria-describedby")).toBeTruthy();
    expect(await page.getByRole("img").count()).toBeGreaterThan(0);
    await page.close();
  });
});
