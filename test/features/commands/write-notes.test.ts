import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writeNotes } from "../../../server/features/commands/write-notes.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import scales from "../../reference/scales.json" with { type: "json" };
import { times } from "../../support/random-runs.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { run, TODAY } from "../marked-text.ts";

const DAY = "2026-03-09 Mon\n";

/** An entry of the day before and after; the cursor starts at the beginning of its line. */
function check(before: string, after: string, head = ""): void {
  expect(run(writeNotes, `${head}${DAY}‸${before}`)).toBe(head + DAY + after);
}

// test/reference/scales.json: GNU LilyPond 2.24.1's scales, transposed by it. A row goes up unless the scale falls
// otherwise.
describe("the notes are LilyPond's", () => {
  const names = (notes: readonly string[]): string => notes.map((note) => note.replace(/\d/u, "")).join(" ");

  test("in every major key", () => {
    for (const { tonic, scales: written } of scales.major.filter(({ standard }) => standard))
      check(`${tonic} major`, `${tonic} major: ${names(written.major.up)}‸`);
  });

  test("in every minor key, in its three forms, the melodic one up and down", () => {
    for (const { tonic, scales: written } of scales.minor.filter(({ standard }) => standard)) {
      const { natural, harmonic, melodic } = written;
      check(`${tonic} natural minor`, `${tonic} natural minor: ${names(natural.up)}‸`);
      check(`${tonic} harmonic minor, slow`, `${tonic} harmonic minor: ${names(harmonic.up)}‸, slow`);
      check(`${tonic} melodic minor`, `${tonic} melodic minor: ${names([...melodic.up, ...melodic.down.slice(1)])}‸`);
      check(`${tonic} melodic minor, down`, `${tonic} melodic minor: ${names(melodic.down)}‸, down`);
    }
  });
});

// Common practice, no source: as method books for winds print it.
test("a chromatic scale in sharps going up and flats coming down; a whole-tone scale without double sharps", () => {
  check("F chromatic", "F chromatic: F F# G G# A A# B C C# D D# E F E Eb D Db C B Bb A Ab G Gb F‸");
  check("Bb chromatic, up", "Bb chromatic: Bb B C C# D D# E F F# G G# A Bb‸, up");
  check("E whole-tone", "E whole-tone: E F# G# A# C D E‸");
});

// Notes of what follows: common practice, no source; patterns as in test/reference/patterns.json.
test("over the span, in the pattern and the direction that are stated", () => {
  check("D minor, five notes", "D minor: D E F G A‸, five notes");
  check("C major, 2 octaves", "C major: C D E F G A B C D E F G A B C‸, 2 octaves");
  check("C major, up and down, five notes", "C major: C D E F G F E D C‸, up and down, five notes");
  check("C major, thirds", "C major: C E D F E G F A G B A C‸, thirds");
  check("G minor arpeggio, slow", "G minor arpeggio: G Bb D G‸, slow");
  check("F major, five notes, top down", "F major: C Bb A G F G A Bb C‸, five notes, top down");
});

test("behind what is played, and not behind the colon of a label", () => {
  check("tenor: C major, 60", "tenor: C major: C D E F G A B C‸, 60");
  check("A | F major | 72", "A | F major: F G A Bb C D E F‸, | 72");
});

test("of leaps the order of the day that the entry stands on, whatever the direction", () => {
  const onDay = (date: string, entry: string) =>
    run((journal, uri, at) => writeNotes(journal, uri, at, { today: parseIsoDate(date)! }), `${date}\n‸${entry}`);
  expect(onDay("2026-03-02", "C major, leaps")).toBe("2026-03-02\nC major: C A F D B G C E C‸, leaps");
  expect(onDay("2026-03-03", "C major, leaps, down")).toBe("2026-03-03\nC major: C G B E C D F A C‸, leaps, down");
});

test("a day that is over stays as it was written, and a sentence has the notes", () => {
  expect(run(writeNotes, "2026-03-08\n‸C major: C D E E, slow")).toBe(
    "Notes: C D E F G A B C (an earlier day stays as it was written)",
  );
  expect(run(writeNotes, "2026-03-08\n‸C major, leaps")).toMatch(/^Notes: C /);
  const row = "C E D F E G F A G B A C B D ".repeat(6).slice(0, 159);
  expect(run(writeNotes, "2026-03-08\n‸C major, thirds, 7 octaves")).toBe(
    `Notes: ${row} … (an earlier day stays as it was written)`,
  );
  expect(run(writeNotes, "2026-03-10 plan\n‸C major")).toBe("2026-03-10 plan\nC major: C D E F G A B C‸");
});

test("in the signs that the subject is written with, and never in small letters", () => {
  check("F♯ major", "F♯ major: F♯ G♯ A♯ B C♯ D♯ E♯ F♯‸");
  check("F sharp major, five notes", "F sharp major: F sharp G sharp A sharp B C sharp‸, five notes");
  check("eb major, five notes", "eb major: Eb F G Ab Bb‸, five notes");
});

