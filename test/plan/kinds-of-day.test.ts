import { describe, expect, test } from "vitest";
import type { PlanAsked } from "../../server/plan/plan.ts";
import { planFor } from "./planned.ts";
import { day, journalOf } from "./written.ts";

// Plans by what a day is for, and by who plays. Journals and pieces are invented; what the rules come to for them was reckoned by
// hand from the design (plan.md, 4.1 to 4.5), whose numbers are our own choices.

function check(text: string, on: string, asked: Partial<PlanAsked>, kind: string, lines: readonly string[]): void {
  const plan = planFor(journalOf(text), day(on), asked);
  expect([plan.kind, ...plan.lines.map((line) => line.text)]).toEqual([kind, ...lines]);
}

const RECITAL = `
instrument alto recorder
piece "Ground in G minor" as Ground: G minor, 16 bars, goal quarter=84
concert "Harvest evening" on 2026-03-20: "Ground in G minor"

2026-03-10
  Ground, from the top, at 60 clean
  Ground, bars 1-8, at 66 clean
  D minor, slurred, 8ths at 72 clean 5 in a row
2026-03-11
  D minor, slurred, 8ths at 76 slips
  G minor, slurred, 8ths at 60 clean 5 in a row
`;
const DAY_BEFORE = `${RECITAL}2026-03-18\n  D minor, slurred, 8ths at 60 clean\n`;

describe("before a concert", () => {
  const minutes = 30;

  test("eight days: the piece is played through", () => {
    const plan = planFor(journalOf(RECITAL), day("2026-03-12"), { minutes });
    expect(plan.notes).toEqual(["The concert is in 8 days: nothing above what is steady."]);
    const run = plan.lines.find(({ rule }) => rule === "run-through");
    expect([run?.text, run?.reasons]).toEqual([
      "Ground, from the top, at 60, 15 min",
      ["Run-through: the concert is in 8 days."],
    ]);
    expect(plan.lines.map(({ phase, minutes: own }) => `${phase} ${own}`)).toEqual([
      "warm-up 5",
      "pieces 15",
      "groundwork 5",
      "groundwork 5",
    ]);
  });

  test("seven days: none is, and nothing is varied", () => {
    const { lines } = planFor(journalOf(RECITAL), day("2026-03-13"), { minutes });
    expect(lines.some(({ rule, phase }) => rule === "run-through" || phase === "fluency")).toBe(false);
  });

  test("the day before half the time, and on the day no more than twenty minutes", () => {
    const before = planFor(journalOf(DAY_BEFORE), day("2026-03-19"), { minutes: 60 });
    expect([before.minutes, before.notes]).toEqual([
      30,
      ["The concert is tomorrow: half the time, and nothing pushed."],
    ]);
    const on = planFor(journalOf(DAY_BEFORE), day("2026-03-20"), { minutes: 60 });
    expect([on.minutes, on.notes]).toEqual([20, ["The concert is today: a short warm-up, and nothing pushed."]]);
  });

  test("so it is after a week off", () => {
    const { minutes: own, notes } = planFor(journalOf(RECITAL), day("2026-03-20"), { minutes: 60 });
    expect([own, notes]).toEqual([
      20,
      [
        "After 8 days off, an easy start: 20 minutes instead of 60, and nothing above what is steady.",
        "The concert is today: a short warm-up, and nothing pushed.",
      ],
    ]);
  });
});

const SCALE = "instrument alto recorder\n\n2026-03-10\n  D minor, slurred, 8ths at 72 clean 5 in a row\n";

