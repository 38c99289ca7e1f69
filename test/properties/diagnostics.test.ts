import fc from "fast-check";
import { expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { applyChanges, createDocument, type TextChange, textOf } from "../../server/syntax/document.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// After any series of edits the diagnostics are those of a journal built afresh from the same texts.

const ROOT = "file:///journal";
const MARKER = `${ROOT}/journal.practice`;
const FILES = [MARKER, `${ROOT}/a.practice`, `${ROOT}/b.practice`];
const TODAY = parseIsoDate("2026-06-01")!;

const DECLARATIONS = [
  "player Noor",
  "player Ilse",
  "instrument alto recorder",
  "instrument tenor recorder",
  'instrument "wooden flute": D4 to B5',
  "note value 8ths",
  "pitch A=415",
  "names german",
  "usual articulation slurred",
  'piece "Ground in G minor" as Ground: G minor',
  'piece "Ground in G minor"',
  'study "Daily study" as Set',
  'pattern "zigzag": 1 3 2 4',
  'pattern "zigzag": 1 2',
  'scale "double harmonic": 1 b2 3 4 5 b6 7',
  'phase "market band"',
  'activity "stretching"',
  'focus "sound"',
  "aim D minor by 2026-04-30",
  "aim D minor, thirds by 2026-12-31",
];
const DAYS = [
  "2026-03-02 Mon",
  "2026-03-02",
  "2026-03-03, 10 min",
  "2026-03-04 plan",
  "2026-03-01",
  "2026-02-30",
  "02.03.2026",
  "2026-07-01",
  "2026-07-02 plan",
  "2025-12-31",
  "2026-3-5",
];
const MEANT = [
  "C3 to F4, out of range",
  "D minor, from C3 to F4",
  "Ground, slow",
  "market band, 5 min",
  'D minor, "zigzag"',
  "stretching, 5 min",
  "notes B3 C4",
];

const line = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...DAYS) },
  { weight: 2, arbitrary: fc.constantFrom(...DECLARATIONS) },
  { weight: 1, arbitrary: fc.constantFrom(...MEANT) },
  { weight: 2, arbitrary: fc.constantFrom(...WHOLE_LINES.filter((each) => each.length < 200)) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...SCALE_SUBJECTS, ...CHORD_SUBJECTS), fc.constantFrom(...TERMS))
      .map((parts) => parts.join(", ")),
  },
);
const lines = fc.array(line, { maxLength: 10 }).map((all) => all.join("\n"));
const head = fc.array(fc.constantFrom(...DECLARATIONS), { maxLength: 6 }).map((all) => all.join("\n"));

interface Step {
  readonly file: string;
  readonly change: {
    readonly from: number;
    readonly to: number;
    readonly a: number;
    readonly b: number;
    readonly text: string;
  };
  readonly kind: "edit" | "whole" | "drop";
  /** Whether anybody asks for the diagnostics before the next step. */
  readonly asked: boolean;
  readonly today: number;
}

const insertion = fc.oneof(
  { weight: 4, arbitrary: line.map((each) => `${each}\n`) },
  { weight: 2, arbitrary: lines },
  { weight: 3, arbitrary: fc.constantFrom("", "\n", "\r\n", "\r", " ", "2026-03-02\n", "x", '"', "--", ",", "#", "1") },
);
const step: fc.Arbitrary<Step> = fc.record({
  file: fc.constantFrom(...FILES),
  change: fc.record({
    from: fc.nat(14),
    to: fc.constantFrom(0, 0, 0, 1, 1, 2, 5),
    a: fc.constantFrom(0, 0, 0, 1, 5, 10, 99),
    b: fc.constantFrom(0, 0, 0, 2, 10, 99),
    text: insertion,
  }),
  kind: fc.constantFrom("edit", "edit", "edit", "edit", "edit", "edit", "whole", "drop"),
  asked: fc.boolean(),
  today: fc.constantFrom(TODAY, TODAY, TODAY, TODAY + 60, TODAY - 120),
});

function taken(journal: Journal, { file, change, kind }: Step): Journal {
  const document = journal.files.get(file);
  if (kind === "drop") return journal.with(file, document ? undefined : createDocument(change.text));
  if (!document) return journal.with(file, createDocument(change.text));
  const range = {
    start: { line: change.from, character: change.a },
    end: { line: change.from + change.to, character: change.b },
  };
  const edit: TextChange = kind === "whole" ? { text: change.text } : { range, text: change.text };
  return journal.with(file, applyChanges(document, [edit]));
}

