import fc from "fast-check";
import { expect, test } from "vitest";
import type { LineFinding } from "../../server/checks/context.ts";
import { DayFindings } from "../../server/checks/day/day-findings.ts";
import { checkDayMinutes } from "../../server/checks/day/day-minutes.ts";
import { checkLine } from "../../server/checks/line/line.ts";
import type { Conventions } from "../../server/journal/conventions.ts";
import type { DaySkeleton } from "../../server/journal/day-skeleton.ts";
import { DayWalk } from "../../server/journal/day-walk.ts";
import { Journal } from "../../server/journal/journal.ts";
import { readBlock } from "../../server/journal/read-block.ts";
import { type Block, createDocument } from "../../server/syntax/document/document.ts";
import { LineReader } from "../../server/syntax/line/line-reader.ts";
import type { Item } from "../../server/syntax/words/meaning.ts";
import type { Vocabulary } from "../../server/syntax/words/vocabulary.ts";
import { DAYS, inTurns, times } from "../support/random-runs.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// What is found on a day is found once for each set of pieces that bear on each other. Here it is held against reading and
// checking every line by itself, with nothing kept.

const URI = "file:///journal/journal.practice";
const HEAD = [
  "instrument alto recorder",
  'instrument "wooden flute": D4 to B5',
  'piece "Ground in G minor" as Ground: G minor, 96 bars',
  'study "Daily study" as Daily: D minor',
  'pattern "zigzag": 1 3 2 4',
  'scale "double harmonic": 1 b2 3 4 5 b6 7',
  'phase "market band"',
  'activity "stretching"',
].join("\n");

const journalWith = (head: string) => new Journal("file:///journal", new Map([[URI, createDocument(head)]]));
const JOURNALS = [
  ["usual names", HEAD],
  ["names that are words of the language", `${HEAD}\nactivity "pitch"\nstudy "Second set" as Set: C minor`],
  ["notes have German names", `names german\n${HEAD}`],
  ["notes have French names", `${HEAD}\nnames french`],
] as const;

/** The words and conventions of a journal, and the checks made for them. */
interface Words {
  readonly vocabulary: Vocabulary;
  readonly conventions: Conventions;
  readonly checks: DayFindings;
}

function wordsOf(journal: Journal): Words {
  const conventions = journal.conventions(URI);
  const { vocabulary } = journal;
  const context = { vocabulary, memo: new LineReader(vocabulary) };
  return { vocabulary, conventions, checks: new DayFindings(context, conventions, new DayWalk(context)) };
}

interface Found {
  readonly findings: readonly LineFinding[];
  readonly planned: boolean;
  readonly declares: boolean;
}

