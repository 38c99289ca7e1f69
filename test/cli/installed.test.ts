import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, readdirSync, realpathSync, rmSync, statSync, symlinkSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import manifest from "../../package.json";
import { ROOT } from "../architecture/source.ts";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { INITIALIZED, speakProtocol } from "./protocol-process.ts";

// What README.md says of an installation, done: `npm pack`, and `npm install -g` of its file. In a copy, so that the
// build that it begins with leaves `dist/` of the checkout alone.

const FOLDER = join(ROOT, `out/installed/${process.pid}`);
const PREFIX = join(FOLDER, "prefix");
const CHECKOUT = join(FOLDER, "checkout");
const PACKED = `${manifest.name}-${manifest.version}.tgz`;
const COMMAND = join(PREFIX, "bin/daystave");
/** What a build and a package are made of. */
const SOURCES = [
  ...["client", "server", "shared", "samples", "syntaxes"],
  ...["build.mjs", "package.json", "tsconfig.json", "README.md", "LICENSE"],
];

beforeAll(() => {
  mkdirSync(CHECKOUT, { recursive: true });
  for (const source of SOURCES) cpSync(join(ROOT, source), join(CHECKOUT, source), { recursive: true });
  symlinkSync(join(ROOT, "node_modules"), join(CHECKOUT, "node_modules"));
  npm(["pack"], CHECKOUT);
  npm(["install", "-g", "--offline", "--prefix", PREFIX, PACKED], CHECKOUT);
}, 120_000);
afterAll(() => rmSync(FOLDER, { recursive: true, force: true }));

/** With a cache of its own, in which nothing is: whatever it had to fetch would fail. */
function npm(argv: readonly string[], cwd: string): void {
  const { status, stderr } = spawnSync("npm", [...argv, "--cache", join(FOLDER, "cache")], {
    cwd,
    encoding: "utf8",
    shell: process.platform === "win32",
  });
  if (status !== 0) throw new Error(`npm ${argv.join(" ")}\n${stderr}`);
}

/** Every file below a folder, with slashes. */
function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .sort();
}

describe("the package for npm", () => {
  test("holds the command line, the server, what draws staves, texts, pages, schemas, licence and notices, and nothing else", () => {
    const schemas = readdirSync(join(ROOT, "syntaxes/schemas")).map((name) => `syntaxes/schemas/${name}`);
    expect(filesIn(join(PREFIX, "lib/node_modules/daystave"))).toEqual(
      [
        "LICENSE",
        "README.md",
        "dist/THIRD-PARTY-NOTICES.txt",
        "dist/server/cli.js",
        "dist/server/core.js",
        "dist/server/main.js",
        "dist/server/notation.js",
        "dist/server/texts.de.js",
        "package.json",
        "syntaxes/COMMAND-LINE.md",
        "syntaxes/COMMANDS.md",
        "syntaxes/DIAGNOSTICS.md",
        "syntaxes/EXPORT.md",
        "syntaxes/FORMAT.md",
        "syntaxes/OTHER-EDITORS.md",
        "syntaxes/PLAN.md",
        "syntaxes/SETTINGS.md",
        "syntaxes/SOUND.md",
        "syntaxes/daystave.1",
        ...schemas,
      ].sort(),
    );
    expect(schemas.length).toBeGreaterThan(0);
  });

  test("is no larger than a megabyte, and needs no other package", () => {
    expect(statSync(join(CHECKOUT, PACKED)).size).toBeLessThan(1_000_000);
    expect(Object.keys(manifest)).not.toContain("dependencies");
    expect(readdirSync(join(PREFIX, "lib/node_modules"))).toEqual(["daystave"]);
  });

  test("cannot be published by mistake", () => {
    expect(manifest.private).toBe(true);
  });
});

describe("installed into a clean prefix", () => {
  const daystave = (...argv: string[]) =>
    spawnSync(COMMAND, argv, { cwd: join(ROOT, "samples/quickstart"), encoding: "utf8" });

  test("says its version", () => {
    expect(daystave("--version")).toMatchObject({ status: 0, stdout: `${manifest.version}\n`, stderr: "" });
  });

  test("checks a journal, as the page of the command line has it", () => {
    const { status, stdout, stderr } = daystave("check", "--today", "2026-03-10");
    expect({ status, stderr, last: stdout.trim().split("\n").at(-1) }).toEqual({
      status: 1,
      stderr: "",
      last: "3 files: 1 error, 1 warning.",
    });
  });

  test("links from its rules into its own reference", () => {
    const [run] = JSON.parse(daystave("check", "--sarif").stdout).runs;
    const page = join(PREFIX, "lib/node_modules/daystave/syntaxes/FORMAT.md");
    const [rule] = run.tool.driver.rules;
    expect(rule.helpUri).toBe(`${pathToFileURL(realpathSync(page)).href}#${rule.id}`);
  });

  test("runs the language server", async () => {
    expect(await speakProtocol(COMMAND, ["lsp", "--stdio"], temporaryFolder())).toEqual({
      status: 0,
      answer: expect.stringMatching(INITIALIZED),
    });
  });

  test("draws staves on a sheet", () => {
    const { status, stdout } = daystave("sheet", "--week", "2026-W10", "--today", "2026-03-10");
    expect(status).toBe(0);
    expect(stdout.match(/<svg /g)?.length).toBeGreaterThan(5);
  });

  test("puts its manual where `man` looks", () => {
    expect(filesIn(join(PREFIX, "share"))).toEqual(["man/man1/daystave.1"]);
  });
});