function afresh(journal: Journal): Journal {
  return new Journal(ROOT, new Map([...journal.files].map(([uri, each]) => [uri, createDocument(textOf(each))])));
}

function check(journal: Journal, today: number): void {
  const fresh = afresh(journal);
  for (const uri of FILES) {
    const texts = `${uri}\n${journal.files.has(uri) ? textOf(journal.files.get(uri)!) : ""}`;
    expect({ texts, found: diagnosticsOf(journal, uri, today) }).toEqual({
      texts,
      found: diagnosticsOf(fresh, uri, today),
    });
  }
}

test("after any series of edits the diagnostics are those of a journal built afresh", () => {
  fc.assert(
    fc.property(head, lines, lines, fc.array(step, { minLength: 1, maxLength: 12 }), (marker, a, b, steps) => {
      let journal = new Journal(ROOT, new Map([marker, a, b].map((text, i) => [FILES[i]!, createDocument(text)])));
      for (const each of steps) {
        journal = taken(journal, each);
        if (each.asked) check(journal, each.today);
      }
      check(journal, TODAY);
    }),
    { seed: 21, numRuns: 100 },
  );
}, 30_000);

test("an older state of the journal still answers for itself", () => {
  fc.assert(
    fc.property(head, lines, lines, fc.array(step, { minLength: 2, maxLength: 6 }), (marker, a, b, steps) => {
      const first = new Journal(ROOT, new Map([marker, a, b].map((text, i) => [FILES[i]!, createDocument(text)])));
      const states = [first];
      for (const each of steps) states.push(taken(states.at(-1)!, each));
      for (const state of [...states].reverse()) check(state, TODAY);
      for (const state of states) check(state, TODAY);
    }),
    { seed: 22, numRuns: 25 },
  );
}, 30_000);

test("the same day put in above the only one", () => {
  const journal = new Journal(ROOT, new Map([[MARKER, createDocument("2026-03-02\n")]]));
  check(journal, TODAY);
  const top = { line: 0, character: 0 };
  const edit = { range: { start: top, end: top }, text: "2026-03-02 Mon\n" };
  check(journal.with(MARKER, applyChanges(journal.files.get(MARKER)!, [edit])), TODAY);
});

const CROSSING = ["day-order", "duplicate-day", "future-day", "duplicate-declaration", "aim-past"];

/** What is found on the last lines of a text, by their distance from its end, without what crosses days. */
function ownFindings(journal: Journal, text: string, last: number): readonly string[] {
  const count = text.split("\n").length;
  const found = diagnosticsOf(journal, FILES[1]!, TODAY).filter(({ code }) => !CROSSING.includes(code));
  return found
    .filter(({ range }) => range.start.line >= count - last)
    .map(({ code, range, message }) => `${range.start.line - count} ${range.start.character} ${code} ${message}`);
}

test("a day's own findings do not depend on the days before it", () => {
  const own = fc.tuple(
    fc.constantFrom(...DAYS),
    lines.map((each) => each.split("\n").filter((text) => !isDay(text))),
  );
  // Names that are declared in a day hold everywhere, by design.
  const naming = (text: string): boolean => /^\W*(?:piece|study|pattern|scale|phase|activity|instrument)\b/m.test(text);
  fc.assert(
    fc.property(lines, own, (before, [day, rest]) => {
      if (naming(before)) return;
      const text = [day, ...rest].join("\n");
      const alone = new Journal(ROOT, new Map([[FILES[1]!, createDocument(text)]]));
      const behind = `2026-01-01\n${before}\n${text}`;
      const among = new Journal(ROOT, new Map([[FILES[1]!, createDocument(behind)]]));
      const last = rest.length + 1;
      expect(ownFindings(among, behind, last)).toEqual(ownFindings(alone, text, last));
    }),
    { seed: 23, numRuns: 600 },
  );
}, 30_000);

function isDay(text: string): boolean {
  return createDocument(text).blocks[0]!.day;
}

test("at most a thousand diagnostics are given, errors first, and the last says how many more there are", () => {
  const text = `2026-03-02\n${"Felt fine today\n".repeat(900)}${"D minor, thrids\n".repeat(300)}${"D minor, at 500\n".repeat(50)}`;
  const journal = new Journal(ROOT, new Map([[MARKER, createDocument(text)]]));
  const found = diagnosticsOf(journal, MARKER, TODAY);
  expect(found.length).toBe(1000);
  const severities = found.map(({ severity }) => severity);
  expect(severities.indexOf("warning")).toBe(300);
  expect(severities.indexOf("information")).toBe(350);
  expect(found.at(-1)!.message).toMatch(/\(And 250 more in this file\.\)$/);
});
