import { describe, expect, test } from "vitest";
import { pagesAlone } from "./page-alone.ts";

// What is heard beside the line of the cursor, by keys and mouse alone. The sounds themselves are measured in
// sounding.test.ts; here, what the page says and offers. The journals are invented.

const open = pagesAlone();
const JOURNAL = `instrument alto recorder

2026-03-08
  D minor, thirds, slurred, 8ths at 60 clean
2026-03-09
  D minor, thirds, slurred, 8ths at 200, 208
`;
const CURSOR = 5;

test("on a day of rest nothing is offered to hear, or on the staff", async () => {
  const offered = async (day: string) => {
    const { page } = await open({ journal: `${JOURNAL}${day}\n`, today: "2026-03-10" });
    const shown = await page.locator("#hear, #staff").count();
    await page.close();
    return shown;
  };
  expect(await offered("2026-03-10, rest")).toBe(0);
  expect(await offered("2026-03-10")).toBe(2);
});

async function shown(journal = JOURNAL, cursor = CURSOR) {
  const alone = await open({ journal, cursor });
  await alone.page.getByRole("button", { name: "To hear", exact: true }).press("Enter");
  return alone;
}

test("lines that fit the line of the cursor, and nothing sounds unasked", async () => {
  const { page, told } = await shown();
  const lines = page.getByRole("region", { name: "To hear" }).getByRole("button", { name: /^Hear: / });
  expect(await lines.allTextContents()).toEqual([
    "click at 200, 208",
    "play through at 200",
    "drone on D",
    "compare F against D",
  ]);
  expect(await page.getByRole("button", { name: "Stop" }).isVisible()).toBe(false);
  expect(told).toEqual([]);
});

test("one tempo after the other, each until the player goes on; then it is written by a key", async () => {
  const { page, told } = await shown();
  const field = page.getByRole("textbox", { name: "a line to hear" });
  await field.fill("play notes"); // cannot be heard
  await field.press("Enter");
  await page.getByRole("status").filter({ hasText: "Nothing here is heard of" }).waitFor();
  await field.fill("play through at 400, 200");
  await field.press("Enter");
  await page.getByRole("status").filter({ hasText: "Sounding at 400." }).waitFor();
  await page.getByRole("status").filter({ hasText: "That was at 400." }).waitFor();
  await page.keyboard.press("Enter"); // the key that goes on has the focus
  await page.getByRole("status").filter({ hasText: "Sounding at 200." }).waitFor();
  await page.getByRole("button", { name: "Write 200 into today’s line" }).waitFor();
  await page.keyboard.press("Enter");
  expect(told).toEqual([{ type: "writeTempo", uri: "file:///journal/week.practice", line: CURSOR, bpm: 200 }]);
});

test("it stops at once, and a day on which something hurts is silent", async () => {
  const { page, show } = await shown();
  await page.getByRole("button", { name: "Hear: drone on D" }).press("Enter");
  await page.getByRole("status").filter({ hasText: "Sounding drone." }).waitFor();
  await page.getByRole("button", { name: "Stop" }).press("Enter");
  expect(await page.getByRole("button", { name: "Stop" }).isVisible()).toBe(false);

  await page.getByRole("button", { name: "Hear: drone on D" }).press("Enter");
  await page.getByRole("status").filter({ hasText: "Sounding drone." }).waitFor();
  await show(`${JOURNAL}  wrist hurts\n`);
  await page.getByRole("status").filter({ hasText: "Nothing sounds today" }).waitFor();
  expect(await page.getByRole("button", { name: /^Hear: / }).count()).toBe(0);
});

describe("loudness", () => {
  test("begins low, and ears are named", async () => {
    const { page } = await shown();
    expect(Number(await page.getByRole("slider", { name: "Loudness" }).inputValue())).toBeLessThanOrEqual(30);
    await page.getByText("Start quietly: loud sound harms the ears, in headphones above all.").waitFor();
  });
});
