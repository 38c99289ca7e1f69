import fc from "fast-check";
import { expect, test } from "vitest";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document.ts";
import { LineSorts, sortOf } from "../../server/syntax/line-sorts.ts";
import { parseLine } from "../../server/syntax/parse-line.ts";
import { MANY } from "../support/random-runs.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// What a line is to those around it is told by its opening. Here that is held against reading every line in full.

const HEADS = [
  "",
  'phase "market band"\nphase "Übergang"\nphase "R & R"\npiece "Warm" as Warm',
  'names german\nphase "h"',
];

const FRAMES = [
  "groundwork",
  "Warm up",
  "warmup",
  "WARM  -UP",
  "slow work",
  "session",
  "rest",
  "plan",
  "break",
  "lesson",
];
const DECLARED = ["market band", "Marketband", "übergang", "U\u0308bergang", "R & R", "r&r", "Warm", "h"];
const opening = fc.constantFrom(...FRAMES, ...DECLARED, ...SCALE_SUBJECTS, ...CHORD_SUBJECTS, ...WHOLE_LINES);
const before = fc.constantFrom("", "  ", "\t", "- ", "* ", "\u00A0", "\uFEFF", "\u00AD", "(", "--", "– ");
const after = fc.constantFrom("", ", 15 min", " 10'", ": with Anna", " 19:30", "s", "-", " -- words", ", ", " plan");
const line = fc
  .tuple(before, opening, after, fc.array(fc.constantFrom(...TERMS), { maxLength: 2 }))
  .map(([indent, words, next, terms]) => [indent + words + next, ...terms].join(", "));

test.each(HEADS)("the sort of a line is that of reading it in full: %j", (head) => {
  const uri = "file:///journal/journal.practice";
  const { partContext } = new Journal("file:///journal", new Map([[uri, createDocument(head)]]));
  const sorts = new LineSorts(partContext);
  const seen = new Set<string>();
  fc.assert(
    fc.property(fc.oneof(line, fc.string({ unit: "binary", maxLength: 12 })), (text) => {
      fc.pre(!/[\r\n]/.test(text));
      const sort = sortOf(parseLine(text, { ...partContext, head: false }));
      seen.add(sort);
      expect([text, sorts.of(text)]).toEqual([text, sort]);
    }),
    { seed: 31, numRuns: MANY },
  );
  expect([...seen].sort()).toEqual(["blank", "other", "phase", "remark", "session"]);
});
