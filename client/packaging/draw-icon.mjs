// Draws client/icon.svg as client/icon.png, which galleries want. Needs a Chromium, as the tests in test/hosts/ do.
//   node client/packaging/draw-icon.mjs
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { findChromium, launchArguments } from "../workbench/chromium.mjs";
import { ROOT } from "../workbench/install.mjs";

/** In pixels, each way. */
export const ICON_SIZE = 256;

/** The picture as a PNG, with what lies outside its round corners left clear. */
export async function drawnIcon(browser) {
  const page = await browser.newPage({ viewport: { width: ICON_SIZE, height: ICON_SIZE } });
  const svg = readFileSync(`${ROOT}client/icon.svg`, "utf8");
  await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${svg}`);
  const png = await page.screenshot({ omitBackground: true });
  await page.close();
  return png;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const browser = await chromium.launch({ executablePath: findChromium(), args: launchArguments });
  writeFileSync(`${ROOT}client/icon.png`, await drawnIcon(browser));
  await browser.close();
}
