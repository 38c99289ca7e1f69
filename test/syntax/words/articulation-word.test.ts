import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { attemptsOfJournal } from "../../../server/history/attempts.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import type { MeaningOf } from "../../../server/syntax/words/meaning.ts";
import { TERMS } from "../../../server/syntax/words/terms.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { tokens } from "../../syntaxes/grammar.ts";
import { read } from "../line/print.ts";

const TODAY = parseIsoDate("2026-03-02")!;
const OPENING = "D minor, ";

/** The section of the format reference that names them all. */
const REFERENCE = readFileSync(join(import.meta.dirname, "../../../syntaxes/FORMAT.md"), "utf8")
  .split("\n### Articulations\n")[1]!
  .split("\n### ")[0]!;

/** The rows of the table, by their first word. */
const ROWS = TERMS.flatMap(({ words, meaning, sentence }) =>
  meaning.type === "articulation" ? [{ words, first: words[0]!, meaning, sentence }] : [],
);

/** A day with one line, and the place right behind it. */
function dayOf(line: string) {
  return { journal: journalOf(`2026-03-02 Mon\n${line}\n`), behind: { line: 1, character: line.length } };
}

function articulationsOn(line: string): MeaningOf<"articulation">[] {
  const entry = read(line);
  const items = entry.type === "entry" ? entry.items : [];
  return items.flatMap(({ meaning }) => (meaning.type === "articulation" ? [meaning] : []));
}

test("the table has the words that everyone uses", () => {
  const words = ROWS.flatMap((row) => row.words);
  expect(words).toEqual(expect.arrayContaining(["slurred", "legato", "tongued", "staccato"]));
});

describe("where would I add a new articulation word? In a row of the table of its family, as is", () => {
  describe.each(ROWS)("$first", ({ words, first, meaning, sentence }) => {
    test("then a line is read with it", () => {
      for (const word of words) expect(articulationsOn(`${OPENING}${word}, slow`)).toEqual([meaning]);
    });

    test("then completion offers it, by the first word of its row", () => {
      const { journal, behind } = dayOf(OPENING + first.slice(0, 3));
      expect(completionsAt(journal, URI, behind, TODAY).map(({ label }) => label)).toContain(first);
    });

    test("then the hover explains it by its sentence", () => {
      const { journal, behind } = dayOf(OPENING + first);
      expect(hoverAt(journal, URI, behind, { today: TODAY })?.markdown).toBe(sentence);
    });

    test("then the history knows how it was tongued", () => {
      const { journal } = dayOf(`${OPENING}${first}, 8ths at 60 clean`);
      expect(attemptsOfJournal(journal).map(({ tonguing }) => tonguing)).toEqual([meaning.tonguing]);
    });

    test("add it to the grammar, which colours it", () => {
      for (const word of words) {
        const coloured = (line: string) =>
          tokens(line).find(({ scopes }) => scopes.includes("support.constant.articulation.practice"))?.text;
        expect(coloured(`  ${OPENING}${word}, slow`)).toBe(word);
        expect(coloured(`usual articulation ${word}`)).toBe(word);
      }
    });

    test("add it to the format reference, which names it", () => {
      for (const word of words) expect(REFERENCE).toContain(`\`${word}\``);
    });
  });
});
