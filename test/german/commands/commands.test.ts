import { describe, expect, test } from "vitest";
import { changeNames } from "../../../server/features/commands/change-names.ts";
import { commandTexts } from "../../../server/features/commands/command-texts.ts";
import { dateAboveIn } from "../../../server/features/commands/date-above.ts";
import { declareTitle, declareTitleIn } from "../../../server/features/commands/declare-title.ts";
import { fingerChange } from "../../../server/features/commands/finger-change.ts";
import { lastTime } from "../../../server/features/commands/last-time.ts";
import { moveYear } from "../../../server/features/commands/move-year.ts";
import { nameNotesIn } from "../../../server/features/commands/name-notes.ts";
import { newDay } from "../../../server/features/commands/new-day.ts";
import { repeatEntry } from "../../../server/features/commands/repeat-entry.ts";
import { respell, respellIn } from "../../../server/features/commands/respell.ts";
import { keepBothSides, settleConflictIn } from "../../../server/features/commands/settle-conflict.ts";
import { takeOutPlanIn } from "../../../server/features/commands/take-out-plan.ts";
import { writeNotes } from "../../../server/features/commands/write-notes.ts";
import { writePlan } from "../../../server/features/commands/write-plan.ts";
import { renameAt } from "../../../server/features/navigation/rename.ts";
import { renameTexts } from "../../../server/features/navigation/rename-texts.ts";
import { atOnce } from "../../../server/journal/at-once.ts";
import { serverTexts } from "../../../server/lsp/server-texts.ts";
import { USUAL_PLAN } from "../../../server/plan/plan.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { type Command, run, TODAY } from "../../features/marked-text.ts";
import { englishLeft } from "../english-left.ts";

// Commands give their reasons in German, and write into a journal what they write in English.

const faster: Command = (journal, uri, position) =>
  repeatEntry(journal, uri, position, { today: TODAY, step: "faster" });
const plan: Command = (journal, uri, position) =>
  writePlan(journal, uri, position, { today: TODAY, minutes: 20, settings: USUAL_PLAN, reasons: false });
const slower: Command = (journal, uri, position) =>
  repeatEntry(journal, uri, position, { today: TODAY, step: "slower" });

/** Stands for whatever is put into a text: a word, a number or a list. */
const LISTED = ["2"];

