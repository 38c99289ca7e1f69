import { basename, dirname } from "node:path";
import { describe, expect, test } from "vitest";
import { filesBelow, textOf } from "./source.ts";

const MOST_LINES = 400;
const MOST_TEST_LINES = 600;
const CODE = /\.(ts|mts|mjs|js|css)$/;
/** As the formatter has it, which leaves comments as they are. */
const LINE_WIDTH = 120;
/** Names that say nothing of what is in them. */
const VAGUE = /^(utils?|helpers?|managers?|common|misc)$/i;

/**
 * Folders of one computer, and the host names of package registries. A URI such as file:///home/… names no real folder.
 */
const MACHINE =
  /(?<![\w./:~-])\/(?:home|root|Users|work|mnt|srv)\/[\w.-]+|\b[A-Z]:\\Users\\|\bregistry\.[a-z]+\.[a-z]{2,}/;

const BINARY = /\.(png|ico|gif|jpg|woff2?)$/;

const files = filesBelow();
const code = files.filter((path) => CODE.test(path));

/** The files with more lines than they should have. */
function tooLong(paths: readonly string[], most: number): string[] {
  return paths
    .map((path) => ({ path, lines: textOf(path).trimEnd().split("\n").length }))
    .filter(({ lines }) => lines > most)
    .map(({ path, lines }) => `${path} has ${lines} lines, and should have at most ${most}`);
}

test("source files are short enough to read in one sitting", () => {
  const source = code.filter((path) => !path.startsWith("test/"));
  expect(source.length).toBeGreaterThan(200);
  expect(tooLong(source, MOST_LINES)).toEqual([]);
});

test("so are tests, but for the reference data that they read", () => {
  const tests = code.filter((path) => path.startsWith("test/") && !path.startsWith("test/reference/"));
  expect(tests.length).toBeGreaterThan(50);
  expect(tooLong(tests, MOST_TEST_LINES)).toEqual([]);
});

/** Where comments keep to the width. */
const NARROW = ["client", "server", "shared"];

/** The lines of a comment, or with one behind their code, that are wider than the formatter makes others. */
function wideComments(path: string, text: string): string[] {
  return text.split("\n").flatMap((line, i) => {
    const holdsComment = /^\s*(?:\/\/|\/?\*)|\s\/\/ /.test(line);
    return holdsComment && [...line].length > LINE_WIDTH ? [`${path}:${i + 1}`] : [];
  });
}

describe("comments", () => {
  test("are found too wide wherever they stand", () => {
    const long = "x".repeat(LINE_WIDTH);
    const text = [
      `// ${long}`,
      `/** ${long} */`,
      ` * ${long}`,
      `const a = 1; // ${long}`,
      `const b = "${long}";`,
      "// x",
    ];
    expect(wideComments("a.ts", text.join("\n"))).toEqual(["a.ts:1", "a.ts:2", "a.ts:3", "a.ts:4"]);
  });

  test("are no wider than code", () => {
    const kept = code.filter((path) => NARROW.includes(path.split("/")[0]!));
    expect(kept.length).toBeGreaterThan(300);
    expect(kept.flatMap((path) => wideComments(path, textOf(path)))).toEqual([]);
  });
});

test("no folder or file has a name that says nothing", () => {
  const names = files.flatMap((path) => [...dirname(path).split("/"), basename(path).split(".")[0]!]);
  expect(names.filter((name) => VAGUE.test(name))).toEqual([]);
});

describe("the code map", () => {
  test("has a row for each part, and in it each of its rooms", () => {
    const map = "| `server/` | all, started by `main.ts` |\n| `server/a/` | `b/` (one), `c/d/` |\n`server/e/` is prose";
    expect(foldersTold(map)).toEqual(["server", "server/a", "server/a/b", "server/a/c/d"]);
  });

  test("of DEVELOPERS.md says what lives in each folder, and tells of none that is not there", () => {
    const folders = new Set(files.flatMap((path) => foldersOf(path)));
    const told = foldersTold(
      textOf("DEVELOPERS.md")
        .split("\n## ")
        .find((section) => section.startsWith("Code map\n"))!,
    );
    expect(told.filter((folder) => !folders.has(folder))).toEqual([]);
    const rooms = [...folders].filter((folder) =>
      /^(server|client|test)\/[^/]+$|^server\/[^/]+\/[^/]+$|^\w[^/]*$/.test(folder),
    );
    const mirrors = rooms.filter(
      (folder) => /^test\/./.test(folder) && ["server/", ""].some((top) => folders.has(folder.replace("test/", top))),
    );
    expect(rooms.filter((folder) => ![...told, ...mirrors].includes(folder))).toEqual([]);
  });
});

/** The folder that each row is about, and those that it names in what it says of it. */
function foldersTold(map: string): string[] {
  return [...map.matchAll(/^\| `([\w./-]+)\/` \|(.*)$/gm)].flatMap(([, folder, text]) => [
    folder!,
    ...[...text!.matchAll(/`([\w./-]+)\/`/g)].map((match) => `${folder}/${match[1]}`),
  ]);
}

/** The folders that a file stands in, each from the top of the checkout. */
function foldersOf(path: string): string[] {
  const folder = dirname(path);
  return folder === "." ? [] : [folder, ...foldersOf(folder)];
}

describe("one computer's own paths", () => {
  test("are known when seen", () => {
    for (const path of ["/home/noor/journal", "/root/x", "C:\\Users\\noor"]) expect(`open ${path}`).toMatch(MACHINE);
    for (const path of ["file:///home/noor/a.practice", "#!/usr/bin/env node", "x/work/y", "/ext/"])
      expect(`open ${path}`).not.toMatch(MACHINE);
  });

  test("stand in no file", () => {
    const found = files
      .filter((path) => !BINARY.test(path) && path !== "test/architecture/files.test.ts")
      .flatMap((path) => {
        const match = MACHINE.exec(textOf(path));
        return match ? [`${path}: ${match[0]}`] : [];
      });
    expect(found).toEqual([]);
  });
});
