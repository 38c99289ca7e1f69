import { expect, test } from "vitest";
import { version } from "../../../package.json";
import { CODES } from "../../../server/checks/codes.ts";
import { daystave } from "../command-line.ts";

// Against the text of OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, March 2020; sections
// named.

async function check(files: Record<string, string | Uint8Array>) {
  const { stdout, status } = await daystave(["check", "--sarif"], { files });
  const log = JSON.parse(stdout);
  return { log, status, run: log.runs[0], results: log.runs[0].results };
}

const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n  Sound freer today.\n";

test("one run of this version, with every code as a rule (3.13, 3.18, 3.19.23)", async () => {
  const { log, run, status } = await check({ "a.practice": WRONG });
  expect(status).toBe(1);
  expect(log.version).toBe("2.1.0");
  expect(log.runs).toHaveLength(1);
  expect(run.tool.driver).toMatchObject({ name: "Daystave", version });
  expect(run.tool.driver.rules.map(({ id }: { id: string }) => id)).toEqual(Object.keys(CODES));
  expect(run.columnKind).toBe("utf16CodeUnits");
  expect(run.artifacts).toEqual([{ location: { uri: "a.practice" } }]);
});

test("a result has its rule, level, message and place: lines and columns from 1, the end behind the last (3.27, 3.30)", async () => {
  const { results, run } = await check({ "a.practice": WRONG });
  expect(results[0]).toEqual({
    ruleId: "scale-spelling",
    ruleIndex: run.tool.driver.rules.findIndex(({ id }: { id: string }) => id === "scale-spelling"),
    level: "warning",
    message: { text: "F# major has E#, not F: its seventh degree takes the letter E." },
    locations: [
      {
        physicalLocation: {
          artifactLocation: { uri: "a.practice" },
          region: { startLine: 2, startColumn: 30, endLine: 2, endColumn: 31 },
        },
      },
    ],
    fixes: [
      {
        description: { text: expect.any(String) },
        artifactChanges: [
          {
            artifactLocation: { uri: "a.practice" },
            replacements: [
              {
                deletedRegion: { startLine: 2, startColumn: 30, endLine: 2, endColumn: 31 },
                insertedContent: { text: "E#" },
              },
            ],
          },
        ],
      },
    ],
  });
});

test("advice is a note (3.27.10)", async () => {
  const { results } = await check({ "a.practice": WRONG });
  expect(results.map(({ level }: { level: string }) => level)).toEqual(["warning", "note"]);
});

test("what was left out is a notification (3.20.21)", async () => {
  const { run } = await check({ "a.practice": new Uint8Array([0]) });
  expect(run.results).toEqual([]);
  expect(run.invocations).toEqual([
    {
      executionSuccessful: true,
      toolExecutionNotifications: [
        {
          level: "warning",
          message: { text: "It is a binary file: it holds a NUL character." },
          locations: [{ physicalLocation: { artifactLocation: { uri: "a.practice" } } }],
        },
      ],
    },
  ]);
});

test("paths are URI references (3.4.3)", async () => {
  const { run } = await check({ "März 100%/a b.practice": "" });
  expect(run.artifacts).toEqual([{ location: { uri: "M%C3%A4rz%20100%25/a%20b.practice" } }]);
});
