import { join } from "node:path";
import { expect, test } from "vitest";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { ROOT } from "../edits.ts";
import { handsIn } from "./hands.ts";
import { type Fresh, life } from "./life.ts";

// A journal that was edited tells what a fresh one of the same text tells: some edits of what `npm run edits` makes a million
// of. Each life has its seed; its hands are those of the tables in test/reference.

const HANDS = handsIn(join(import.meta.dirname, "../../reference"));

test.each([1001, 1002])("a life of 300 edits from seed %i", (seed) => {
  const { edits, compared, failure } = life({ seed, edits: 300, every: 20, hands: HANDS });
  expect(failure).toBeUndefined();
  expect(edits).toBeGreaterThanOrEqual(300);
  expect(compared).toBeGreaterThanOrEqual(10);
});

/** As if an edit that brought such a word had been lost. */
const without =
  (word: string): Fresh =>
  (texts) =>
    new Journal(ROOT, new Map(texts.map(([uri, text]) => [uri, createDocument(text.replaceAll(word, ""))])));

test("a life ends at the first difference, and tells the fewest steps that show it", () => {
  const { edits, failure } = life({ seed: 5, edits: 5000, every: 20, hands: HANDS, fresh: without("♭") });
  expect(edits).toBeLessThan(5000);
  const [found, fewest, before, ...steps] = failure!.split("\n");
  expect(found).toMatch(/^Seed 5, within \d+ edits, round \d+: text of file:.*♭/);
  expect(fewest).toMatch(/^The fewest steps show: text of file:/);
  expect(before).toMatch(/^\[\["file:/);
  expect(steps).toHaveLength(1);
  expect(steps[0]).toMatch(/♭/);
});
