import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import { completionsAt, explainCompletion } from "../../../server/features/completion/completion.ts";
import type { CompletionItem } from "../../../server/features/types.ts";
import { recordsAt } from "../../../server/history/attempts.ts";
import { journalHistory } from "../../../server/history/journal-history.ts";
import type { Strand } from "../../../server/history/strands.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { practisedLine } from "../../../server/plan/practised-line.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { times } from "../../support/random-runs.ts";
import { edited, journalText } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-03-09")!;
const MARKER_URI = "file:///journal/journal.practice";
const WEEK_URI = "file:///journal/week.practice";

/** Invented. */
const MARKER = `player Noor
instrument alto recorder
instrument tenor recorder
piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84, due 2026-05-09
`;

/** Invented. Four weeks back is 2026-02-09. */
const DAYS = `2026-01-12 Mon
  G harmonic minor, tongued, 8ths at 72 clean
  E major, thirds, slurred, 8ths at 80 clean

2026-02-16 Mon
  F major, in fourths, slurred, quavers at 84 clean

2026-03-02 Mon
  Bb major arpeggio, 2 octaves, slurred, at 44 slips
  Ground, bars 1-8, at 84 easy
  D minor melodic, thirds, slurred, 8ths at 60 clean, focus finger changes

2026-03-06 Fri
  D minor melodic, thirds, slurred, 8ths at 63 clean, 66 clean 5 in a row, 72 uneven, 10 min -- better
  Ground, bars 17-32, at 60 clean
  A minor, slow
  C major, thirds, on tenor recorder, 16ths at half=40 clean

`;

/** Whether the history was read before somebody began to type. */
type History = "with the history at hand" | "without";

interface Typed {
  readonly journal: Journal;
  readonly text: string;
  readonly line: number;
  readonly items: readonly CompletionItem[];
}

/** What is offered at the cursor mark on a line of a new day behind the days before; the history is that of those. */
function typing(
  marked: string,
  { days = DAYS, history = "with the history at hand" as History, marker = MARKER } = {},
): Typed {
  const before = `${days}2026-03-09 Mon\n`;
  const read = new Journal(
    "file:///journal",
    new Map([
      [MARKER_URI, createDocument(marker)],
      [WEEK_URI, createDocument(before)],
    ]),
  );
  if (history === "with the history at hand") journalHistory(read);
  const text = before + marked.replace("‸", "");
  const journal = read.with(WEEK_URI, createDocument(text));
  const lines = (before + marked.split("‸")[0]!).split("\n");
  const line = lines.length - 1;
  const items = completionsAt(journal, WEEK_URI, { line, character: lines.at(-1)!.length }, TODAY);
  return { journal, text, line, items };
}

/** The whole lines among the offers, in their order. */
function wholeLines({ items }: Typed): string[] {
  return items.filter(({ resolve }) => resolve?.topic === "start").map(({ label }) => label);
}

function check(marked: string, expected: readonly string[], given?: Parameters<typeof typing>[1]): void {
  expect(wholeLines(typing(marked, given))).toEqual(expected);
}

/** The beginning of the list. */
function checkFirst(marked: string, expected: readonly string[]): void {
  expect(
    typing(marked)
      .items.slice(0, expected.length)
      .map(({ label }) => label),
  ).toEqual(expected);
}

function item(marked: string, label: string, given?: Parameters<typeof typing>[1]): CompletionItem {
  const found = typing(marked, given).items.find((each) => each.label === label);
  expect(found, `${label} is offered at ${marked}`).toBeDefined();
  return found!;
}

/** The line after the item with a label was taken. */
function checkTaken(marked: string, label: string, expected: string): void {
  const { text, line } = typing(marked);
  expect(edited(text, [item(marked, label).edit]).split("\n")[line]).toBe(expected);
}

const D_MELODIC = "D minor melodic, thirds, slurred, 8ths at 52";