test("behind the subject, and with a comma before what follows", () => {
  check("  - F major thirds, five notes -- at last", "  - F major: F A G Bb A C‸, thirds, five notes -- at last");
  check("C major -- why not", "C major: C D E F G A B C‸ -- why not");
  check("C major 6 sharps", "C major: C D E F G A B C‸, 6 sharps");
  check("D minor, d-g, five notes", "D minor: D E F G A‸, d-g, five notes");
});

test("notes or letters of steps that stand there already give way", () => {
  check("D minor, five notes: D E F# G A, slow", "D minor, five notes: D E F G A‸, slow");
  check("C major: | C D E | F G | slow", "C major: C D E F G A B C‸ slow");
  check("C major: TTSTTTS, slow", "C major: C D E F G A B C‸, slow");
});

test("what else stands behind a colon stays", () => {
  check("C major: ", "C major: C D E F G A B C‸");
  check("C major:   -- later", "C major: C D E F G A B C‸   -- later");
  check("F major, five notes: 1 flat", "F major, five notes: F G A Bb C‸, 1 flat");
  check("C major: steps TTSTTTS", "C major: C D E F G A B C‸, steps TTSTTTS");
  check("C major:thirds, five notes", "C major: C E D F E G‸, thirds, five notes");
});

test("declared scales and patterns are written out too", () => {
  const head = 'scale "double harmonic": 1 b2 3 4 5 b6 7\npattern "zigzag": 1 3 2 4\n\n';
  check('"double harmonic" on D, slow', '"double harmonic" on D: D Eb F# G A Bb C# D‸, slow', head);
  check('C major "zigzag", five notes', 'C major: C E D F D F E G‸, "zigzag", five notes', head);
});

test("where there are no notes to write, a sentence says so", () => {
  const refused = (line: string, reason: RegExp, head = "") =>
    expect(run(writeNotes, `${head}${DAY}${line}‸`)).toMatch(reason);
  refused('"Ground", slow', /^Only the notes of a scale or an arpeggio/);
  refused("C major > F major, slow", /^Only the notes of a scale or an arpeggio/);
  refused("d, slow", /^Only the notes of a scale or an arpeggio/);
  refused('C major, "zigzag"', /declared in words that cannot be read/, 'pattern "zigzag": one three\n\n');
  refused("C major, tenths, five notes", /^Over the span of this line the pattern has no notes/);
  refused("C# chromatic, growing, 5 octaves", /longer than 4096 characters/);
  refused("Sound freer today.", /^There is no entry on this line/);
  expect(run(writeNotes, "aim C major, at 60 by 2026-04-30‸")).toMatch(/^There is no entry on this line/);
});

const words = (phrases: string) => fc.constantFrom(...phrases.split("|"));
/** Invented lines: a subject, at most one pattern, span and direction, and other terms, with claims or without. */
const entry = fc
  .tuple(
    words("D minor|F# major|Bb melodic minor|C chromatic|G minor arpeggio|A dominant seventh, 1st inversion|E dorian"),
    words(
      "|, thirds|, sixths|, triads|, threes|, turns|, five notes on each|, octaves|, leaps|, fours, linked|, triads, broken",
    ),
    words("|, 2 octaves|, twelfth|, 9 notes|, full range|, from F4 to G6"),
    words("|, up|, down|, up and down|, top down|, back and forth"),
    words("|, slurred|, 8ths at 60 clean, 66 slips|, d-g|, 10 min -- so so"),
    words("|: 1 flat|: TTSTTTS|: A B C|:"),
  )
  .map(([subject, pattern, span, direction, how, claim]) => subject + claim + pattern + span + direction + how);

test("whatever the line, the notes pass the check, and all else on it is read as before", () => {
  const CLAIMS = ["scale-note", "scale-spelling", "missing-note", "extra-note", "arpeggio-note", "pattern-notes"];
  const termsIn = (journal: Journal) => {
    const { source, ...entry } = journal.model(journal.files.get(URI)!.blocks[1]!).entries[0]!;
    return { ...entry, place: 0, source: 0, attempts: entry.attempts.map((attempt) => ({ ...attempt, place: 0 })) };
  };
  let written = 0;
  fc.assert(
    fc.property(entry, (line) => {
      const text = `instrument alto recorder\n${DAY}${line}\n`;
      const answer = writeNotes(journalOf(text), URI, { line: 2, character: 0 }, { today: TODAY });
      if (!answer.ok) return;
      written++;
      const after = journalOf(edited(text, answer.edits));
      expect(diagnosticsOf(after, URI, TODAY).filter(({ code }) => CLAIMS.includes(code))).toEqual([]);
      expect(termsIn(after)).toEqual(termsIn(journalOf(text)));
      expect(writeNotes(after, URI, answer.cursor, { today: TODAY })).toEqual({ ...answer, edits: [] });
    }),
    { seed: 65 },
  );
  expect(written).toBeGreaterThan(times(48));
});
