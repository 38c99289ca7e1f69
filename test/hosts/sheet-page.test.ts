import axe from "axe-core";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { run } from "../../server/cli/program.ts";
import * as drawer from "../../server/notation/drawing/draw-staff.ts";
import { recordingIo } from "../cli/command-line.ts";

// `daystave sheet` in a browser, on a screen and on paper.

let browser: Browser | undefined;
beforeAll(async () => {
  const executablePath = findChromium();
  if (!executablePath && process.env.CI) throw new Error("The tests of the sheet need a Chromium.");
  if (executablePath) browser = await chromium.launch({ executablePath, args: [...launchArguments] });
});
beforeEach(({ skip }) => skip(!browser, "no Chromium"));
afterAll(() => browser?.close());

const SHEETS: readonly (readonly string[])[] = [
  ["--week", "2026-W10", "--fingerings"],
  ["--date", "2026-03-14", "--minutes", "60"],
];

/** The sheet of a sample in a window so wide, and what it asked the network for. */
async function opened(
  argv: readonly string[],
  width = 1000,
): Promise<{ readonly page: Page; readonly requests: readonly string[] }> {
  const io = recordingIo({ cwd: "samples/quickstart" });
  expect(await run(["sheet", ...argv], { ...io, staves: () => drawer })).toBe(0);
  const page = await browser!.newPage({ viewport: { width, height: 900 } });
  const requests: string[] = [];
  page.on("request", (request) => requests.push(request.url()));
  await page.setContent(io.written.stdout);
  return { page, requests };
}

/** In pixels of CSS. */
const MILLIMETRE = 96 / 25.4;

describe.each(SHEETS)("the sheet of samples/quickstart with %s %s", (...argv) => {
  // Rules: WCAG 2.1 levels A and AA, as axe-core checks them.
  test("has no fault that axe finds, and fetches nothing", async () => {
    const { page, requests } = await opened(argv);
    await page.evaluate(axe.source); // by the browser's debugger, which no policy holds back
    const { violations, passes } = (await page.evaluate("axe.run()")) as axe.AxeResults;
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
    expect(passes.length).toBeGreaterThan(10);
    expect(requests).toEqual([]);
    await page.close();
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
