import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { circlesAmong } from "./circles.ts";
import { importsOf, type Module, moduleOf, modules, ROOT } from "./source.ts";

/** What a part of the program may import: parts of the program, and packages. `node:` is any module of Node. */
interface Rule {
  readonly parts: readonly string[];
  readonly packages?: readonly string[];
}

/**
 * Data goes one way. A part is a folder, or a file; the longest that fits counts. `host/node`, `notation/drawing` and
 * `preview/page` run apart from the folders that they stand in: the first in Node alone, the second in a bundle of its
 * own, the third in a page without an editor.
 */
const RULES: Readonly<Record<string, Rule>> = {
  "server/music": { parts: [], packages: ["@tonaljs/chord-type"] },
  "server/syntax": { parts: [], packages: ["fastest-levenshtein"] },
  "server/journal": { parts: ["syntax", "music"] },
  "server/history": { parts: ["journal", "music", "syntax"], packages: ["simple-statistics"] },
  "server/plan": {
    parts: ["journal", "music", "history", "syntax", "checks"],
    packages: ["simple-statistics"],
  },
  "server/checks": { parts: ["journal", "music", "history", "syntax"] },
  "server/charts": { parts: ["history", "journal", "music"], packages: ["simple-statistics"] },
  "server/sound": { parts: ["journal", "music", "syntax", "shared"] },
  "server/notation": { parts: ["music"] },
  "server/notation/drawing": { parts: ["notation", "music", "charts"], packages: ["vexflow/bravura"] },
  "server/scores": { parts: ["charts", "music", "notation", "sound"] },
  "server/features": {
    parts: [
      "syntax",
      "music",
      "journal",
      "history",
      "plan",
      "checks",
      "charts",
      "notation",
      "sound",
      "scores",
      "shared",
    ],
  },
  "server/host": { parts: ["syntax", "journal", "shared"] },
  "server/host/node": { parts: ["host", "syntax", "journal", "shared"], packages: ["node:"] },
  "server/lsp": {
    parts: ["features", "host", "journal", "notation", "syntax", "shared"],
    packages: ["vscode-languageserver"],
  },
  "server/cli": {
    parts: [
      "features",
      "charts",
      "host",
      "host/node",
      "history",
      "plan",
      "journal",
      "music",
      "notation",
      "scores",
      "shared",
      "syntax",
      "checks",
      "package.json",
    ],
    packages: ["node:", "fastest-levenshtein", "string-width"],
  },
  "server/core.ts": { parts: ["lsp", "cli"] },
  "server/main.ts": { parts: ["lsp", "notation", "host", "host/node"], packages: ["vscode-languageserver/node"] },
  "server/main.browser.ts": { parts: ["lsp", "notation", "host"], packages: ["vscode-languageserver/browser"] },
  client: {
    parts: [
      "shared",
      "client/preview/messages.ts",
      "client/preview/shapes.ts",
      "client/preview/sound-shape.ts",
      "client/pupils/messages.ts",
    ],
    packages: ["vscode", "vscode-languageclient", "vscode-languageclient/node", "vscode-languageclient/browser"],
  },
  "client/preview/shapes.ts": { parts: [] },
  "client/preview/messages.ts": { parts: ["client/preview/shapes.ts", "client/preview/sound-shape.ts", "shared"] },
  "client/preview/sound-shape.ts": { parts: ["client/preview/shapes.ts", "shared"] },
  "client/preview/page": { parts: ["client/preview/messages.ts", "shared"] },
  "client/pupils/messages.ts": { parts: ["client/preview/messages.ts", "client/preview/shapes.ts", "shared"] },
  "client/pupils/page": { parts: ["client/pupils/messages.ts", "client/preview/page", "shared"] },
  shared: { parts: [] },
};

/** `daystave lsp` is the language server itself. */
const EXCEPTIONS = ["server/cli/lsp/lsp.ts -> server/main.ts"];

/**
 * Which rooms of its folder a room may import. Beside that it may import the files that stand beside the rooms, but for
 * those that gather rooms themselves, as the list of commands does.
 */
