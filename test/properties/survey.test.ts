import fc from "fast-check";
import { expect, test } from "vitest";
import type { LineFinding } from "../../server/checks/context.ts";
import { checkDayMinutes } from "../../server/checks/day-minutes.ts";
import { checkLine } from "../../server/checks/line.ts";
import { Survey } from "../../server/checks/survey.ts";
import type { DaySkeleton } from "../../server/journal/day-skeleton.ts";
import { Journal } from "../../server/journal/journal.ts";
import { readBlock } from "../../server/journal/read-block.ts";
import { type Block, createDocument } from "../../server/syntax/document.ts";
import type { Item } from "../../server/syntax/meaning.ts";
import { PartMemo } from "../../server/syntax/parts.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// The survey reads in full only the lines that may be at fault. Here it is held against reading every line in full.

const URI = "file:///journal/journal.practice";
const HEAD = [
  "instrument alto recorder",
  'instrument "my flute": D4 to B5',
  'piece "Ground in G minor" as Ground: G minor, 96 bars',
  'study "Daily study" as Set: D minor',
  'pattern "zigzag": 1 3 2 4',
  'scale "double harmonic": 1 b2 3 4 5 b6 7',
  'phase "market band"',
  'activity "stretching"',
  'activity "pitch"',
].join("\n");

const journal = new Journal("file:///journal", new Map([[URI, createDocument(HEAD)]]));
const conventions = journal.conventions(URI);
const { vocabulary } = journal;

interface Found {
  readonly findings: readonly LineFinding[];
  readonly planned: boolean;
  readonly declares: boolean;
}

/** Every line parsed and checked, and the minutes of the day by the frames that the model has. */
function readInFull(block: Block): Found {
  const context = { vocabulary, memo: new PartMemo(), conventions };
  const { lines, day, sittings, phases, entries } = readBlock(block, context);
  const findings = lines.flatMap((line, i) =>
    checkLine(line, { ...context, text: block.lines[i]!, head: false }).map((found) => ({ ...found, line: i })),
  );
  const planned =
    entries.every((entry) => entry.planned) &&
    (entries.length > 0 || day?.planned === true || lines.some(({ type }) => type === "plan"));
  const skeleton = { sittings, phases, rest: day?.rest !== undefined, allPlanned: planned };
  const minutes = checkDayMinutes(skeleton as unknown as DaySkeleton);
  return {
    findings: [
      ...findings,
      ...minutes.map(({ line, at }) => ({ ...at(amountOn(lines[line]!, block.lines[line]!)), line })),
    ],
    planned: day?.date !== undefined && planned,
    declares: lines.some(({ type }) => type === "declaration"),
  };
}

function amountOn(line: object, text: string): { readonly start: number; readonly end: number } {
  const items = "items" in line ? (line.items as readonly Item[]) : [];
  const amount = items.find(({ meaning }) => meaning.type === "amount");
  return amount ? { start: amount.start, end: amount.end } : { start: 0, end: text.length };
}

function surveyed(survey: Survey, block: Block): Found {
  const { findings, day, declares } = survey.block(block);
  return { findings, planned: day?.planned ?? false, declares };
}

function check(survey: Survey, lines: readonly string[]): void {
  const block = createDocument(lines.join("\n")).blocks.find(({ day }) => day)!;
  const fast = surveyed(survey, block);
  const full = readInFull(block);
  expect({ ...fast, findings: shown(fast.findings, block) }).toEqual({
    ...full,
    findings: shown(full.findings, block),
  });
}

/** In one order, with the line they stand on, so that a failure can be read. */
function shown(findings: readonly LineFinding[], block: Block): readonly string[] {
  return findings
    .map(({ line, ...each }) => `${block.lines[line]} | ${line} ${JSON.stringify(Object.entries(each).sort())}`)
    .sort();
}

const separator = fc.oneof(
  { weight: 6, arbitrary: fc.constant(", ") },
  { weight: 3, arbitrary: fc.constantFrom(" ", ": ", " > ", ",", "  ,\t", " → ", "  ") },
);
const subject = fc.constantFrom(...SCALE_SUBJECTS, ...CHORD_SUBJECTS);
const part = fc.oneof({ weight: 8, arbitrary: fc.constantFrom(...TERMS) }, { weight: 1, arbitrary: subject });

