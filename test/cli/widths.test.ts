import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../server/cli/commands.ts";
import { daystave } from "./command-line.ts";

// How wide a line is shown is taken from the library `string-width`, which goes by Unicode's East Asian Width (UAX #11).

const WIDTHS = [40, 80, 160];
const SGR = /\u001B\[\d+m/g;

/** Lines to copy and run, which are shown whole, and a word that is longer than any line. */
function mayBeWider(line: string): boolean {
  return /^ {2}\S.*\bdaystave /.test(line) || /^ {2}daystave /.test(line) || !line.trim().includes(" ");
}

/** What a command prints on a terminal of so many columns; nothing of it may be wider. */
async function shown(argv: readonly string[], columns: number, files = {}): Promise<string> {
  const { stdout } = await daystave(argv, { files, isTerminal: true, columns });
  expect(stdout).not.toBe("");
  const wide = stdout.split("\n").filter((line) => stringWidth(line) > columns && !mayBeWider(line));
  expect(wide, `${argv.join(" ")}, ${columns} columns`).toEqual([]);
  return stdout.replace(SGR, "");
}

/** Invented: titles of characters that are two columns wide, letters made of several characters, and mistakes. */
const WIDE = {
  "練習 日記.practice":
    '2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n  "春の海 第一楽章", bars 1-8, at 54 clean\n  "e\u0301tude nai\u0308ve", 66\n  G harmonic minor: G A Bb C D Eb F G\n',
};

describe.each(WIDTHS)("a terminal of %i columns", (columns) => {
  test.each([["--help"], ...COMMANDS.map(({ name }) => [name, "--help"])])(
    "is wide enough for %s %s",
    async (...argv) => {
      await shown(
        argv.filter((each) => each !== undefined),
        columns,
      );
    },
  );

  test("is wide enough for what is found, in a file with a wide name", async () => {
    const text = await shown(["check"], columns, WIDE);
    expect(text.replace(/\s+/g, " ")).toContain("F# major has E#, not F: its seventh degree takes the letter E.");
  });

  test("is wide enough for an exercise and for scales", async () => {
    const exercise = await shown(["notes", "D minor melodic, thirds", "--instrument", "alto recorder"], columns);
    expect(exercise).toContain("Ø 123 45--"); // as one
    await shown(["notes", "G dorian, 2 octaves", "--pitch", "A=415, Vallotti"], columns);
    await shown(["scales", "--notes", "B D F Ab", "--all"], columns);
    await shown(["scales", "--notes", "C C# D D# E F"], columns);
  });
});

describe("what is found", () => {
  const FILES = { "week.practice": "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n" };

  test("stands in one line where there is room", async () => {
    expect(await shown(["check"], 160, FILES)).toBe(
      "week.practice:2:30 warning scale-spelling F# major has E#, not F: its seventh degree takes the letter E.\n1 file: 1 warning.\n",
    );
  });

  test("goes on below its message, and where that would be narrow, below all", async () => {
    expect(await shown(["check"], 84, FILES)).toBe(
      "week.practice:2:30 warning scale-spelling F# major has E#, not F: its seventh degree\n                                          takes the letter E.\n1 file: 1 warning.\n",
    );
    expect(await shown(["check"], 80, FILES)).toBe(
      "week.practice:2:30 warning scale-spelling\n    F# major has E#, not F: its seventh degree takes the letter E.\n1 file: 1 warning.\n",
    );
    expect(await shown(["check"], 40, FILES)).toBe(
      "week.practice:2:30\n    warning scale-spelling\n    F# major has E#, not F: its seventh\n    degree takes the letter E.\n1 file: 1 warning.\n",
    );
  });

  test("stands in one line for programs, however long", async () => {
    const { stdout } = await daystave(["check"], { files: FILES, columns: 40 });
    expect(stdout.split("\n")).toHaveLength(3);
  });
});

describe("colours", () => {
  const coloured = async (env: Readonly<Record<string, string>>) =>
    (await daystave(["check"], { files: WIDE, isTerminal: true, columns: 80, env })).stdout;

  test("are left out with NO_COLOR, and nothing else is", async () => {
    expect(await coloured({})).toMatch(SGR);
    expect(await coloured({ NO_COLOR: "1" })).toBe((await coloured({})).replace(SGR, ""));
  });

  test("take up no room: lines end at the same words", async () => {
    for (const columns of WIDTHS) {
      const of = async (env: Readonly<Record<string, string>>) =>
        (await daystave(["check"], { files: WIDE, isTerminal: true, columns, env })).stdout.replace(SGR, "");
      expect(await of({})).toBe(await of({ NO_COLOR: "1" }));
    }
  });
});
