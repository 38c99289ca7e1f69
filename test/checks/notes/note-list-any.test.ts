import fc from "fast-check";
import { expect, test } from "vitest";
import { type ClaimedExercise, checkNoteList } from "../../../server/checks/notes/note-list.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import { INSTRUMENTS } from "../../../server/music/instruments/instruments.ts";
import { LETTERS } from "../../../server/music/notes/note.ts";
import { NOTE_NAMES } from "../../../server/music/notes/note-names.ts";
import { PATTERNS, VARIANTS } from "../../../server/music/patterns/pattern.ts";
import type { Direction, Reach } from "../../../server/music/patterns/reach.ts";
import { KINDS } from "../../../server/music/scales/kinds.ts";
import { times } from "../../support/random-runs.ts";
import { listed, mended } from "./claims.ts";

const name = fc.record({ letter: fc.constantFrom(...LETTERS), alter: fc.integer({ min: -2, max: 2 }) });
const note = fc.record({
  letter: fc.constantFrom(...LETTERS),
  alter: fc.constantFrom(-1, 0, 1),
  octave: fc.integer({ min: 3, max: 6 }),
});
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

const subject: fc.Arbitrary<ClaimedExercise["subject"]> = fc.oneof(
  fc.record({
    type: fc.constant("scale" as const),
    tonic: name,
    octave: maybe(fc.integer({ min: 2, max: 6 })),
    kind: fc.constantFrom(...KINDS),
  }),
  fc.record({
    type: fc.constant("chord" as const),
    root: name,
    chord: fc.constantFrom(...CHORDS.map(({ id }) => id)),
    inversion: fc.constantFrom(0, 1, 2),
    broken: fc.boolean(),
  }),
);

const reach: fc.Arbitrary<Reach> = fc.oneof(
  fc.record({ type: fc.constant("degrees" as const), count: fc.integer({ min: 1, max: 12 }) }),
  fc.record({ type: fc.constant("octaves" as const), count: fc.integer({ min: 1, max: 3 }) }),
  fc.constant({ type: "twelfth" as const }),
  fc.constant({ type: "full range" as const }),
  fc.record({ type: fc.constant("between" as const), from: note, to: note }),
);

const claimed: fc.Arbitrary<ClaimedExercise> = fc.record({
  subject,
  subjectText: fc.constant("this one"),
  pattern: maybe(
    fc.oneof(
      fc.constantFrom(...PATTERNS.map(({ id }) => id)),
      fc.record({
        degrees: fc.array(fc.integer({ min: -1, max: 9 }), { minLength: 1, maxLength: 5 }),
        step: fc.constantFrom(1, 2),
      }),
    ),
  ),
  variant: maybe(fc.constantFrom(...VARIANTS.map(({ id }) => id))),
  direction: maybe(fc.constantFrom<Direction>("up", "down", "up and down", "down and up", "back and forth")),
  reach: maybe(reach),
  instrument: maybe(fc.constantFrom(...INSTRUMENTS)),
  names: fc.constantFrom(...NOTE_NAMES),
});

const word = fc
  .tuple(
    fc.constantFrom(..."ABCDEFGabcdefgH"),
    fc.constantFrom("", "", "", "#", "b", "♯", "♭", "x", "bb"),
    fc.constantFrom("", "", "4", "5"),
  )
  .map((parts) => parts.join(""));
const list = fc
  .array(fc.tuple(word, fc.constantFrom(" ", " ", " | ", ", ")), { minLength: 1, maxLength: 30 })
  .map((parts) => ["C", ...parts.map(([each, between]) => between + each)].join(""));

test("whatever is typed beside whatever: at most eight findings, in order, each on the list and with edits apart", () => {
  fc.assert(
    fc.property(claimed, list, (exercise, text) => {
      const found = checkNoteList(listed(text, exercise.names), exercise);
      expect(found.length).toBeLessThanOrEqual(8);
      for (const { start, end, message, fixes } of found) {
        expect(start).toBeGreaterThanOrEqual(0);
        expect(end).toBeGreaterThan(start);
        expect(end).toBeLessThanOrEqual(text.length);
        expect(message).toMatch(/^[^ ].*\.$/u);
        expect(message).not.toMatch(/undefined|NaN|null/u);
        for (const { edits } of fixes) {
          const inOrder = [...edits].sort((a, b) => a.start - b.start);
          expect(edits.length).toBeGreaterThan(0);
          for (const [index, edit] of inOrder.slice(1).entries()) {
            expect(edit.start).toBeGreaterThanOrEqual(inOrder[index]!.end);
          }
        }
      }
    }),
    { seed: 81 },
  );
});

test("mending finding after finding ends with a list that has none", () => {
  let mendedLists = 0;
  fc.assert(
    fc.property(claimed, list, (exercise, typed) => {
      let text = typed;
      for (let round = 0; round < 40; round++) {
        const [first] = checkNoteList(listed(text, exercise.names), exercise);
        if (!first) mendedLists++;
        // Only a list of over 2,000 characters is not written out.
        if (!first?.fixes[0]) return;
        text = mended(text, first.fixes[0]);
      }
      expect.fail(`still not right: ${typed} became ${text}`);
    }),
    { seed: 82 },
  );
  expect(mendedLists).toBeGreaterThan(times(48));
});
