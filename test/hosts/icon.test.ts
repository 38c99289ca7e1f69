import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import { describe, expect, test } from "vitest";
import { drawnIcon, ICON_SIZE } from "../../client/packaging/draw-icon.mjs";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";

/** Of 255, for each of a pixel's four values: so much may one Chromium smooth an edge otherwise than another, on average. */
const SMOOTHING = 1;

const executablePath = findChromium();

describe.skipIf(!executablePath)("the icon", () => {
  test("as a PNG is what its SVG draws", async () => {
    const browser = await chromium.launch({ executablePath, args: launchArguments });
    const pictures = [readFileSync("client/icon.png"), await drawnIcon(browser)].map((png) => png.toString("base64"));
    const page = await browser.newPage();
    const difference = await page.evaluate(
      async ([pngs, size]) => {
        const pixels = await Promise.all(
          pngs.map(async (png) => {
            const picture = new Image();
            picture.src = `data:image/png;base64,${png}`;
            await picture.decode();
            const canvas = new OffscreenCanvas(size, size).getContext("2d")!;
            canvas.drawImage(picture, 0, 0);
            return canvas.getImageData(0, 0, size, size).data;
          }),
        );
        return pixels[0]!.reduce((sum, value, at) => sum + Math.abs(value - pixels[1]![at]!), 0) / pixels[0]!.length;
      },
      [pictures, ICON_SIZE] as const,
    );
    await browser.close();
    expect(difference).toBeLessThan(SMOOTHING);
  });
});
