import fc from "fast-check";
import { distance } from "fastest-levenshtein";
import { expect, test } from "vitest";
import { bestReading, fitReading } from "../../../server/checks/notes/best-reading.ts";
import type { ClaimedExercise, Reading } from "../../../server/checks/notes/claimed-exercise.ts";
import { countDifferences } from "../../../server/checks/notes/count-differences.ts";
import { readings } from "../../../server/checks/notes/readings.ts";
import type { Note, NoteName } from "../../../server/music/notes/note.ts";
import { PATTERNS, VARIANTS } from "../../../server/music/patterns/pattern.ts";
import type { ClaimedNote } from "../../../server/syntax/line/line.ts";
import { MANY } from "../../support/random-runs.ts";
import { beside } from "./claims.ts";

const letters = fc.string({ unit: fc.constantFrom(..."abcdefg"), minLength: 1, maxLength: 100 });

test("differences are counted as npm fastest-levenshtein counts them", () => {
  fc.assert(
    fc.property(letters, letters, fc.boolean(), fc.nat(100), (typed, expected, mayLeaveOutLast, most) => {
      const places = [...typed].map((letter) => {
        const words = new Int32Array((expected.length + 31) >> 5);
        for (const [i, each] of [...expected].entries()) if (each === letter) words[i >> 5]! |= 1 << i;
        return words;
      });
      const whole = distance(typed, expected);
      const short = mayLeaveOutLast && expected.length > 1 ? distance(typed, expected.slice(0, -1)) : whole;
      const differences = Math.min(whole, short);
      expect(countDifferences(places, expected.length, mayLeaveOutLast, 1000)).toBe(differences);
      const found = countDifferences(places, expected.length, mayLeaveOutLast, most);
      if (differences <= most) expect(found).toBe(differences);
      else expect(found).toBeGreaterThan(most);
    }),
    { seed: 71, numRuns: MANY },
  );
});

const SUBJECTS = [
  "D major",
  "B melodic minor",
  "C octatonic",
  "E whole tone",
  "F chromatic",
  "A blues",
  "A dominant seventh",
  "D minor broken chord",
].map((text) => beside(text));

const claimed: fc.Arbitrary<ClaimedExercise> = fc
  .record(
    {
      exercise: fc.constantFrom(...SUBJECTS),
      pattern: fc.constantFrom(...PATTERNS.map(({ id }) => id).filter((id) => id !== "leaps"), {
        degrees: [1, 3, 20],
        step: 1,
      }),
      variant: fc.constantFrom(...VARIANTS.map(({ id }) => id)),
      direction: fc.constantFrom("up" as const, "down" as const, "up and down" as const, "down and up" as const),
      reach: fc.record({ type: fc.constant("octaves" as const), count: fc.integer({ min: 1, max: 3 }) }),
    },
    { requiredKeys: ["exercise"] },
  )
  .map(({ exercise, ...terms }) => ({ ...exercise, ...terms }));

test("how long a reading is is told without its notes", () => {
  fc.assert(
    fc.property(claimed, fc.nat(400), (exercise, length) => {
      for (const possible of readings(exercise, length)) {
        const reading = possible.read();
        expect([possible.length, possible.patterned]).toEqual([reading.notes.length, reading.patterned]);
      }
    }),
    { seed: 72 },
  );
});

/** What a hand does to a list: `at` of a thousand, so many notes away, and others in their place. */
const slips = fc.array(
  fc.record({
    at: fc.nat(999),
    away: fc.nat(3),
    others: fc.array(fc.record({ letter: fc.constantFrom(..."CDEFGAB"), alter: fc.integer({ min: -1, max: 1 }) }), {
      maxLength: 3,
    }),
  }),
  { maxLength: 12 },
);

function typed(notes: readonly Partial<Note>[]): ClaimedNote[] {
  return notes.map((note, i) => ({ start: 3 * i, end: 3 * i + 2, text: "xx", note: note as NoteName }));
}

/** Of all readings, each laid beside the list in full: fewest differences by name, then by octave, then the first. */
function bestOfAll(notes: readonly ClaimedNote[], all: readonly Reading[]) {
  const names = notes.map((each) => ({ ...each, note: { letter: each.note!.letter, alter: each.note!.alter } }));
  const patterned = all.some((reading) => reading.patterned);
  const fits = all.flatMap((reading, rank) => {
    const byName = fitReading(names, reading).alignment.differences;
    if (patterned && !reading.patterned && byName > notes.length / 4) return [];
    return [{ ...fitReading(notes, reading), byName, rank }];
  });
  fits.sort((a, b) => a.byName - b.byName || a.alignment.differences - b.alignment.differences || a.rank - b.rank);
  const [best] = fits;
  return best && { reading: best.reading, alignment: best.alignment, octaves: best.octaves };
}

/** Further off by length nothing is laid side by side. */
const FAR = 200;

test("the best reading is that of a look at every reading in full", () => {
  fc.assert(
    fc.property(
      claimed,
      fc.nat(60),
      fc.nat(99),
      slips,
      fc.constantFrom(0, 1, 2),
      (exercise, length, pick, hand, octaves) => {
        const all = readings(exercise, length);
        if (all.length === 0) return;
        const list: Partial<Note>[] = all[pick % all.length]!.read().notes.map(({ note }) => note);
        for (const { at, away, others } of hand)
          list.splice(Math.floor((at * list.length) / 1000), away, ...(others as NoteName[]));
        const notes = typed(
          list.map(({ octave, ...name }) => (octaves && octave ? { ...name, octave: octave + octaves } : name)),
        );
        const every = readings(exercise, notes.length);
        if (notes.length === 0 || every.some((each) => Math.abs(each.length - notes.length) > FAR)) return;
        const found = bestReading(notes, exercise);
        expect(found).toEqual(
          bestOfAll(
            notes,
            every.map(({ read }) => read()),
          ),
        );
      },
    ),
    { seed: 73 },
  );
});
