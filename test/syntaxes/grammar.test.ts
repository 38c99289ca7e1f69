import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { parseGrammarTestCase, runGrammarTestCase } from "vscode-tmgrammar-test/dist/unit/index.js";
import { INSTRUMENTS } from "../../server/music/instruments/instruments.ts";
import { GRAMMAR, grammar, registry, SCOPE, tokens } from "./grammar.ts";

const FIXTURES = join(import.meta.dirname, "fixtures");

/** Runs a fixture: lines of a journal, each followed by `--  ^^^ scopes` for what stands above the carets. */
async function check(fixture: string): Promise<string[]> {
  const failures = await runGrammarTestCase(registry, parseGrammarTestCase(fixture));
  return failures.map(({ line, start, end, missing, unexpected }) => {
    return `line ${line + 1}, columns ${start} to ${end}: missing ${missing.join(" ")}, unexpected ${unexpected.join(" ")}`;
  });
}

for (const file of readdirSync(FIXTURES).sort()) {
  test(`colours ${file}`, async () => {
    expect(await check(readFileSync(join(FIXTURES, file), "utf8"))).toEqual([]);
  });
}

test("a fixture with a wrong expectation fails", async () => {
  const wrong = `-- SYNTAX TEST "${SCOPE}"\nD major, slow\n--       ^^^^ string.quoted.double.practice\n`;
  expect(await check(wrong)).toHaveLength(1);
});

test("every instrument that is known has its colour behind `on`, by each of its names", () => {
  const names = INSTRUMENTS.flatMap((instrument) => instrument.names);
  const coloured = (name: string) =>
    tokens(`  D minor, on ${name}, slow`).find(({ scopes }) => scopes.includes("entity.name.type.instrument.practice"));
  expect(names.filter((name) => coloured(name)?.text !== name)).toEqual([]);
});

test("what a theme knows: every scope begins with a standard name", () => {
  const standard = /^(comment|constant|entity|keyword|markup|meta|punctuation|source|string|support|variable)\./;
  const names = [...readFileSync(GRAMMAR, "utf8").matchAll(/"(?:name|contentName)": "([^"]+)"/g)].map(
    (match) => match[1]!,
  );
  const scopes = names.filter((name) => name !== "Practice journal").flatMap((name) => name.split(" "));
  expect(scopes.length).toBeGreaterThan(50);
  expect(scopes.filter((scope) => !standard.test(scope) || !scope.endsWith(".practice"))).toEqual([]);
});

/** Words and signs that the grammar's expressions look for, so that random lines run deep into them. */
const PIECES = (
  "D F# B♭ b x minor melodic scale arpeggio thirds octaves 8ths 16ths slurred slur 2+1+1 t-k-t LSSS at 60 60-72 quarter= ♩=72 1/4.=60 bpm clean 5x 4/5 of in a row " +
  'focus sore with on recorder bars 17-32 and mvt letter 2 10 min 1h20 6# steps TTST notes E5 : , > → | -- — - " “ ” « ( . ! 2026-03-02 plan rest session piece aim set by fa dièse mineur'
).split(" ");
const line = (pieces: number) =>
  fc
    .array(fc.tuple(fc.constantFrom(...PIECES), fc.constantFrom(" ", " ", " ", "", ", ")), { maxLength: pieces })
    .map((parts) => parts.flat().join(""));

test("tokens cover a line without gaps, whatever stands on it", () => {
  fc.assert(
    fc.property(line(40), (text) => {
      expect(
        tokens(text)
          .map((token) => token.text)
          .join(""),
      ).toBe(text);
    }),
    { seed: 1 },
  );
});

test("nothing that a line leaves open reaches the next one", () => {
  fc.assert(
    fc.property(fc.oneof(line(20), fc.string({ maxLength: 60 })), (text) => {
      const { ruleStack } = grammar.tokenizeLine(text.replace(/[\r\n]/g, " "), null);
      const [first] = grammar.tokenizeLine("2026-03-02 Mon", ruleStack).tokens;
      expect(first!.scopes).toEqual([
        SCOPE,
        "meta.day.practice",
        "markup.heading.day.practice",
        "entity.name.section.day.practice",
      ]);
    }),
    { seed: 2 },
  );
});

/** The longest line that is read, in UTF-16 units. */
const LONGEST_LINE = 4096;
/** Fifty times what the slowest of these lines took on two busy cores (20 ms); an expression that runs away takes minutes. */
const LIMIT_MS = 1000;

test("no line of the greatest length makes an expression run away", { timeout: 60_000 }, () => {
  const hostile = [
    " ",
    "A",
    "A ",
    "A,",
    "1 ",
    "- ",
    "t-",
    "T ",
    "bars 1-2, ",
    "a b c ",
    "long tones on A ",
    ...PIECES.filter((piece) => /\W/.test(piece)),
  ];
  for (const opening of ["", "D minor: ", "Courante, ", 'piece "A": ']) {
    for (const piece of hostile) {
      const text = (opening + piece.repeat(LONGEST_LINE)).slice(0, LONGEST_LINE);
      const { stoppedEarly } = grammar.tokenizeLine(text, null, LIMIT_MS);
      expect({ opening, piece, stoppedEarly }).toEqual({ opening, piece, stoppedEarly: false });
    }
  }
});
