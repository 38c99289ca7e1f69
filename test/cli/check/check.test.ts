import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, test } from "vitest";
import type { CheckReport } from "../../../server/cli/check/check-report.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { diskReader } from "../../../server/host/node/file-reader.ts";
import { canonicalUri } from "../../../server/host/uri.ts";
import { Workspace } from "../../../server/host/workspace.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { type Files, temporaryFolder } from "../../support/temporary-folder.ts";
import { type Around, daystave } from "../command-line.ts";

const SAMPLES = fileURLToPath(new URL("../../../samples/", import.meta.url));
const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n";

/** What `check` prints of these files, and its status. */
async function check(argv: string[], files: Files, stdout: string, status: number) {
  const outcome = await daystave(["check", ...argv], { files });
  expect(outcome.stdout).toBe(stdout);
  expect(outcome.status).toBe(status);
}

async function json(argv: string[], around: Around) {
  const { status, stdout, stderr } = await daystave(["check", "--json", ...argv], around);
  expect(stdout).toMatch(/^[^\n]+\n$/);
  const report = JSON.parse(stdout) as CheckReport;
  return { status, stderr, report, paths: report.files.map(({ path }) => path) };
}

describe("as text", () => {
  test("one finding a line, lines and columns from 1, and a summary", () =>
    check(
      [],
      { "week.practice": WRONG },
      "week.practice:2:30 warning scale-spelling F# major has E#, not F: its seventh degree takes the letter E.\n1 file: 1 warning.\n",
      1,
    ));

  test("nothing found", () =>
    check([], { "week.practice": "2026-03-02 Mon\n  D minor, slurred\n" }, "1 file: nothing found.\n", 0));

  test("advice does not make it fail", () =>
    check(
      [],
      { "week.practice": "2026-03-02\n  D# major\n" },
      "week.practice:2:3 information theoretical-key D# major would need 9 sharps (F and C double sharp). Its usual name is Eb major, 3 flats.\n1 file: 1 piece of advice.\n",
      0,
    ));

  test("hints are counted, and nothing more", () =>
    check([], { "week.practice": "2026-03-02\n  Sound freer today.\n" }, "1 file: 1 hint.\n", 0));

  test("no files", () => check([], {}, "No files: nothing found.\n", 0));

  test("paths are as they were given", async () => {
    const files = { "a/b/x.practice": WRONG, "y.practice": WRONG };
    for (const [given, path] of [
      [["./a/"], "./a/b/x.practice"],
      [["a/b/x.practice"], "a/b/x.practice"],
      [["./y.practice"], "./y.practice"],
      [["a"], "a/b/x.practice"],
    ] as const) {
      expect((await daystave(["check", ...given], { files })).stdout).toMatch(path);
    }
  });
});

test("--today decides what lies ahead", async () => {
  const files = { "a.practice": "2026-03-12 Thu\n  D minor, slurred\n" };
  const codes = async (today: string) =>
    (await json(["--today", today], { files })).report.files[0]!.diagnostics.map(({ code }) => code);
  expect(await codes("2026-03-10")).toEqual(["future-day"]);
  expect(await codes("2026-03-12")).toEqual([]);
});

describe("as JSON", () => {
  test("lines and characters from 0, with fixes", async () => {
    const { status, report } = await json([], { files: { "week.practice": WRONG } });
    expect(status).toBe(1);
    expect(report).toEqual({
      files: [
        {
          path: "week.practice",
          diagnostics: [
            {
              code: "scale-spelling",
              severity: "warning",
              range: { start: { line: 1, character: 29 }, end: { line: 1, character: 30 } },
              message: "F# major has E#, not F: its seventh degree takes the letter E.",
              fixes: [
                {
                  title: expect.any(String),
                  safe: expect.any(Boolean),
                  edits: [
                    { range: { start: { line: 1, character: 29 }, end: { line: 1, character: 30 } }, newText: "E#" },
                  ],
                },
              ],
            },
          ],
        },
      ],
      skipped: [],
      summary: { files: 1, errors: 0, warnings: 1, information: 0, hints: 0 },
    });
  });

  test("every file read is listed, also with nothing found", async () => {
    const { paths } = await json([], { files: { "b.practice": "", "a/c.practice": "", ".x/d.practice": "" } });
    expect(paths).toEqual(["a/c.practice", "b.practice"]);
  });

  test("--json and --sarif exclude each other", async () => {
    expect((await daystave(["check", "--json", "--sarif"])).status).toBe(2);
  });
});