test("a line that goes on with the one above it is offered in the words of that one, from where it got to", () => {
  const days = "2026-03-06 Fri\n  F major, slurred, 8ths at 60 clean\n  same, 8ths at 66 clean\n";
  check("‸", ["F major, slurred, 8ths at 63"], { days });
});

test("an empty line of a day opens with a handful of what was practised lately, each with where to start today", () => {
  checkFirst("  ‸", [
    D_MELODIC,
    "C major, thirds, on tenor recorder, 16ths at half=38",
    "A minor",
    "Ground, bars 17-32, at 58",
    "Bb major arpeggio, 2 octaves, slurred",
    "F major, in fourths, slurred, quavers at 76",
  ]);
  expect(wholeLines(typing("  ‸"))).toHaveLength(6);
});

test("what the day has already is left out, and what rests comes after: first what a piece in hand stands on", () => {
  check("  D minor melodic, thirds, tongued, 8ths at 60 clean\n  Ground, bars 1-8, at 84 easy\n  A minor, slow\n  ‸", [
    "C major, thirds, on tenor recorder, 16ths at half=38",
    "Bb major arpeggio, 2 octaves, slurred",
    "F major, in fourths, slurred, quavers at 76",
    "G harmonic minor, tongued, 8ths at 63",
    "E major, thirds, slurred, 8ths at 69",
  ]);
});

test("a line is found by what it begins with, or by the usual name of its subject", () => {
  check("  D min‸", [D_MELODIC]);
  check("  D mel‸", [D_MELODIC]);
  check("  d mi‸", [D_MELODIC]);
  check("  Gr‸", ["Ground, bars 17-32, at 58", "Ground, bars 1-8, at 80"]);
  check("  B♭ ma‸", ["B♭ major arpeggio, 2 octaves, slurred"]);
  check("  F ‸", ["F major, in fourths, slurred, quavers at 76"]);
  check("  H‸", []);
  checkFirst("  D mel‸", [D_MELODIC, "D melodic minor"]);
});

test("what is typed is replaced, and a remark behind it stays", () => {
  checkTaken("  D mel‸", D_MELODIC, `  ${D_MELODIC}`);
  checkTaken("  - D mel‸", D_MELODIC, `  - ${D_MELODIC}`);
  checkTaken("  ‸", D_MELODIC, `  ${D_MELODIC}`);
  checkTaken("  D mel‸ -- calmly", D_MELODIC, `  ${D_MELODIC} -- calmly`);
  checkTaken('  "Gr‸"', "Ground, bars 1-8, at 80", "  Ground, bars 1-8, at 80");
});

test("a day that has phases offers whole lines first too, then the phases that it has not", () => {
  const labels = typing("groundwork, 15 min\n‸").items.map(({ label }) => label);
  expect(labels[0]).toBe(D_MELODIC);
  expect(labels.indexOf("warm-up")).toBeLessThan(labels.indexOf("groundwork"));
});

test("the tempo is a notch below the last reached, from four fifths of a steady one, and lower after a gap", () => {
  const once = (day: string, words: string): string => `${day}\n  D minor, slurred, ${words}\n\n`;
  check("  D‸", ["D minor, slurred, at 63"], { days: once("2026-03-08", "at 66 clean, 72 slips") });
  check("  D‸", ["D minor, slurred, at 66"], { days: once("2026-03-08", "at 67 clean") });
  check("  D‸", ["D minor, slurred, at 60"], { days: once("2026-02-23", "at 66 clean") });
  check("  D‸", ["D minor, slurred, at 52"], { days: once("2026-02-09", "at 66 clean") });
  check("  D‸", ["D minor, slurred, at 28"], { days: once("2026-03-08", "at 30 clean") });
  check("  D‸", ["D minor, slurred, at 56"], { days: once("2026-03-08", "at 72 clean 4 of 5, 76 clean") });
  check("  D‸", ["D minor, slurred"], { days: once("2026-03-08", "at 66 slips") });
  check("  D‸", ["D minor, slurred"], { days: once("2026-03-08", "slow, clean") });
});

