import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { importsOf, type Module, moduleOf, modules, ROOT } from "./source.ts";

/** What a part of the program may import: parts of the program, and packages. `node:` is any module of Node. */
interface Rule {
  readonly parts: readonly string[];
  readonly packages?: readonly string[];
}

/**
 * Data goes one way. A part is a folder, or a file; the longest that fits counts. `host/node` and `preview/page` run apart
 * from the folders that they stand in: the one in Node alone, the other in a page without an editor.
 */
const RULES: Readonly<Record<string, Rule>> = {
  "server/music": { parts: [] },
  "server/syntax": { parts: [], packages: ["fastest-levenshtein"] },
  "server/journal": { parts: ["syntax", "music"] },
  "server/history": { parts: ["journal", "music", "syntax"], packages: ["simple-statistics"] },
  "server/checks": { parts: ["journal", "music", "history", "syntax"] },
  "server/charts": { parts: ["history", "music"], packages: ["d3-scale", "d3-shape", "simple-statistics"] },
  "server/features": { parts: ["syntax", "music", "journal", "history", "checks", "charts", "shared"] },
  "server/host": { parts: ["syntax", "journal", "shared"] },
  "server/host/node": { parts: ["host", "syntax", "journal", "shared"], packages: ["node:"] },
  "server/lsp": { parts: ["features", "host", "journal", "syntax", "shared"], packages: ["vscode-languageserver"] },
  "server/cli": {
    parts: ["features", "host", "host/node", "history", "journal", "music", "syntax", "checks", "package.json"],
    packages: ["node:", "fastest-levenshtein", "string-width"],
  },
  "server/core.ts": { parts: ["lsp", "cli"] },
  "server/main.ts": { parts: ["lsp", "host", "host/node", "core.ts"], packages: ["vscode-languageserver/node"] },
  "server/main.browser.ts": { parts: ["lsp", "host"], packages: ["vscode-languageserver/browser"] },
  client: {
    parts: ["shared", "client/preview/messages.ts"],
    packages: ["vscode", "vscode-languageclient", "vscode-languageclient/node", "vscode-languageclient/browser"],
  },
  "client/preview/messages.ts": { parts: ["shared"] },
  "client/preview/page": { parts: ["client/preview/messages.ts", "shared"] },
  shared: { parts: [] },
};

/** `daystave lsp` is the language server itself; both ways in know by type what they load. */
const EXCEPTIONS = ["server/cli/lsp/lsp.ts -> server/main.ts", "server/cli/main.ts -> server/core.ts"];

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

test("data goes one way", () => {
  expect(all.length).toBeGreaterThan(200);
  expect(all.flatMap(forbidden)).toEqual([]);
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
