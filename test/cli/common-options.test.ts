import { describe, expect, test } from "vitest";
import { version } from "../../package.json";
import { COMMANDS } from "../../server/cli/commands.ts";
import { daystave } from "./command-line.ts";

const FILES = { "a.practice": "2026/03/02 Mon\nD minor,slow\nG major: G A B C D E F G\n" };

describe("--quiet leaves out all but what was found", () => {
  test("check: the summary", async () => {
    const files = { "a.practice": "2026-03-02 Mon\nD minor, slow\n" };
    for (const quiet of ["--quiet", "-q"])
      expect(await daystave(["check", quiet], { files })).toMatchObject({ status: 0, stdout: "", stderr: "" });
    const { status, stdout } = await daystave(["check", "-q"], { files: FILES });
    expect([status, stdout.match(/^a\.practice:\d+/gm), stdout.includes("1 file")]).toEqual([
      1,
      ["a.practice:1", "a.practice:3"],
      false,
    ]);
  });

  test("check --fix: what was fixed, not what is left", async () => {
    const { status, stdout, stderr, file } = await daystave(["check", "--fix", "-q"], { files: FILES });
    expect([status, stderr]).toEqual([1, ""]);
    expect(stdout).toMatch(/^a\.practice:3:22 error scale-note .*\n$/);
    expect(file("a.practice")).toMatch(/^2026-03-02 Mon\n/);
  });

  test("format: which files it changed; --check still names them", async () => {
    const { status, stdout, stderr, file } = await daystave(["format", "-q"], { files: FILES });
    expect([status, stdout, stderr]).toEqual([0, "", ""]);
    expect(file("a.practice")).toContain("D minor, slow\n");
    expect((await daystave(["format", "-q", "--check"], { files: FILES })).stdout).toBe("a.practice would change\n");
  });

  test("what could not be read is said all the same", async () => {
    const files = { "a.practice": new Uint8Array([0]) };
    expect((await daystave(["check", "-q"], { files })).stderr).toContain("a.practice was left out.");
  });
});

describe("the version", () => {
  test.each(["--version", "-V"])("%s, and the same after every command, whatever else is there", async (option) => {
    expect(await daystave([option])).toMatchObject({ status: 0, stdout: `${version}\n` });
    for (const { name } of COMMANDS)
      expect(await daystave([name, "x", "y", option])).toMatchObject({ status: 0, stdout: `${version}\n`, stderr: "" });
  });
});

describe("options that are nearly right", () => {
  test.each([
    [["check", "-json"], "“check” has no option “-json”. Did you mean “--json”?"],
    [["check", "-j"], "“check” has no option “-j”. Did you mean “--json”?"],
    [["check", "--quite"], "Did you mean “--quiet”?"],
    [["-v"], "Did you mean “--version”?"],
    [["--verson"], "Did you mean “--version”?"],
    [["notes", "D minor", "--names", "germn"], "Did you mean “german”?"],
    [["notes", "D minor", "--explain", "step"], "Did you mean “steps”?"],
    [["notes", "D minor", "--instrument", "alto recoder"], "Did you mean “alto recorder”?"],
    [["help", "chekc"], "Did you mean “check”?"],
    [["week.practice"], "Put a command before the file: daystave check week.practice\n"],
  ])("%j", async (argv, says) => {
    const { status, stderr } = await daystave(argv);
    expect(status).toBe(2);
    expect(stderr).toContain(says);
  });
});

describe("every word that is one of a list is offered where it is nearly right", () => {
  /** What a command needs beside. */
  const NEEDS: Readonly<Record<string, readonly string[]>> = {
    notes: ["D minor"],
    scales: ["--notes", "D E F"],
    export: ["--csv"],
  };
  const isList = (offers: unknown): offers is readonly string[] => Array.isArray(offers);
  const misspelt = (words: readonly string[]) =>
    words.filter(({ length }) => length > 4).map((word) => [`${word.slice(0, -2)}${word.at(-1)}${word.at(-2)}`, word]);
  const lines = COMMANDS.flatMap(({ name, offers, options }) => [
    ...(isList(offers) ? misspelt(offers).map(([said, meant]) => [[name, said!], meant!] as const) : []),
    ...Object.entries(options).flatMap(([option, each]) =>
      isList(each.offers)
        ? misspelt(each.offers).map(
            ([said, meant]) => [[name, ...(NEEDS[name] ?? []), `--${option}`, said!], meant!] as const,
          )
        : [],
    ),
  ]);

  test("there are many", () => {
    expect(lines.length).toBeGreaterThan(60);
  });

  test.each(lines)("%j", async (argv, meant) => {
    const { status, stdout, stderr } = await daystave(argv, { files: { "a.practice": "2026-03-02\nD minor\n" } });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(`Did you mean “${meant}”?`);
  });

  test("a word of the journal that is offered reaches the terminal as it may", async () => {
    const files = { "a.practice": '2026-03-02\n"Walk\u202E one", at 60 clean\n' };
    expect((await daystave(["history", "--subject", "Walk on"], { files })).stderr).not.toContain("\u202E");
  });
});

describe("paths that are nearly right", () => {
  const files = { "week.practice": "", "2026/march.practice": "", "notes.txt": "" };
  test.each([
    ["weak.practice", "weak.practice: There is no such file or folder. Did you mean “week.practice”?"],
    ["week", "Did you mean “week.practice”?"],
    ["2026/mach.practice", "Did you mean “2026/march.practice”?"],
    ["2025", "Did you mean “2026”?"],
    ["note.txt", "note.txt: There is no such file or folder.\n"],
    ["gone/week.practice", "gone/week.practice: There is no such file or folder.\n"],
  ])("%s", async (path, says) => {
    const { status, stderr } = await daystave(["check", path], { files });
    expect(status).toBe(2);
    expect(stderr).toContain(says);
  });
});