test("the line is that of the note value written last, whatever the tempo was reached in", () => {
  const days = "2026-03-07\n  D minor, 8ths at 80 clean\n\n2026-03-08\n  D minor, 16ths at 44 slips\n\n";
  check("  D‸", ["D minor, 16ths at 38"], { days });
  check("  D‸", ["D minor, at 76"], {
    days: "2026-03-08\n  D minor, at 80 clean\n\n",
    marker: `${MARKER}note value 8ths\n`,
  });
});

test("ways of playing that change within a line are lines of their own", () => {
  const days = "2026-03-08\n  D minor, thirds, slurred, 8ths at 60 clean, tongued at 72 clean\n\n";
  check("  D‸", ["D minor, thirds, tongued, 8ths at 69", "D minor, thirds, slurred, 8ths at 58"], { days });
  expect(wholeLines(typing("  ‸", { days }))).toHaveLength(1);
});

test("a line too long for a list is left out", () => {
  const scale = "C5 D5 E5 F5 G5 A5 B5 C6";
  const notes = (times: number): string => `notes ${Array.from({ length: times }, () => scale).join(" ")}`;
  check("  notes‸", [`${notes(4)}, at 58`], { days: `2026-03-08\n  ${notes(4)}, at 60 clean\n\n` });
  check("  notes‸", [], { days: `2026-03-08\n  ${notes(6)}, at 60 clean\n\n` });
});

test("days that lie ahead do not count", () => {
  check("  D‸", ["D minor, at 58"], {
    days: "2026-03-08\n  D minor, at 60 clean\n\n2026-03-20\n  D minor, at 90 clean\n\n",
  });
  check("  D‸", [], { days: "2026-03-20\n  D minor, at 90 clean\n\n" });
});

test("beside a line stands when its tempo was reached, and asked it tells where to start", () => {
  const told = (marked: string, label: string): [string | undefined, string | undefined] => {
    const { detail, resolve } = item(marked, label);
    return [detail, explainCompletion(typing(marked).journal, resolve!)];
  };
  expect(told("  D mel‸", D_MELODIC)).toEqual([
    "3 days ago",
    "Start at 52. Steady at 66. You last reached 66, 3 days ago.",
  ]);
  expect(told("  F ‸", "F major, in fourths, slurred, quavers at 76")).toEqual([
    "21 days ago",
    "Start at 76. You last reached 84, 21 days ago.",
  ]);
  expect(told("  E‸", "E major, thirds, slurred, 8ths at 69")).toEqual([
    "56 days ago",
    "Start at 69. You last reached 80, 56 days ago.",
  ]);
  expect(told("  A‸", "A minor")).toEqual([
    "3 days ago",
    "No tempo reached yet. Start where it feels easy and note it: `at 60 clean`.",
  ]);
  const days = "2026-03-08\n  D minor, at 67 clean\n\n";
  const { resolve } = item("  D‸", "D minor, at 66", { days });
  expect(explainCompletion(typing("  ‸").journal, resolve!)).toBe("Start at 66. You last reached 67, yesterday.");
  expect(explainCompletion(typing("  ‸").journal, { topic: "start", key: "67 <b>" })).toBeUndefined();
});

test("no whole line is offered where none may stand", () => {
  for (const marked of [
    "  -- D mel‸",
    "Felt D mel‸",
    "  D minor, ‸",
    "  D mel‸, slurred",
    "  ‸D minor",
    "aim D mel‸",
    "set D mel‸",
    "2026-03-10 ‸",
  ])
    check(marked, []);
});

test("without a history at hand no whole line is offered, and none is read for it", () => {
  check("  ‸", [], { history: "without" });
  check("  D mel‸", [], { history: "without" });
});

