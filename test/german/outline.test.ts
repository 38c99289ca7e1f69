import { expect, test } from "vitest";
import { documentSymbols } from "../../server/features/outline/document-symbols.ts";
import { outlineTexts } from "../../server/features/outline/outline-texts.ts";
import { PATTERNS, VARIANTS } from "../../server/music/patterns/pattern.ts";
import { journalOf, URI } from "../features/journal-text.ts";

test("beside an exercise of the outline stands its pattern in German", () => {
  const [day] = documentSymbols(journalOf("2026-04-01 Wed\nC major, thirds alternating, at 60\n"), URI);
  expect(day!.children.map(({ name, detail }) => [name, detail])).toEqual([["C major", "Terzen, abwechselnd"]]);
});

test("every pattern has its name", () => {
  const ids = [...PATTERNS, ...VARIANTS].map(({ id }) => id);
  expect(ids.filter((id) => outlineTexts.pattern(id, undefined) === id)).toEqual([]);
});