const ROOMS: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  "server/music": {
    notes: [],
    scales: ["notes"],
    chords: ["notes", "scales"],
    instruments: ["notes"],
    patterns: ["notes", "scales", "chords", "instruments"],
    tuning: ["notes", "scales", "chords", "patterns"],
    fingering: ["notes", "instruments", "patterns"],
  },
  "server/syntax": { lexicon: [], words: ["lexicon"], line: ["words", "lexicon"], document: ["line"] },
  "server/checks": { notes: [], file: [], line: ["notes"], day: ["line", "file"] },
  "server/features": {
    explain: [],
    colours: ["explain"],
    commands: ["explain"],
    completion: ["explain"],
    diagnostics: ["explain"],
    hover: ["explain"],
    inlay: ["explain"],
    layout: ["explain"],
    lens: ["explain", "preview"],
    links: ["explain"],
    navigation: ["explain"],
    outline: ["explain"],
    preview: ["explain"],
    pupils: ["preview"],
    scores: ["explain", "sound"],
    selection: ["explain", "colours"],
    sheet: ["explain"],
    sound: ["explain"],
  },
  "server/cli": {
    aims: [],
    check: ["explain", "git"],
    completion: [],
    day: [],
    explain: [],
    export: ["notes"],
    format: [],
    git: [],
    help: [],
    hook: ["git"],
    init: [],
    list: [],
    history: [],
    keys: [],
    plan: [],
    lsp: [],
    man: [],
    notes: [],
    pupils: [],
    report: ["aims", "pupils"],
    scales: [],
    sheet: ["report"],
  },
};

/** The longest part that a file stands in. */
function partOf(path: string): string | undefined {
  return Object.keys(RULES)
    .filter((part) => path === part || path.startsWith(`${part}/`))
    .sort((a, b) => b.length - a.length)[0];
}

