import { spawnSync } from "node:child_process";
import { cpSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CODES } from "../../server/checks/codes.ts";
import { COMMANDS } from "../../server/cli/commands.ts";
import { LISTS } from "../../server/cli/list/lists.ts";
import { CHORDS } from "../../server/music/chords/chord-kinds.ts";
import { KINDS } from "../../server/music/scales/kinds.ts";
import { ROOT } from "../architecture/source.ts";
import { TABLES, writtenJournals } from "../reference-journals/natural/written-lines.ts";
import { inTurns } from "../support/random-runs.ts";
import { type Files, temporaryFolder } from "../support/temporary-folder.ts";
import { type Around, daystave } from "./command-line.ts";
import { faultsIn, objectsIn, optionOf, SCHEMAS, schemaFor, schemasOf } from "./schemas.ts";

const WITH_JSON = COMMANDS.filter(({ options }) => "json" in options);
/** Those that read journals. */
const READERS = WITH_JSON.filter(({ most }) => most === Number.POSITIVE_INFINITY);

/** What a command line prints, which must be JSON; undefined where it says that it does not go with --json. */
async function printed(argv: readonly string[], around: Around): Promise<unknown> {
  const { stdout, stderr } = await daystave([...argv, "--json"], around);
  if (stdout === "" && stderr.includes("“--json”")) return undefined;
  if (stdout === "") throw new Error(`daystave ${argv.join(" ")} printed nothing. ${stderr}`);
  return JSON.parse(stdout);
}

/** Runs a command line and holds what it prints to its schema. */
async function check(argv: readonly string[], around: Around = {}) {
  const document = await printed(argv, around);
  expect(document, argv.join(" ")).toBeDefined();
  expect(faultsIn(document, schemaFor(argv)).slice(0, 5), argv.join(" ")).toEqual([]);
}

/** Where a command may write what it likes. */
function copyOf(folder: string): Around {
  const cwd = temporaryFolder();
  cpSync(join(ROOT, folder), cwd, { recursive: true });
  return { cwd };
}

describe("the schemas", () => {
  test("are there for every command with --json, and for nothing else", () => {
    expect(WITH_JSON.filter(({ name }) => !SCHEMAS.has(name)).map(({ name }) => name)).toEqual([]);
    const own = new Set(
      WITH_JSON.flatMap(({ name, options }) =>
        schemasOf(name).filter((schema) => (optionOf(schema, name) ?? "json") in options),
      ),
    );
    expect([...SCHEMAS.keys()].filter((name) => !own.has(name))).toEqual([]);
  });

  test.each([...SCHEMAS])("%s says what it is, closes every object and describes every property", (name, schema) => {
    expect(schema["$schema"]).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(schema["title"]).toBe(titleOf(name));
    const objects = [...objectsIn(schema)].filter(([, each]) => each["type"] === "object");
    expect(objects.length).toBeGreaterThan(0);
    for (const [keys, { properties, required, additionalProperties, description }] of objects) {
      const place = `${name}: ${keys.join("/")}`;
      expect(additionalProperties, place).toBe(false);
      expect(description, place).toMatch(/^[A-Z].*\.$/);
      expect(Object.keys(properties as object), place).toEqual(expect.arrayContaining(required as string[]));
      for (const [property, each] of Object.entries(properties as Record<string, Record<string, unknown>>))
        expect(each["description"] ?? definitionOf(each, schema), `${place} ${property}`).toMatch(/^[A-Z].*[.…]$/);
    }
  });
});

/** `daystave check --explain-lines --json`. */
function titleOf(schema: string): string {
  const { name } = WITH_JSON.find((command) => schemasOf(command.name).includes(schema))!;
  const option = optionOf(schema, name);
  return `daystave ${name}${option ? ` --${option}` : ""} --json`;
}

