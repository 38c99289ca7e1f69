import { cpSync, existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { Ajv } from "ajv";
import addFormats from "ajv-formats";
import { describe, expect, test } from "vitest";
import { version } from "../../../package.json";
import { CODES, MEANINGS } from "../../../server/checks/codes.ts";
import { ROOT } from "../../architecture/source.ts";
import published from "../../reference/sarif-2.1.0-rtm.5.json";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave, recordingIo } from "../command-line.ts";

// Against the text of OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, March 2020, sections
// named; and against its schema, see test/reference/README.md.

async function check(files: Record<string, string | Uint8Array>) {
  const { stdout, status } = await daystave(["check", "--sarif"], { files });
  const log = JSON.parse(stdout);
  expect(faultsIn(log)).toEqual([]);
  return { log, status, run: log.runs[0], results: log.runs[0].results };
}

/** The schema is of draft 4, and in draft 7 it means the same but for these two: it has no exclusive minimum. */
const { id: _, $schema, ...schema } = published;
// A pattern of it is a regular expression only without Unicode.
const ajv = addFormats(new Ajv({ strict: false, allErrors: true, unicodeRegExp: false }));
const validate = ajv.compile(schema);

/** What is wrong with a log, by the published schema. */
function faultsIn(log: unknown): unknown[] {
  return validate(log) ? [] : validate.errors!.slice(0, 5);
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
  expect(run.artifacts).toEqual([{ location: { uri: "a.practice", uriBaseId: "%SRCROOT%" } }]);
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
          artifactLocation: { uri: "a.practice", uriBaseId: "%SRCROOT%" },
          region: { startLine: 2, startColumn: 30, endLine: 2, endColumn: 31 },
        },
      },
    ],
    partialFingerprints: { "dayAndLine/v1": expect.stringMatching(/^[0-9a-f]{32}$/) },
    fixes: [
      {
        description: { text: expect.any(String) },
        artifactChanges: [
          {
            artifactLocation: { uri: "a.practice", uriBaseId: "%SRCROOT%" },
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
          message: { text: "It is a binary file: it contains a NUL character." },
          locations: [{ physicalLocation: { artifactLocation: { uri: "a.practice", uriBaseId: "%SRCROOT%" } } }],
        },
      ],
    },
  ]);
});

test("paths are URI references from a base that is not named (3.4.3, 3.14.14)", async () => {
  const { run } = await check({ "März 100%/a b.practice": "" });
  expect(run.artifacts).toEqual([{ location: { uri: "M%C3%A4rz%20100%25/a%20b.practice", uriBaseId: "%SRCROOT%" } }]);
  expect(run.originalUriBaseIds).toEqual({ "%SRCROOT%": { description: { text: expect.any(String) } } });
});

test("absolute paths are file URIs, and need no base", async () => {
  const place = join(temporaryFolder({ "a.practice": WRONG }), "a.practice");
  const log = JSON.parse((await daystave(["check", "--sarif", place])).stdout);
  expect(faultsIn(log)).toEqual([]);
  expect(log.runs[0].artifacts).toEqual([{ location: { uri: pathToFileURL(place).href } }]);
});

describe("the published schema", () => {
  test("holds for a log with every code", async () => {
    const cwd = temporaryFolder();
    cpSync(join(ROOT, "samples/errors"), cwd, { recursive: true });
    const log = JSON.parse((await daystave(["check", "--sarif", "--today", "2026-06-01"], { cwd })).stdout);
    expect(faultsIn(log)).toEqual([]);
    const found = new Set(log.runs[0].results.map(({ ruleId }: { ruleId: string }) => ruleId));
    expect(Object.keys(CODES).filter((code) => !found.has(code))).toEqual([]);
  });

  test("holds for text from elsewhere", async () => {
    const { stdout } = await daystave(["check", "--sarif", "-"], { stdin: WRONG });
    expect(faultsIn(JSON.parse(stdout))).toEqual([]);
  });

  test("finds what is wrong", async () => {
    const { log } = await check({ "a.practice": WRONG });
    const wrong = structuredClone(log);
    wrong.runs[0].results[0].locations[0].physicalLocation.region.startLine = 0;
    wrong.runs[0].tool.driver.rules[0].helpUri = "FORMAT.md#bad-date";
    wrong.runs[0].columnKind = "bytes";
    expect(validate(wrong)).toBe(false);
    expect(new Set(validate.errors!.map(({ keyword }) => keyword))).toEqual(new Set(["minimum", "format", "enum"]));
  });
});

