import fc from "fast-check";
import { expect, test } from "vitest";
import { attemptsOfJournal, recordsOfBlock } from "../../server/history/attempts.ts";
import { sharedMinutes } from "../../server/history/minutes.ts";
import { journalOf, URI } from "../features/journal-text.ts";
import { ROWS } from "../properties/lines.ts";

// Several subjects on a line: the format's own decision (syntaxes/FORMAT.md, Several subjects). Invented lines.

/** What the history holds of the lines of one day: each attempt with its tempo, how it went and its minutes. */
function check(lines: string, expected: readonly string[]): void {
  const told = attemptsOfJournal(journalOf(`2026-03-02\n${lines}\n`)).map(
    ({ subject, rate, reached, minutes, attempt }) => {
      const outcome = reached === null ? "" : reached ? " reached" : " not reached";
      const tempo = rate === null ? "" : ` at ${rate}`;
      return `${subject}${tempo}${outcome}${minutes > 0 ? `, ${minutes} min` : ""} (${attempt})`;
    },
  );
  expect(told).toEqual(expected);
}

test("each is practised at all that the line says", () => {
  check("F maj, C maj, G maj at 60 ok, 66 no", [
    "F major at 60 reached (0)",
    "F major at 66 not reached (1)",
    "C major at 60 reached (0)",
    "C major at 66 not reached (1)",
    "G major at 60 reached (0)",
    "G major at 66 not reached (1)",
  ]);
  check("E major / E minor, slow", ["E major (0)", "E natural minor (0)"]);
  check("G major & arpeggio at 72 clean", ["G major at 72 reached (0)", "G major arpeggio at 72 reached (0)"]);
  check("A minor all three forms", ["A natural minor (0)", "A harmonic minor (0)", "A melodic minor (0)"]);
});

test("the same in words of its own or in a row is one strand", () => {
  const [alone, ...row] = attemptsOfJournal(
    journalOf(
      "2026-03-02\n  C major, slurred, 8ths at 60 clean\n\n2026-03-03\n  G major, C major, slurred, 8ths at 60 clean\n",
    ),
  );
  expect(row.map(({ strandKey }) => strandKey === alone!.strandKey)).toEqual([false, true]);
});

test("each with its own reach", () => {
  const records = attemptsOfJournal(
    journalOf("2026-03-02\n  five-note scale, slow\n  C major, C major arpeggio, slow\n"),
  );
  expect(records.map(({ subject, reach, pattern }) => [subject, reach, pattern])).toEqual([
    ["five-note scale", null, null],
    ["C major", "octave", "straight"],
    ["C major arpeggio", "octave", "straight"],
  ]);
});

test("tempos behind each key are its own", () => {
  check("MAJ SCALES: C108 F108 Bb104 ok", ["C major at 108 (0)", "F major at 108 (1)", "Bb major at 104 reached (2)"]);
  check("D96 A92, 10 min", ["D major at 96, 5 min (0)", "A major at 92, 5 min (1)"]);
  check("C108 F108, 112", ["C major at 108 (0)", "F major at 108 (1)", "F major at 112 (2)"]);
});

test("a set that has a name is one", () => {
  check("all major scales at 60 ok, 12 min", ["all major scales at 60 reached, 12 min (0)"]);
  check("circle of fifths, slow", ["circle of fifths (0)"]);
  check("all majors, circle of fourths at 60", ["all major scales at 60 (0)"]);
});

test("the same subject twice is one", () => {
  check("C maj, G maj, C maj at 60 ok, 8 min", [
    "C major at 60 reached, 4 min (0)",
    "G major at 60 reached, 4 min (0)",
  ]);
});

test("a line that goes on with several goes on with each", () => {
  check("C maj, G maj at 60 ok\n  same, 66 no", [
    "C major at 60 reached (0)",
    "G major at 60 reached (0)",
    "C major at 66 not reached (0)",
    "G major at 66 not reached (0)",
  ]);
  check("D96 A92\n  same, 100, 104", [
    "D major at 96 (0)",
    "A major at 92 (1)",
    "D major at 100 (0)",
    "D major at 104 (1)",
    "A major at 100 (0)",
    "A major at 104 (1)",
  ]);
});

test("minutes are dealt out equally, whatever the attempts", () => {
  check("C maj, G maj at 60 ok, 66 no, 10 min\nD minor, slow, 5 min", [
    "C major at 60 reached, 2.5 min (0)",
    "C major at 66 not reached, 2.5 min (1)",
    "G major at 60 reached, 2.5 min (0)",
    "G major at 66 not reached, 2.5 min (1)",
    "D natural minor, 5 min (0)",
  ]);
  check("C108 F108, 112, 12 min", [
    "C major at 108, 6 min (0)",
    "F major at 108, 3 min (1)",
    "F major at 112, 3 min (2)",
  ]);
});

const subject = fc.constantFrom(...ROWS, "D minor", "Bb major arpeggio", "all majors");
const attempts = fc.constantFrom("", " at 60", " at 60 ok, 66 no", " at 60, 66, 72");
const amount = fc.oneof(
  fc.constant(""),
  fc.integer({ min: 1, max: 50 }).map((minutes) => `, ${minutes} min`),
);
const line = fc.tuple(subject, attempts, amount).map((parts) => `  ${parts.join("")}`);

test("whatever the lines, all minutes of an entry are those of its attempts", () => {
  let rows = 0;
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 8 }), fc.integer({ min: 0, max: 90 }), (lines, minutes) => {
      const journal = journalOf(`2026-03-02${minutes > 0 ? `, ${minutes} min` : ""}\n${lines.join("\n")}\n`);
      const block = journal.files.get(URI)!.blocks.at(-1)!;
      const model = journal.model(block);
      const records = recordsOfBlock(journal, URI, block);
      const summed = model.entries.map(({ place }) => {
        const own = records.filter((record) => record.line === place.line);
        if (new Set(own.map(({ subjectKey }) => subjectKey)).size > 1) rows++;
        return own.reduce((sum, record) => sum + record.minutes, 0);
      });
      const shares = sharedMinutes(model);
      expect(summed.length).toBe(lines.length);
      for (const [i, sum] of summed.entries()) expect(sum).toBeCloseTo(shares[i]!.minutes, 9);
    }),
    { seed: 47 },
  );
  expect(rows).toBeGreaterThan(50);
});
