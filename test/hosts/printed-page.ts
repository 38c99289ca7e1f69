import axe from "axe-core";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, expect } from "vitest";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";

/** In pixels of CSS. */
export const MILLIMETRE = 96 / 25.4;

/** A page of HTML in a window, and what it asked the network for. */
export interface PrintedPage {
  readonly page: Page;
  readonly requests: readonly string[];
}

/** A browser for a file's tests of pages by themselves: opens HTML in a window so wide. Without a Chromium they are skipped. */
export function printedPages(): (html: string, width?: number) => Promise<PrintedPage> {
  let browser: Browser | undefined;
  beforeAll(async () => {
    const executablePath = findChromium();
    if (!executablePath && process.env.CI) throw new Error("The tests of printed pages need a Chromium.");
    if (executablePath) browser = await chromium.launch({ executablePath, args: [...launchArguments] });
  });
  beforeEach(({ skip }) => skip(!browser, "no Chromium"));
  afterAll(() => browser?.close());
  return async (html, width = 1000) => {
    const page = await browser!.newPage({ viewport: { width, height: 900 } });
    const requests: string[] = [];
    page.on("request", (request) => requests.push(request.url()));
    await page.setContent(html);
    return { page, requests };
  };
}

/** By the rules of WCAG 2.1, levels A and AA, as axe-core checks them; and nothing was asked of the network. */
export async function hasNoFault({ page, requests }: PrintedPage): Promise<void> {
  await page.evaluate(axe.source); // by the browser's debugger, which no policy holds back
  const { violations, passes } = (await page.evaluate("axe.run()")) as axe.AxeResults;
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
  expect(passes.length).toBeGreaterThan(10);
  expect(requests).toEqual([]);
}
