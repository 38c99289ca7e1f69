import { expect, test } from "vitest";
import { pupils } from "../../../server/features/pupils/pupils.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { browserOfFile, fill } from "../../hosts/page-alone.ts";
import { textsInTheWay } from "../../hosts/page-texts.ts";
import { englishLeft } from "../english-left.ts";
import { textsOfPage } from "./reading.ts";
import { sample } from "./sample-pages.ts";

// The built page of pupils in German, filled by the core in German.

const browser = browserOfFile();
const SAMPLES = ["ingrid", "sefa", "tobin"].map((name) => sample(`pupils/${name}`));
const WRITTEN = SAMPLES.map(({ written }) => written).join("\n");

async function pupilsOn(date: string) {
  const page = await browser().newPage({ viewport: { width: 1000, height: 900 } });
  const shown = pupils(
    SAMPLES.map(({ journal }) => journal),
    () => parseIsoDate(date)!,
  );
  const answerOf = ({ type }: { readonly type: string }) =>
    type === "ready" ? { type: "pupils", shown: { version: 1, pupils: shown } } : undefined;
  await fill(page, { name: "pupils", language: "de", answerOf });
  return page;
}

test("a row for each, in German", async () => {
  const page = await pupilsOn("2026-10-10");
  await page.getByRole("heading", { level: 1, name: "Schülerinnen und Schüler" }).waitFor();
  const row = page.getByRole("region", { name: "Ingrid Maas" });
  expect(await row.locator(".pupil-head p").allTextContents()).toEqual([
    "zuletzt So 8. März 2026",
    "seit dem Unterricht am Do 5. März 2026",
  ]);
  expect(await row.locator("dt").allTextContents()).toEqual(["aufgegeben", "fragen", "Körper"]);
  await page.close();
});

test.each(["2026-03-09", "2026-10-10"])("no English is left on %s but what the journals say", async (date) => {
  const page = await pupilsOn(date);
  const texts = await textsOfPage(page);
  expect(texts.length).toBeGreaterThan(20);
  expect(texts.filter((text) => !WRITTEN.includes(text) && englishLeft(text, WRITTEN).length > 0)).toEqual([]);
  await page.close();
});

test("German words have room at any width", async () => {
  const page = await pupilsOn("2026-10-10");
  for (const width of [320, 500, 1000]) {
    await page.setViewportSize({ width, height: 900 });
    expect(await textsInTheWay(page), `${width} px`).toEqual([]);
    const [scroll, apart] = await page.evaluate(() => {
      const label = document.querySelector("dt")!;
      const range = document.createRange();
      range.selectNodeContents(label);
      const text = label.nextElementSibling!.getBoundingClientRect().left - range.getBoundingClientRect().right;
      return [document.documentElement.scrollWidth, text] as const;
    });
    expect(scroll).toBeLessThanOrEqual(width);
    expect(apart, `${width} px`).toBeGreaterThanOrEqual(4);
  }
  await page.close();
});
