import { describe, expect, test } from "vitest";
import { dayOf, planFor } from "./planned.ts";
import { day, journalOf } from "./written.ts";

// The worked plans of the design (plan.md, section 5), byte for byte. What differs from the page are sentences alone: they say
// dates in words (`14 March`, `9 May`) where the page has 2026-03-14, and the day on which something was played last where it
// counts the days; an exercise left alone says how it went. And each ends with a line that says so. Those sentences stand here as they are written.

function check(journal: string, asked: { readonly on: string; readonly minutes?: number }, expected: string): void {
  const plan = planFor(
    journalOf(journal),
    day(asked.on),
    asked.minutes === undefined ? {} : { minutes: asked.minutes },
  );
  expect(dayOf(plan).join("\n")).toBe(`${expected.trim()}\n-- plan: ends here; what you write below counts as played.`);
}

const OTTILIE = `
player Ottilie
instrument alto recorder
piece "Ground in G minor" as Ground: G minor, 32 bars, goal quarter=84, due 2026-05-09
aim D melodic minor, thirds, slurred, 8ths at 96 by 2026-04-30

2026-03-05 Thu
  D melodic minor, thirds, slurred, 8ths at 66 clean, 72 uneven, focus finger changes
  G harmonic minor, slurred, 8ths at 60 clean
  F major, tongued, 8ths at 80 clean
2026-03-09 Mon
  D melodic minor, thirds, slurred, 8ths at 66 clean 5 in a row, 72 clean
  F major, tongued, 8ths at 80 clean 5 in a row
2026-03-12 Thu
  D melodic minor, thirds, slurred, 8ths at 72 clean 4 of 5, 76 uneven
  F major, tongued, 8ths at 84 clean
  Ground, bars 1-8, at 66 clean
  Ground, from the top, at 60 clean
2026-03-14 Sat
  Ground, bars 17-24, at 66 clean, 69 slips
`;

const HURT = `
piece "Ground in G minor" as Ground: G minor, 32 bars, goal quarter=84, due 2026-05-09

2026-03-12 Thu
  Ground, from the top, at 60 clean
2026-03-14 Sat
lesson, 30 min
  Ground, bars 17-24, at 66 clean, 69 slips
set F major, thirds, slurred, 4 days by 2026-03-21
2026-03-15 Sun
  F major, thirds, slurred, slow, clean
2026-03-16 Mon, 25 min
  Ground, bars 17-24, at 66 clean, 69 slips, sore left thumb
`;
const RESTED = `${HURT}2026-03-17 Tue, rest\n`;

describe("the worked examples", () => {
  // Beside the dates: the page has "this scale was last played 11 days ago" and "Longest ago of the others, 4 days."
  test("5.1, a usual Monday of 45 minutes", () => {
    check(
      OTTILIE,
      { on: "2026-03-16", minutes: 45 },
      `
2026-03-16, 45 min, plan
warm-up, 5 min
  long tones on G4 Bb4 D5, slow, 5 min
    -- plan: Easy and low to begin with.
pieces, 15 min
  Ground, bars 17-24, at 52, 60, 69, 66, 10 min
    -- plan: Ground, bars 17-24: 69 was not reached on 14 March.
    -- plan: Ground is for 9 May, in 54 days.
  Ground, bars 9-16, slow, 5 min
    -- plan: Not worked by itself in the last 14 days.
groundwork, 10 min
  G harmonic minor, slurred, 8ths at 58, 5 min
    -- plan: Ground is in G minor: last played on 5 March.
  D melodic minor, thirds, slurred, 8ths at 52, focus finger changes, 5 min
    -- plan: An aim for 30 April: too early to say whether it will be reached.
    -- plan: Slow: from about 80 % of 66, which is steady.
break, 5 min
fluency, 5 min
  F major, tongued, top down, 8ths at 63, 5 min
    -- plan: Last played 4 days ago, and clean then.
    -- plan: Direction alone changes.
pieces, 5 min
  Ground, from the top, at 54, 5 min
    -- plan: Something whole to end with, at a tempo that goes well.
`,
    );
  });

  test("5.2, a first plan of 20 minutes", () => {
    check(
      "instrument soprano recorder\n",
      { on: "2026-03-02", minutes: 20 },
      `
2026-03-02, 20 min, plan
warm-up, 5 min
  long tones on C4 E4 G4, slow, 5 min
    -- plan: Easy and low to begin with.
groundwork, 15 min
  C major, five notes, slurred, slow, focus sound, 10 min
    -- plan: Nothing to go by yet: begin where it is easy, and write down how it went.
  C major, slurred, slow, focus evenness, 5 min
    -- plan: Nothing to go by yet: the plain scale, without a metronome.
`,
    );
  });

  // Beside the dates: the sentence about the thumb says `you noted` (wording.md) where the page has `has`.
  test("5.3, two days after a sore thumb, with set work", () => {
    check(
      RESTED,
      { on: "2026-03-18", minutes: 40 },
      `
2026-03-18, 20 min, plan
-- care: On 16 March you noted “sore left thumb”. Rest is a full answer. If you play: 20 minutes instead of 40, nothing fast, as long a pause as you played, and stop at the first sign.
-- care: If it is still there, no playing: tell your teacher and see a doctor.
warm-up, 5 min
  long tones on G4 Bb4 D5, slow, 5 min
    -- plan: Easy and low to begin with.
groundwork, 5 min
  F major, thirds, slurred, 5 min
    -- plan: Set for 21 March.
pieces, 10 min
  Ground, bars 1-8, slow, 5 min
    -- plan: Slow, and not the bars you played when it hurt.
  Ground, bars 9-16, slow, 5 min
    -- plan: Slow, and not the bars you played when it hurt.
`,
    );
  });

  test("the day after it: nothing is played", () => {
    const { kind, lines } = planFor(journalOf(HURT), day("2026-03-17"), { minutes: 40 });
    expect([kind, ...lines.map(({ text }) => text)]).toEqual([
      "noInstrument",
      "Ground, bars 1-8, mental, 10 min",
      "Ground, bars 1-8, sung, 5 min",
    ]);
  });

  test("and where that day is one of rest, only what is set is said", () => {
    const { kind, lines, notes, setInWords } = planFor(journalOf(RESTED), day("2026-03-17"), { minutes: 40 });
    expect([kind, lines, notes, setInWords]).toEqual([
      "rest",
      [],
      ["Today is a day of rest."],
      ["F major, thirds, slurred"],
    ]);
  });
});
