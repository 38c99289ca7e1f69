import { Note } from "tonal";
import { describe, expect, test } from "vitest";
import type { NotesReport } from "../../server/cli/notes/notes-report.ts";
import { writeNotes } from "../../server/features/commands/write-notes.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { hoverAt } from "../../server/features/hover/hover.ts";
import { isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import { daystave } from "../cli/command-line.ts";
import { edited, journalOf, URI } from "../features/journal-text.ts";
import { ROWS, semitonesOf } from "./in-words.ts";

// Every row of test/reference/patterns.json (common practice, no source), from its words to what is told of it.

const TODAY = parseIsoDate("2026-03-10")!;

async function notesOf(words: string): Promise<NotesReport> {
  const { status, stdout } = await daystave(["notes", words, "--json"]);
  expect(status, words).toBe(0);
  return JSON.parse(stdout);
}

const journalWith = (line: string) => `2026-03-10 Tue\n${line}\n`;

/** What is found on a line, by its code. */
const codesOn = (line: string) => diagnosticsOf(journalOf(journalWith(line)), URI, TODAY).map(({ code }) => code);

/** The line with its notes written out as a claim; as it is where there are none. */
function written(line: string): string {
  const text = journalWith(line);
  const answer = writeNotes(journalOf(text), URI, { line: 1, character: 0 }, { today: TODAY });
  return answer.ok ? edited(text, answer.edits).split("\n")[1]! : line;
}

const CLAIMED = /: ([A-G][A-G#b ]*[A-G#b])/;

describe.each(ROWS)("$row", ({ row, words, mirror, T8, mirrored }) => {
  const rows = [{ line: words, degrees: T8 }, ...(mirror === undefined ? [] : [{ line: mirror, degrees: mirrored! }])];
  test.each(rows)("$line", async ({ line, degrees }) => {
    const semitones = row === "chromatic_threes" ? degrees : semitonesOf(degrees);
    const report = await notesOf(line);
    // An inverted chord starts from its bass, so octaves are counted from the lowest note.
    const heard = report.notes.map((note) => Note.midi(note)!);
    const lowest = Math.min(...heard);
    const from = Math.min(...semitones);
    expect(heard.map((midi) => midi - lowest + from)).toEqual(semitones);
    // A span between two notes counts its degrees from a tonic within it.
    const inOctave = (all: readonly number[]) => all.map((degree) => (degree - 1 + 70) % 7);
    if (report.kind === "major") expect(inOctave(report.degrees)).toEqual(inOctave(degrees));

    expect(codesOn(line)).toEqual([]);
    const claim = written(line);
    const names = CLAIMED.exec(claim)?.[1]?.split(" ") ?? [];
    expect(names.map((name) => Note.chroma(name))).toEqual(semitones.map((each) => each % 12));
    expect(codesOn(claim)).toEqual([]);
  });
});

test("a note of the row exchanged for another of the scale is told", () => {
  for (const { words } of ROWS.filter(({ T8 }) => T8.length > 2)) {
    const claim = written(words);
    const names = CLAIMED.exec(claim)![1]!.split(" ");
    const [first, second, third, ...rest] = names;
    const other = ["D", "E", "F", "G"].find((name) => name !== second)!;
    const changed = claim.replace(names.join(" "), [first, other, third, ...rest].join(" "));
    expect(codesOn(changed), changed).not.toEqual([]);
  }
});

test("the hover on a pattern's word shows the row", () => {
  const hovered = ROWS.filter(({ words }) => words.startsWith("C major, ") && words.endsWith(", up"));
  for (const { words, T8 } of hovered.filter((each) => each.T8.length > 0)) {
    const found = hoverAt(journalOf(journalWith(words)), URI, { line: 1, character: 10 }, { today: TODAY })!;
    const shown = /Degrees, up: (.*?) {2}\n/.exec(found.markdown)![1];
    const cut = T8.length > 64 ? [...T8.slice(0, 64), "…"] : T8;
    expect(shown, words).toBe(cut.join(" "));
  }
  expect(hovered.length).toBeGreaterThan(20);
});

describe("over other scales and spans: rising forms take the rising notes, falling ones the falling notes", () => {
  const check = async (line: string, notes: string) => {
    expect((await notesOf(line)).notes.map((note) => note.replace(/\d/, "")).join(" "), line).toBe(notes);
    expect(codesOn(`${line}: ${notes}`), line).toEqual([]);
  };
  // Notes: common practice, no source; figures as in the reference.
  test.each([
    ["C major, thirds, alternating, 2 octaves, up", "C E F D E G A F G B C A B D E C D F G E F A B G A C"],
    ["C major, thirds, alternating, top down, five notes", "G E D F E C C E F D E G"],
    ["C major pentatonic, thirds, alternating", "C E G D E A C G C G E A G D C E"],
    [
      "C major pentatonic, fours, linked, 2 octaves, up",
      "C D E G A G E D E G A C D C A G A C D E G E D C D E G A C A G E",
    ],
    ["D melodic minor, thirds, alternating", "D F G E F A B G A C# D B D Bb A C Bb G F A G E D F"],
    [
      "D melodic minor, fours, linked",
      "D E F G A G F E F G A B C# B A G A B C# D D C Bb A G A Bb C Bb A G F E F G A G F E D",
    ],
    [
      "D melodic minor, triads, broken, top down",
      "D G Bb G C F A F Bb E G E A D F D D A F A E B G B F C# A C# G D B D",
    ],
    ["D melodic minor, seventh chords, alternating", "D F A C# D B G E D Bb G E D F A C"],
    ["D melodic minor, growing, returning, five notes, down", "A G A G A G F G A G F E F G A G F E D E F G A"],
    ["C chromatic, threes, five notes", "C C# D C# D D# D D# E E Eb D Eb D Db D Db C"],
    ["C chromatic, thirds, five notes", "C D C# D# D E E D Eb Db D C"],
    ["C chromatic, fours, linked, six notes", "C C# D D# E D# D C# D D# E F F E Eb D Db D Eb E Eb D Db C"],
  ])("%s", check);
  test("chromatic threes, fours and thirds over two octaves", async () => {
    const length = async (words: string) => (await notesOf(`C chromatic, ${words}, 2 octaves, up`)).degrees.length;
    // The reference's own formulas, for T = 25.
    expect([await length("threes"), await length("fours"), await length("thirds")]).toEqual([
      3 * (25 - 2),
      4 * (25 - 3),
      2 * (25 - 2),
    ]);
    for (const words of ["threes", "fours", "thirds"]) {
      for (const way of ["up", "down", "up and down", "top down"]) {
        expect(codesOn(written(`C chromatic, ${words}, 2 octaves, ${way}`))).toEqual([]);
      }
    }
  });
});

test("leaps over the same degrees have another order each day", async () => {
  const on = async (day: number) =>
    JSON.parse((await daystave(["notes", "C major, leaps", "--json", "--today", isoDate(day)])).stdout) as NotesReport;
  const [first, again, next] = [await on(TODAY), await on(TODAY), await on(TODAY + 1)];
  expect(first).toEqual(again);
  expect(next.degrees).not.toEqual(first.degrees);
  expect(next.degrees.toSorted()).toEqual(first.degrees.toSorted());
});

test("leaps are one exercise in the history, whatever the day's order; each variant is its own", async () => {
  const week = (date: string, bpm: number) =>
    `${date}\n  C major, leaps, 8ths at ${bpm} clean\n  C major, triads, 8ths at ${bpm} clean\n  C major, triads, broken, 8ths at ${bpm} clean\n`;
  const files = { "a.practice": `${week("2026-03-02 Mon", 60)}\n${week("2026-03-09 Mon", 66)}` };
  const { exercises } = JSON.parse((await daystave(["history", "--json"], { files })).stdout) as {
    exercises: { subject: string; pattern: string; weeks: { bestClean: number }[] }[];
  };
  const found = exercises.map(({ subject, pattern, weeks }) => [
    subject,
    pattern,
    weeks.map(({ bestClean }) => bestClean),
  ]);
  expect(found.toSorted()).toEqual([
    ["C major", "leaps", [120, 132]],
    ["C major", "triads broken", [120, 132]],
    ["C major", "triads", [120, 132]],
  ]);
});

test("as text, leaps say whose order they are in", async () => {
  const { stdout } = await daystave(["notes", "C major, leaps, slow", "--today", "2026-03-02"]);
  // The order is this project's own: test/music/patterns/leaps.test.ts.
  expect(stdout).toContain(
    "\n  as played      C4 A4 F4 D4 B4 G4 C5 E4 C4\n  order          drawn for 2026-03-02: the same all day, another the next\n",
  );
  expect((await daystave(["notes", "C major, thirds, slow"])).stdout).not.toContain("  order ");
});
