import { describe, expect, test } from "vitest";
import { SCROLL_SETTINGS } from "../../client/preview/scroll-settings.ts";
import manifest from "../../package.json";
import { CODES, MEANINGS } from "../../server/checks/codes.ts";
import { COMMANDS } from "../../server/cli/commands.ts";
import { DEFAULT_SETTINGS, readSettings } from "../../server/host/settings.ts";
import { filesBelow, isNode, literal, modules, type Node, nameOf, nodes, textOf } from "./source.ts";

// What test/client/manifest.test.ts does not hold already: whether package.json and the code say the same.

interface Setting {
  readonly default: unknown;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
}

const contributed: Readonly<Record<string, Setting>> = manifest.contributes.configuration.properties;
/** Those of the preview are the client's own; the server reads all others. */
const OF_CLIENT = "daystave.preview.";
const settings = Object.fromEntries(Object.entries(contributed).filter(([name]) => !name.startsWith(OF_CLIENT)));
const client = modules("client");

/** Each value under its name with dots. */
function flat(value: object, name: string): (readonly [string, unknown])[] {
  return Object.entries(value).flatMap(([key, inner]) =>
    typeof inner === "object" && inner !== null ? flat(inner, `${name}.${key}`) : [[`${name}.${key}`, inner] as const],
  );
}

/** The commands that the extension registers. Each has its id in a constant that is exported beside it. */
function registeredCommands(): string[] {
  const ids = new Map(client.flatMap(({ body }) => [...nodes(body)].flatMap(constantOf)));
  const calls = client.flatMap(({ body }) => [...nodes(body)].filter(isRegistration));
  return calls.map((call) => {
    const [id] = call["arguments"] as Node[];
    return ids.get(nameOf(id) ?? "") ?? String(literal(id));
  });
}

function constantOf({ type, id, init }: Node): [string, string][] {
  const [name, value] = [nameOf(id), literal(init)];
  return type === "VariableDeclarator" && name && typeof value === "string" ? [[name, value]] : [];
}

function isRegistration({ type, callee }: Node): boolean {
  return type === "CallExpression" && isNode(callee) && /^register.*Command$/.test(nameOf(callee["property"]) ?? "");
}

test("the commands that are contributed are those that are registered", () => {
  const contributed = manifest.contributes.commands.map(({ command }) => command);
  expect(registeredCommands().sort()).toEqual(contributed.sort());
});

test("each command has a file of its own, named as it is", () => {
  const files = manifest.contributes.commands.map(({ command }) => {
    const words = command.replace("daystave.", "").replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
    return `client/commands/${words}.ts`;
  });
  expect(filesBelow("client/commands")).toEqual(files.sort());
});

describe("settings", () => {
  test("those that are contributed are those that are read, with the same defaults", () => {
    const defaults = Object.entries(contributed).map(([name, setting]) => [name, setting.default]);
    expect(Object.fromEntries(defaults)).toEqual(
      Object.fromEntries([
        ...flat(DEFAULT_SETTINGS, "daystave"),
        ...Object.entries(SCROLL_SETTINGS).map(([name, usual]) => [`${OF_CLIENT}${name}`, usual]),
      ]),
    );
  });

  test.each(Object.entries(settings))("%s is read, and every word that it takes is", (name, setting) => {
    const { minimum, maximum } = setting;
    const numbers = minimum === undefined ? undefined : [minimum, maximum];
    const words = setting.enum ?? numbers ?? (typeof setting.default === "boolean" ? [true, false] : ["Europe/Oslo"]);
    expect(words.map((word) => setTo(name, word))).toEqual(words);
    if (minimum === undefined || maximum === undefined) return;
    expect([minimum - 1, maximum + 1, "30"].map((word) => setTo(name, word))).toEqual(Array(3).fill(setting.default));
  });

  /** What is read of one setting, sent the way editors send it: each dot of its name is an object. */
  function setTo(name: string, value: unknown): unknown {
    const [, ...path] = name.split(".");
    const sent = path.reduceRight<unknown>((inner, key) => ({ [key]: inner }), value);
    return new Map(flat(readSettings(sent), "daystave")).get(name);
  }
});

describe("bundles", () => {
  const entries = new Map(
    [...textOf("build.mjs").matchAll(/entry: "([^"]+)",\s*file: (?:"([^"]+)"|COMMAND_LINE)/g)].map(
      ([, entry, file = "server/cli.js"]) => [`dist/${file}`, entry!],
    ),
  );

  test("those that the package names are built, each from its entry", () => {
    const named = [manifest.main, manifest.browser, manifest.bin.daystave].map((path) => path.replace("./", ""));
    expect(named.map((path) => entries.get(path))).toEqual([
      "client/extension.ts",
      "client/extension.web.ts",
      "server/cli/main.ts",
    ]);
    expect([...entries.values()].filter((entry) => !filesBelow().includes(entry))).toEqual([]);
  });

  test("those that the client loads are built", () => {
    const literals = client.flatMap(({ body }) => [...nodes(body)].map(literal));
    const loaded = literals.filter((value) => typeof value === "string" && /^dist\/.*\.\w+$/.test(value));
    expect(loaded).toContain("dist/server/main.js");
    expect(loaded).toContain("dist/server/main.browser.js");
    expect(loaded.filter((path) => !entries.has(path as string))).toEqual([]);
  });
});

describe("codes", () => {
  const sections = textOf("syntaxes/FORMAT.md").split("\n## Diagnostics\n")[1]!.split("\n### ").slice(1);
  const documented = sections.map((text) => [
    /^`([a-z-]+)`/.exec(text)![1]!,
    /\n(Error|Warning|Information|Hint)\.\n/.exec(text)![1]!.toLowerCase(),
  ]);

  test("every code has its section in the format reference, with its severity", () => {
    expect(Object.fromEntries(documented)).toEqual(CODES);
  });

  test("every code says in a sentence what it means", () => {
    expect(Object.keys(MEANINGS)).toEqual(Object.keys(CODES));
    for (const meaning of Object.values(MEANINGS)) expect(meaning).toMatch(/^[A-Z“].{10,110}[^.]$/);
  });
});

test("the command line's name is the package's", () => {
  expect(Object.keys(manifest.bin)).toEqual([manifest.name]);
  expect(new Set(COMMANDS.map(({ name }) => name)).size).toBe(COMMANDS.length);
});

test("everything that is bundled comes under a licence that may be passed on", () => {
  const used = new Set(modules("server", "client", "shared").flatMap(({ body }) => packagesIn(body)));
  const allowed = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "0BSD", "Apache-2.0"];
  const licences = [...used].map((name) => [name, JSON.parse(textOf(`node_modules/${name}/package.json`)).license]);
  expect(licences.length).toBeGreaterThan(3);
  expect(licences.filter(([, licence]) => !allowed.includes(licence))).toEqual([]);
});

/** The packages that a module imports at run time: not the editor's own, nor Node's. */
function packagesIn(body: readonly Node[]): string[] {
  return body.flatMap((node) => {
    const from = literal(node["source"]);
    const isPackage = typeof from === "string" && !/^\.|^node:|^vscode$/.test(from) && node["importKind"] !== "type";
    return isPackage ? [/^(?:@[^/]+\/)?[^/]+/.exec(from as string)![0]] : [];
  });
}
