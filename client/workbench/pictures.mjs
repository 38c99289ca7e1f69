// `npm run pictures`: takes the README's pictures of the running workbench, each in a light and a dark theme, into
// client/pictures/. The language server is told that it is the day on which the sample ends, so that they are the same
// whenever they are taken.
import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { findChromium, launchArguments } from "./chromium.mjs";
import { serveWorkbench } from "./serve.mjs";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const PICTURES = resolve(ROOT, "client/pictures");
const SAMPLE = "samples/year";
const THEMES = { light: "Default Light Modern", dark: "Default Dark Modern" };
/** In CSS pixels. */
const WINDOW = { width: 1280, height: 720 };
/** Pixels of a picture for each of those, for fine screens. */
const SCALE = 1.5;
const PREVIEW = 'iframe.webview.ready[src*="extensionId=daystave-dev.daystave"]';

/** What is shown, by the picture's name: brings the window there, and may return which part of it to take. */
const SCENES = { journal, mend, hover, completion, keys };

const executablePath = findChromium();
if (!executablePath) process.exit(1);
const months = readdirSync(resolve(ROOT, SAMPLE)).filter((name) => /^\d{4}-\d\d\.practice$/.test(name));
const month = months.sort().at(-1);
const lastDay = readFileSync(resolve(ROOT, SAMPLE, month), "utf8")
  .match(/^\d{4}-\d\d-\d\d/gm)
  .at(-1);
const server = await serveWorkbench({ port: 0, sample: SAMPLE, open: [month], command: "daystave.showPreview" });
const browser = await chromium.launch({ executablePath, args: launchArguments });
try {
  for (const [theme, name] of Object.entries(THEMES)) {
    for (const [scene, prepare] of Object.entries(SCENES)) await take(scene, theme, name, prepare);
  }
} finally {
  await browser.close();
  await server.close();
}

async function take(scene, theme, themeName, prepare) {
  const page = await browser.newPage({ viewport: WINDOW, deviceScaleFactor: SCALE, reducedMotion: "reduce" });
  await page.route(server.url, (route) => withText(route, (text) => withTheme(text, themeName)));
  await page.context().route("**/dist/server/main.browser.js", (route) => withText(route, withDay));
  await page.goto(server.url);
  const preview = page.frameLocator(PREVIEW).frameLocator("#active-frame");
  await preview.locator("#exercises .tempo-row").first().waitFor();
  await preview.getByText("Files are still being read").waitFor({ state: "detached" });
  const path = `${PICTURES}/${scene}-${theme}.png`;
  await page.screenshot({ animations: "disabled", path, ...(await prepare(page, preview)) });
  console.log(path.slice(ROOT.length));
  await page.close();
}

async function withText(route, change) {
  const response = await route.fetch();
  await route.fulfill({ response, body: change(await response.text()) });
}

function withTheme(text, name) {
  const defaults = '"workbench.startupEditor": "none"';
  if (!text.includes(defaults)) throw new Error("The workbench's page has changed: adapt withTheme()");
  return text.replace(defaults, `${defaults}, "workbench.colorTheme": "${name}"`);
}

/** Sets a worker's calendar to the day on which the sample ends. */
function withDay(text) {
  const clock = (day) => {
    const Clock = Date;
    const ahead = new Clock(`${day}T18:00:00`).getTime() - Clock.now();
    globalThis.Date = class extends Clock {
      constructor(...parts) {
        if (parts.length > 0) super(...parts);
        else super(Clock.now() + ahead);
      }
      static now = () => Clock.now() + ahead;
    };
  };
  return `(${clock})(${JSON.stringify(lastDay)});\n${text}`;
}

/** The whole window as it opens, at the journal's last days. */
async function journal() {}

/** A wrong note, underlined, with the menu that mends it. */
async function mend(page) {
  await hideFiles(page);
  await newLine(page, "F# major: F# G# A# B C# D# F F#");
  await page.locator(".squiggly-warning").first().waitFor();
  for (const _ of "F#") await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("ArrowLeft");
  await page.keyboard.press("Control+.");
  await page.locator(".action-widget .monaco-list-row.action.focused").waitFor();
  return { clip: await textBox(page) };
}

async function hover(page) {
  await hideFiles(page);
  await goTo(page, "D melodic minor, thirds");
  await page.keyboard.press("Control+k");
  await page.keyboard.press("Control+i");
  await page.locator(`.monaco-hover:visible img[src^="data:image/svg+xml"]`).first().waitFor(); // chart and staff
  return { clip: await textBox(page) };
}

/** A line begun with a letter, and the exercises that are practised under it. */
async function completion(page) {
  await hideFiles(page);
  await newLine(page, "D m");
  await page.locator(".suggest-widget.visible .monaco-list-row").first().waitFor();
  await page.keyboard.press("Control+Space");
  await page.locator(".suggest-widget.visible .monaco-list-row.focused").waitFor();
  return { clip: await textBox(page) };
}

async function keys(page, preview) {
  await hideFiles(page);
  await preview.getByRole("link", { name: "Keys" }).click();
  const { x, y, width, height } = await page.locator(".editor-group-container").nth(1).boundingBox();
  return { clip: { x, y, width, height } };
}

/** Where a part of the window is taken, the text needs the room of the list of files. */
async function hideFiles(page) {
  await page.keyboard.press("Control+b");
}

/** The left editor. */
async function textBox(page) {
  return page.locator(".editor-group-container").first().boundingBox();
}

/** Puts the cursor at the start of a line near the top that holds these words. */
async function goTo(page, words) {
  await page.locator(".editor-instance .view-lines").first().click();
  await page.keyboard.press("Control+Home"); // the journal opens at its last day
  await page
    .locator(".view-line", { hasText: words })
    .first()
    .click({ position: { x: 5, y: 8 } });
  await page.keyboard.press("Home");
}

/** Begins a line below one near the top, and types. */
async function newLine(page, text) {
  await goTo(page, "G minor arpeggio, 2 octaves");
  await page.keyboard.press("End");
  await page.keyboard.press("End"); // the first goes to the end of the row in a line that is wrapped
  await page.keyboard.press("Enter");
  await page.keyboard.type(text, { delay: 30 });
}
