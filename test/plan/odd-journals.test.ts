import { describe, expect, test } from "vitest";
import { isoDate } from "../../server/journal/calendar.ts";
import { dayOf, planFor } from "./planned.ts";
import { day, journalOf } from "./written.ts";

// Journals that hold little, or too much: a plan or a sentence, never an exception (design: plan.md, 11.5). All invented.

const ON = day("2026-03-16");
const days = (count: number, lines: (date: number) => string) =>
  Array.from({ length: count }, (_, i) => `${isoDate(ON - count + i)}\n${lines(ON - count + i)}\n`).join("");
const PIECE = 'piece "Ground": G minor, 16 bars, due 2026-03-20\n';

const JOURNALS: Readonly<Record<string, string>> = {
  "nothing at all": "",
  "remarks alone": "-- begun, and nothing else\n",
  "one day": "2026-03-14\n  D minor, 8ths at 60 clean\n",
  "rests alone": days(30, () => "rest"),
  "failed attempts alone": days(30, () => "  D minor, 8ths at 60 slips\n  Ground, bars 1-8, at 60 uneven"),
  "attempts of which nobody says how they went": days(30, () => "  D minor, 8ths at 60\n  G major, slow"),
  "days ahead": "2026-05-01\n  D minor, 8ths at 60 clean\n2026-05-02, 30 min, plan\n  G major, 8ths at 60\n",
  "two concerts on a day": `${PIECE}piece "Evening"\nconcert "A" on 2026-03-18: "Ground"\nconcert "B" on 2026-03-18: "Evening", "Ground"\n`,
  "a concert of nothing": 'concert "A" on 2026-03-18: "Nobody knows it"\n',
  "a due day past":
    'piece "Ground": G minor, 16 bars, due 2026-01-01\naim D minor, at 90 by 2026-01-01\n2026-03-14\n  D minor, at 60 clean\n',
  "a piece of one bar": 'piece "One": C major, 1 bar\n',
  "no instrument": days(5, () => "  D minor, 8ths at 60 clean"),
  "an instrument of which nothing is known": 'instrument "my own": no range\n2026-03-14\n  D minor, at 60 clean\n',
  "sore every day": days(30, () => "  D minor, 8ths at 60 clean, sore left thumb"),
  "tempos at the end of the metronome": `${PIECE}${days(9, () => "  D minor, 8ths at 22 clean 5 in a row\n  Ground, bars 1-8, at 21 clean\n  Ground, at 400 clean\n  G major, at 400 clean 5 in a row")}`,
  "quotes and signs":
    'piece "<i>A</i> -- “b”"\nset "clap -- <b>4</b>, “loud”"\n2026-03-14\n  "<i>A</i> -- “b”", at 60 clean -- so\n  "it\'s > that & more", at 60 clean\n',
  "work set in words, and what is none":
    'set "clap line 4"\nset sight-reading\nset "Nobody knows it", page 4\nset D minor, at 999\n',
};

const MINUTES = [0, 1, 4, 5, 7, 10, 30, 45, 240, 600];

describe.each(Object.entries(JOURNALS))("%s", (_, text) => {
  const journal = journalOf(text);

  test.each(MINUTES)("%i minutes", (minutes) => {
    for (const on of [ON, ON + 1, day("2026-03-18"), day("2020-01-01"), day("2040-12-31")]) {
      const plan = planFor(journal, on, { minutes });
      const said = plan.lines.length + plan.notes.length + plan.care.length;
      expect(said, isoDate(on)).toBeGreaterThan(0);
      expect(plan.minutes).toBeLessThanOrEqual(minutes);
      expect(dayOf(plan).every((line) => !/\n|undefined|NaN|null/.test(line))).toBe(true);
    }
  });

  test("without a wish", () => {
    const plan = planFor(journal, ON);
    expect(plan.asked).toBeGreaterThanOrEqual(10);
    expect(plan.asked).toBeLessThanOrEqual(60);
  });
});

test("under five minutes there is a sentence", () => {
  const { kind, notes, lines } = planFor(journalOf(""), ON, { minutes: 4 });
  expect([kind, notes, lines]).toEqual([
    "none",
    ["Under 5 minutes nothing needs a plan: play one thing slowly that goes well."],
    [],
  ]);
});

test("where it hurts each day nothing is ever played", () => {
  const plan = planFor(journalOf(JOURNALS["sore every day"]!), ON, { minutes: 45 });
  expect([plan.kind, plan.lines.map(({ text }) => text)]).toEqual(["noInstrument", ["listening, 15 min"]]);
});

test("two thousand exercises", () => {
  const tonics = ["C", "D", "E", "F", "G", "A", "B"].flatMap((letter) => [letter, `${letter}b`, `${letter}#`]);
  const kinds = [
    "major",
    "minor",
    "harmonic minor",
    "melodic minor",
    "dorian",
    "mixolydian",
    "lydian",
    "major arpeggio",
  ];
  const patterns = [
    "",
    "thirds",
    "fours",
    "fifths",
    "triads",
    "turns",
    "threes",
    "pedal",
    "growing",
    "skips",
    "sixths",
    "octaves",
  ];
  const all = tonics.flatMap((tonic) =>
    kinds.flatMap((kind) => patterns.map((pattern) => [`${tonic} ${kind}`, pattern].filter(Boolean).join(", "))),
  );
  expect(all.length).toBeGreaterThan(2000);
  const text = days(60, (date) =>
    all
      .filter((__, i) => i % 60 === date % 60)
      .map((line) => `  ${line}, at 60 clean`)
      .join("\n"),
  );
  const plan = planFor(journalOf(text), ON, { minutes: 60 });
  expect(plan.lines.length).toBeGreaterThan(4);
});
