import axe from "axe-core";
import type { FrameLocator } from "playwright-core";
import { expect } from "vitest";

/** Rules: WCAG 2.1 levels A and AA, as axe-core checks them. The page must have been drawn. */
export async function expectNoViolation(preview: FrameLocator): Promise<void> {
  const frame = await (await preview.locator("main").elementHandle())!.ownerFrame();
  await frame!.evaluate(axe.source); // by the browser's debugger, which no policy holds back
  const found = await frame!.evaluate("axe.run(document.querySelector('main'))");
  const { violations, passes } = found as axe.AxeResults;
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
  expect(passes.length).toBeGreaterThan(5);
}