/** A line as someone might type it: a subject, most often, and terms in any order, with any separators. */
const entry = fc
  .tuple(
    fc.constantFrom("", "", "  ", "\t", "- ", "\u00A0"),
    fc.oneof({ weight: 6, arbitrary: subject }, { weight: 1, arbitrary: part }),
    fc.array(fc.tuple(separator, part), { maxLength: 5 }),
    fc.constantFrom("", "", "", " ", " -- a remark", ","),
  )
  .map(([indent, first, parts, tail]) => indent + first + parts.map((each) => each.join("")).join("") + tail);

const chain = fc
  .tuple(
    fc.array(fc.constantFrom(...SCALE_SUBJECTS), { minLength: 2, maxLength: 4 }),
    fc.constantFrom(" > ", ">", " → "),
    fc.array(fc.tuple(separator, part), { maxLength: 3 }),
  )
  .map(([scales, joint, parts]) => scales.join(joint) + parts.map((each) => each.join("")).join(""));

const line = fc.oneof(
  { weight: 6, arbitrary: entry },
  { weight: 1, arbitrary: chain },
  { weight: 3, arbitrary: fc.constantFrom(...WHOLE_LINES) },
);
const dayLine = fc
  .tuple(
    fc.constantFrom("2026-03-02", "2026-03-02 Mon", "2026-02-30", "02.03.2026", "- 2026-03-02", "2026-03-02 Tue"),
    fc.constantFrom("", "", ", 50 min", " plan", ", rest, sore thumb", ", 2 h, plan", ", 0 min", ", Mon, thirds"),
  )
  .map((parts) => parts.join(""));
const day = fc.tuple(dayLine, fc.array(line, { maxLength: 9 })).map(([first, rest]) => [first, ...rest]);

test("the survey finds what reading every line in full finds, whatever it has seen before", () => {
  const survey = new Survey(journal.partContext, conventions);
  fc.assert(
    fc.property(day, (lines) => check(survey, lines)),
    { seed: 11, numRuns: 1500 },
  );
}, 30_000);

test("and so does a survey that has seen nothing", () => {
  fc.assert(
    fc.property(day, (lines) => check(new Survey({ vocabulary, memo: new PartMemo() }, conventions), lines)),
    { seed: 12, numRuns: 500 },
  );
}, 30_000);

test("every part alone behind every subject, and every third of two parts behind a sound one", () => {
  const survey = new Survey(journal.partContext, conventions);
  const pairs = TERMS.flatMap((a, i) =>
    TERMS.slice(i % 3)
      .filter((_, j) => j % 3 === 0)
      .map((b) => `D minor, ${a}, ${b}`),
  );
  const single = [...SCALE_SUBJECTS, ...CHORD_SUBJECTS].flatMap((opening) =>
    TERMS.map((each) => `${opening}, ${each}`),
  );
  for (let from = 0; from < pairs.length; from += 40) check(survey, ["2026-03-02", ...pairs.slice(from, from + 40)]);
  for (let from = 0; from < single.length; from += 40) check(survey, ["2026-03-02", ...single.slice(from, from + 40)]);
}, 30_000);

test("the survey of a head finds what reading it in full finds", () => {
  const survey = new Survey(journal.partContext, conventions);
  const block = createDocument(`${HEAD}\naim D minor\nD minor, slow\nplayr X\n-- y`).blocks[0]!;
  const context = { ...journal.partContext, conventions };
  const { lines } = readBlock(block, context);
  const full = lines.flatMap((each, i) =>
    checkLine(each, { ...context, text: block.lines[i]!, head: true }).map((found) => ({ ...found, line: i })),
  );
  expect(survey.block(block)).toEqual({ findings: full, day: undefined, declares: true });
  expect(full.map(({ code }) => code)).toEqual(["no-day", "unknown-declaration"]);
});
