import fc from "fast-check";
import { expect, test } from "vitest";
import { definitionsAt } from "../../../server/features/navigation/definition.ts";
import { highlightsAt } from "../../../server/features/navigation/highlights.ts";
import { journalSymbols } from "../../../server/features/navigation/journal-symbols.ts";
import type { Location } from "../../../server/features/navigation/named.ts";
import { isCalled } from "../../../server/features/navigation/named.ts";
import { referencesAt } from "../../../server/features/navigation/references.ts";
import { underCursor } from "../../../server/features/navigation/under-cursor.ts";
import { atOnce } from "../../../server/journal/at-once.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import { titleIndex } from "../../../server/journal/titles/journal-titles.ts";
import type { Position } from "../../../server/syntax/document/document.ts";
import { phraseKey } from "../../../server/syntax/words/fold.ts";
import { FEW } from "../../support/random-runs.ts";
import { FILES, journalOf, journalTexts, textAt } from "./journals.ts";

// What leads from one place to others agrees wherever it is asked, and every place has a text that names the thing.

/** Every place of a journal that stands on something, a few columns of each line. */
function cursors(journal: Journal): readonly { readonly uri: string; readonly position: Position }[] {
  return FILES.flatMap((uri) =>
    journal.files.get(uri)!.blocks.flatMap((block, i) =>
      block.lines.flatMap((text, line) =>
        [0, 3, 8, 14, 22, text.length].map((character) => ({
          uri,
          position: { line: journal.files.get(uri)!.starts[i]! + line, character },
        })),
      ),
    ),
  );
}

function keyOf({ uri, range: { start, end } }: Location): string {
  return [uri, start.line, start.character, end.line, end.character].join();
}

test("references name the thing, hold its definition, and are the same from each of them", () => {
  let names = 0;
  fc.assert(
    fc.property(journalTexts, fc.nat(), (texts, which) => {
      const journal = journalOf(texts);
      const standing = cursors(journal).filter(({ uri, position }) => underCursor(journal, uri, position));
      if (standing.length === 0) return;
      const { uri, position } = standing[which % standing.length]!;
      const { subject } = underCursor(journal, uri, position)!;
      const all = atOnce(referencesAt(journal, uri, position, { includeDeclaration: true }));
      const keys = all.map(keyOf);
      expect(new Set(keys).size).toBe(keys.length);
      for (const definition of atOnce(definitionsAt(journal, uri, position))) expect(keys).toContain(keyOf(definition));
      const uses = atOnce(referencesAt(journal, uri, position, { includeDeclaration: false })).map(keyOf);
      expect(keys.filter((each) => uses.includes(each))).toEqual(uses);
      const lit = highlightsAt(journal, uri, position).map(({ range }) => keyOf({ uri, range }));
      expect(keys).toEqual(expect.arrayContaining(lit));
      if (subject.type !== "name") return;
      names++;
      const { kind, name } = subject.name;
      const { short = "" } = journal.vocabulary.declared.titles.find(({ title }) => title === name) ?? {};
      for (const each of all) {
        const text = textAt(journal, each);
        const isPart = kind === "title" && phraseKey(name).includes(phraseKey(text));
        expect(isPart || isCalled(text, name) || isCalled(text, short) || kind === "instrument").toBe(true);
      }
      for (const { uri: other, range } of [all[0]!, all.at(-1)!]) {
        const there = atOnce(referencesAt(journal, other, range.start, { includeDeclaration: true }));
        expect(there.map(keyOf)).toEqual(keys);
      }
    }),
    { seed: 73, numRuns: FEW },
  );
  expect(names).toBeGreaterThan(FEW / 5);
});

test("highlights are made without waiting, and are those of the read journal where no day teaches a title", () => {
  fc.assert(
    fc.property(journalTexts, fc.nat(), (texts, which) => {
      const [fresh, read] = [journalOf(texts), journalOf(texts)];
      const all = cursors(read);
      const { uri, position } = all[which % all.length]!;
      const soon = highlightsAt(fresh, uri, position);
      if (titleIndex(read).learnt.length > 0) return;
      if (underCursor(read, uri, position)?.subject.type !== "name") return;
      expect(soon).toEqual(highlightsAt(read, uri, position));
    }),
    { seed: 74, numRuns: FEW },
  );
});

test("every symbol stands in the file, and a day by its date finds that day", () => {
  fc.assert(
    fc.property(journalTexts, fc.constantFrom("", "frog", "2026-03-09", "g", "zz"), (texts, query) => {
      const journal = journalOf(texts);
      for (const symbol of atOnce(journalSymbols([journal], query))) {
        expect(textAt(journal, symbol)).not.toBe("");
        if (symbol.kind === "title") expect(phraseKey(textAt(journal, symbol))).toContain(phraseKey(symbol.name));
        if (symbol.kind === "day" && query.startsWith("2026")) expect(symbol.name).toBe(query);
      }
    }),
    { seed: 75, numRuns: FEW },
  );
});
