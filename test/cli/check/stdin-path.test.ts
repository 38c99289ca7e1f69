import { describe, expect, test } from "vitest";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

const JOURNAL = {
  "journal.practice": 'names german\npattern "zigzag": 1 3 2 4\n',
  "may/week.practice": "2026-03-02 Mon\nh-Moll, slow\n",
  "other/journal.practice": "names english\n",
};

describe("standard input as a file", () => {
  test("it is shown by that path, and read with the declarations of its journal", async () => {
    const text = '2026-03-03 Tue\nh-Moll, "zigzag", slow\nfis-Moll: fis gis a h cis d f fis\n';
    const { status, stdout } = await daystave(["check", "-", "--stdin-path", "may/new.practice"], {
      files: JOURNAL,
      stdin: text,
    });
    expect([status, stdout]).toEqual([
      1,
      "may/new.practice:3:29 error scale-note fis-Moll natürlich has E, not F: its seventh degree takes the letter E.\n1 file: 1 error.\n",
    ]);
  });

  test("another journal's declarations do not count", async () => {
    const around = { files: JOURNAL, stdin: "2026-03-03 Tue\nH minor, slow\n" };
    expect((await daystave(["check", "-", "--stdin-path", "may/x.practice"], around)).stdout).not.toContain(
      "unknown-key",
    );
    expect((await daystave(["check", "-", "--stdin-path", "other/x.practice", "--json"], around)).stdout).toContain(
      "unknown-key",
    );
  });

  test("it takes the place of what is on the disk, and stands beside the other files", async () => {
    const cwd = temporaryFolder({ ...JOURNAL, "may/x.practice": "2026-03-04 Wed\nF# majr: F\n" });
    const check = (stdin: string) => daystave(["check", "-", "--stdin-path", `${cwd}/may/x.practice`], { cwd, stdin });
    expect((await check("2026-03-04 Wed\n")).stdout).toBe("1 file: nothing found.\n");
    expect((await check("2026-03-02 Mon\n")).stdout).toContain(`${cwd}/may/x.practice:1:1 warning duplicate-day`);
  });

  test("JSON has its path, too", async () => {
    const { stdout } = await daystave(["check", "-", "--stdin-path", "a.practice", "--json"], {
      stdin: "2026-03-02\n",
    });
    expect(JSON.parse(stdout).files).toEqual([{ path: "a.practice", diagnostics: [] }]);
  });

  test("what is laid out goes to standard output, and nothing is written", async () => {
    const { stdout, stderr, file } = await daystave(["format", "-", "--stdin-path", "a.practice"], {
      files: { "a.practice": "2026-03-02 Mon\nG major,slow\n" },
      stdin: "2026-03-02 Mon\nD minor,slow\n",
    });
    expect([stdout, stderr]).toEqual(["2026-03-02 Mon\nD minor, slow\n", ""]);
    expect(file("a.practice")).toBe("2026-03-02 Mon\nG major,slow\n");
  });
});

describe("what cannot be", () => {
  test.each([
    [["check", "--stdin-path", "a.practice"], "“--stdin-path” says which file standard input is, so it goes with - as"],
    [["format", "a.practice", "--stdin-path", "a.practice"], "it goes with - as PATH."],
    [["check", "-", "--stdin-path", "may"], "“--stdin-path may”: It is a folder; name a file."],
    [["check", "-", "--stdin-path"], "“--stdin-path” needs a value: --stdin-path PATH."],
  ])("%j", async (argv, says) => {
    const { status, stdout, stderr } = await daystave(argv, { files: JOURNAL });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
  });
});