test("offers are those of the last history that was made until there is a newer one", () => {
  const { journal, line } = typing("  C minor, thirds, at 60 clean\n  ‸");
  const position = { line, character: 2 };
  const labels = (): string[] => completionsAt(journal, WEEK_URI, position, TODAY + 1).map(({ label }) => label);
  expect(labels()).not.toContain("C minor, thirds, at 58");
  journalHistory(journal);
  const next = journal.with(
    WEEK_URI,
    createDocument(`${DAYS}2026-03-09\n  C minor, thirds, at 60 clean\n\n2026-03-10\n  `),
  );
  const last = next.files.get(WEEK_URI)!.lineCount - 1;
  const offered = completionsAt(next, WEEK_URI, { line: last, character: 2 }, TODAY + 1);
  expect(offered.map(({ label }) => label)).toContain("C minor, thirds, at 58");
});

test("a line with several subjects is offered once, from where the one practised last got to", () => {
  const days = "2026-03-05 Thu\n  F maj, C maj, G maj, 8ths at 63 clean\n\n2026-03-06 Fri\n  A minor, slow\n\n";
  check("  ‸", ["A minor", "F maj, C maj, G maj, 8ths at 60"], { days });
  check("  F maj, C maj, G maj, slow\n  ‸", ["A minor"], { days });
  const later = "2026-03-07 Sat\n  C major, 8ths at 60 clean\n\n";
  check("  C maj‸", ["C major, 8ths at 58"], { days: days + later });
  check("  F maj‸", ["F maj, C maj, G maj, 8ths at 60"], { days: days + later });
});

/** Every line that can be written, put in behind the last day of the last file: how many, and of how many strands. */
function checkReadBack(texts: ReadonlyMap<string, string>): { readonly written: number; readonly strands: number } {
  const journal = new Journal("file:///j", new Map([...texts].map(([uri, text]) => [uri, createDocument(text)])));
  const uri = [...texts.keys()].at(-1)!;
  const strands = [...journalHistory(journal).exercises.values()].flatMap(({ strands }) => strands);
  const today = Math.max(TODAY, ...strands.map(({ records }) => records.at(-1)!.day)) + 1;
  let written = 0;
  for (const strand of strands) {
    const line = practisedLine(journal, journal.conventions(uri), strand, today, { kind: "usual" });
    if (!line) continue;
    written++;
    const document = createDocument(`${texts.get(uri)}\n\n${isoDate(today)}\n  ${line.text} clean`);
    const read = recordsAt(journal.with(uri, document), uri, document.lineCount - 1);
    const own = line.subject.type === "several" ? read.filter((each) => each.subjectKey === subjectOf(strand)) : read;
    expect([line.text, ...own.map(({ strandKey }) => strandKey)]).toEqual([line.text, strand.key]);
  }
  return { written, strands: strands.length };
}

function subjectOf({ records }: Strand): string {
  return records[0]!.subjectKey;
}

// test/reference/journals and samples/year: invented journals in four ways of typing.
const FOLDERS = [
  ...readdirSync("test/reference/journals")
    .filter((name) => !name.includes("."))
    .map((name) => `test/reference/journals/${name}`),
  "samples/year",
];

test.each(FOLDERS)("every strand of %s can be written, and is read as that strand again", (folder) => {
  const names = readdirSync(folder).filter((name) => name.endsWith(".practice"));
  const texts = new Map(names.map((name) => [`file:///j/${name}`, readFileSync(`${folder}/${name}`, "utf8")]));
  const { written, strands } = checkReadBack(texts);
  expect(strands).toBeGreaterThan(0);
  expect(written).toBe(strands);
});

test("whatever the journal, what is written for a strand is read as that strand again", () => {
  let all = 0;
  fc.assert(
    fc.property(journalText, (text) => {
      all += checkReadBack(new Map([[WEEK_URI, `2026-03-01\n${text}`]])).written;
    }),
    { seed: 20260310 },
  );
  expect(all).toBeGreaterThan(times(20));
});

test("on the day after a pain lines are offered without a tempo, and asked it tells why", () => {
  const days = "2026-03-08\n  D minor, at 66 clean, sore left thumb\n\n";
  check("  D‸", ["D minor"], { days });
  const { resolve } = item("  D‸", "D minor", { days });
  expect(explainCompletion(typing("  ‸").journal, resolve!)).toBe(
    "Written without a tempo: yesterday you noted “sore left thumb”.",
  );
});