/** Each import that the rules do not allow, with its place. */
function forbidden(module: Module): string[] {
  const part = partOf(module.path);
  if (!part) return [`${module.path} stands in no part that has a rule`];
  const { parts, packages = [] } = RULES[part]!;
  return importsOf(module)
    .filter(({ from, file }) => {
      if (file === undefined)
        return !packages.includes(from) && !(packages.includes("node:") && from.startsWith("node:"));
      const target = partOf(file) ?? file;
      return target !== part && !parts.includes(target.replace(/^server\//, ""));
    })
    .filter(({ file }) => !EXCEPTIONS.includes(`${module.path} -> ${file}`))
    .map(({ from, line }) => `${module.path}:${line} imports ${from}`);
}

/** The room that a file stands in below a folder; undefined beside the rooms. */
function roomOf(path: string, folder: string): string | undefined {
  const [room, ...rest] = path.slice(folder.length + 1).split("/");
  return rest.length > 0 ? room : undefined;
}

/** Each import between rooms of one folder that the rules do not allow, with its place. */
function forbiddenRooms(among: readonly Module[]): string[] {
  return Object.entries(ROOMS).flatMap(([folder, rooms]) => {
    const own = among.filter(({ path }) => path.startsWith(`${folder}/`));
    const within = (module: Module) => importsOf(module).filter(({ file }) => file?.startsWith(`${folder}/`));
    const gathering = own.filter(
      (module) => !roomOf(module.path, folder) && within(module).some(({ file }) => roomOf(file!, folder)),
    );
    const gather = new Set(gathering.map(({ path }) => path));
    return own.flatMap((module) => {
      const room = roomOf(module.path, folder);
      if (room === undefined) return [];
      return within(module)
        .filter(({ file }) => {
          const target = roomOf(file!, folder);
          return target === undefined ? gather.has(file!) : target !== room && !rooms[room]?.includes(target);
        })
        .map(({ from, line }) => `${module.path}:${line} imports ${from}`);
    });
  });
}

const all = modules("server", "client", "shared");

describe("the rules themselves", () => {
  const check = (path: string, text: string) => forbidden(moduleOf(path, text));

  test("every form of import is seen", () => {
    const text = [
      'import a from "../checks/a.ts";',
      'import type { B } from "../checks/b.ts";',
      'import "../checks/c.ts";',
      'export { d } from "../checks/d.ts";',
      'export * from "../checks/e.ts";',
      'type F = typeof import("../checks/f.ts");',
      'const g = () => import("../checks/g.ts");',
      'import h = require("../checks/h.ts");',
      'const i = require("../checks/i.ts");',
      'import {\n  j,\n} from "../checks/j.ts";',
      '// import k from "../checks/k.ts";',
      "const l = 'import l from \"../checks/l.ts\"';",
    ].join("\n");
    expect(check("server/journal/x.ts", text)).toEqual(
      [..."abcdefghij"].map((name, i) => `server/journal/x.ts:${i + 1} imports ../checks/${name}.ts`),
    );
  });

  test("what is not allowed is told", () => {
    expect(check("server/music/x.ts", 'import { y } from "./y.ts";')).toEqual([]);
    expect(check("server/music/x.ts", 'import { y } from "../syntax/y.ts";')).toHaveLength(1);
    expect(check("server/features/x.ts", 'import type { y } from "vscode-languageserver";')).toHaveLength(1);
    expect(check("server/checks/x.ts", 'import { readFileSync } from "node:fs";')).toHaveLength(1);
    expect(check("server/host/x.ts", 'import { y } from "./node/y.ts";')).toHaveLength(1);
    expect(check("server/host/node/x.ts", 'import { y } from "node:fs"; import { z } from "../z.ts";')).toEqual([]);
    expect(check("client/x.ts", 'import { y } from "../server/features/y.ts";')).toHaveLength(1);
    expect(check("client/preview/page/x.ts", 'import { y } from "vscode";')).toHaveLength(1);
    expect(check("server/other/x.ts", "")).toEqual(["server/other/x.ts stands in no part that has a rule"]);
  });
});

describe("rooms and circles", () => {
  const set = (texts: Readonly<Record<string, string>>) =>
    Object.entries(texts).map(([path, text]) => moduleOf(path, text));

  test("a circle is told by its way, types included, and once", () => {
    const modules = set({
      "a.ts": 'import { b } from "./b.ts"; import { d } from "./d.ts";',
      "b.ts": 'import type { C } from "./c.ts";',
      "c.ts": 'const a = () => import("./a.ts"); import { b } from "./b.ts";',
      "d.ts": "",
      "e.ts": 'import { a } from "./a.ts";',
    });
    expect(circlesAmong(modules)).toEqual(["a.ts → b.ts → c.ts → a.ts"]);
  });

  test("a room's import of another room is told, and of what gathers the rooms", () => {
    const modules = set({
      "server/cli/check/x.ts": 'import { y } from "../export/y.ts";\nimport { z } from "../list.ts";',
      "server/cli/export/y.ts": 'import { plain } from "../plain.ts";',
      "server/cli/list.ts": 'import { x } from "./check/x.ts";',
      "server/cli/plain.ts": "",
      "server/music/scales/x.ts": 'import { n } from "../notes/n.ts"; import { c } from "../chords/c.ts";',
    });
    expect(forbiddenRooms(modules)).toEqual([
      "server/music/scales/x.ts:1 imports ../chords/c.ts",
      "server/cli/check/x.ts:1 imports ../export/y.ts",
      "server/cli/check/x.ts:2 imports ../list.ts",
    ]);
  });
});

test("data goes one way", () => {
  expect(all.length).toBeGreaterThan(200);
  expect(all.flatMap(forbidden)).toEqual([]);
});

test("between the rooms of a folder, too", () => {
  expect(forbiddenRooms(all)).toEqual([]);
});

test("every room of those folders has a rule", () => {
  for (const [folder, rooms] of Object.entries(ROOMS)) {
    const there = all.flatMap(({ path }) => (path.startsWith(`${folder}/`) ? (roomOf(path, folder) ?? []) : []));
    expect(Object.keys(rooms).sort(), folder).toEqual([...new Set(there)].sort());
  }
});

test("no two files import each other, not by others and not by type", () => {
  expect(circlesAmong(all)).toEqual([]);
});

test("every import within the project leads to a file, named with its ending", () => {
  const local = all.flatMap((module) => importsOf(module).flatMap(({ file }) => file ?? []));
  expect(local.length).toBeGreaterThan(500);
  expect(local.filter((file) => !existsSync(join(ROOT, file)))).toEqual([]);
});

test("an exception that nothing needs any more is taken away", () => {
  const needed = all.flatMap((module) => importsOf(module).map(({ file }) => `${module.path} -> ${file}`));
  expect(EXCEPTIONS.filter((each) => !needed.includes(each))).toEqual([]);
});