function definitionOf(each: { readonly [keyword: string]: unknown }, schema: object): unknown {
  const found = [...objectsIn(schema)].find(([keys]) => `#/${keys.join("/")}` === each["$ref"]);
  return found?.[1]["description"];
}

const ARGUMENT = /"([^"]*)"|'([^']*)'|(\S+)/g;
/** What a shell does with it, and what would be printed in place of JSON. */
const LEFT_OFF = /^daystave | (?:>>?|<|\|) .*| --(?:csv|json|sarif)\b/g;

/** The examples in the help of commands with --json. */
const EXAMPLES = WITH_JSON.flatMap(({ name, examples }) =>
  examples.filter(({ line }) => line.startsWith(`daystave ${name}`)).map(({ line }) => line.replace(LEFT_OFF, "")),
);

/** Where an example is tried: in a copy of the sample, and in an empty folder what begins a journal. */
function aroundFor([command]: readonly string[]): Around {
  return command === "init" ? { cwd: temporaryFolder() } : copyOf("samples/quickstart");
}

function argumentsIn(line: string): string[] {
  return [...line.matchAll(ARGUMENT)].map(([, double, single, word]) => double ?? single ?? word!);
}

describe("what is printed is as its schema has it", () => {
  test.each(EXAMPLES)("daystave %s", async (line) => {
    const argv = argumentsIn(line);
    const document = await printed(argv, aroundFor(argv));
    if (document !== undefined) expect(faultsIn(document, schemaFor(argv))).toEqual([]);
  });

  /** Each document of the commands that read journals, and what else may bear on it. */
  const LINES = [
    ...READERS.flatMap(({ name }) => schemasOf(name).map((schema) => [name, optionOf(schema, name)] as const)),
    ["history", "blank-weeks"] as const,
    ["format", "check"] as const,
  ].map(([name, option]) => (option === undefined ? [name] : [name, `--${option}`]));

  const JOURNALS = [
    ...[
      "samples/quickstart",
      "samples/pupils",
      "samples/theory",
      "samples/year",
      "samples/languages",
      "samples/errors",
    ],
    "test/reference/journals",
  ];
  for (const [turn, line] of LINES.entries()) {
    test.each(JOURNALS)(`daystave ${line.join(" ")}, in %s`, (folder) => check(line, copyOf(folder)));

    test.each(TABLES)(`daystave ${line.join(" ")}, for the players of %s`, async (table) => {
      for (const files of inTurns(writtenJournals(table), turn % 3, 3)) await check(line, { files });
    });
  }

  test("what was left out", async () => {
    const files: Files = { "a.practice": new Uint8Array([0]), "b.practice": "2026-03-02\n  D minor, at 60 clean\n" };
    for (const line of LINES) {
      const document = await printed(line, { files });
      expect(document).toMatchObject({ skipped: [{ path: "a.practice" }] });
      expect(faultsIn(document, schemaFor(line))).toEqual([]);
    }
  });

  test("what git would commit", async () => {
    const cwd = temporaryFolder({ "a.practice": "2026-03-02\n  D major, 3 sharps\n" });
    for (const argv of [
      ["init", "-q"],
      ["add", "."],
    ])
      spawnSync("git", argv, { cwd });
    const argv = ["check", "--staged"];
    const document = await printed(argv, { cwd });
    expect(document).toMatchObject({ summary: { files: 1, errors: 1 } });
    expect(faultsIn(document, schemaFor(argv))).toEqual([]);
  });

  test("every kind of scale and chord, from several notes, on an instrument", async () => {
    const around = copyOf("samples/quickstart");
    for (const tonic of ["C", "F#", "Bb", "D#"])
      for (const kind of [...KINDS.map(({ id }) => id), ...CHORDS.map(({ id }) => `${id} arpeggio`)])
        await check(["notes", `${tonic} ${kind}`], around);
  });

  test("every pattern and instrument that changes what is played", async () => {
    const exercises = ["thirds", "leaps", "sixths", "down, 2 octaves"].map((words) => `D melodic minor, ${words}`);
    const instruments = ["alto recorder", "tenor recorder", "clarinet in Bb", "violin", "alto voice"];
    for (const exercise of exercises)
      for (const instrument of instruments) await check(["notes", exercise, "--instrument", instrument]);
    for (const pitch of ["A=415", "A=442, Vallotti", "A=415, just on D"])
      await check(["notes", "D minor", "--pitch", pitch]);
  });

  test("a scale in cents, and one in German names", async () => {
    const files = { "journal.practice": 'scale "five equal": cents 0 240 480 720 960\n' };
    await check(["notes", 'C "five equal"'], { files });
    await check(["notes", "fis-Moll", "--names", "german"]);
  });

  test.each(LISTS)("daystave list %s", (name) => check(["list", name]));

  test.each(Object.keys(CODES))("daystave explain %s", (code) => check(["explain", code]));

  test("today, where the journal has it already", () =>
    check(["day", "--today", "2026-03-07"], copyOf("samples/quickstart")));

  test("notes of a scale, of none, of a chord", async () => {
    for (const notes of ["D E F G A Bb C#", "C C# D D# E F", "B D F Ab", "C", "C D E F# G# A#"])
      await check(["scales", "--notes", notes]);
  });
});

