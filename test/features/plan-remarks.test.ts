import { expect, test } from "vitest";
import { completionsAt } from "../../server/features/completion/completion.ts";
import { hoverAt } from "../../server/features/hover/hover.ts";
import { documentSymbols } from "../../server/features/outline/document-symbols.ts";
import { preview } from "../../server/features/preview/preview.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import { bodySaidIn } from "../../server/journal/body-said.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { journalOf, URI } from "./journal-text.ts";

// `-- plan:` and `-- care:` are the plan's own words: whatever looks at remarks passes them over, and says the same
// with them as without. What they say here would be told wherever a remark is.

const TODAY = parseIsoDate("2026-03-09")!;
const LINES = `instrument alto recorder
set F major, thirds, slurred
2026-03-02 Mon, 10 min, plan
-- care: Yesterday you noted “sore left thumb”.
-- plan: Two days off: the wrist hurts.
groundwork, 10 min
  D minor, thirds, slurred, 8ths at 60 clean -- plan: tired
    -- plan: E to F is what breaks.
    -- PLAN: Longest ago: the hand was stiff.
  F major, thirds, slurred, 8ths at 72 clean, 5 min
    -- care: Stop at the first sign of pain.
lesson, 30 min
said: lighter
2026-03-09
  D minor, thirds, slurred, 8ths at 60`;

const lines = LINES.split("\n");
const without = lines.flatMap((line) => {
  const own = line.replace(/\s*-- (?:plan|care):.*$/i, "");
  return own === "" ? [] : [own];
});
const [withThem, bare] = [lines, without].map((each) => ({
  text: each.join("\n"),
  journal: journalOf(each.join("\n")),
}));

/** Both: with the plan's remarks, and without them. */
function both<T>(look: (journal: ReturnType<typeof journalOf>, text: string) => T): readonly [T, T] {
  return [look(withThem!.journal, withThem!.text), look(bare!.journal, bare!.text)];
}

function same<T>(look: (journal: ReturnType<typeof journalOf>, text: string) => T): void {
  const [found, expected] = both(look);
  expect(found).toEqual(expected);
}

const lastLine = (text: string) => ({ line: text.split("\n").length - 1, character: 4 });

test("they are nothing that was said of an entry; what somebody notes below them is", () => {
  const text = "2026-03-02\nD minor -- plan: Set\n-- care: Slowly.\n-- left thumb\n-- planned: nothing\n";
  const { entries } = journalOf(text).model(journalOf(text).files.get(URI)!.blocks[0]!);
  expect(entries.map(({ remarks }) => remarks)).toEqual([["left thumb", "planned: nothing"]]);
});

test("history and outline", () => {
  same((journal) =>
    [...journalHistory(journal).exercises.values()].map(({ key, lastDay, strands }) => [key, lastDay, strands.length]),
  );
  same((journal) => names(documentSymbols(journal, URI)));
});

test("hover and completion", () => {
  same((journal, text) => hoverAt(journal, URI, lastLine(text), { today: TODAY, explain: "none" })?.markdown);
  expect(both((journal, text) => hoverAt(journal, URI, lastLine(text), { today: TODAY })?.markdown)[0]).toContain(
    "Mon 2 Mar",
  );
  same((journal, text) =>
    completionsAt(journal, URI, { ...lastLine(text), character: 2 }, TODAY).map(({ label }) => label),
  );
});

test("preview, and in it the lesson", () => {
  same((journal) => JSON.stringify(preview(journal, { today: TODAY })).replaceAll(/"(line|hash)":("[^"]*"|\d+)/g, ""));
});

test("the body", () => {
  same((journal) => journal.files.get(URI)!.blocks.flatMap((block) => bodySaidIn(journal, block)));
});

function names(symbols: ReturnType<typeof documentSymbols>): readonly unknown[] {
  return symbols.map(({ name, detail, children }) => [name, detail, names(children)]);
}
