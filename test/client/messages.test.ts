import fc from "fast-check";
import { expect, test } from "vitest";
import { hashesIn, isFromPage, isPageState, isToPage, placesIn } from "../../client/preview/messages.ts";
import { fingersUnderCursor } from "../../server/features/preview/fingers.ts";
import type { PreviewFigures } from "../../shared/preview.ts";
import { journalOf, URI } from "../features/journal-text.ts";
import { previewOf } from "../features/preview/preview-asked.ts";

/** A journal that has something for every part. */
const TEXT = `instrument alto recorder
piece "Ground" as Ground: G minor, 8 bars, goal quarter=84, due 2026-05-09
study "Stairs": D minor
piece "Old": C major
aim D minor, 8ths at 96 by 2026-04-30
2025-11-02
  "Old", at 60 clean
2026-01-10
  E major, 8ths at 60 clean
  trill A5 with Bb5, 5 min
2026-03-01
lesson, 30 min
set F major, slow
2026-03-08
lesson, 30 min
set D minor, 8ths, 5 days
ask: here?
said: there
2026-03-09
  D minor, 8ths at 60 clean, 5 min
  Ground, bars 1-4, at 60 clean
  "Stairs", line 1, at 60 clean
  long tones on F4, 5 min
  F whole-tone, slow
`;
const FINGERS = fingersUnderCursor(
  journalOf(TEXT),
  URI,
  TEXT.split("\n").indexOf("  D minor, 8ths at 60 clean, 5 min"),
);
const HEAR = { place: { uri: URI, line: 3 }, lines: ["click at 60"], silent: "" };
/** The key of the exercise that is unfolded. */
const OPEN = previewOf(TEXT).exercises!.recent[0]!.key;
const FIGURES: PreviewFigures = {
  journal: "sample:/quickstart",
  version: 3,
  underCursor: null,
  shownBy: null,
  fingers: FINGERS,
  hear: { ...HEAR, place: null },
  ...previewOf(TEXT, { open: OPEN }),
};
const MESSAGE = { type: "figures", uri: "sample:/quickstart/week.practice", figures: FIGURES };
const ASKS = { choice: { span: 26, instrument: null }, most: null, open: null, plan: null };

test("messages to the page", () => {
  expect(isToPage(MESSAGE)).toBe(true);
  expect(isToPage({ type: "cursor", underCursor: null, fingers: null, hear: HEAR })).toBe(true);
  expect(isToPage({ type: "cursor", underCursor: "key", fingers: FINGERS, hear: HEAR })).toBe(true);
  expect(isToPage({ type: "cursor", underCursor: "key", fingers: null })).toBe(false);
  expect(isToPage({ type: "cursor" })).toBe(false);
  expect(isToPage({ type: "lock", locked: true })).toBe(true);
  expect(isToPage({ type: "bring", key: null, place: { uri: URI, line: 3 } })).toBe(true);
  expect(isToPage({ type: "bring", key: "key", place: { uri: URI } })).toBe(false);
  expect(isToPage({ type: "lock" })).toBe(false);
  const staff = { svg: "<svg/>", text: "C major.", notes: [], fingered: false, sentence: "" };
  expect(isToPage({ type: "staff", staff })).toBe(true);
  expect(isToPage({ type: "staff", staff: null })).toBe(true);
  expect(isToPage({ type: "staff", staff: { ...staff, notes: [{ name: "C4" }] } })).toBe(false);
  expect(isToPage({ type: "unavailable", message: "Not now." })).toBe(true);
  expect(isToPage({ type: "unavailable" })).toBe(false);
  expect(isToPage({ type: "else" })).toBe(false);
});

