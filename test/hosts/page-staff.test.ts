import { mkdirSync } from "node:fs";
import { expect, test } from "vitest";
import { pagesAlone, THEME_NAMES } from "./page-alone.ts";

// The preview's staff, in the built page.

const open = pagesAlone();

const JOURNAL = "instrument alto recorder\n2026-03-09\n  Eb major, 8ths, slur 2, at 72 clean\n";
const SHOWN = { journal: JOURNAL, cursor: 2, width: 480 };

test("unfolded, it shows the exercise; a click and the arrow keys tell each note, with its fingering", async () => {
  const { page, thrown } = await open(SHOWN);
  expect(await page.locator(".staff-drawing").count()).toBe(0);
  await page.getByRole("button", { name: "On the staff" }).click();
  await page.locator(".staff-drawing").waitFor();
  expect(await page.locator(".staff-drawing [data-note]").count()).toBe(15);
  const said = page.locator(".staff-said");
  await page.locator('[data-note="2"] .staff-head').click();
  expect(await said.textContent()).toMatch(/^Note 3 of 15: G5, third degree\. Fingering - -2- ----/);
  await page.locator(".staff-notes").press("ArrowRight");
  expect(await said.textContent()).toMatch(/^Note 4 of 15: Ab5, fourth degree\./);
  await page.locator(".staff-notes").press("End");
  expect(await said.textContent()).toMatch(/^Note 15 of 15: Eb5, first degree\./);
  expect(await page.locator(".is-chosen").count()).toBe(1);
  await page.getByRole("button", { name: "Show the fingerings" }).click();
  await page.locator(".staff-holes").first().waitFor();
  expect(thrown).toEqual([]);
});

test("it is drawn anew for another width, and never wider than its column", async () => {
  const { page } = await open({ ...SHOWN, width: 900 });
  await page.getByRole("button", { name: "On the staff" }).click();
  await page.locator(".staff-drawing").waitFor();
  const systems = () => page.locator(".staff-system").count();
  expect(await systems()).toBe(1);
  await page.setViewportSize({ width: 320, height: 900 });
  await expect.poll(systems).toBe(2);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
});

test("its signs are there in every theme, in the theme's own colour", async () => {
  const { page, wear } = await open(SHOWN);
  await page.getByRole("button", { name: "On the staff" }).click();
  await page.locator(".staff-drawing").waitFor();
  for (const theme of THEME_NAMES) {
    await wear(theme);
    const [fill, text] = await page.evaluate(() => {
      const colourOf = (selector: string, name: string) =>
        getComputedStyle(document.querySelector(selector)!).getPropertyValue(name);
      return [colourOf(".staff-head use", "fill"), colourOf("body", "color")];
    });
    expect(fill).toBe(text);
    if (process.env["PICTURES"]) {
      mkdirSync("out/staff", { recursive: true });
      await page.screenshot({ path: `out/staff/${theme.replace(", ", "-").replaceAll(" ", "-")}.png` });
    }
  }
});

test("notes that are not right are told with what belongs there, by shape and by word", async () => {
  const journal = "instrument alto recorder\n2026-03-09\n  D minor natural: D E F G A B C D, 8ths at 60\n";
  const { page, thrown } = await open({ journal, cursor: 2, width: 480 });
  await page.getByRole("button", { name: "On the staff" }).click();
  await page.locator(".staff-drawing").waitFor();
  expect(await page.locator(".staff-system").count()).toBe(2);
  const said = page.locator(".staff-said");
  await page.locator('[data-note="5"] .staff-head').click();
  expect(await said.textContent()).toMatch(/^Note 6 of 16: B5, sixth degree, written B\. Fingering/);
  await page.locator('[data-note="13"] .staff-head').click();
  expect(await said.textContent()).toMatch(/^Note 14 of 16: Bb5, sixth degree, here Bb\. Fingering/);
  if (process.env["PICTURES"]) {
    mkdirSync("out/staff", { recursive: true });
    await page.screenshot({ path: "out/staff/claim.png" });
  }
  expect(thrown).toEqual([]);
});
