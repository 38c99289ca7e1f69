import { readFileSync } from "node:fs";
import type { Locator } from "playwright-core";
import { expect } from "vitest";
import { describeWorkbench, type InWindow } from "./workbench.ts";

const SAMPLE = "test/hosts/journals/hostile-faults";
const FAULTY = { sample: SAMPLE, open: "week.practice" };
const NAME = "a journal whose mistakes and titles hold markup";

/** What stands in quotes in the journal, and what the messages quote of it. */
const TITLES = [...readFileSync(`${SAMPLE}/week.practice`, "utf8").matchAll(/"([^"]+)"/g)].map(([, title]) => title!);
const QUOTED = ["<img src=x onerror=alert(1)", "$(trash) [x](command"]; // up to what begins another part of a line

describeWorkbench(NAME, FAULTY, asTyped);

function asTyped(inWindow: InWindow): void {
  inWindow("is shown as typed in the problem list and in the outline", async ({ page, editor }) => {
    await editor.locator(".squiggly-error").first().waitFor();
    await page.keyboard.press("Control+Shift+M");
    const problems = page.locator(".markers-panel");
    for (const words of QUOTED) await problems.getByText(`"${words}" is not known here`).first().waitFor();
    await expectText(problems);
    await page.keyboard.press("Control+Shift+M");

    await editor.locator(".view-line").first().click();
    await page.keyboard.press("Control+Shift+O");
    const outline = page.locator(".quick-input-list");
    await outline.getByText("2026-03-02 Mon").first().waitFor();
    const offered = await namesIn(outline);
    for (const title of TITLES) expect(offered.join("\n")).toContain(title);
    await expectText(outline);
    await page.keyboard.press("Escape");
    expect(await page.title()).not.toBe("ran");
  });
}

/** Nothing of the journal became an element, a symbol or a link. */
async function expectText(list: Locator): Promise<void> {
  expect(await list.locator("img, b, strong, em, code, script, .codicon-trash, a[href^='command:']").count()).toBe(0);
}

async function namesIn(list: Locator): Promise<string[]> {
  const names = await list.locator(".label-name").allTextContents();
  // As it is seen: a space that does not break a line is one, and a word joiner (U+2060) is nothing.
  return names.map((name) => name.replaceAll("\u00A0", " ").replaceAll("\u2060", ""));
}