/** Every line parsed and checked, and the minutes of the day by the frames that the model has. */
function readInFull(block: Block, { vocabulary, conventions }: Words): Found {
  const context = { vocabulary, memo: new LineReader(vocabulary), conventions };
  const { lines, day, sittings, phases, entries } = readBlock(block, context);
  const findings = lines.flatMap((line, i) =>
    checkLine(line, { ...context, text: block.lines[i]!, head: false }).map((found) => ({ ...found, line: i })),
  );
  const planned =
    entries.every((entry) => entry.planned) &&
    (entries.length > 0 || day?.planned === true || lines.some(({ type }) => type === "plan"));
  const isUnplayed = (i: number): boolean =>
    phases[i]!.phase !== undefined &&
    phases[i]!.planned &&
    entries.every((entry) => entry.stretch !== i || entry.planned);
  const unplayedPhases = new Set(phases.flatMap((_, i) => (isUnplayed(i) ? [i] : [])));
  const skeleton = { sittings, phases, rest: day?.rest !== undefined, allPlanned: planned, unplayedPhases };
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

function found(checks: DayFindings, block: Block): Found {
  const { findings, day, declares } = checks.of(block);
  return { findings, planned: day?.planned ?? false, declares };
}

function check(words: Words, lines: readonly string[]): void {
  const block = createDocument(lines.join("\n")).blocks.find(({ day }) => day)!;
  const fast = found(words.checks, block);
  const full = readInFull(block, words);
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

test.each(JOURNALS)(
  "the checks of days find what reading every line in full finds, whatever it has seen before: %s",
  (_, head) => {
    const words = wordsOf(journalWith(head));
    fc.assert(
      fc.property(day, (lines) => check(words, lines)),
      { seed: 11, numRuns: DAYS },
    );
  },
);

test("and so do checks that have seen nothing", () => {
  const journal = journalWith(HEAD);
  fc.assert(
    fc.property(day, (lines) => check(wordsOf(journal), lines)),
    { seed: 12 },
  );
});

test.each(JOURNALS.map((each, turn) => [...each, turn] as const))(
  "every part alone behind every subject, and every third of two behind a sound one: %s",
  (_, head, turn) => {
    const words = wordsOf(journalWith(head));
    const pairs = TERMS.flatMap((a, i) =>
      TERMS.slice(i % 3)
        .filter((_, j) => j % 3 === 0)
        .map((b) => `D minor, ${a}, ${b}`),
    );
    const single = [...SCALE_SUBJECTS, ...CHORD_SUBJECTS].flatMap((opening) =>
      TERMS.map((each) => `${opening}, ${each}`),
    );
    for (const line of inTurns([...pairs, ...single], turn, JOURNALS.length)) check(words, ["2026-03-02", line]);
  },
);

const word = (...words: readonly string[]) => fc.constantFrom("", "", ...words.map((each) => `, ${each}`));
const orderly = fc
  .tuple(
    fc.constantFrom(
      "F# major",
      "D melodic minor",
      "Bb major > C minor",
      "G# major",
      "Ground",
      "Set",
      "E# minor",
      "C blues",
      "fis-Moll",
      "B-Dur > g-Moll",
      "Gis-Dur",
      "H melodic Moll",
      "Es Dur",
      "d dorian",
      "si bémol majeur",
      "fa# mineur > do mineur melodic",
      "re mineur",
      "sol blues",
    ),
    word("thirds", "broken thirds alternating", "turns"),
    word("bars 1-16"),
    word("slurred", "t-k", "slur 2+2", "slur 2+"),
    word(
      "slow",
      "8ths at 60",
      "16ths at 60 clean 4 of 5, 64 tense",
      "at 19",
      "at 400 clean",
      "8ths at 72 clean 6 of 5",
    ),
    word("focus ease", "focus money"),
    fc.constantFrom("", "", " -- 20 min", " -- minus -60 min"),
  )
  .map((parts) => `  ${parts.join("")}`);
const LISTS = [
  "F# major: F# G# A# B C# D# E# F#",
  "D melodic minor: D E F G A B C#",
  "D melodic minor: D E F G A B C D",
  "G# major: G# A# B# C# D# E# F## G#",
  "A minor pentatonic: A C D E G A",
  "C octatonic: C Db Eb E Gb G A Bb C",
  "C blues: C Eb F F# G Bb C",
  "C blues: C Eb F Gb G Bb C",
  "D double harmonic: D Eb F# G A Bb C# D",
  "Bb: Bb C D Eb F G A Bb",
];
const listed = fc
  .tuple(
    fc.constantFrom("  ", ""),
    fc.constantFrom(...LISTS),
    word("thirds", "down", "two octaves", "five notes", "up and down", "slurred", "10 min", "1 sharp", "from D4 to D5"),
    word("slurred", "8ths at 60 clean", "slow", "focus ease", "1st inversion", "on tenor recorder", "sluured"),
    fc.constantFrom("", " -- so", ", "),
  )
  .map((parts) => parts.join(""));
const frame = fc
  .tuple(
    fc.constantFrom("warm-up", "pieces", "market band", "lesson", "together"),
    word("5 min", "20 min", "70 min", "0 min"),
  )
  .map((parts) => parts.join(""));
const usualLine = fc.oneof(
  { weight: 6, arbitrary: orderly },
  { weight: 3, arbitrary: listed },
  { weight: 3, arbitrary: frame },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      "",
      "  ",
      "    -- a remark, 20 min",
      "-- -70 min",
      "-- 1e3 min",
      "  long tones on F4, with drone F",
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      "break, 5 min",
      "D minor, 20 min",
      "session 30 min",
      "D minor: 1 flat",
      "plan",
      "stretching",
    ),
  },
);
const usualDay = fc.tuple(
  fc.constantFrom(
    "2026-03-02",
    "2026-03-02 Mon",
    "2026-03-02 Mon, 50 min",
    "2026-03-02, 90 min",
    "2026-03-02 Tue",
    "2026-02-30",
  ),
  fc.array(usualLine, { maxLength: 5 }),
  fc.constantFrom("", "\n"),
);

