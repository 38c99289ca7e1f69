import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { escapeMarkdown } from "../../../server/features/explain/markdown.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import type { Settings } from "../../../server/features/types.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument, lineAt } from "../../../server/syntax/document/document.ts";
import patterns from "../../reference/patterns.json" with { type: "json" };
import { FEW } from "../../support/random-runs.ts";
import { anyText, journalOf, journalText, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-04-06")!;

interface Shown {
  /** The words that the hover stands on. */
  readonly on: string;
  readonly markdown: string;
}

/** The hover at the mark `‸`, in a journal of one file. */
function hover(marked: string, explain?: Settings["explain"], day = "2026-04-01 Wed\n"): Shown | undefined {
  const text = day + marked.replace("‸", "");
  const lines = (day + marked.split("‸")[0]!).split("\n");
  const position = { line: lines.length - 1, character: lines.at(-1)!.length };
  const found = hoverAt(journalOf(text), URI, position, { today: TODAY, explain });
  if (!found) return undefined;
  const { start, end } = found.range;
  expect([start.line, end.line]).toEqual([position.line, position.line]);
  return { on: text.split("\n")[start.line]!.slice(start.character, end.character), markdown: found.markdown };
}

function check(marked: string, on: string, markdown: string): void {
  expect(hover(marked)).toEqual({ on, markdown });
}

function checkSays(marked: string, words: string, explain?: Settings["explain"]): void {
  expect(hover(marked, explain)?.markdown).toContain(words);
}

/** The paragraphs of theory, without the history above them. */
function theory(marked: string, explain?: Settings["explain"]): string {
  return hover(marked, explain)!.markdown.split(/^1 day\.(?:\n\n|$)/m)[1]!;
}

test("the theory of a scale: its notes with their signature, further its relations, its steps and a sentence", () => {
  expect(theory("D‸ harmonic minor, slow")).toBe(
    "D E F G A Bb C# D; one flat.\n\n" +
      "Relative: F major; parallel: D major  \nSteps: T S T T S A S\n\n" +
      "The harmonic minor scale: natural minor with the seventh raised, so that three semitones lie below the leading note.",
  );
  checkSays("D‸ melodic minor, slow", "D E F G A B C# D, down C Bb A G F E D; one flat.");
  checkSays("D‸ melodic minor, slow", "Steps going up: T S T T T T S  \nGoing down: T T S T T S T");
  checkSays("F‸♯ major, twelfth, slow", "F# G# A# B C# D# E# F# G# A# B C#; six sharps.");
  checkSays("D‸ dorian, slow", "Signature: no accidentals; also written with 1 flat, as D minor is");
  checkSays("D‸ dorian, slow", "Relative: C major; parallel: D natural minor");
  checkSays("D‸ blues, slow", "Signature: 1 flat (Bb); also written with none");
  checkSays(
    "B‸ diminished seventh, slow",
    "no key signature.\n\nSignature: none, it belongs to no key; also written with 3 flats, as C minor is",
  );
  checkSays("F‸ chromatic, slow", "F F# G G# A A# B C C# D D# E F, down E Eb D Db C B Bb A");
  checkSays("A‸ whole-tone, slow", "A B C# D# F G A; no key signature.");
  checkSays(
    "D‸ whole-tone, slow",
    "no key signature.\n\nCollection: whole-tone 1 of 2, with B#; the same notes from E F# G# A# B#",
  );
  checkSays(
    "A‸ diminished seventh, slow",
    "Collection: diminished seventh 1 of 3, with C; the same notes from C Eb Gb",
  );
  checkSays("G‸ minor arpeggio, slow", "G Bb D G; two flats.");
});

test("what a name leaves unsaid is told", () => {
  checkSays("D‸ minor, slow", "`minor` alone means natural minor.");
  checkSays("D‸, slow", "A letter alone means major.");
  checkSays("D octatonic‸, slow", "read here with the semitone first (half-whole)");
  expect(theory("D‸ natural minor, slow")).not.toContain("alone means");
});

test("the setting `explain` says what of the theory is told", () => {
  expect(theory("D‸ major, slow", "signature")).toMatch(
    /^D E .*; two sharps\.\n\nRelative: B natural minor; parallel: D natural minor\n\n/,
  );
  expect(theory("D‸ major, slow", "steps")).toMatch(/^D E F# G A B C# D\.\n\nSteps: T T S T T T S\n\n/);
  expect(theory("D‸ major, slow", null)).toBe(theory("D major‸, slow", "both"));
  expect(theory("D‸ major, slow", "none")).toBe("");
  expect(theory("D‸ minor, slow", "none")).toContain("`minor` alone means natural minor.");
});

// test/reference/tempo-cases.tsv: beats and note values to notes a minute, worked out independently.
test("a tempo tells notes a minute", () => {
  const [, ...cases] = readFileSync("test/reference/tempo-cases.tsv", "utf8").trim().split("\n");
  const values: Readonly<Record<string, string>> = {
    "1/4": "quarters",
    "1/8": "8ths",
    "1/12": "triplets",
    "1/16": "16ths",
    "1/24": "sextuplets",
  };
  const known = cases.map((line) => line.split("\t")).filter(([, , value]) => values[value!] !== undefined);
  expect(known.length).toBeGreaterThan(8);
  for (const [bpm, beat, value, rate] of known) {
    checkSays(`D major, ${values[value!]} at ${beat}=‸${bpm} clean`, ` are ${rate} notes a minute; metronome: `);
  }
});

test("a tempo tells the nearest metronome steps", () => {
  check("D major, 8ths at ‸72 clean", "at 72", "8ths at 72 are 144 notes a minute; metronome: 69 below, 76 above.");
  check(
    "D major, quavers at ‸73 clean",
    "at 73",
    "Quavers at 73 are 146 notes a minute; metronome: 72 below, 76 above.",
  );
  check(
    "D major, at 60 clean, 6‸6 clean",
    "66",
    "At 66, one note a beat, 66 notes a minute; metronome: 63 below, 69 above.",
  );
  checkSays("D major, at 3‸0 clean", "metronome: 40 above, nothing below.");
  checkSays("D major, at 2‸20 clean", "metronome: 208 below, nothing above.");
  checkSays("D major, 8ths at 60 to ‸72 clean", "60 to 72 is one attempt, at the top.");
  checkSays('"Solo", at half=‸60 clean', "half=60: 60 beats a minute; metronome: 58 below, 63 above.");
});

test("a pattern tells its degrees over the span and its notes", () => {
  check(
    "D melodic minor, thi‸rds, five notes",
    "thirds",
    "Thirds: each note and the third above it, 1 3 2 4.\n\nDegrees, rising: 1 3 2 4 3 5  \nNotes: D F E G F A",
  );
  checkSays(
    "D melodic minor, thi‸rds, down",
    "Degrees, down: 8 6 7 5 6 4 5 3 4 2 3 1  \nNotes: D Bb C A Bb G A F G E F D",
  );
  checkSays("D major, octa‸ves, five notes", "None of it fits in this span.");
  checkSays("D major, thirds, alter‸nating", "Degrees, rising: 1 3 4 2 3 5 6 4 5 7 8 6");
  checkSays('pattern "zigzag": 1 3 2 4\nD major, "zig‸zag", five notes', "1 3 2 4, moved by a step at a time.");
});

test("leaps tell the order of the day that they stand on, whatever the direction", () => {
  const sentence = hover("C major, lea‸ps")!.markdown.split("\n\n")[0];
  expect(sentence).toMatch(
    /^Leaps: every note once, from the tonic and back to it, by leaps, in an order that each day draws/,
  );
  const order = (marked: string, day: string) => hover(marked, "both", day)!.markdown.split("\n\n")[1];
  // The orders are this project's own: test/music/patterns/leaps.test.ts.
  const first = "Degrees, in the order of 2026-03-02: 1 6 4 2 7 5 8 3 1  \nNotes: C A F D B G C E C";
  expect(order("C major, lea‸ps", "2026-03-02 Mon\n")).toBe(first);
  expect(order("C major, lea‸ps, down", "2026-03-02 Mon\n")).toBe(first);
  expect(order("C major, lea‸ps", "2026-03-03 Tue\n")).toContain("2026-03-03: 1 5 7 3 8 2 4 6 1");
  expect(order("C major, lea‸ps", "2026-02-30\n")).toContain("Degrees, in leaps: 1 ");
  expect(order("aim C major, lea‸ps at 60 by 2026-05-01", "")).toContain("in the order of 2026-04-06: 1 ");
});

// test/reference/patterns.json: common practice, worked out over eight degrees.
test.each([
  ["thirds", "intervals:2"],
  ["fours", "groups:4"],
  ["growing", "growing"],
  ["pedal", "pedal"],
  ["triads", "triads"],
  ["seventh chords", "sevenths"],
  ["turns", "turn"],
])("the degrees of %s are those of the reference", (name, id) => {
  const { T8 } = patterns.patterns.find((each) => each.id === id)!;
  checkSays(`C major, ${name.slice(0, 1)}‸${name.slice(1)}`, `Degrees, rising: ${T8.join(" ")}  \n`);
});

test("a term tells what it means in a sentence", () => {
  check("D major, slur‸red", "slurred", "Only the first note is tongued; the breath carries the rest.");
  check("D major, slur 2+‸1+1", "slur 2+1+1", "2 slurred, one tongued, one tongued, again and again.");
  check("D major, t-‸k", "t-k", "Tongued with the syllables `t` `k` in turn.");
  check("D major, 16‸ths", "16ths", "Four notes to a quarter beat.");
  checkSays("D major, at 60 ten‸se", "Rest; if it lasts or comes back, ask your teacher.");
  checkSays("D major, sore left ‸thumb", "see a doctor if it lasts or comes back.");
  checkSays("left ‸thumb hurts", "Something hurts: left thumb hurts. Rest it, and tell your teacher");
  checkSays("D major, at 60 clean 4 ‸of 5", "5 attempts, 4 of them with this outcome");
  checkSays("D major, on tenor rec‸order", "Tenor recorder: C4 to D6 as written.");
  check("ground‸work, 15 min", "groundwork", "Slow work, for form.");
});

test("a note of a claim tells its degree", () => {
  check("F# major: F# G# A# B C# D# E‸# F#", "E#", "E# is the seventh degree of F# major.");
  check("D melodic minor: D E F G A B C# D ‸C Bb A G F E D", "C", "C is the seventh degree of D melodic minor.");
  check("D minor arpeggio: D F ‸A D", "A", "A is the third note of D minor arpeggio.");
  check("F# major: F# G# A# B C# D# F‸ F#", "F", "F should be E#, the seventh degree of F# major.");
  checkSays("F# major: F# G# ‸H B C# D# E# F#", "H is not a note.");
});

// test/reference/keysignatures.tsv: the signatures of the Standard MIDI File meta event FF 59.
test("a signature tells which keys have it, and for modes whether it is their own", () => {
  const [, ...rows] = readFileSync("test/reference/keysignatures.tsv", "utf8").trim().split("\n");
  for (const row of rows) {
    const [tonic, mode, fifths, accidentals] = row.split("\t") as [string, string, string, string];
    const written =
      Number(fifths) === 0 ? "no accidentals" : `${Math.abs(Number(fifths))}${Number(fifths) > 0 ? "#" : "b"}`;
    const found = hover(`${tonic} ${mode}: ${written}‸`)!.markdown;
    expect(found).toContain(`${tonic} ${mode}`);
    if (accidentals !== "-") expect(found).toContain(`(${accidentals})`);
    expect(found).toContain("Here: the key signature of");
  }
  checkSays("D dorian: no acci‸dentals", "the signature of D dorian itself");
  checkSays("D dorian: ‸1b", "the signature of D minor, on the same tonic");
});

test("steps tell how they are read, and what the scale has", () => {
  checkSays("D major: T T S T ‸T T S", "D major has T T S T T T S.");
});

// test/reference/iso-weeks.tsv: ISO 8601 weeks from another implementation.
test("a day tells its ISO week", () => {
  const [, ...rows] = readFileSync("test/reference/iso-weeks.tsv", "utf8").trim().split("\n");
  for (const row of rows) {
    const [date, iso] = row.split("\t") as [string, string];
    expect(hover(`${date.slice(0, 4)}‸${date.slice(4)}`, "both", "")!.markdown).toContain(`**${iso.slice(0, -2)}**`);
  }
});

test("a day tells its minutes: as stated, or summed from its sittings, phases and entries", () => {
  const day = (text: string): string => hover(`2026-04-0‸1 Wed${text}`, "both", "")!.markdown;
  expect(day(", 50 min\ngroundwork, 15 min\n")).toBe("**2026-W14**, Wednesday. 50 minutes, as stated.");
  expect(day("\ngroundwork, 15 min\n  D major, 5 min\nfluency\n  D major, 10 min\n")).toContain("25 minutes, summed");
  expect(day("\nsession 9:00, 30 min\ngroundwork, 10 min\nsession 19:00, 20 min\n")).toContain("50 minutes, summed");
  expect(day(", rest, sore left thumb\n")).toContain("A day of rest.");
  expect(day("\nD major, slow\n")).toContain("No minutes are noted.");
  expect(hover("2026-02-3‸0", "both", "")!.markdown).toContain("There is no such date");
});

/** Five weeks of one exercise, rising by four each week; invented. */
const WEEKS = ["2026-03-02", "2026-03-09", "2026-03-16", "2026-03-23", "2026-03-30"]
  .map((date, i) => `${date}\n  D melodic minor, thirds, tongued, 8ths at ${60 + 4 * i} clean, ${72 + 4 * i} slips\n`)
  .join("");

test("an exercise tells what was last done, where to start, its trend and its weeks", () => {
  const remark = "    -- E to F breaks\n";
  const { on, markdown } = hover(
    "  D mel‸odic minor, thirds, tongued, 8ths",
    "none",
    `${WEEKS}${remark}2026-04-06 Mon, plan\n`,
  )!;
  expect(on).toBe("D melodic minor");
  expect(markdown).toBe(`**D melodic minor, thirds**, tongued, one octave

Mon 30 Mar: 76 clean, 88 slips  
– E to F breaks

Start at 72.

Up about 5 notches in four weeks.

| Week of | Best | Usual | Reached |
| --- | --: | --: | --: |
| 30 Mar | 76 | 76 | 1 of 2 |
| 23 Mar | 72 | 72 | 1 of 2 |
| 16 Mar | 68 | 68 | 1 of 2 |
| 9 Mar | 64 | 64 | 1 of 2 |
| 2 Mar | 60 | 60 | 1 of 2 |

Slope 4.00 a week (4.00 to 4.00).`);
});

/** The paragraphs on a line of 6 April below these days, without theory. */
function paragraphsOn(line: string, days: string): readonly string[] {
  return hover(line.replace(/^(..)/, "$1‸"), "none", `${days}2026-04-06 Mon, plan\n`)!.markdown.split("\n\n");
}

describe("last time", () => {
  const last = (days: string, line = "D major, thirds, slurred, 8ths") => paragraphsOn(line, days)[1];

  test("is what was written of its tempos, in the player's words", () => {
    expect(last("2026-04-05\nD major, thirds, slurred, quavers at 60 clean, 66 clean 4 of 5, 10 min\n")).toBe(
      "Sun 5 Apr: 60 clean, 66 clean 4 of 5",
    );
    expect(last("2026-04-05\nD major, thirds, slurred, 8ths at crotchet=60 hopeless\n")).toBe(
      "Sun 5 Apr: crotchet=60 hopeless",
    );
    expect(last("2025-04-05\nD major, thirds, slurred, 8ths at 60 ok, 66 no\n")).toBe("Sat 5 Apr 2025: 60 ok, 66 no");
  });

  test("takes in all lines of the day, but those without a tempo only where none has one", () => {
    expect(
      last(
        "2026-04-05\nD major, thirds, slurred, slow\nD major, thirds, slurred, 8ths at 60 clean\nD major, thirds, slurred, 8ths at 66 slips\n",
      ),
    ).toBe("Sun 5 Apr: 60 clean, 66 slips");
    expect(last("2026-04-05\nD major, thirds, slurred, slow, 5 min\n")).toBe("Sun 5 Apr: thirds, slurred, slow, 5 min");
  });

  test("is of the same way of playing alone", () => {
    const tongued = "2026-04-05\nD major, thirds, tongued, 8ths at 60 clean\n";
    expect(last(`2026-04-01\nD major, thirds, slurred, 8ths at 72 clean\n${tongued}`)).toBe("Wed 1 Apr: 72 clean");
    expect(last(`2026-03-02\nD major, thirds, slurred, 8ths at 72 clean, tongued at 63 clean\n`)).toBe(
      "Mon 2 Mar: 72 clean",
    );
  });

  test("or says that it was another", () => {
    const days = "2026-04-05\nD major, thirds, tongued, 8ths at 60 clean\n2026-04-06\n";
    const told = hover("D‸ major, thirds, slurred, 8ths at 66 clean", "none", days)!.markdown.split("\n\n");
    expect(told[1]).toBe("Not played this way before. Tongued, Sun 5 Apr: 60 clean");
    expect(told.at(-1)).toBe("Also tongued: 60 on 5 Apr.");
    const slow = hover("D‸ major, slurred, slow", "none", "2026-04-05\nD major, d-g, 16ths at 66 clean\n2026-04-06\n")!;
    expect(slow.markdown.split("\n\n").at(-1)).toBe("Also double-tongued: 16ths at 66 on 5 Apr.");
    expect(
      paragraphsOn("D major, thirds, slurred", "2026-04-05\nD major, thirds, tongued, 8ths at 60 clean\n"),
    ).toEqual(["**D major, thirds**", "Not played this way before. Another way, Sun 5 Apr: 60 clean"]);
  });
});

describe("where to start", () => {
  const start = (days: string) => paragraphsOn("D major, thirds, slurred, 8ths", days)[2];
  const played = (date: string, words: string) => `${date}\n  D major, thirds, slurred, 8ths at ${words}\n`;

  test("at four fifths of what is steady; else a notch below the last reached; never the record", () => {
    expect(start(played("2026-04-01", "92 clean 4 of 5, 96 clean"))).toBe("Start at 72. Steady at 92.");
    expect(start(played("2026-03-25", "100 clean") + played("2026-04-01", "76 clean, 80 slips"))).toBe("Start at 72.");
    expect(start(played("2026-04-01", "60 slips"))).toBe(
      "No tempo reached yet. Start where it feels easy and note it: `at 60 clean`.",
    );
  });

  test("a notch lower after a fortnight without it, two after four weeks", () => {
    const others = ["03-10", "03-16", "03-24", "03-30", "04-04"]
      .map((day) => `2026-${day}\n  C major, slow\n`)
      .join("");
    expect(start(played("2026-03-24", "76 clean") + others)).toBe("Start at 72.");
    expect(start(played("2026-03-23", "76 clean") + others)).toBe("Start at 69.");
    expect(start(played("2026-03-09", "76 clean") + others)).toBe("Start at 66.");
  });

  test("stays there after a day that was tiring, or spoke of the body", () => {
    const remark = (words: string) => start(`${played("2026-04-01", "92 clean 4 of 5")}    -- ${words}\n`);
    expect(remark("tired, and it shows in the fourth finger first")).toBe(
      "Start at 72, and stay there if you tire again.",
    );
    expect(remark("left hand late")).toBe("Start at 72, and stay there unless it feels easy.");
    expect(remark("E to F breaks")).toBe("Start at 72. Steady at 92.");
    expect(start(`${played("2026-04-01", "92 clean")}    -- tired\n`)).toBe(
      "Start at 72, and stay there if you tire again.",
    );
  });

  test("on the day after a pain a sentence of care in its place, and no tempo anywhere above the picture", () => {
    expect(start(`${played("2026-04-01", "92 clean")}2026-04-05\n  C major, slow, sore left thumb\n`)).toBe(
      "Yesterday you noted “sore left thumb”. If something hurts, stop and rest, and tell your teacher; see a doctor who knows musicians if it stays, comes back, wakes you, or brings numbness or weakness.",
    );
    expect(start(`${played("2026-04-05", "92 clean")}    -- the wrist hurts again\n`)).toMatch(
      /^In a remark yesterday you noted “the wrist hurts again”\. If something hurts/,
    );
  });

  test("lower for some days after that, and after a break", () => {
    expect(start(`${played("2026-03-31", "92 clean")}2026-04-02\n  C major, slow, sore left thumb\n`)).toBe(
      "Start at 72, and stay there today: something hurt on 2 April.",
    );
    expect(start(played("2026-03-09", "92 clean"))).toBe(
      "Start at 72, and stay there today: you are back after some time away.",
    );
  });
});

test("what has no tempo by nature has days and minutes instead", () => {
  const days = ["03-16", "03-23", "03-30"].map((day) => `2026-${day}\n  long tones on D4, 5 min\n`).join("");
  expect(paragraphsOn("long tones on D4", days)).toEqual([
    "**long tones on D4**",
    "Mon 30 Mar: 5 min",
    "3 days, 15 minutes.",
  ]);
  expect(paragraphsOn("C major, slow", "2026-03-30\n  C major, slow\n").slice(2)).toEqual(["1 day."]);
  const year = Array.from({ length: 40 }, (_, week) => `${dated(week)}\n  long tones on D4, 5 min\n`).join("");
  expect(paragraphsOn("long tones on D4", year)[2]).toBe("26 days, 130 minutes in 26 weeks.");
});

/** A day of each week up to 30 March 2026, the earliest of forty first. */
function dated(week: number): string {
  return isoDate(parseIsoDate("2026-03-30")! - 7 * (39 - week));
}

const PALETTE = { foreground: "#cccccc", background: "#202020", amount: "#6fb7cf" };

/** A hover on the last line, for a client that shows pictures. */
function pictured(text: string): string {
  const line = text.split("\n").length - 1;
  const options = { today: TODAY, explain: "none" as const, palette: PALETTE };
  return hoverAt(journalOf(text), URI, { line, character: 6 }, options)?.markdown ?? "";
}

test("for a client that says its colours there is a picture of the weeks, with its text", () => {
  const markdown = pictured(`${WEEKS}2026-04-06 Mon, plan\n  D melodic minor, thirds, tongued, 8ths`);
  const [, alt, svg] = /!\[(.*)\]\(data:image\/svg\+xml,([^\s()]+)\)/.exec(markdown)!;
  expect(alt).toMatch(/^Weekly best from 60 \(week of 2 Mar\) to 76 /);
  expect(decodeURIComponent(svg!)).toMatch(/^<svg [^>]*role="img"/);
  expect(decodeURIComponent(svg!)).toContain("#6fb7cf");
  expect(markdown).toContain("| 30 Mar | 76 | 76 | 1 of 2 |");
});

test.each([
  ["no history", "2026-04-06 plan\n  D major", "Not practised yet.", 0],
  ["no tempo", "2026-04-05\n  D major, slow\n2026-04-06 plan\n  D major", "1 day.", 0],
  [
    "only failed attempts",
    "2026-04-05\n  D major, at 60 nearly\n2026-04-06 plan\n  D major",
    "No tempo reached yet",
    1,
  ],
  ["only rests", "2026-04-05, rest\n2026-04-06 plan\n  D major", "Not practised yet.", 0],
  ["only days ahead", "2026-05-01\n  D major, at 60 clean", "days in the future are not counted yet", 0],
  [
    "the slowest and the fastest",
    "2026-04-05\n  D major, 32nds at 400 clean, at 20\n2026-04-06 plan\n  D major",
    "Start at 208.",
    1,
  ],
])("%s: a sentence where there is nothing to draw", (_, text, sentence, pictures) => {
  const markdown = pictured(text);
  expect(markdown).toContain(sentence);
  expect(markdown.split("data:").length - 1).toBe(pictures);
});

test("what is dated ahead counts neither as the best, nor in the weeks, nor in the picture", () => {
  const markdown = pictured("2026-05-01\n  D major, at 96 clean\n2026-04-05\n  D major, at 60 clean");
  expect(markdown).toContain("Start at 58.");
  expect(markdown).toContain("![Best reached 60 (week of 30 Mar). ");
  expect(markdown.match(/^\| \d.*$/gm)).toEqual(["| 30 Mar | 60 | 60 | 1 of 1 |"]);
});

test("however long a title is, the picture stays small, and a title of which nothing is declared is said once", () => {
  const title = "漢".repeat(3900);
  expect(pictured(`piece "${title}"\n2026-04-05\n  "${title}", at 60 clean`).length).toBeLessThan(6000);
  expect(pictured('piece "Gigue"\n2026-04-05\n  "Gigue", at 60 clean').split("**Gigue**")).toHaveLength(2);
});

test("minutes that were shared out are said to be about so many", () => {
  const text = "2026-04-05\ngroundwork, 15 min\n  D major, at 60 clean\n  G major, at 60 clean\n2026-04-06\n  D major";
  expect(pictured(text)).toContain("| 30 Mar | 60 | 60 | 1 of 1 | about 8 |");
});

test("aims and set work are hovered as the exercises that they name", () => {
  const marked = "aim D mel‸odic minor, thirds, 8ths at 96 by 2026-04-30\n";
  const text = marked.replace("‸", "") + WEEKS;
  const found = hoverAt(journalOf(text), URI, { line: 0, character: 6 }, { today: TODAY, explain: "none" })!;
  expect(found.markdown).toContain("| 30 Mar | 76 | 76 | 1 of 2 |");
  expect(hoverAt(journalOf(text), URI, { line: 0, character: 1 }, { today: TODAY })!.markdown).toBe(
    "What is to be reached, and by when.",
  );
});

test("a title tells what is declared of it", () => {
  const piece = 'piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84, due 2026-05-09\n';
  const facts = "**Ground in G minor**, G natural minor, 96 bars, goal quarter=84, due 2026-05-09 (in 33 days)";
  const text = `${piece}2026-04-01\nGround, bars 17-32, at 70 clean\n`;
  const at = (line: number, character: number): string | undefined =>
    hoverAt(journalOf(text), URI, { line, character }, { today: TODAY })?.markdown;
  expect(at(0, 10)).toBe(facts);
  expect(at(2, 3)).toContain("Start at 69.");
  expect(at(2, 3)).toContain(facts);
});

test("an instrument that is declared tells its range and how it sounds", () => {
  const told = (line: string) =>
    hoverAt(journalOf(line), URI, { line: 0, character: line.length }, { today: TODAY })?.markdown;
  expect(told("instrument soprano recorder, german fingering")).toBe(
    "Soprano recorder: C4 to D6 as written; it sounds an octave higher.",
  );
  expect(told('instrument "glass <b>pipe": C4 to G5')).toBe("Glass &lt;b&gt;pipe: C4 to G5 as written.");
});

test("a piece in no certain key tells its likely scale, why, and what else it may be", () => {
  const piece = 'piece "Lament": last note D, 1 flat, range G4 to F6\n';
  const text = `${piece}piece "Air": last note E\n2026-04-01\n"Lament", slow\n"Air", slow\n`;
  const at = (line: number, character: number): string | undefined =>
    hoverAt(journalOf(text), URI, { line, character }, { today: TODAY })?.markdown;
  const told = `**Lament**, last note D, 1 flat

Likely **D natural minor**. 1 flat is the signature of D minor, and it ends on its tonic. Where C# comes with an accidental it is harmonic, with B as well melodic minor.

It may also be:
- D dorian. It is often written with the signature of D minor; then its major sixth, B, has accidentals throughout.
- D phrygian. It is often written with the signature of D minor; then its lowered second, Eb, has accidentals throughout.

Its range, G4 to F6, goes from a fifth below D5 to a tenth above it: both the authentic range and the plagal one (hypoaeolian).`;
  expect(at(0, 10)).toBe(told);
  expect(at(3, 3)).toContain(told);
  expect(at(1, 8)).toBe("**Air**, last note E");
});

test("remarks, prose and what cannot be read get nothing", () => {
  for (const marked of ["-- D mi‸nor", "D minor, slow -- D ma‸jor", "Felt ten‸se today", "H mi‸nor, slow", "‸"])
    expect(hover(marked)).toBeUndefined();
});

const HOSTILE = [
  "<script>alert(1)</script>",
  "](command:workbench.action.quit)",
  "[a](command:x) ![b](https://example.org/c.png)",
  "`code` ```js",
  "a | b || c",
  "https://example.org www.example.org a@example.org mailto:a@example.org",
  "\u202Egnp.exe\u2066\u200F",
  "\u0000\u0007\u001b[31m",
  "*bold* _thin_ ~~gone~~ # head > quote - item 1. one",
  "&lt;b&gt; &#x202e; $(zap)",
  "\\` \\| \\",
];

/** What of escaped Markdown is still a mark: none of these may stand there without a backslash before it. */
function marksIn(markdown: string): string[] {
  const unescaped = markdown.replace(/\\[!-/:-@[-`{-~]/g, "x");
  return (
    unescaped.match(
      /[`*_[\]~|<>@!$]|&(?!amp;|lt;|gt;)|:\/|www\.|(?:mailto|xmpp):|^(?:[-#+=]|\d+[.)])|[\p{Cc}\p{Bidi_Control}]/gu,
    ) ?? []
  );
}

test("whatever a journal holds, its text stays text", () => {
  expect(escapeMarkdown("D minor, thirds, 8ths at 60 clean 4 of 5")).toBe("D minor, thirds, 8ths at 60 clean 4 of 5");
  expect(escapeMarkdown("<b>](x)`|\u202E")).toBe("&lt;b&gt;\\](x)\\`\\|");
  for (const text of HOSTILE) expect(marksIn(escapeMarkdown(text))).toEqual([]);
  fc.assert(
    fc.property(fc.array(fc.oneof(fc.constantFrom(...HOSTILE), anyText)), (parts) => {
      expect(marksIn(escapeMarkdown(parts.join(" ")))).toEqual([]);
      expect(escapeMarkdown(parts.join(" "))).not.toMatch(/[\n\r]/);
    }),
    { seed: 20260406 },
  );
});

test("remarks, names and words of a journal are escaped wherever they are shown", () => {
  for (const text of HOSTILE.filter((each) => !/\s--\s/.test(each))) {
    const name = text.replaceAll('"', "");
    const earlier = `2026-03-30\n  D major, slow, clean\n    -- ${text}\n`;
    const shown = [
      hover("D ma‸jor, slow", "both", `${earlier}2026-04-01\n`)?.markdown,
      hover(`"${name}‸", slow`)?.markdown,
      hover(`D major, focus ${text}‸`)?.markdown,
      hover(`D major, with ${text}‸`)?.markdown,
    ].join("\n");
    expect(shown).not.toMatch(/<script|(?<!\\)\]\(|https:\/\/|!\[|\u202E|\u0007/);
  }
});

function everyHover(journal: Journal): void {
  for (const [uri, document] of journal.files) {
    for (let line = 0; line < document.lineCount; line++) {
      const { length } = lineAt(document, line);
      for (let character = 0; character <= length; character++) {
        const found = hoverAt(journal, uri, { line, character }, { today: TODAY, explain: "both" });
        if (!found) continue;
        const { start, end } = found.range;
        expect([start.line, end.line]).toEqual([line, line]);
        expect(start.character <= character && character <= end.character && end.character <= length).toBe(true);
        expect(found.markdown).not.toMatch(/undefined|NaN|\[object/);
      }
    }
  }
}

test("every position of the reference journals has a sound hover or none", () => {
  for (const name of readdirSync("test/reference/journals").filter((each) => !each.includes("."))) {
    const folder = `test/reference/journals/${name}`;
    const read = (file: string): [string, ReturnType<typeof createDocument>] => [
      `file:///j/${file}`,
      createDocument(readFileSync(`${folder}/${file}`, "utf8")),
    ];
    everyHover(new Journal("file:///j", new Map(readdirSync(folder).map(read))));
  }
});

test("nothing is ever thrown, whatever the text", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), (text) => everyHover(journalOf(text))),
    { seed: 20260406, numRuns: FEW },
  );
});

test("of several subjects that under the cursor is told of, or else the first", () => {
  const days = "2026-03-30\n  C major, at 60 clean\n2026-03-31\n  F maj, C maj & G maj, at 66 clean\n2026-04-01\n";
  const told = (marked: string) => {
    const shown = hover(marked, "none", days);
    return [shown?.on, ...(shown?.markdown.split("\n\n").slice(0, 2) ?? [])];
  };
  expect(told("  F‸ maj, C maj & G maj, at 66")).toEqual(["F maj", "**F major**, one octave", "Tue 31 Mar: 66 clean"]);
  expect(told("  F maj, C maj‸ & G maj, at 66").slice(0, 2)).toEqual(["C maj", "**C major**, one octave"]);
  expect(told("  F maj, C maj & G maj‸, at 66").slice(0, 2)).toEqual(["G maj", "**G major**, one octave"]);
  expect(told("  F maj, C maj &‸ G maj, at 66").slice(0, 2)).toEqual([
    "F maj, C maj & G maj",
    "**F major**, one octave",
  ]);
  expect(told("  F maj, C‸ maj, slow")[2]).toContain("Tue 31 Mar");
});
