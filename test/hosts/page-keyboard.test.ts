import type { Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { filesOfYear, journalOfFiles } from "../features/preview/preview-asked.ts";
import { pagesAlone } from "./page-alone.ts";

const open = pagesAlone();

const YEAR = { journal: journalOfFiles(filesOfYear()), today: "2026-11-21" } as const;
const THREE = `2026-03-02 Mon, 50 min
  D minor, 8ths at 60 clean
2026-03-03
  E minor, 8ths at 60 clean
2026-03-04
  F major, 8ths at 60 clean
`;

/** What has the focus: its label, or its words; `page` where nothing has. */
function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const { activeElement: element } = document;
    return element === document.body ? "page" : (element!.getAttribute("aria-label") ?? element!.textContent!.trim());
  });
}

async function pressed(page: Page, ...keys: readonly string[]): Promise<string> {
  for (const key of keys) await page.keyboard.press(key);
  return focused(page);
}

/** So often Tab is pressed until the focus leaves the page. */
async function tabStops(page: Page): Promise<readonly string[]> {
  const stops: string[] = [];
  await page.locator("body").evaluate(() => (document.activeElement as HTMLElement).blur());
  for (let next = await pressed(page, "Tab"); next !== "page"; next = await pressed(page, "Tab")) {
    stops.push(next);
    if (stops.length > 400) throw new Error("The focus does not leave the page.");
  }
  return stops;
}

/**
 * A composite is one stop of the Tab key, and arrow keys move within it: ARIA Authoring Practices Guide, "Developing a
 * Keyboard Interface", https://www.w3.org/WAI/ARIA/apg/practices/keyboard-interface/
 */
describe("each list of rows is one stop of the Tab key", () => {
  test("the page of a year has fewer than 35, and one for its exercises", async () => {
    const { page } = await open(YEAR);
    const rows = await page.locator("#exercises .row:not(.head-row)").count();
    expect(rows).toBeGreaterThan(10);
    const stops = await tabStops(page);
    expect(stops.length).toBeLessThan(35);
    const names = await page.locator("#exercises .row-toggle").allTextContents();
    expect(stops.filter((stop) => names.includes(stop))).toEqual([names[0]]);
    await page.close();
  });

  test("Up and Down go from row to row, Home and End to the first and the last; Left and Right along one", async () => {
    const { page } = await open({ journal: THREE });
    await page.locator(".row-toggle").first().focus();
    const [f, e, d] = ["F major", "E natural minor", "D natural minor"].map((name) => new RegExp(`^${name} tongued`));
    expect(await focused(page)).toMatch(f!);
    expect(await pressed(page, "ArrowUp")).toMatch(f!);
    expect(await pressed(page, "ArrowDown")).toMatch(e!);
    expect(await pressed(page, "End")).toMatch(d!);
    expect(await pressed(page, "ArrowDown")).toMatch(d!);
    expect(await pressed(page, "ArrowUp", "ArrowRight")).toMatch(/^E natural minor, .*: go to its line$/);
    expect(await pressed(page, "ArrowDown")).toMatch(/^D natural minor, .*: go to its line$/);
    expect(await pressed(page, "ArrowLeft")).toMatch(d!);
    expect(await pressed(page, "Home")).toMatch(f!);
    await page.close();
  });

  test("Tab leaves the rows and comes back to the one that one was on", async () => {
    const { page } = await open({ journal: THREE });
    await page.locator(".row-toggle").first().focus();
    const second = await pressed(page, "ArrowDown");
    expect(await pressed(page, "Tab")).not.toMatch(/natural minor tongued|go to its line$/);
    expect(await pressed(page, "Shift+Tab")).toBe(second);
    await page.close();
  });

  test("Enter unfolds the row, whose own table is the next stop", async () => {
    const { page } = await open({ journal: THREE });
    await page.locator(".row-toggle").first().focus();
    await pressed(page, "ArrowDown", "Enter");
    await page.locator(".opened table").waitFor();
    expect(await page.locator(".row.is-open .row-name").textContent()).toBe("E natural minor");
    expect(await pressed(page, "Tab")).toBe("2 Mar: go to its line");
    expect(await pressed(page, "Tab")).toBe("Go to the last line: E natural minor");
    await page.locator(".row-toggle").nth(1).focus();
    await pressed(page, "Space");
    await page.locator(".opened").waitFor({ state: "detached" });
    await page.close();
  });

  test("in the table of keys Up and Down stay in the column as near as there is a key", async () => {
    const { page } = await open(YEAR);
    await page.locator("table.keys button").first().focus();
    const major = await pressed(page, "ArrowRight", "ArrowRight");
    expect(major).toMatch(/^F major/);
    expect(await pressed(page, "ArrowDown")).toMatch(/^D natural minor/);
    expect(await pressed(page, "ArrowUp")).toBe(major);
    await page.close();
  });

  test("the names that are read out, and their order, are those of the rows", async () => {
    const { page } = await open({ journal: THREE });
    const table = page.getByRole("table", { name: "Exercises" });
    const cells = table.getByRole("row").nth(1).getByRole("cell");
    expect((await cells.allTextContents()).map((text) => text.trim())).toEqual([
      "F major tongued, one octave, 8thstoo early to say",
      expect.anything(),
      "60",
      "60",
      "Wed 4 Mar",
    ]);
    const buttons = await table.getByRole("button").all();
    expect(buttons).toHaveLength(6);
    await page.close();
  });
});

describe("when the page is drawn anew", () => {
  test("the focus stays on its row, which has moved", async () => {
    const { page, show } = await open({ journal: THREE });
    await page.locator(".row-toggle").first().focus();
    expect(await pressed(page, "End")).toMatch(/^D natural minor/);
    await show(`${THREE}2026-03-05\n  D minor, 8ths at 63 clean\n`);
    expect(await page.locator(".row-name").first().textContent()).toBe("D natural minor");
    expect(await focused(page)).toMatch(/^D natural minor/);
    expect(await pressed(page, "ArrowDown")).toMatch(/^F major/);
    await page.close();
  });

  test("there is one stop still, also where its row is gone", async () => {
    const { page, show } = await open({ journal: THREE });
    await page.locator(".row-toggle").first().focus();
    await pressed(page, "End");
    await show(THREE.replace("  D minor, 8ths at 60 clean\n", ""));
    await page.locator(".row-name", { hasText: "D natural minor" }).waitFor({ state: "detached" });
    expect(await page.locator("#exercises .rows button").evaluateAll(indices)).toEqual([-1, -1, 0, -1]);
    await page.close();
  });
});

/** Runs in the page. */
function indices(buttons: readonly Element[]): number[] {
  return buttons.map((button) => (button as HTMLElement).tabIndex);
}