test("messages from the page", () => {
  expect(isFromPage({ type: "staff", width: 480, fingerings: true })).toBe(true);
  expect(isFromPage({ type: "staff", width: -1, fingerings: true })).toBe(false);
  expect(isFromPage({ type: "staff", width: 480 })).toBe(false);
  expect(isFromPage({ type: "ready", asks: ASKS, locked: false })).toBe(true);
  expect(isFromPage({ type: "ready", asks: { ...ASKS, choice: null, open: "key" }, locked: true })).toBe(true);
  const other = { span: 27, instrument: null };
  expect(isFromPage({ type: "ready", asks: { ...ASKS, choice: other }, locked: true })).toBe(false);
  expect(isFromPage({ type: "ready" })).toBe(false);
  expect(isFromPage({ type: "ask", asks: { ...ASKS, most: 400 } })).toBe(true);
  expect(isFromPage({ type: "ask", asks: { ...ASKS, most: -1 } })).toBe(false);
  expect(isFromPage({ type: "ask", asks: { ...ASKS, open: 3 } })).toBe(false);
  const plan = { minutes: 45, shownOn: "2026-03-09" };
  expect(isFromPage({ type: "ask", asks: { ...ASKS, plan } })).toBe(true);
  expect(isFromPage({ type: "ask", asks: { ...ASKS, plan: { minutes: null, shownOn: null } } })).toBe(true);
  expect(isFromPage({ type: "ask", asks: { ...ASKS, plan: { ...plan, minutes: "45" } } })).toBe(false);
  expect(isFromPage({ type: "writePlan" })).toBe(true);
  expect(isFromPage({ type: "reveal", uri: "a:/b.practice", line: 0 })).toBe(true);
  expect(isFromPage({ type: "reveal", uri: "a:/b.practice", line: -1 })).toBe(false);
  expect(isFromPage({ type: "reveal", uri: "a:/b.practice", line: 1.5 })).toBe(false);
  expect(isFromPage({ type: "reveal", uri: { path: "/b" }, line: 1 })).toBe(false);
  expect(isFromPage({ type: "isolate", uri: "a:/b.practice", line: 0, rank: 2 })).toBe(true);
  expect(isFromPage({ type: "isolate", uri: "a:/b.practice", line: 0, rank: -1 })).toBe(false);
  expect(isFromPage({ type: "isolate", uri: "a:/b.practice", line: 0 })).toBe(false);
  expect(isFromPage({ type: "run", command: "workbench.action.quit" })).toBe(false);
});

test("what the page keeps", () => {
  const state = { uri: "a:/b.practice", scroll: 12.5, asks: ASKS, locked: false, open: null, unfolded: ["weeks"] };
  expect(isPageState(state)).toBe(true);
  expect(isPageState({ ...state, scroll: Number.NaN })).toBe(false);
  expect(isPageState({ ...state, asks: { choice: null } })).toBe(false);
  expect(isPageState({ ...state, unfolded: [1] })).toBe(false);
  expect(isPageState(undefined)).toBe(false);
});

test("the page is led to every line that the figures name, and to no other", () => {
  const named = JSON.stringify(FIGURES).match(/"uri":"[^"]*","line":\d+/g)!;
  expect(
    placesIn(FIGURES)
      .map(({ uri, line }) => `"uri":"${uri}","line":${line}`)
      .sort(),
  ).toEqual([...named].sort());
  expect(named.length).toBeGreaterThan(20);
});

test("the hashes of the exercises that are shown", () => {
  const hashes = hashesIn(FIGURES);
  expect(new Set(hashes).size).toBe(2);
  const next = previewOf(TEXT, { known: hashes });
  expect(isToPage({ ...MESSAGE, figures: { ...FIGURES, ...next } })).toBe(true);
  expect(JSON.stringify([next.exercises!.recent, next.exercises!.earlier])).not.toContain("<svg");
});

test("anything at all is answered without a throw, and what is no object is refused", () => {
  fc.assert(
    fc.property(fc.anything(), (value) => {
      const answers = [isToPage(value), isFromPage(value), isPageState(value)];
      if (typeof value !== "object" || value === null) expect(answers).toEqual([false, false, false]);
    }),
    { seed: 11 },
  );
});

test("figures with any one field missing or of another type are refused", () => {
  const places = fieldsOf(MESSAGE);
  expect(places.length).toBeGreaterThan(200);
  for (const place of places) {
    for (const wrong of [undefined, { of: "another type" }]) {
      if (place.at(-1) === "shows" && wrong === undefined) continue; // left out where the page has it
      const spoilt = structuredClone(MESSAGE) as unknown as Fields;
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
