import fc from "fast-check";
import { expect, test } from "vitest";
import { isFromPupils, isPupilsShown, isPupilsState, isToPupils, placesOf } from "../../client/pupils/messages.ts";
import { pupils } from "../../server/features/pupils/pupils.ts";
import type { PupilsShown } from "../../shared/pupils.ts";
import { journalOf } from "../features/journal-text.ts";
import { day } from "../plan/written.ts";

const TEXT = "player Noor\nshare body\n2026-03-02\nset C major\n  F major, slow\nask: why?\nwrist sore\n";
const SHOWN: PupilsShown = { version: 3, pupils: pupils([journalOf(TEXT)], () => day("2026-03-09")) };

/** Every value within a value, with the keys that lead to it. */
function* within(value: unknown, keys: readonly string[] = []): Generator<readonly string[]> {
  if (typeof value !== "object" || value === null) return;
  for (const [key, each] of Object.entries(value)) {
    yield [...keys, key];
    yield* within(each, [...keys, key]);
  }
}

function withAt(value: unknown, [key, ...keys]: readonly string[], set: unknown): unknown {
  if (key === undefined) return set;
  const copy = structuredClone(value) as Record<string, unknown>;
  copy[key] = withAt(copy[key], keys, set);
  return copy;
}

test("what the server makes goes to the page", () => {
  expect(isPupilsShown(SHOWN)).toBe(true);
  expect(isToPupils({ type: "pupils", shown: SHOWN })).toBe(true);
  expect(placesOf(SHOWN).map(({ line }) => line)).toEqual([0, 2, 3, 5, 6]);
});

test("another kind of value anywhere in it does not", () => {
  const all = [...within(SHOWN)];
  expect(all.length).toBeGreaterThan(30);
  for (const keys of all) expect(isPupilsShown(withAt(SHOWN, keys, () => {})), keys.join("/")).toBe(false);
});

test("nothing else is taken for a message", () => {
  fc.assert(
    fc.property(fc.anything(), (value) => {
      expect([isToPupils(value), isFromPupils(value), isPupilsState(value)]).toEqual([false, false, false]);
    }),
  );
  expect(isFromPupils({ type: "reveal", uri: "file:///a", line: -1 })).toBe(false);
  expect(isFromPupils({ type: "reveal", uri: "file:///a", line: 1 })).toBe(true);
  expect(isPupilsState({ scroll: 12 })).toBe(true);
});
