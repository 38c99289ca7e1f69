import axe from "axe-core";
import type { Frame, FrameLocator } from "playwright-core";
import { expect } from "vitest";

/** Rules: WCAG 2.1 levels A and AA, as axe-core checks them. The page must have been drawn. */
export async function expectNoViolation(preview: FrameLocator): Promise<void> {
  await expectNoViolationIn((await (await preview.locator("main").elementHandle())!.ownerFrame())!);
}

/** The same, of a page without an editor around it. */
export async function expectNoViolationIn(frame: Frame): Promise<void> {
  await frame.evaluate(axe.source); // by the browser's debugger, which no policy holds back
  const found = await frame.evaluate("axe.run(document.querySelector('main'))");
  const { violations, passes } = found as axe.AxeResults;
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
  expect(passes.length).toBeGreaterThan(5);
}

/** Relative luminance, WCAG 2.1: https://www.w3.org/TR/WCAG21/#dfn-relative-luminance */
export function luminance(colour: readonly number[]): number {
  const [red, green, blue] = colour.map((of255) => {
    const part = of255 / 255;
    return part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** Contrast ratio, WCAG 2.1: https://www.w3.org/TR/WCAG21/#dfn-contrast-ratio */
export function contrast(a: readonly number[], b: readonly number[]): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
}

/** Text on its ground, at least: WCAG 2.1, 1.4.3, https://www.w3.org/TR/WCAG21/#contrast-minimum */
export const READABLE = 4.5;
/** What is needed to understand a picture, or to find the focus: WCAG 2.1, 1.4.11, https://www.w3.org/TR/WCAG21/#non-text-contrast */
export const SEEN = 3;