describe("after days off", () => {
  test("two: a day like any other", () => {
    check(SCALE, "2026-03-13", { minutes: 30 }, "usual", [
      "long tones on F4 A4 C5, slow, 5 min",
      "F major, slurred, slow, focus ease, 5 min",
      "F major arpeggio, slurred, slow, focus sound, 5 min",
      "F major, thirds, slurred, slow, focus evenness, 5 min",
      "D minor, tongued, 8ths at 56, 10 min",
    ]);
  });

  test("eight: three quarters of the time", () => {
    const plan = planFor(journalOf(SCALE), day("2026-03-19"), { minutes: 30 });
    expect([plan.kind, plan.minutes]).toEqual(["unhurried", 20]);
    expect(plan.notes).toEqual([
      "After 8 days off, an easy start: 20 minutes instead of 30, and nothing above what is steady.",
    ]);
  });

  test("a break: half of it, and two notches slower", () => {
    check(SCALE, "2026-04-19", { minutes: 30 }, "return", [
      "D minor, slurred, 8ths at 52, 5 min",
      "F major, slurred, slow, focus evenness, 5 min",
      "F major arpeggio, slurred, slow, focus ease, 5 min",
    ]);
  });
});

test("when it no longer hurts, three quarters of the time and nothing of what hurt", () => {
  const days = ["13\n  C major, slow", "14\n  F major, slow", "15\n  G major, slow"].map((text) => `2026-03-${text}\n`);
  const text = `${SCALE}2026-03-11\n  D minor, 60 clean, sore thumb\n${days.join("")}`;
  const plan = planFor(journalOf(text), day("2026-03-16"), { minutes: 40 });
  expect([plan.kind, plan.minutes]).toEqual(["sparing", 30]);
  expect(plan.care).toEqual([
    "On 11 March you noted “sore thumb”. Today 30 minutes instead of 40, and nothing above what is steady. If it comes back, stop and rest, and tell your teacher; see a doctor if it stays.",
  ]);
  expect(plan.lines.filter(({ text: line }) => line.includes("D minor"))).toEqual([]);
});

describe("by the time there is", () => {
  const text = `${SCALE}\n2026-03-11\n  "Evening", bars 1-8, at 60 clean\n`;

  test("five minutes are one line, ten are two", () => {
    check(text, "2026-03-13", { minutes: 5 }, "usual", ['"Evening", bars 1-8, at 48, 54, 63, 60, 5 min']);
    check(text, "2026-03-13", { minutes: 10 }, "usual", [
      "D minor, slurred, 8ths at 56, 5 min",
      '"Evening", bars 1-8, at 48, 54, 63, 60, 5 min',
    ]);
  });

  test("four hours are not filled", () => {
    const plan = planFor(journalOf(SCALE), day("2026-03-13"), { minutes: 240 });
    expect([plan.asked, plan.minutes]).toEqual([240, 95]);
  });
});