describe("which files", () => {
  const files = {
    "noor/journal.practice": 'pattern "zigzag": 1 3 2 4\n',
    "noor/2026/march.practice": '2026-03-02 Mon\n  D minor, "zigzag"\n',
    "noor/2026/again.practice": "2026-03-01 Sun\n  D minor\n",
    "eli/journal.practice": "instrument oboe\n",
    "eli/march.practice": '2026-03-02 Mon\n  D minor, "zigzag"\n',
  };
  const codesOf = async (...paths: string[]) => {
    const { report } = await json(paths, { files });
    return report.files.map(({ path, diagnostics }) => [path, ...diagnostics.map(({ code }) => code)].join(" "));
  };

  test("a file named alone is read with the names of the journal around it, and listed alone", async () => {
    expect(await codesOf("noor/2026/march.practice")).toEqual(["noor/2026/march.practice"]);
  });

  test("journals in one folder know nothing of each other", async () => {
    expect(await codesOf("eli/march.practice", "noor")).toEqual([
      "eli/march.practice unknown-pattern",
      "noor/2026/again.practice",
      "noor/2026/march.practice",
      "noor/journal.practice",
    ]);
  });

  test("from within a journal, what stands above counts", async () => {
    const { report } = await json(["march.practice"], { cwd: join(temporaryFolder(files), "noor/2026") });
    expect(report.files).toEqual([{ path: "march.practice", diagnostics: [] }]);
  });

  test("a file that is named twice, or also by a link, is listed once", async () => {
    const linked = { "a.practice": "", "b.practice": { linkTo: "a.practice" } };
    expect((await json(["a.practice", ".", "b.practice", "./a.practice"], { files: linked })).paths).toEqual([
      "a.practice",
    ]);
  });

  test("a file of another name is read when it is named", async () => {
    expect((await json(["a.txt"], { files: { "a.txt": "2026-03-02\n" } })).paths).toEqual(["a.txt"]);
  });

  test("no such path: nothing is checked", async () => {
    const { status, stdout, stderr } = await daystave(["check", "a.practice", "gone"], { files: { "a.practice": "" } });
    expect({ status, stdout, stderr }).toEqual({
      status: 2,
      stdout: "",
      stderr: "daystave: gone: There is no such file or folder.\n",
    });
  });

  test("behind -- an argument that begins with a hyphen is a path", async () => {
    expect((await json(["--", "-a.practice"], { files: { "-a.practice": "" } })).paths).toEqual(["-a.practice"]);
  });
});

describe("standard input", () => {
  test("is read under the path -", async () => {
    const { report, status } = await json(["-"], { stdin: WRONG });
    expect(status).toBe(1);
    expect(report.files.map(({ path, diagnostics }) => [path, diagnostics[0]?.code])).toEqual([
      ["-", "scale-spelling"],
    ]);
  });

  test("knows the declarations of the journal that the current folder stands in", async () => {
    const around = {
      files: { "journal.practice": 'pattern "zigzag": 1 3 2 4' },
      stdin: '2026-03-02\n  D minor, "zigzag"',
    };
    const { report } = await json(["-"], around);
    expect(report.files).toEqual([{ path: "-", diagnostics: [] }]);
  });

  test("may be no text", async () => {
    const { report, stderr } = await json(["-"], { stdin: new Uint8Array([0, 1]) });
    expect(report.skipped).toEqual([{ path: "-", reason: "It is a binary file: it contains a NUL character." }]);
    expect(stderr).toContain("- was left out.");
  });
});

test("binary files and other encodings are named and left out; the rest decides the status", async () => {
  const files = { "a.practice": new Uint8Array([0x44, 0]), "b.practice": new Uint8Array([0xe9]), "c.practice": "" };
  const { status, stderr, report, paths } = await json([], { files });
  expect(status).toBe(0);
  expect(paths).toEqual(["c.practice"]);
  expect(report.skipped.map(({ path }) => path)).toEqual(["a.practice", "b.practice"]);
  expect(stderr).toBe(
    "daystave: a.practice was left out. It is a binary file: it contains a NUL character.\ndaystave: b.practice was left out. It is not UTF-8 text. Save it again with the encoding UTF-8.\n",
  );
});

test("everything is exactly what the editor shows, for every sample", async () => {
  const today = "2026-03-10";
  const errors = readdirSync(join(SAMPLES, "errors")).map((name) => `errors/${name}`);
  for (const folder of ["quickstart", ...errors]) {
    const cwd = join(SAMPLES, folder);
    const workspace = new Workspace(diskReader, { changed() {}, skipped() {} });
    workspace.setFolders([pathToFileURL(cwd).href]);
    await workspace.walk();
    const { report } = await json(["--today", today], { cwd });
    expect(report.files.length).toBeGreaterThan(0);
    for (const { path, diagnostics } of report.files) {
      const key = canonicalUri(pathToFileURL(join(cwd, path)).href);
      const shown = diagnosticsOf(workspace.journalOf(key)!, key, parseIsoDate(today)!);
      expect(diagnostics, `${folder}/${path}`).toEqual(JSON.parse(JSON.stringify(shown)));
    }
  }
});
