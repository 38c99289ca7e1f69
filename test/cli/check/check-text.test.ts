import fc from "fast-check";
import stringWidth from "string-width";
import { describe, expect, test } from "vitest";
import { FEW } from "../../support/random-runs.ts";
import { daystave } from "../command-line.ts";

const FILES = {
  "a.practice": "2026-03-02 Tue\n  F# major: F# G# A# B C# D# F F#\n  Sound freer today.\n",
  "日曜.practice": "2026-03-02 Mon\n  H major, 8ths at 60\n  D minor: D E F# G A Bb C D\n",
};
const ESCAPE = "\u001B";

/** The lines of a report on a terminal, without the summary. */
async function onTerminal(env: Record<string, string>, files: Record<string, string> = FILES) {
  const { stdout } = await daystave(["check"], { files, isTerminal: true, columns: 160, env });
  return stdout.split("\n").slice(0, -2);
}

test("on a terminal the columns of a file stand below each other, by display width", async () => {
  const severityColumn = (line: string) => stringWidth(line.slice(0, line.search(/\b(?:error|warning|information) /)));
  const messageColumn = (line: string) => stringWidth(/^\S+ +\S+ +\S+ +/.exec(line)![0]);
  const lines = await onTerminal({ NO_COLOR: "1" });
  for (const file of Object.keys(FILES)) {
    const own = lines.filter((line) => line.startsWith(file));
    expect(own.length).toBeGreaterThan(1);
    expect(new Set(own.map(severityColumn)).size).toBe(1);
    expect(new Set(own.map(messageColumn)).size).toBe(1);
  }
});

describe("colour", () => {
  test("on a terminal", async () => {
    expect((await onTerminal({})).join("\n")).toContain(`${ESCAPE}[31merror`);
  });

  test.each<Record<string, string>>([{ NO_COLOR: "1" }, { TERM: "dumb" }])("not with %o", async (env) => {
    expect((await onTerminal(env)).join("\n")).not.toContain(ESCAPE);
  });

  test("an empty NO_COLOR is none (no-color.org)", async () => {
    expect((await onTerminal({ NO_COLOR: "" })).join("\n")).toContain(ESCAPE);
  });

  test("not into a file or pipe", async () => {
    expect((await daystave(["check"], { files: FILES })).stdout).not.toContain(ESCAPE);
  });
});

/** Unicode: general category Cc, and the bidirectional controls of UAX #9, section 2. */
const RAW = /[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/;

test("control and bidirectional characters of a journal never reach the terminal raw", async () => {
  const hostile = fc.constantFrom(
    "\u001B",
    "\u009B",
    "\u0007",
    "\u0000",
    "\u202E",
    "\u2066",
    "\u200F",
    "\u061C",
    "\u007F",
  );
  const word = fc
    .array(fc.oneof(hostile, fc.constantFrom("D minor", '"', "x", ", ", "at 60 ", "♯")))
    .map((all) => all.join(""));
  await fc.assert(
    fc.asyncProperty(word, word, async (subject, terms) => {
      const text = `2026-03-02 ${terms}\n  ${subject}, ${terms}\n  D minor, ${subject}\n`;
      for (const argv of [["check"], ["check", "--json"], ["check", "--sarif"], ["history"], ["history", "--json"]]) {
        const { stdout, stderr } = await daystave([...argv, "-"], {
          stdin: text,
          isTerminal: true,
          env: { NO_COLOR: "1" },
        });
        expect(stdout + stderr).not.toMatch(RAW);
      }
    }),
    { seed: 5, numRuns: FEW },
  );
});

test("what is escaped in JSON is the same text when it is read", async () => {
  const { stdout } = await daystave(["check", "--json"], { files: { "a\u202Eb.practice": "" } });
  expect(stdout).toContain("a\\u202Eb.practice");
  expect(JSON.parse(stdout).files[0].path).toBe("a\u202Eb.practice");
});
