import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { join, posix } from "node:path";
import { describe, expect, test } from "vitest";
import manifest from "../../package.json";
import { daystave } from "../cli/command-line.ts";
import { CONSOLE, GENERATED, generated, TABLES } from "./readme.ts";
import { filesBelow, ROOT, textOf } from "./source.ts";

const README = textOf("README.md");
const COMMAND_LINE = textOf("syntaxes/COMMAND-LINE.md");

test("the README is read in one sitting", () => {
  expect(README.trimEnd().split("\n").length).toBeLessThanOrEqual(200);
});

/** `UPDATE=1 npx vitest run test/architecture` writes what is generated into the pages; read the difference. */
test.each(GENERATED)("what is generated in %s is what the code says", async (path) => {
  const page = textOf(path);
  const fresh = await generated(page);
  if (process.env["UPDATE"]) writeFileSync(join(ROOT, path), fresh);
  else expect(page).toBe(fresh);
});

test("each of it has its place in one page", () => {
  const pages = GENERATED.map(textOf).join("");
  for (const name of Object.keys(TABLES)) expect(pages.split(`<!-- ${name} -->`)).toHaveLength(2);
  expect([...COMMAND_LINE.matchAll(CONSOLE)].length).toBeGreaterThanOrEqual(4);
});

test("every command in the editor says what it does", () => {
  expect(
    TABLES["editor commands"]!()
      .map((cells) => cells.at(-1))
      .filter((does) => !does),
  ).toEqual([]);
});

test("the README's journal is read without a complaint", async () => {
  const [, journal] = /```practice\n([\s\S]*?)```/.exec(README)!;
  expect(await daystave(["check", "-"], { stdin: journal! })).toMatchObject({
    status: 0,
    stdout: "1 file: nothing found.\n",
  });
});

test("its two commands are there, and the other scripts that the pages name", () => {
  const pages = README + textOf("DEVELOPERS.md");
  const named = new Set(
    [...pages.matchAll(/npm (?:run )?(start|test|simulation|edits|build|package|pictures|check|bench)\b/g)].map(
      (match) => match[1]!,
    ),
  );
  if (pages.includes("`npm pack`")) named.add("prepack"); // npm runs it first
  expect([...named].sort()).toEqual(Object.keys(manifest.scripts).sort());
  const run = textOf(".ci/run");
  expect(run).toMatch(/^npm test\nnpm run edits -- 100000$/m);
  expect(run).toMatch(/^export DAYSTAVE_SIMULATION="in full"$/m); // as `npm run simulation` has it
});

const SYNTAXES = filesBelow("syntaxes").filter((path) => path.endsWith(".md"));

describe.each(["README.md", "DEVELOPERS.md", "CHANGELOG.md", ...SYNTAXES])("%s", (page) => {
  const text = textOf(page);
  const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1]!).filter((to) => !to.includes("://"));

  test("links to files that are there, and to headings in them", () => {
    const broken = links.filter((to) => {
      const [file, anchor] = to.split("#");
      const target = file ? posix.join(posix.dirname(page), file) : page;
      return !existsSync(join(ROOT, target)) || (anchor !== undefined && !anchors(textOf(target)).has(anchor));
    });
    expect(broken).toEqual([]);
  });

  test("shows pictures that are there, with words for who cannot see them", () => {
    const named = [...text.matchAll(/(?:src|srcset)="([^"]*)"/g)].map((match) => match[1]!);
    expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
    expect((text.match(/<img /g) ?? []).length).toBe([...text.matchAll(/<img [^>]*alt="[^"]{20,}"/g)].length);
  });

  test("names files that are there", () => {
    const named = [...text.matchAll(/`((?:server|client|shared|test|samples|syntaxes)\/[\w./-]*[\w/])`/g)];
    expect(named.map((match) => match[1]!).filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });
});

/** Anchors as code hosts make them: lower case, hyphens for spaces, a number from the second of a name on. */
function anchors(text: string): ReadonlySet<string> {
  const seen = new Map<string, number>();
  return new Set(
    [...text.replace(/```[\s\S]*?```/g, "").matchAll(/^#+ (.*)$/gm)].map(([, heading]) => {
      const name = heading!
        .toLowerCase()
        .replace(/[^\w\s-]/g, "")
        .replace(/ /g, "-");
      const before = seen.get(name) ?? 0;
      seen.set(name, before + 1);
      return before ? `${name}-${before}` : name;
    }),
  );
}

test("the README leads to every page below syntaxes, and each of them back", () => {
  expect(SYNTAXES.filter((path) => !README.includes(`](${path})`))).toEqual([]);
  expect(SYNTAXES.filter((path) => !textOf(path).includes("](../README.md)"))).toEqual([]);
});

test("every picture that is kept is shown in the README", () => {
  const unused = readdirSync(join(ROOT, "client/pictures")).filter(
    (name) => !README.includes(`client/pictures/${name}"`),
  );
  expect(unused).toEqual([]);
});
