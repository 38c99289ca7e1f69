import { cpSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { runTests } from "@vscode/test-electron";
import { build } from "esbuild";
import { chromium, type Page } from "playwright-core";
import { beforeAll, describe, expect, test } from "vitest";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { serveWorkbench } from "../../client/workbench/serve.mjs";
import { IN_FULL } from "../support/random-runs.ts";
import { allowDevelopmentPayload, isInstalled, startNodeHost } from "./node-host.ts";

// One bundle that uses the editor's own interface, run inside editors when all is tried in full, and in a desktop one wherever
// there is one. VSCODE_PATH names it, or it stands in one of the usual places.

const ROOT = resolve(import.meta.dirname, "../..");
const BUNDLE = "out/test/inside.js";
const SAMPLE = "samples/quickstart";
/** Milliseconds. */
const LIMIT = 100_000;

const USUAL_PLACES = [
  "/usr/share/code/code",
  "/usr/share/codium/codium",
  "/Applications/Visual Studio Code.app/Contents/MacOS/Electron",
  ...(process.env["LOCALAPPDATA"] ? [join(process.env["LOCALAPPDATA"], "Programs/Microsoft VS Code/Code.exe")] : []),
];
const desktop = process.env["VSCODE_PATH"] ?? USUAL_PLACES.find((place) => existsSync(place));

beforeAll(async () => {
  await build({
    absWorkingDir: ROOT,
    entryPoints: ["test/hosts/inside/run.ts"],
    outfile: BUNDLE,
    bundle: true,
    platform: "browser",
    format: "cjs",
    target: "es2022",
    external: ["vscode"],
    logLevel: "warning",
  });
});

const executablePath = findChromium();

describe.skipIf(!executablePath || !IN_FULL)("the editor's own interface, in the browser", () => {
  test("underlines, mends, explains, completes and shows the preview", async () => {
    const server = await serveWorkbench({ port: 0, sample: SAMPLE, tests: BUNDLE });
    const browser = await chromium.launch({ executablePath: executablePath!, args: launchArguments });
    try {
      expect(await ranIn(await browser.newPage(), server.url)).toEqual([
        "ran in the host: web",
        "files of sample: are here, and the extension runs with the window",
      ]);
    } finally {
      await browser.close();
      await server.close();
    }
  });
});

// The window is a browser's, the files are on a machine that it is connected to: here the same one.
describe.skipIf(!executablePath || !IN_FULL || !isInstalled("code-server"))(
  "the editor's own interface, from afar",
  () => {
    test("the extension runs where the files are, and does there all that it does", async () => {
      const server = await startNodeHost({ sample: SAMPLE, open: "week.practice", tests: BUNDLE });
      const browser = await chromium.launch({ executablePath: executablePath!, args: launchArguments });
      try {
        const page = await browser.newPage();
        await page.addInitScript(allowDevelopmentPayload);
        expect(await ranIn(page, server.url)).toEqual([
          "ran in the host: node",
          "files of file: are on another machine, and the extension runs with the files",
        ]);
      } finally {
        await browser.close();
        await server.close();
      }
    });
  },
);

const named = desktop ?? "none is installed; VSCODE_PATH would name one";

describe.skipIf(!desktop)(`the editor's own interface, on the desktop (${named})`, () => {
  test("underlines, mends, explains, completes and shows the preview", async () => {
    const home = mkdtempSync(join(tmpdir(), "daystave-desktop-"));
    try {
      const folder = join(home, "quickstart");
      cpSync(join(ROOT, SAMPLE), folder, { recursive: true });
      const code = await runTests({
        vscodeExecutablePath: desktop!,
        extensionDevelopmentPath: ROOT,
        extensionTestsPath: join(ROOT, BUNDLE),
        launchArgs: [folder, "--user-data-dir", join(home, "data"), "--extensions-dir", join(home, "extensions")],
      });
      expect(code).toBe(0);
    } finally {
      rmSync(home, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
    }
  });
});

/**
 * Opens an editor that runs a test bundle; it reports through two functions that must be there before it loads. Gives
 * the lines of ours among all that the editor says; throws all of them where something failed.
 */
async function ranIn(page: Page, url: string): Promise<readonly string[]> {
  const all: string[] = [];
  await page.exposeFunction("codeAutomationLog", (_: string, parts: readonly unknown[]) => {
    all.push(parts.map(String).join(" "));
  });
  let end: (code: number) => void = () => undefined;
  const ended = new Promise<number>((done, fail) => {
    end = done;
    setTimeout(
      () => fail(new Error(`The bundle did not end in ${LIMIT} ms; it said:\n${all.join("\n")}`)),
      LIMIT,
    ).unref();
  });
  await page.exposeFunction("codeAutomationExit", (code: number) => end(code));
  await page.goto(url);
  const code = await ended;
  if (code !== 0) throw new Error(`The bundle ended with ${code}; the editor said:\n${all.join("\n")}`);
  return all.flatMap((line) => /\[test\] (.*)/.exec(line)?.[1] ?? []);
}
