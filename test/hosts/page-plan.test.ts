import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { pagesAlone } from "./page-alone.ts";

const open = pagesAlone();

const TODAY = "2026-03-09";
const WORKED = `instrument alto recorder
piece "Ground in G minor" as Ground: G minor, 32 bars
2026-03-02, 20 min
  D minor, thirds, slurred, 8ths at 60 clean
  Ground, bars 1-8, at 60 clean
2026-03-06, 20 min
  F major, 8ths at 80 clean 5 in a row
`;
const SORE = `${WORKED}2026-03-08\n  F major, 8ths at 80 slips, sore left thumb\n`;

const field = (page: Page) => page.getByRole("spinbutton", { name: "minutes for the plan" });
const action = (page: Page, name: string) => page.locator("#today").getByRole("button", { name, exact: true });

/** Minutes and words of each line of the plan, as they are seen. */
async function lines(page: Page): Promise<readonly string[]> {
  return page.locator(".stretches .line").allInnerTexts();
}

async function minutesInAll(page: Page): Promise<number> {
  const facts = await page.locator(".stretches .fact").allInnerTexts();
  return facts.reduce((sum, text) => sum + Number.parseInt(text, 10), 0);
}

describe("the field for minutes", () => {
  test("asks for a plan of so many once it is left or Enter is pressed, and keeps them", async () => {
    const { page, show, thrown } = await open({ journal: WORKED, today: TODAY });
    expect(await field(page).inputValue()).toBe("20");
    expect(await minutesInAll(page)).toBe(20);
    await field(page).fill("45");
    expect(await minutesInAll(page)).toBe(20);
    await page.keyboard.press("Enter");
    await expect.poll(() => minutesInAll(page)).toBe(45);
    await field(page).fill("10");
    await page.keyboard.press("Tab");
    await expect.poll(() => minutesInAll(page)).toBe(10);
    await show(WORKED.replace("F major", "G major"));
    expect([await field(page).inputValue(), await minutesInAll(page)]).toEqual(["10", 10]);
    expect(thrown).toEqual([]);
    await page.close();
  });

  test("says so where these are no minutes, and then nothing is written", async () => {
    const { page, told } = await open({ journal: WORKED, today: TODAY });
    for (const wrong of ["4", "601", "7.5", ""]) {
      await field(page).fill(wrong);
      await page.keyboard.press("Enter");
      await page.locator("#today").getByText("Whole minutes, from 5 to 600.").waitFor();
      expect(await field(page).getAttribute("aria-invalid")).toBe("true");
    }
    expect(await minutesInAll(page)).toBe(20);
    await action(page, "Write it into the journal").click();
    expect(told).toEqual([]);
    await field(page).fill("30");
    await page.keyboard.press("Enter");
    await expect.poll(() => minutesInAll(page)).toBe(30);
    expect(await page.locator("#plan-wrong").textContent()).toBe("");
    await page.close();
  });

  test("what is being typed stays, whatever comes from the journal meanwhile", async () => {
    const { page, show } = await open({ journal: WORKED, today: TODAY });
    await field(page).focus();
    await page.keyboard.press("Control+a");
    await page.keyboard.type("4");
    await show(WORKED.replace("F major", "G major"));
    await page.keyboard.type("5");
    expect(await field(page).inputValue()).toBe("45");
    await page.keyboard.press("Enter");
    await expect.poll(() => minutesInAll(page)).toBe(45);
    await page.close();
  });
});

test("with the keyboard alone: minutes, reasons, and the plan is written", async () => {
  const { page, told } = await open({ journal: WORKED, today: TODAY });
  const why = action(page, "Why these lines");
  await field(page).focus();
  await page.keyboard.press("Tab");
  expect(await why.evaluate((button) => button === document.activeElement)).toBe(true);
  const folded = await lines(page);
  await page.keyboard.press("Enter");
  expect(await why.getAttribute("aria-expanded")).toBe("true");
  const unfolded = await lines(page);
  expect(unfolded.filter((line, i) => line.length > folded[i]!.length)).toHaveLength(folded.length);
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  await expect.poll(() => told.map(({ type }) => type)).toEqual(["writePlan"]);
  await page.close();
});

test("after pain the plan is behind a button; whoever presses it is where the plan begins", async () => {
  const { page } = await open({ journal: SORE, today: TODAY });
  await page.locator("#today").getByText("you noted “sore left thumb”").waitFor();
  expect(await lines(page)).toEqual([]);
  expect(await field(page).isVisible()).toBe(false);
  await action(page, "Show a plan for a short day").focus();
  await page.keyboard.press("Enter");
  await field(page).waitFor();
  await expect.poll(() => field(page).evaluate((input) => input === document.activeElement)).toBe(true);
  expect((await lines(page)).length).toBeGreaterThan(0);
  await page.close();
});

test("a plan that is in the journal is led to", async () => {
  const { page, told } = await open({ journal: `${WORKED}${TODAY}, plan\n  D minor, slow\n`, today: TODAY });
  await page
    .locator("#today")
    .getByRole("button", { name: /^Today’s plan is in the journal/ })
    .click();
  await expect.poll(() => told).toEqual([{ type: "reveal", uri: "file:///journal/week.practice", line: 8 }]);
  await page.close();
});

test("on paper there are the lines, and nothing to press or to fill in", async () => {
  const { page } = await open({ journal: WORKED, today: TODAY });
  await page.emulateMedia({ media: "print" });
  expect((await lines(page)).length).toBeGreaterThan(0);
  for (const pressed of [field(page), action(page, "Why these lines"), action(page, "Write it into the journal")])
    expect(await pressed.isVisible()).toBe(false);
  await page.close();
});

test("a word of care is put away for its day, shown again, and changes no plan", async () => {
  const { page, show } = await open({ journal: SORE, today: TODAY });
  const care = page.locator("#today .care");
  await action(page, "Put away for today").click();
  expect(await care.isVisible()).toBe(false);
  await show(`${SORE}\n`);
  expect(await care.isVisible()).toBe(false);
  expect(await action(page, "Show a plan for a short day").isVisible()).toBe(true);
  expect(await page.locator(".stretches .line").count()).toBe(0);
  await action(page, "Show what you noted of the body").click();
  expect(await care.textContent()).toContain("you noted “sore left thumb”");
});