describe("a document that is wrong is found to be", () => {
  const SOUND: Readonly<Record<string, readonly string[]>> = {
    notes: ["notes", "D minor melodic, thirds", "--instrument", "alto recorder"],
    scales: ["scales", "--notes", "B D F Ab"],
  };

  /** A command line that prints much; else the first example that prints the document. */
  function soundFor(schema: string): readonly string[] {
    const known = SOUND[schema] ?? EXAMPLES.map(argumentsIn).find((argv) => schemaFor(argv) === schema);
    if (!known) throw new Error(`No help has an example that prints the document of ${schema}.json.`);
    return known;
  }

  test.each([...SCHEMAS])("%s: a property too many, one missing, one of another kind", async (name, schema) => {
    const argv = soundFor(name);
    const sound = await printed(argv, aroundFor(argv));
    expect(faultsIn(sound, name)).toEqual([]);
    const optional = optionalIn(schema);
    const missed: string[] = [];
    for (const [keys, object] of [...objectsIn(sound)].slice(0, MOST_OBJECTS)) {
      for (const [what, change] of wrongsOf(object, optional)) {
        const wrong = structuredClone(sound);
        change(at(wrong, keys));
        if (faultsIn(wrong, name).length === 0) missed.push(`${keys.join("/")}: ${what}`);
      }
    }
    expect(missed).toEqual([]);
  });

  const MOST_OBJECTS = 30;

  type Changeable = Record<string, unknown>;

  function at(document: unknown, keys: readonly string[]): Changeable {
    return keys.reduce((value, key) => (value as Changeable)[key], document) as Changeable;
  }

  function wrongsOf(object: object, optional: ReadonlySet<string>): [string, (object: Changeable) => void][] {
    const keys = Object.keys(object);
    return [
      ["one too many", (each) => Object.assign(each, { unheardOf: 1 })],
      ...keys
        .filter((key) => !optional.has(key))
        .map((key): [string, (each: Changeable) => void] => [`${key} missing`, (each) => delete each[key]]),
      ...keys.map((key): [string, (each: Changeable) => void] => [
        `${key} of another kind`,
        (each) => Object.assign(each, { [key]: { unheardOf: 1 } }),
      ]),
    ];
  }

  /** The properties that some object of a schema may do without. */
  function optionalIn(schema: object): ReadonlySet<string> {
    const names = [...objectsIn(schema)].flatMap(([, { properties, required }]) =>
      Object.keys((properties as object | undefined) ?? {}).filter((name) => !(required as string[]).includes(name)),
    );
    return new Set(names);
  }
});
