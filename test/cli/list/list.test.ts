import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { CODES } from "../../../server/checks/codes.ts";
import { LISTS } from "../../../server/cli/list/lists.ts";
import { languageWords } from "../../../server/journal/language.ts";
import { INSTRUMENTS } from "../../../server/music/instruments/instruments.ts";
import { degreesIn } from "../../../server/music/notes/degree.ts";
import { NOTE_NAMES } from "../../../server/music/notes/note-names.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";
import { phraseKey } from "../../../server/syntax/words/fold.ts";
import { daystave } from "../command-line.ts";

interface Row {
  readonly names: readonly string[];
  readonly of: string;
  readonly degrees: string;
  readonly languages: Readonly<Record<string, readonly string[]>>;
}

async function rowsOf(name: string): Promise<readonly Row[]> {
  const { status, stdout } = await daystave(["list", name, "--json"]);
  expect(status).toBe(0);
  const document = JSON.parse(stdout);
  expect(Object.keys(document)).toEqual([name]);
  return document[name];
}

/** What `grep` would find in a list. */
async function linesWith(name: string, words: string): Promise<readonly string[]> {
  const { stdout } = await daystave(["list", name]);
  return stdout.split("\n").filter((line) => line.includes(words));
}

describe("in a pipe a thing is one line, in columns", () => {
  test.each([
    ["instruments", "tenor recorder", /^tenor recorder +C4 to D6 +as written +Also: tenor recorder in C/],
    ["kinds", "Moll harmonisch", /^harmonic minor +scale +1 2 b3 4 5 b6 7 +The harmonic minor scale: .* German: Moll/],
    ["kinds", "dominant 7th", /^dominant seventh +arpeggio +1 3 5 b7 /],
    ["kinds", "1 2 b3 4 5 6 7, down 1 2 b3 4 5 b6 b7", /^melodic minor +scale /],
    [
      "patterns",
      "Terzen",
      /^thirds +pattern +Thirds: each note and the third above it, 1 3 2 4\. Variants: alternating\. /,
    ],
    ["patterns", "Linked", /^linked +variant /],
    ["terms", "By ear".toLowerCase(), /^by ear +manner +Found by listening, not reading\./],
    ["terms", "gebunden", /^slurred +articulation /],
    ["codes", "scale-note ", /^scale-note +error +A listed note is not in the scale: .*\.$/],
  ])("%s: %s", async (name, words, line) => {
    const [first = "", ...others] = (await linesWith(name, words)).filter((each) => line.test(each));
    expect([line.test(first), others]).toEqual([true, []]);
  });

  test("words that say how it went are found by what they say", async () => {
    const [line = "", ...others] = await linesWith("terms", " nailed it,");
    expect([line.startsWith("reached "), others]).toEqual([true, []]);
    expect(line).toMatch(/ outcome +Any of these: the tempo counts as reached\. Also: .* German: /);
  });

  test.each(LISTS)("%s: as many lines as there are things, none with spaces at its end", async (name) => {
    const { stdout } = await daystave(["list", name]);
    const lines = stdout.trimEnd().split("\n");
    expect(lines).toHaveLength((await rowsOf(name)).length);
    expect(lines.filter((line) => line !== line.trimEnd())).toEqual([]);
  });
});

describe("on a terminal", () => {
  test.each(LISTS)("%s has headings, and no line is wider than the terminal", async (name) => {
    const lines = await linesOn(name, 120);
    expect(lines[0]).toMatch(/^(?:Instrument|Kind|Pattern|Term|Code) /);
    expect(lines.filter((line) => stringWidth(line) > 120)).toEqual([]);
  });

  test.each(LISTS)("%s: where there is little room, what it is comes below", async (name) => {
    const below = (await linesOn(name, 60)).filter((line) => line.startsWith(" "));
    expect(below.length).toBeGreaterThan(10);
    expect(below.filter((line) => stringWidth(line) > 60)).toEqual([]);
  });

  async function linesOn(name: string, columns: number): Promise<readonly string[]> {
    const { stdout } = await daystave(["list", name], { isTerminal: true, columns, env: { NO_COLOR: "1" } });
    return stdout.trimEnd().split("\n");
  }
});

describe("what is listed is what the tables have", () => {
  test("every instrument, scale and code", async () => {
    expect((await rowsOf("instruments")).map(({ names }) => names)).toEqual(INSTRUMENTS.map(({ names }) => names));
    const scales = (await rowsOf("kinds")).filter(({ of }) => of === "scale");
    expect(scales.map(({ names }) => names[0])).toEqual(KINDS.map(({ names }) => names[0]));
    expect((await rowsOf("codes")).map((row) => (row as unknown as { readonly code: string }).code)).toEqual(
      Object.keys(CODES),
    );
  });

  test("degrees say the scale again", async () => {
    for (const { of, names, degrees } of await rowsOf("kinds"))
      if (of === "scale")
        expect(degreesIn(degrees)).toEqual(kindById(KINDS.find((k) => k.names[0] === names[0])!.id)!.degrees);
  });

  test.each(NOTE_NAMES.map((noteNames) => [noteNames.id, noteNames] as const))(
    "every term that is listed is known in a journal with %s names",
    async (id, noteNames) => {
      const words = languageWords(noteNames);
      const listed = (await Promise.all(["terms", "patterns"].map(rowsOf)))
        .flat()
        .filter(({ names }) => !["reached", "nearly", "not"].includes(names[0]!))
        .flatMap(({ names, languages }) => (id === "english" ? names : (languages[id] ?? [])));
      expect(listed.length).toBeGreaterThan(100);
      expect(listed.filter((each) => words.meanings(phraseKey(each)) === undefined)).toEqual([]);
    },
  );
});

describe("what cannot be", () => {
  test.each([
    [[], "Say what to list: daystave list instruments|kinds|patterns|terms|codes"],
    [["knids"], "“list knids”: choose one of instruments, kinds, patterns, terms, codes. Did you mean “kinds”?"],
    [["instr"], "Did you mean “instruments”?"],
    [["kinds", "codes"], "“list” takes one argument, and 2 were given."],
  ])("%j", async (argv, says) => {
    const { status, stdout, stderr } = await daystave(["list", ...argv]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
  });
});
