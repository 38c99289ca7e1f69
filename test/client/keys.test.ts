import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

interface Bound {
  readonly command: string;
  readonly key: string;
  readonly when: string;
  readonly mac?: string;
  readonly linux?: string;
  readonly win?: string;
}

const { contributes } = JSON.parse(readFileSync("package.json", "utf8"));
const bound: readonly Bound[] = contributes.keybindings;

const SYSTEMS = ["windows", "linux", "macos"] as const;
/** The keys that the editor has by itself, of the oldest that we support and a current one; see test/reference/README.md. */
const VERSIONS = ["1.91.1", "1.137.0"];

interface Taken {
  readonly systems: string;
  readonly key: string;
  readonly command: string;
  readonly when: string;
}

function takenIn(version: string): readonly Taken[] {
  const [, ...rows] = readFileSync(`test/reference/default-keys-${version}.tsv`, "utf8").trimEnd().split("\n");
  return rows.map((row) => {
    const [systems = "", key = "", command = "", when = ""] = row.split("\t");
    return { systems, key, command, when };
  });
}

/** Its modifiers in one order; of a chord of two keys the first, after which the editor waits for the second. */
function first(key: string): string {
  const parts = key.toLowerCase().split(" ")[0]!.split("+");
  return [...parts.slice(0, -1).sort(), parts.at(-1)].join("+");
}

/** What takes a key on a system; whatever is asked for there, a text editor may be in that state too. */
function takers(rows: readonly Taken[], system: string, key: string): readonly string[] {
  return rows
    .filter((row) => row.systems.split(" ").includes(system) && first(row.key) === first(key))
    .map(({ command }) => command);
}

test("New Day and Repeat Entry a Notch Faster have a key each, the same on every system, in journals alone", () => {
  expect(bound.map(({ command }) => command)).toEqual(["daystave.newDay", "daystave.repeatFaster"]);
  expect(new Set(bound.map(({ key }) => first(key))).size).toBe(bound.length);
  for (const each of bound) {
    expect([each.mac, each.linux, each.win]).toEqual([undefined, undefined, undefined]);
    expect(each.when).toBe("editorTextFocus && editorLangId == practice-journal && !editorReadonly");
  }
});

test("they are keys that every layout has, and none that AltGr writes with", () => {
  for (const { key } of bound) expect(key).toMatch(/^(?:shift\+)?f\d{1,2}$/);
});

describe.each(VERSIONS)("the editor's own keys, %s", (version) => {
  const rows = takenIn(version);

  test.each(SYSTEMS)("leave them free on %s, in whatever state a text editor is", (system) => {
    // The tables are those: keys that each editor has there.
    expect(takers(rows, system, "F8")).toContain("editor.action.marker.nextInFiles");
    expect(takers(rows, system, system === "macos" ? "cmd+k" : "ctrl+k").length).toBeGreaterThan(20); // of two keys
    for (const { key } of bound) expect(takers(rows, system, key)).toEqual([]);
  });
});