describe("a rule (3.49)", () => {
  interface Rule {
    readonly id: string;
    readonly helpUri: string;
    readonly shortDescription: Text;
    readonly fullDescription: Text;
    readonly help: Text;
  }
  interface Text {
    readonly text: string;
    readonly markdown: string;
  }
  const rulesOf = async () => (await check({ "a.practice": "" })).run.tool.driver.rules as readonly Rule[];

  test("says what it means, why it is reported, what to do, and shows an example", async () => {
    const rule = (await rulesOf()).find(({ id }) => id === "scale-spelling")!;
    expect(rule.shortDescription.text).toBe("A listed note has the right pitch under the wrong letter.");
    expect(rule.fullDescription.text).toMatch(/^The pitch is right and the letter is not\. .* is E#\.$/);
    expect(rule.help.text).toBe(
      "Take the spelling that is offered: “E#”.\n\nFor example, this is reported:\n\n2026-03-02 Mon\nF# major: F# G# A# B C# D# F F#",
    );
    expect(rule.help.markdown).toContain("offered: `E#`.\n");
    expect(rule.help.markdown).toMatch(/\n```text\n2026-03-02 Mon\n.*\n```$/);
  });

  test.each(Object.keys(CODES) as (keyof typeof CODES)[])("%s has all of it, in plain text too", async (code) => {
    const { shortDescription, fullDescription, help } = (await rulesOf()).find(({ id }) => id === code)!;
    expect(shortDescription.markdown).toBe(`${MEANINGS[code]}.`);
    const told = fullDescription.text + help.text.split("\n\nFor example")[0];
    expect(told).not.toMatch(/`|\*\*|\]\(/);
    for (const { text } of [shortDescription, fullDescription]) expect(text).toMatch(/^[^a-z].{9,}[.)]$/s);
    expect(help.text).toContain("\n\nFor example, this is reported:\n\n");
  });

  test("has a help link to its section in the package's own reference", async () => {
    const links = (await rulesOf()).map(({ id, helpUri }) => [id, new URL(helpUri)] as const);
    for (const [, link] of links) expect(existsSync(fileURLToPath(link.href.split("#")[0]!))).toBe(true);
    const page = readFileSync(join(ROOT, "syntaxes/FORMAT.md"), "utf8");
    for (const [id, { hash }] of links) {
      expect(page).toContain(`](${hash})`); // the page's own list links to it, which test/architecture holds
      expect(hash.replace(/-1$/, "")).toBe(`#${id}`);
    }
  });

  test("has its texts and no link where the pages are not there", async () => {
    const { run } = await import("../../../server/cli/program.ts");
    for (const pages of [undefined, temporaryFolder()]) {
      const io = { ...recordingIo({ files: { "a.practice": WRONG } }), pages };
      await run(["check", "--sarif"], io);
      const log = JSON.parse(io.written.stdout);
      expect(faultsIn(log)).toEqual([]);
      expect(log.runs[0].tool.driver.rules[0]).toHaveProperty("fullDescription");
      expect(log.runs[0].tool.driver.rules[0]).not.toHaveProperty("helpUri");
    }
  });
});

describe("a fingerprint (3.27.17) knows a finding again", () => {
  const DAY = "2026-03-02 Mon\n  D major, 3 sharps\n";

  /** The fingerprints of a file's results, in the order of the text. */
  async function known(text: string): Promise<readonly string[]> {
    const { results } = await check({ "a.practice": text });
    return results.map(
      (each: { partialFingerprints: Record<string, string> }) => each.partialFingerprints["dayAndLine/v1"],
    );
  }

  test("after lines and days have come in above it", async () => {
    const before = await known(DAY);
    expect(before).toHaveLength(1);
    expect(await known(`-- a remark\n\n2026-03-01 Sun\n  F major, slow\n\n${DAY}`)).toEqual(before);
  });

  test("when it is indented otherwise, or its weekday is left out", async () => {
    expect(await known("2026-03-02\n\tD major,  3 sharps  \n")).toEqual(await known(DAY));
  });

  test("beside the same line on a newer day, which is another finding", async () => {
    const [newer, older] = await known(`${DAY.replace("02 Mon", "03 Tue")}${DAY}`);
    expect(older).toBe((await known(DAY))[0]);
    expect(newer).not.toBe(older);
  });

  test("and tells two of a day, or of a line, from each other", async () => {
    const twice = await known(`${DAY}  D major, 3 sharps\n  F major: F G A B C D E# F\n`);
    expect(new Set(twice).size).toBe(twice.length);
    expect(twice.length).toBeGreaterThanOrEqual(4);
  });

  test("but not when the line says something else", async () => {
    expect(await known(DAY.replace("3", "4"))).not.toEqual(await known(DAY));
  });
});