describe("why a command does nothing", () => {
  test.each<[string, Command, string, RegExp]>([
    ["outside an entry", faster, "‸player Noor", /^In dieser Zeile ist kein Eintrag\./],
    ["without a tempo", faster, "2026-03-09\nC major‸", /^Schreib zuerst ein Tempo in diese Zeile/],
    ["at the top of the metronome", faster, "2026-03-09\nC major, at 208‸", /^208 ist das obere Ende des Metronoms\./],
    ["at its bottom", slower, "2026-03-09\nC major, at 40‸", /^40 ist das untere Ende des Metronoms\./],
    ["nothing reached", faster, "2026-03-09\nC major, at 60 uneven‸", /^Noch kein Tempo erreicht/],
    ["no notes", writeNotes, "2026-03-09\nMinuet, bars 1-8, at 60‸", /^Ausschreiben lassen sich nur die Töne/],
    ["an earlier day", writeNotes, "2026-03-08\nC major‸", /^Töne: C D E F G A B C \(ein früherer Tag bleibt/],
    ["no recorder", fingerChange, "2026-03-09\nC major‸", /^Welcher Griffwechsel der schwerste ist/],
    ["never played", lastTime, "2026-03-09\nC major‸", /^Vor dieser Zeile wurde diese Übung noch nicht gespielt\./],
    ["no title", declareTitle, "2026-03-09\nC major‸", /^In dieser Zeile steht kein Titel/],
    ["no conflict", keepBothSides, "2026-03-09\nC major‸", /^In dieser Datei gibt es keinen Konflikt/],
    [
      "no other spelling",
      respell,
      "2026-03-09\nC major‸",
      /^Für diese Zeile gibt es keine andere übliche Schreibweise\./,
    ],
    [
      "no phases",
      (j, u, _, { today }) => newDay(j, u, { today, phases: true }),
      "2026-03-08\nC major‸",
      /^Kein früherer Tag/,
    ],
    [
      "no year",
      (j, u, _, { today }) => moveYear(j, u, { today, year: 2025 }),
      "2026-03-08\nC major‸",
      /^Diese Datei hat keine Tage|^Diese Datei ist ein Tagebuch für sich/,
    ],
  ])("%s", (_, command, marked, reason) => {
    expect(run(command, marked)).toMatch(reason);
  });

  test("names that are named so already", () => {
    const answer = atOnce(changeNames(journalOf("2026-03-09\nC major"), URI, { line: 0, character: 0 }, "english"));
    expect(answer).toMatchObject({ ok: false, reason: "Die Töne heißen schon so: english." });
  });
});

test("a tempo that is doubted or a day of pain says why, and defers to nobody's promise", () => {
  const text = "2026-03-09\nC major, 8ths at 60 clean\nthumb hurts\nC major, 8ths at 60‸";
  expect(run(faster, text)).toContain("C major, 8ths");
  const journal = journalOf(text.replace("‸", ""));
  const answer = faster(journal, URI, { line: 3, character: 10 }, { today: TODAY });
  expect(answer.ok && answer.note).toMatch(/^Ohne Tempo geschrieben: /);
});

test("what is written is in the journal's own words", () => {
  expect(run(faster, "2026-03-09\nD minor, at 60 clean‸")).toBe("2026-03-09\nD minor, at 60 clean\nD minor, at 63‸");
  const planned = run(plan, "aim C major, 8ths at 80\n2026-03-02\nC major, 8ths at 60 clean\n‸");
  expect(planned).toContain("\n2026-03-09, 20 min, plan\nwarm-up, 5 min\n  long tones on C4 E4 G4, slow, 5 min");
});

test("actions are named in German", () => {
  const titles = (text: string, line: number) => {
    const journal = journalOf(text);
    const range = { start: { line, character: 0 }, end: { line, character: 5 } };
    return [
      ...nameNotesIn(journal, URI, range),
      ...dateAboveIn(journal, URI, range, TODAY),
      ...declareTitleIn(journal, URI, range),
      ...respellIn(journal, URI, range),
      ...settleConflictIn(journal, URI, range),
      ...takeOutPlanIn(journal, URI, range, TODAY),
    ].map(({ title }) => title);
  };
  expect(titles("2026-03-09\nnotes D E F G A Bb C D\n", 1)).toContainEqual(expect.stringMatching(/^D .* nennen$/));
  expect(titles("C major, at 60 clean\n", 0)).toContain("Diese Zeilen auf 2026-03-09 Mon datieren");
  expect(titles("2026-03-09\nThe Sleepy Frog, bars 1-8, at 60 clean\nthe sleepy frog, both hands\n", 2)).toContain(
    'piece "The Sleepy Frog" festlegen',
  );
  expect(titles("2026-03-09\nF# major, at 60\n", 1)).toContain("In „Gb major“ umschreiben");
  expect(titles("2026-03-09\n<<<<<<< a\nC major\n=======\nD major\n>>>>>>> b\n", 1)).toEqual([
    "Beide Seiten behalten",
    "Die obere Seite behalten",
    "Die untere Seite behalten",
  ]);
});

test("a name that cannot be changed", () => {
  const journal = journalOf('focus "thumb"\n2026-03-09\nC major, focus thumb');
  const answer = atOnce(renameAt(journal, URI, { line: 0, character: 8 }, "12"));
  expect(answer).toMatchObject({ ok: false, reason: renameTexts.noLetter });
});

test("no English is left in any of these texts, whatever is put into them", () => {
  const texts = [commandTexts, renameTexts, serverTexts.edits, serverTexts.languages, serverTexts].flatMap((module) =>
    Object.values(module).flatMap((text: unknown) => {
      if (typeof text === "string") return [text];
      return typeof text === "function" ? [String(text(LISTED, LISTED, LISTED))] : [];
    }),
  );
  expect(texts.length).toBeGreaterThan(70);
  const typed = /(?:instrument|on) alto recorder|at 60|half=60|2 octaves|8ths at 60 clean|D minor, thirds|shared/g;
  expect(texts.filter((text) => englishLeft(text.replace(typed, ""), "").length > 0)).toEqual([]);
});
