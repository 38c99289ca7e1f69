import fc from "fast-check";
import { expect, test } from "vitest";
import { isFromPage, isPageState, isToPage } from "../../client/preview/messages.ts";
import type { PreviewFigures } from "../../shared/protocol.ts";

const FIGURES: PreviewFigures = {
  journal: "sample:/quickstart",
  version: 3,
  rows: [
    {
      key: "D melodic minor|thirds",
      hash: "7f",
      subject: "D melodic minor",
      pattern: "thirds",
      instrument: null,
      strand: "octave, single, even",
      unit: "notes a minute",
      lastPractised: "2026-03-06",
      trend: "Too early to say.",
      weeks: [
        { week: "2026-W09", bestClean: null, shown: "", tested: false, attempts: 2, minutes: 5 },
        { week: "2026-W10", bestClean: 144, shown: "8ths at 72", tested: true, attempts: 3, minutes: 12.5 },
      ],
      uri: "sample:/quickstart/week.practice",
      line: 8,
    },
  ],
};
const MESSAGE = { type: "figures", uri: "sample:/quickstart/week.practice", figures: FIGURES };

test("messages to the page", () => {
  expect(isToPage(MESSAGE)).toBe(true);
  expect(isToPage({ type: "figures", uri: "a:/b", figures: { journal: "a:/", version: 1, rows: [] } })).toBe(true);
  expect(isToPage({ type: "unavailable", message: "Not now." })).toBe(true);
  expect(isToPage({ type: "unavailable" })).toBe(false);
  expect(isToPage({ type: "else" })).toBe(false);
});

test("messages from the page", () => {
  expect(isFromPage({ type: "ready" })).toBe(true);
  expect(isFromPage({ type: "reveal", uri: "a:/b.practice", line: 0 })).toBe(true);
  expect(isFromPage({ type: "reveal", uri: "a:/b.practice", line: -1 })).toBe(false);
  expect(isFromPage({ type: "reveal", uri: "a:/b.practice", line: 1.5 })).toBe(false);
  expect(isFromPage({ type: "reveal", uri: { path: "/b" }, line: 1 })).toBe(false);
  expect(isFromPage({ type: "run", command: "workbench.action.quit" })).toBe(false);
});

test("what the page keeps", () => {
  expect(isPageState({ uri: "a:/b.practice", scroll: 12.5 })).toBe(true);
  expect(isPageState({ uri: "a:/b.practice", scroll: Number.NaN })).toBe(false);
  expect(isPageState(undefined)).toBe(false);
});

test("anything at all is answered without a throw, and what is no object is refused", () => {
  fc.assert(
    fc.property(fc.anything(), (value) => {
      const answers = [isToPage(value), isFromPage(value), isPageState(value)];
      if (typeof value !== "object" || value === null) expect(answers).toEqual([false, false, false]);
    }),
    { seed: 11, numRuns: 500 },
  );
});

test("figures with any one field missing or of another type are refused", () => {
  const places = fieldsOf(MESSAGE);
  expect(places.length).toBeGreaterThan(25);
  for (const place of places) {
    for (const wrong of [undefined, { of: "another type" }]) {
      const spoilt = structuredClone(MESSAGE);
      const parent = place.slice(0, -1).reduce<Fields>((inner, step) => inner[step] as Fields, spoilt);
      parent[place.at(-1)!] = wrong;
      expect(isToPage(spoilt), `${place.join(".")} as ${JSON.stringify(wrong)}`).toBe(false);
    }
  }
});

type Fields = Record<string, unknown>;

/** The way to every field of an object, those of its arrays' items included. */
function fieldsOf(value: unknown): string[][] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => [[key], ...fieldsOf(inner).map((rest) => [key, ...rest])]);
}
