import { describe, expect, test } from "vitest";
import { careToday } from "../../../server/plan/care-today.ts";
import { doubtedTempo, lowerTempo, withoutTempo } from "../../../server/plan/care-words.ts";
import { planLines } from "../../../server/plan/plan-text.ts";
import { journalOf as journalIn, URI } from "../../features/journal-text.ts";
import { dayOf, planFor } from "../../plan/planned.ts";
import { day, journalOf } from "../../plan/written.ts";
import { englishLeft } from "../english-left.ts";
import { germanYear, LAST_DAY } from "../german-year.ts";

// What a plan says beside its lines, which stay in the journal's own language. That pain wants rest and a doctor where it
// stays is what teachers and doctors for musicians commonly advise; common practice, no source.

const YEAR = germanYear();

/** What is said on a day: of the body, of the day, and for each line. */
function said(text: string, on = LAST_DAY, minutes = 60): readonly string[] {
  const { care, notes, lines } = planFor(journalOf(text), day(on), { minutes });
  return [...care, ...notes, ...lines.flatMap(({ reasons }) => reasons)];
}

const concert = (on: string) => `concert "Vorspiel" on ${on}: "Abendlied"\n${YEAR}`;

/** A journal, a day and the minutes that are wished for. */
const PLANS: readonly (readonly [string, string, number])[] = [
  [YEAR, LAST_DAY, 90],
  [YEAR, "2026-05-12", 90],
  [YEAR, "2026-05-12", 20],
  [YEAR, "2026-07-03", 60],
  [YEAR, "2026-07-20", 60],
  [YEAR, "2026-09-20", 240],
  [YEAR, LAST_DAY, 3],
  [`${YEAR}2026-06-28, rest\n`, LAST_DAY, 60],
  [`${YEAR}2026-06-26\n  Daumen tut weh\n`, LAST_DAY, 60],
  [`${YEAR}2026-06-28\n  Ohren klingeln\n`, LAST_DAY, 60],
  [`${YEAR}2026-06-20\n  F-Dur, langsam -- der Arm schmerzt\n`, LAST_DAY, 60],
  [`${YEAR}2026-06-20\n  Ohren klingeln\n`, LAST_DAY, 60],
  [`${YEAR}2026-06-14\n  Daumen tut weh\n`, LAST_DAY, 60],
  [concert("2026-06-28"), LAST_DAY, 60],
  [concert("2026-06-29"), LAST_DAY, 60],
  [concert("2026-07-04"), LAST_DAY, 60],
  ["", LAST_DAY, 60],
];

test("no English is left beside the lines", () => {
  const all = PLANS.flatMap(([text, on, minutes]) => said(text, on, minutes));
  expect(all.length).toBeGreaterThan(80);
  expect(all.filter((sentence) => englishLeft(sentence, "").length > 0)).toEqual([]);
});

test("the remarks are written in German, and are still known as the plan's own", () => {
  const plan = planFor(journalOf(YEAR), day(LAST_DAY), { minutes: 60 });
  const written = dayOf(plan);
  expect(written).toContain("    -- plan: Aufgegeben für den 1. Juli.");
  expect(written.at(-1)).toBe("-- plan: endet hier; was du darunter schreibst, zählt als gespielt.");
  const journal = journalIn(`names german\n${written.join("\n")}\n  F-Dur, bei 60 sauber\n`);
  const { entries } = journal.model(journal.files.get(URI)!.blocks.at(-1)!);
  expect(entries.flatMap(({ remarks }) => remarks)).toEqual([]);
  expect(entries.map(({ planned }) => planned)).toEqual([...plan.lines.map(() => true), false]);
});

test("work that is set in words", () => {
  const text = "names german\n2026-06-26\nlesson\nset „Zeile 4 klatschen“\n";
  expect(planLines(planFor(journalOf(text), day(LAST_DAY)), { reasons: true, indent: "  " })[0]).toBe(
    "-- plan: aufgegeben: „Zeile 4 klatschen“",
  );
});