test.each([
  ["English", ""],
  ["German", "\nnames german"],
  ["French", "\nnames french"],
])("days in their usual order: %s names", (_, names) => {
  const words = wordsOf(journalWith(HEAD + names));
  fc.assert(
    fc.property(usualDay, ([first, lines, end]) => check(words, [first, ...lines, ...(end ? [""] : [])])),
    { seed: 13, numRuns: DAYS },
  );
});

test.each([
  [["2026-03-02 Mon, 50 min", "pieces, 70 min", "-- -60 min"], ["minutes-sum"]],
  [["2026-03-02 Mon, 50 min", "pieces, 70 min"], ["minutes-sum"]],
  [["2026-03-02 Mon", "warm-up, 30 min", "pieces, 31 min", "  D minor -- -60 min", ""], ["long-stretch"]],
  [["2026-03-02 Mon, 50 min", "warm-up, 20 min", "  D minor: 2 flats", "pieces, 30 min"], ["key-signature"]],
])("the minutes of a day are not misled by a remark, nor by where the text ends: %j", (lines, codes) => {
  const words = wordsOf(journalWith(HEAD));
  check(words, lines);
  expect(words.checks.of(createDocument(lines.join("\n")).blocks.at(-1)!).findings.map(({ code }) => code)).toEqual(
    codes,
  );
});

test("the checks of a head find what reading it in full finds", () => {
  const { vocabulary, conventions, checks } = wordsOf(journalWith(HEAD));
  const block = createDocument(`${HEAD}\naim D minor\nD minor, slow\nplayr X\n-- y`).blocks[0]!;
  const context = { vocabulary, memo: new LineReader(vocabulary), conventions };
  const { lines } = readBlock(block, context);
  const full = lines.flatMap((each, i) =>
    checkLine(each, { ...context, text: block.lines[i]!, head: true }).map((found) => ({ ...found, line: i })),
  );
  expect(checks.of(block)).toEqual({ findings: full, day: undefined, declares: true });
  expect(full.map(({ code }) => code)).toEqual(["no-day", "unknown-declaration"]);
});

test("a day of very many lines, edited, is found to be what it is afresh", () => {
  const journal = journalWith(HEAD);
  const long = fc.tuple(dayLine, fc.array(line, { minLength: 110, maxLength: 130 }));
  const edits = fc.array(fc.tuple(fc.nat(140), fc.nat(3), fc.array(line, { maxLength: 3 })), { maxLength: 8 });
  fc.assert(
    fc.property(long, edits, ([first, rest], changes) => {
      const kept = wordsOf(journal);
      const lines = [first, ...rest];
      check(kept, lines);
      for (const [at, gone, come] of changes) {
        lines.splice(1 + (at % (lines.length - 1)), gone, ...come);
        check(kept, lines);
      }
    }),
    { seed: 14, numRuns: times(8) },
  );
});
