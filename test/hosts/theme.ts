import type { FrameLocator, Locator } from "playwright-core";
import { expect } from "vitest";
import { contrast, luminance, READABLE } from "./accessible.ts";
import { complaintIn, exerciseIn } from "./preview-page.ts";
import type { Window } from "./window.ts";

/** From the light theme that a window begins with to a dark one, which it keeps. */
export async function followsTheme(window: Window, chooseDark: () => Promise<void>): Promise<void> {
  const { page, editor, showPreview } = window;
  await editor.locator(".squiggly-warning").first().waitFor();
  const preview = await showPreview();
  const thirds = exerciseIn(preview, "D natural minor, thirds");
  await thirds.waitFor();
  await preview.locator("body.vscode-light").waitFor();
  expect(await textIsLighter(preview)).toBe(false);
  const light = await pictureIn(window);
  expect(contrast(light.text, light.ground)).toBeGreaterThanOrEqual(READABLE);
  await thirds.evaluate((row) => row.setAttribute("data-seen", "before"));

  await chooseDark();
  await preview.locator("body.vscode-dark").waitFor();
  await expect.poll(() => textIsLighter(preview)).toBe(true);
  expect(await thirds.getAttribute("data-seen")).toBe("before"); // the same row: nothing was drawn anew
  await expect.poll(() => complaintIn(preview).textContent()).toBe("");
  const dark = await pictureIn(window);
  expect(contrast(dark.text, dark.ground)).toBeGreaterThanOrEqual(READABLE);
  expect(luminance(dark.ground)).toBeLessThan(luminance(light.ground));
  expect(dark.text).not.toEqual(light.text);
  await page.keyboard.press("Escape");
}

type Colour = readonly [red: number, green: number, blue: number];

/** Whether the text of a chart in the preview is lighter than the page. */
async function textIsLighter(preview: FrameLocator): Promise<boolean> {
  const text = await colourOf(preview.locator("svg text").first(), "fill");
  return luminance(text) > luminance(await colourOf(preview.locator("body"), "background-color"));
}

/** The colour of the words in the picture of a hover, and that of the hover. */
async function pictureIn({
  page,
  hoverOnStartOf,
}: Window): Promise<{ readonly text: Colour; readonly ground: Colour }> {
  const hover = await hoverOnStartOf("D minor, thirds");
  const fill = await hover
    .locator('img[src^="data:image/svg+xml,"]')
    .first()
    .evaluate((image) => {
      const [, svg] = image.getAttribute("src")!.split(/,(.*)/s);
      const picture = new DOMParser().parseFromString(decodeURIComponent(svg!), "image/svg+xml");
      return picture.querySelector("text")!.closest("[fill]")!.getAttribute("fill")!;
    });
  const ground = await colourOf(hover, "background-color");
  await page.keyboard.press("Escape");
  await hover.waitFor({ state: "hidden" });
  return { text: [1, 3, 5].map((at) => Number.parseInt(fill.slice(at, at + 2), 16)) as unknown as Colour, ground };
}

/** As the browser computed it: `rgb(31, 31, 31)`, and of a mix of two `color(srgb 0.12 0.12 0.12)`. */
async function colourOf(element: Locator, property: string): Promise<Colour> {
  const value = await element.evaluate((each, name) => getComputedStyle(each).getPropertyValue(name), property);
  const scale = value.startsWith("color(srgb ") ? 255 : 1;
  return value
    .match(/[\d.]+/g)!
    .slice(0, 3)
    .map((part) => Number(part) * scale) as unknown as Colour;
}