describe("the kind of day", () => {
  test.each([
    [concert("2026-06-28"), LAST_DAY, "Das Konzert ist heute: kurz einspielen und nichts erzwingen."],
    [concert("2026-06-29"), LAST_DAY, "Das Konzert ist morgen: die halbe Zeit und nichts erzwingen."],
    [concert("2026-07-04"), LAST_DAY, "Das Konzert ist in 6 Tagen: nichts über dem, was sicher ist."],
    [
      YEAR,
      "2026-07-03",
      "Nach 7 Tagen ohne Üben ein leichter Einstieg: 45 Minuten statt 60, und nichts über dem, was sicher ist.",
    ],
    [
      YEAR,
      "2026-07-20",
      "Einer der ersten Tage nach 3 Wochen Unterbrechung: 30 Minuten statt 60, und nichts Schnelles.",
    ],
    [`${YEAR}2026-06-28, rest\n`, LAST_DAY, "Heute ist ein Ruhetag."],
  ])("%#", (text, on, sentence) => {
    expect(said(text, on)).toContain(sentence);
  });

  test("an instrument to be played for so long only", () => {
    const text = "instrument Altblockflöte, at most 10 min a day\nnames german\n\n";
    expect(said(text)).toContain("Höchstens 10 Minuten am Tag auf diesem Instrument: Altblockflöte.");
    expect(said(`${text}2026-06-28\n  F-Dur, langsam, 5 min\n`)).toContain(
      "Höchstens 10 Minuten am Tag auf diesem Instrument (Altblockflöte), davon sind 5 verbraucht.",
    );
  });
});

describe("care", () => {
  const care = (text: string) => careToday(journalOf(text), day(LAST_DAY));

  test("something hurts", () => {
    expect(care("names german\n2026-06-27\n  Daumen tut weh\n")).toBe(
      "Gestern hast du „Daumen tut weh“ notiert. Wenn etwas wehtut, hör auf, ruh dich aus und sag es deiner Lehrkraft. Bleibt es, kommt es wieder, weckt es dich oder kommen Taubheit oder Schwäche dazu, lass es ärztlich abklären, am besten in einer Musikersprechstunde.",
    );
  });

  test("ears ring, today and yesterday", () => {
    expect(care("names german\n2026-06-28\n  Ohren klingeln\n")).toMatch(/: den Rest des Tages Ruhe\. Ist es morgen/);
    expect(care("names german\n2026-06-27\n  Ohren klingeln\n")).toMatch(/: auch heute Ruhe\. Ist es noch da/);
  });

  test("a long sitting", () => {
    expect(care("2026-06-27, 90 min\n  C major, slow\n")).toBe(
      "90 Minuten gestern: Gab es Pausen? Lehrkräfte raten zu kurzen Einheiten mit Pausen.",
    );
  });

  test("a full week", () => {
    const weeks = ["2026-05-25", "2026-06-01", "2026-06-08", "2026-06-15"];
    const before = weeks.map((monday, i) => `${monday}, ${30 + i} min\n`).join("");
    expect(care(`${before}2026-06-22, 50 min\n2026-06-23, 50 min\n2026-06-24, 50 min\n`)).toBe(
      "Diese Woche hat 150 Minuten, die Wochen davor hatten 30 bis 33. Bitte mehr Pausen als sonst.",
    );
  });

  test("a tempo that is left out, lower or doubted", () => {
    const words = { day: day("2026-06-16"), words: "Daumen tut weh", remark: false } as Parameters<
      typeof withoutTempo
    >[0];
    expect(withoutTempo(words, day(LAST_DAY))).toBe(
      "Ohne Tempo geschrieben: am 16. Juni hast du „Daumen tut weh“ notiert.",
    );
    expect(lowerTempo({ kind: "return" } as Parameters<typeof lowerTempo>[0], 48, day(LAST_DAY))).toBe(
      "Heute nicht über 48: es ist einer der ersten Tage nach einer Unterbrechung.",
    );
    expect(doubtedTempo(160)).toMatch(/^160 liegt weit über dem, was du bisher gespielt hast\./);
  });
});
