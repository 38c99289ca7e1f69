import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { CODES, type Code, MEANINGS } from "../../../server/checks/codes.ts";
import { daystave } from "../command-line.ts";

const ALL = Object.keys(CODES) as Code[];

describe("every code", () => {
  test.each(ALL)("%s: what it means, an example in which it is found, why, what to do", async (code) => {
    const { status, stdout } = await daystave(["explain", code]);
    expect(status).toBe(0);
    expect(stdout.startsWith(`${code}\n`)).toBe(true);
    expect(stdout).toMatch(/^Example:\n\n {4}\S/m);
    expect(stdout).toMatch(/^Line \d+, column \d+: /m);
    expect(stdout).toMatch(/\nWhy: [A-Z`]/);
    expect(stdout).toMatch(/\nWhat to do: [A-Z]/);
    expect(stdout.split("\n").filter((line) => stringWidth(line) > 80)).toEqual([]);
    expect(stdout).not.toMatch(/\*\*|\]\(|\n\n\n|undefined/);
  });

  test.each(ALL)("%s: what check says of its example is what is shown", async (code) => {
    const { stdout } = await daystave(["explain", code, "--json"]);
    const explained = JSON.parse(stdout);
    expect(explained).toMatchObject({ code, severity: CODES[code], meaning: MEANINGS[code] });
    const checked = await daystave(["check", "--json", "--today", "2026-06-01"], {
      files: { "example.practice": explained.example },
    });
    const [{ diagnostics }] = JSON.parse(checked.stdout).files;
    const messages = diagnostics.filter((each: { code: string }) => each.code === code);
    expect(explained.found.map((each: { message: string }) => each.message)).toEqual(
      messages.map((each: { message: string }) => each.message),
    );
    expect(explained.found.length).toBeGreaterThan(0);
  });
});

test("one of them, as it is shown", async () => {
  const { stdout } = await daystave(["explain", "scale-note"]);
  expect(stdout).toBe(`scale-note
An error. A listed note is not in the scale: a wrong pitch, or not a note at
all.

Example:

    2026-03-02 Mon
    G harmonic minor: G A Bb C D Eb F G

Line 2, column 33: G harmonic minor has F#, not F: its seventh degree is raised.
Fix: Change F to F#

Why: A note of the list is not in the scale: the wrong pitch. The harmonic minor
raises its seventh degree, so it has F# here. A word in the list that is not a
note at all (\`H\`) is reported under this code, too.

What to do: Write the right note, or name the scale that you meant (G natural
minor has F).
`);
});

test("a code may be written with spaces, in whatever case", async () => {
  expect((await daystave(["explain", "Scale Note"])).stdout).toBe((await daystave(["explain", "scale-note"])).stdout);
});

describe("what is not a code", () => {
  test.each([
    [
      ["scale-spellin"],
      "There is no code “scale-spellin”. Did you mean “scale-spelling”?\nAll codes: daystave list codes",
    ],
    [["wrong-day"], "There is no code “wrong-day”."],
    [["constructor"], "There is no code “constructor”."],
    [[], "Name a code: daystave explain scale-note"],
    [["bad", "date"], "“explain” takes one argument, and 2 were given."],
  ])("%j", async (argv, says) => {
    const { status, stdout, stderr } = await daystave(["explain", ...argv]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
  });
});
