import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { askedFixesIn } from "../../../server/features/diagnostics/asked-fixes.ts";
import { languageOf } from "../../../server/features/diagnostics/other-language.ts";
import { WordsOfLanguages } from "../../../server/journal/words-of-languages.ts";
import { edited, journalOf, URI } from "../journal-text.ts";

const DAY = "2026-03-02\n";
const TITLE = /^Declare names (\S+) /;

/** The text after the language that is offered for its last line was declared; undefined where none is. */
function declared(text: string): string | undefined {
  const place = { line: text.split("\n").length - 1, character: 0 };
  const found = askedFixesIn(journalOf(text), URI, { start: place, end: place }).find(({ title }) => TITLE.test(title));
  return found && edited(text, found.edits);
}

describe("a line in another language offers its declaration", () => {
  test.each([
    ["german", "Tonleiter C-Dur gebunden, langsam, sauber"],
    ["french", "Gamme de do majeur, lié, propre"],
    ["dutch", "toonladder van G, gebonden, schoon"],
    ["italian", "scala di do maggiore, legato, pulito, lento"],
    ["spanish", "escala de do mayor, ligado, limpio"],
    ["german", "D minor, at 72 sauber"],
    ["french", "D minor 72 propre"],
  ])("%s", (language, line) => expect(declared(DAY + line)).toBe(`names ${language}\n${DAY}${line}`));

  test("not where a language is declared", () => {
    expect(declared(`names english\n${DAY}Tonleiter C-Dur gebunden, sauber`)).toBeUndefined();
    expect(declared(`names german\n${DAY}Gamme de do majeur, lié, propre`)).toBeUndefined();
  });
  test("not for one word alone, as a title may be", () => {
    expect(declared(`${DAY}Menuett, bars 1-8`)).toBeUndefined();
    expect(declared(`${DAY}Tonleiter`)).toBeUndefined();
  });
  test("not where a word is English only", () =>
    expect(declared(`${DAY}Tonleiter C-Dur gebunden, with the metronome`)).toBeUndefined());
  test("not where the words belong to two languages", () =>
    expect(declared(`${DAY}Tonleiter gebunden, Gamme lié`)).toBeUndefined());
  test("not for what a remark says", () =>
    expect(declared(`${DAY}D minor, slurred -- Tonleiter gebunden, sauber`)).toBeUndefined());
  test("not above the first day", () => expect(declared("Tonleiter gebunden, sauber")).toBeUndefined());
});

/** Lines of invented players, and in what language each player names notes: test/reference/README.md. */
const PLAYERS = ["natural-lines", "new-hands", "more-hands"].flatMap((name) => {
  const read = (file: string): string => readFileSync(new URL(`../../reference/${file}`, import.meta.url), "utf8");
  const players: Readonly<Record<string, { readonly names: string | null }>> = JSON.parse(read(`${name}.json`));
  const rows = read(`${name}.tsv`).split("\n").slice(1).filter(Boolean);
  return rows.map((row) => {
    const [player, , line] = row.split("\t");
    return { line: line!, names: players[player!]!.names ?? "english" };
  });
});

test("what players wrote is never taken for another language than theirs, and half of it is known", () => {
  const tables = new WordsOfLanguages();
  const offers = PLAYERS.map(({ line, names }) => ({ line, names, offered: languageOf(line, tables) }));
  expect(offers.filter(({ names, offered }) => offered !== undefined && offered !== names)).toEqual([]);
  const foreign = offers.filter(({ names }) => names !== "english");
  const known = foreign.filter(({ offered }) => offered !== undefined);
  expect(known.length / foreign.length).toBeGreaterThan(0.5);
});