describe("by who plays", () => {
  const FIRST = (key: string, how: string) => [
    `${key}, five notes, ${how}, slow, focus ease, 10 min`,
    `${key}, ${how}, slow, focus sound, 5 min`,
  ];
  test.each([
    ["nobody knows what", "", ["long tones on C4 E4 G4, slow, 5 min", ...FIRST("C major", "slurred")]],
    [
      "a piano holds no note",
      "instrument piano",
      ["C major, five notes, legato, slow, 5 min", ...FIRST("C major", "legato")],
    ],
    ["a cello begins low", "instrument cello", ["long tones on C2 E2 G2, slow, 5 min", ...FIRST("C major", "slurred")]],
    ["a voice", "instrument soprano", ["long tones on C4 E4 G4, slow, 5 min", ...FIRST("C major", "slurred")]],
  ])("%s", (_, head, lines) => check(`${head}\n`, "2026-03-13", { minutes: 20 }, "usual", lines));

  test("another instrument than the usual one is named on each line", () => {
    const text = `
instrument alto recorder
instrument violin

2026-03-10
  D minor, 60 clean
2026-03-11
  G major, on violin, 60 clean
`;
    const { lines } = planFor(journalOf(text), day("2026-03-14"), { minutes: 30, instrument: "violin" });
    expect(lines[1]!.text).toBe("G major, on violin, at 58, 10 min");
    expect(lines.every((line) => line.text.includes(", on violin"))).toBe(true);
  });

  test("who hides notes is told none", () => {
    const text = 'instrument alto recorder\nhide notes\npiece "A": G minor, 16 bars, range F4 to F6\n';
    const { lines } = planFor(journalOf(text), day("2026-03-13"), { minutes: 60 });
    expect(lines[0]!.text).toBe("long tones on G minor, slow, 5 min");
    const said = lines.flatMap((line) => [line.text, ...line.reasons]).join("\n");
    expect(said).not.toMatch(/\b[A-G][#b]?\d\b/);
  });
});

describe("by the language of the journal", () => {
  test.each([
    [
      "german",
      'instrument Altblockflöte\npiece "Abendlied" as Abendlied: g-Moll, 32 bars\n2026-03-10\n  d-Moll melodisch, Terzen, gebunden, Achtel at 66 sauber\n  Abendlied, Takt 1-8, at 60 sauber, 66 holpert',
      ["Abendlied, bars 1-8, at 48, 54, 63, 60, 10 min", "g-Moll harmonisch, slurred, slow, focus ease, 10 min"],
    ],
    [
      "french",
      'instrument violon\npiece "Ronde du quai" as Ronde: ré mineur, 40 bars\n2026-03-10\n  si bémol majeur, en tierces, lié, croches at 60 propre\n  Ronde, mesures 9 à 16, at 72 presque',
      ["long tones on la3 ré4 fa4, slow, 5 min", "Ronde, bars 9-16, at 56, 10 min"],
    ],
    [
      "dutch",
      "instrument cello\n2026-03-10\n  bes groot, tertsen, gebonden, achtsten at 60 schoon",
      ["bes groot, tertsen, gebonden, achtsten at 58, 10 min"],
    ],
    [
      "italian",
      "instrument violino\n2026-03-10\n  si bemolle maggiore, per terze, legate, crome at 60 pulito",
      ["si bemolle maggiore, per terze, legate, crome at 58, 10 min"],
    ],
  ])("%s", (names, text, lines) => {
    const plan = planFor(journalOf(`names ${names}\n${text}\n`), day("2026-03-13"), { minutes: 40 });
    expect(plan.lines.map((line) => line.text)).toEqual(expect.arrayContaining(lines));
  });
});

describe("pieces", () => {
  const pieces = (text: string, minutes = 20) =>
    planFor(journalOf(`instrument violin\n${text}\n`), day("2026-03-13"), { minutes })
      .lines.filter(({ phase }) => phase === "pieces")
      .map((line) => line.text);

  test("movements by themselves", () => {
    const text = `
piece "Gates"
movement "Gates" 1 "Wood": A minor, 20 bars
movement "Gates" 2 "Iron": C major, goal half=60
2026-03-10
  "Gates", mvt 1, bars 1-8, at 60 clean
  "Gates", mvt 2, slow`;
    expect(pieces(text, 40)).toEqual([
      '"Gates", mvt 1, bars 9-16, slow, 10 min',
      '"Gates", mvt 1, bars 17-20, slow, 5 min',
      '"Gates", mvt 2, from the top, slow, 5 min',
    ]);
  });

  test("that nobody declared", () => {
    expect(pieces('2026-03-10\n  "Evening", at 60 clean')).toEqual(['"Evening", from the top, at 54, 10 min']);
  });

  test("of bars that nobody counted, and of a single bar", () => {
    expect(pieces('piece "Evening": C major')).toEqual(['"Evening", from the top, slow, 10 min']);
    expect(pieces('piece "One": C major, 1 bar')).toEqual([
      '"One", bar 1, slow, 5 min',
      '"One", from the top, slow, 5 min',
    ]);
  });

  test("the tempo of a single bar is found again", () => {
    const text =
      'piece "One": C major, 9 bars\n2026-03-11\n  One, bar 9, at 60 clean\n2026-03-12\n  One, bars 1-8, at 60 clean';
    expect(pieces(text)[0]).toBe('"One", bar 9, at 48, 54, 63, 60, 5 min');
  });
});

test("what is done day after day does not get slower", () => {
  const first = 'instrument violin\n2026-03-10\n  G minor, 8ths at 60 clean\n  "Evening", at 60 clean\n';
  const second = `${first}2026-03-13\n  G minor, 8ths at 58 clean\n  "Evening", at 54 clean\n`;
  const lines = planFor(journalOf(second), day("2026-03-16"), { minutes: 20 }).lines.map(({ text }) => text);
  expect(lines).toEqual(
    expect.arrayContaining(["G minor, 8ths at 58, 5 min", '"Evening", from the top, at 54, 10 min']),
  );
});

test("changes for a day do not pile up", () => {
  const text = `instrument violin
2026-03-10
  G minor, slurred, 8ths at 60 clean 5 in a row
2026-03-11
  G minor, slurred, dotted, top down, 8ths at 46 clean 5 in a row
`;
  const { lines } = planFor(journalOf(text), day("2026-03-14"), { minutes: 5 });
  expect(lines.map((line) => line.text)).toEqual(["G minor, slurred, 8ths at 48, 5 min"]);
});

test("of several exercises on a line none comes the day after it was played", () => {
  const text = "instrument violin\n2026-03-10\n  F major, C major, at 60 clean\n2026-03-12\n  F major, at 60 clean\n";
  const { lines } = planFor(journalOf(text), day("2026-03-13"), { minutes: 30 });
  expect(lines.filter((line) => line.text.includes("F major"))).toEqual([]);
});

test("on a day without hurry a place is not asked for above what is steady there", () => {
  const text = `instrument alto recorder
piece "Ground in G minor" as Ground: G minor, 8 bars, goal quarter=96
2026-03-09
  Ground, bars 1-8, at 60 clean 5 in a row
2026-03-10
  Ground, bars 1-8, at 72 clean
2026-03-12
  Ground, bars 1-8, at 84 clean
`;
  const plan = planFor(journalOf(text), day("2026-03-13"), { minutes: 30 });
  expect(plan.notes).toEqual(["The last two days went beyond what is steady: nothing needs pushing today."]);
  expect(plan.lines.map((line) => line.text)).toContain("Ground, bars 1-8, at 60, 10 min");
});

test("bars that hurt are not thought of either", () => {
  const text = `piece "Ground": G minor, 32 bars
2026-03-09
  Ground, bars 5-8, at 60 clean, sore left thumb
`;
  check(text, "2026-03-10", { minutes: 30 }, "noInstrument", [
    '"Ground", bars 9-16, mental, 10 min',
    '"Ground", bars 9-16, sung, 5 min',
  ]);
});

describe("what a sentence about pain names is left alone, though it stands below something else", () => {
  const diary = (said: string) => `instrument alto recorder
piece "Chaconne in G"
piece "Little Fugue"
2026-03-02
  Chaconne in G, bars 1-8, at 60 clean
  Little Fugue, bars 1-8, at 60 clean
  F major, slurred, 8ths at 60 clean
2026-03-03
  D minor, slurred, 8ths at 60 clean
${said}
`;
  const subjects = (said: string, on = "2026-03-06") =>
    planFor(journalOf(diary(said)), day(on), { minutes: 60 }).lines.map(({ text }) => text);

  test.each([
    ["right thumb a bit sore after the chaconne", /Chaconne/, /^"Little Fugue/m],
    ["my wrist hurts, all that F major", /^F major, slurred/m, /^"Chaconne/m],
    ["little finger sore after the chaconne", /Chaconne/, /^"Little Fugue/m], // `little` is no word of a title there
  ])("%s", (said, left, played) => {
    for (const on of ["2026-03-04", "2026-03-06"]) expect(subjects(said, on).join("\n")).not.toMatch(left);
    expect(subjects(said).join("\n")).toMatch(played);
  });
});
