import { describe, expect, test } from "vitest";
import { completionsAt, explainCompletion } from "../../../server/features/completion/completion.ts";
import type { CompletionItem } from "../../../server/features/types.ts";
import { journalHistory } from "../../../server/history/journal-history.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { lineAt } from "../../../server/syntax/document/document.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { englishLeft } from "../english-left.ts";
import { GERMAN_JOURNAL, sampleJournals } from "../journals.ts";

// What stands beside an offer and what explains it is German; what is written is in the journal's own words.

const TODAY = parseIsoDate("2026-04-06")!;

interface Offered extends CompletionItem {
  readonly explained: string;
}

/** What is offered at each of some characters of a line, below a text, with what is said of each. */
function offeredIn(text: string, line: string, characters = [line.length]): readonly Offered[] {
  const journal = journalOf(`${text}\n${line}`);
  journalHistory(journal);
  const document = journal.files.get(URI)!;
  return characters
    .flatMap((character) => completionsAt(journal, URI, { line: document.lineCount - 1, character }, TODAY))
    .map((item) => ({ ...item, explained: (item.resolve && explainCompletion(journal, item.resolve)) ?? "" }));
}

function offered(marked: string, label: string, text = "2026-04-06 Mon"): Offered | undefined {
  return offeredIn(text, marked).find((each) => each.label === label);
}

describe("beside an offer stands in German", () => {
  const played = "2026-04-01 Wed\n  D minor, 8ths at 60 clean, 63 clean\n2026-04-06 Mon";

  test.each([
    ["  D natural mi", "D natural minor", "natürliches Moll, 1 b"],
    ["  D minor: D", "D E F G A Bb C D", "aufwärts"],
    ["  D minor: ", "1 flat", "Vorzeichen"],
    ["  C major, at 60 clean, ", "63", "eine Metronomstufe schneller"],
    ["  C major, at 60 clean, ", "58", "eine Metronomstufe langsamer"],
    ["  C major, ", "at 60", "ein Schlag pro Sekunde"],
  ])("%j: %s is %s", (marked, label, detail) => {
    expect(offered(marked, label)?.detail).toBe(detail);
  });

  test("where to start, and why", () => {
    const line = offeredIn(played, "  D").find(({ label }) => label.startsWith("D minor, "));
    expect(line?.detail).toBe("vor 5 Tagen");
    expect(line?.explained).toMatch(/^Fang mit \d+ an\. .*Zuletzt hast du 63 erreicht, vor 5 Tagen\.$/);
  });

  test("on a day of pain why there is no tempo, with whom to ask", () => {
    const line = offeredIn(`${played}\n  thumb hurts`, "  D").find(({ label }) => label.startsWith("D minor"));
    expect(line?.explained).toMatch(/^Ohne Tempo geschrieben: heute hast du „thumb hurts“ notiert\.$/);
  });

  test("a day", () => {
    expect(offeredIn("2026-04-01 Wed\n", "2026").map(({ label, detail }) => [label, detail])).toEqual([
      ["2026-04-06 Mon", "heute"],
      ["2026-04-07 Tue", "morgen"],
    ]);
  });
});

test.each([
  ["  C major, thi", "thirds", "Terzen: jeder Ton und die Terz darüber, 1 3 2 4."],
  ["  C major, slur", "slurred", "Nur der erste Ton wird angestoßen; den Rest trägt der Atem."],
  ["  C major, on alto rec", "on alto recorder", "Altblockflöte: notiert von F4 bis G6."],
  ["  D har", "D harmonic minor", "Harmonisches Moll: natürliches Moll mit erhöhter siebter Stufe"],
])("%j: %s is explained in German", (marked, label, words) => {
  expect(offered(marked, label)?.explained).toContain(words);
});

test("what is written in the journal is in its own words", () => {
  expect(offered("  D minor: ", "1 flat")?.edit.newText).toBe("1 flat");
  expect(offered("2026-04-0", "2026-04-07 Tue", "2026-04-01 Wed\n")?.edit.newText).toBe("2026-04-07 Tue");
});

test("no English is left beside any offer in a German journal or a sample, nor in what explains it", () => {
  const left = [GERMAN_JOURNAL, ...sampleJournals().slice(0, 12)].flatMap((text) => {
    const lines = [...new Set([...journalOf(text).files.get(URI)!.blocks].flatMap(({ lines: own }) => own))];
    const journal = journalOf(text);
    journalHistory(journal);
    const document = journal.files.get(URI)!;
    const found = lines.flatMap((_, line) => {
      const { length } = lineAt(document, line);
      return [length, Math.floor(length / 2), 3].flatMap((character) =>
        completionsAt(journal, URI, { line, character: Math.min(character, length) }, TODAY),
      );
    });
    const words = new Set(journal.vocabulary.own.flatMap((phrase) => phrase.words));
    /** Another way to say what is offered. */
    const isWord = (detail = "") => words.has(detail);
    const said = new Set<string>();
    for (const { label, detail, resolve } of found)
      said.add(
        `${detail === label || isWord(detail) ? "" : detail} | ${(resolve && explainCompletion(journal, resolve)) ?? ""}`,
      );
    return [...said].flatMap((each) => {
      const english = englishLeft(each, text);
      return english.length > 0 ? [`${english.join(" ")}: ${each}`] : [];
    });
  });
  expect([...new Set(left)]).toEqual([]);
});
