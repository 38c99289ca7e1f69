import fc from "fast-check";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { applyChanges, createDocument, type TextChange, textOf } from "../../server/syntax/document/document.ts";
import { CHORD_SUBJECTS, ROWS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// Journals and series of edits, for what must hold after any of them.

export const ROOT = "file:///journal";
export const MARKER = `${ROOT}/journal.practice`;
export const FILES = [MARKER, `${ROOT}/a.practice`, `${ROOT}/b.practice`];
export const TODAY = parseIsoDate("2026-06-01")!;

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
export const DAYS = [
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

export const declaration = fc.constantFrom(...DECLARATIONS);
/** A line of any sort. */
export const line = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...DAYS) },
  { weight: 2, arbitrary: declaration },
  { weight: 1, arbitrary: fc.constantFrom(...MEANT) },
  { weight: 2, arbitrary: fc.constantFrom(...WHOLE_LINES.filter((each) => each.length < 200)) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.constantFrom(...SCALE_SUBJECTS, ...CHORD_SUBJECTS, ...ROWS), fc.constantFrom(...TERMS))
      .map((parts) => parts.join(", ")),
  },
);
/** The text of a file: lines of all sorts. */
export const lines = fc.array(line, { maxLength: 10 }).map((all) => all.join("\n"));
/** The text of a head: declarations. */
export const head = fc.array(declaration, { maxLength: 6 }).map((all) => all.join("\n"));

/** Days of practice: entries that count, on dates that come again. */
export const practice = fc
  .array(
    fc.tuple(
      fc.constantFrom(
        "2026-03-02",
        "2026-03-03 Tue, 30 min",
        "2026-03-09",
        "2026-04-20, 20 min",
        "2025-12-31",
        "2026-02-30",
      ),
      fc.array(
        fc
          .tuple(
            fc.constantFrom(
              ...SCALE_SUBJECTS.slice(0, 4),
              "D, G and F# major",
              "D96 F#92",
              "Ground, bars 1-8",
              "stretching",
            ),
            fc.constantFrom("", ", thirds", ", slurred"),
            fc.constantFrom(
              ", 8ths at 60 clean",
              ", 8ths at 66 clean, 72 tense",
              ", slow",
              ", 16ths at 50 clean 4 of 5",
              ", 5 min",
              "",
            ),
          )
          .map((parts) => `  ${parts.join("")}`),
        { maxLength: 4 },
      ),
    ),
    { maxLength: 5 },
  )
  .map((days) => days.map(([day, entries]) => [day, ...entries].join("\n")));

/** One step in the life of a journal. */
export interface Step {
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
export const step: fc.Arbitrary<Step> = fc.record({
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

/** An edit at the keyboard. Its places count around, so that it fits any text. */
export interface TypedEdit {
  readonly unit: "character" | "word" | "line" | "day";
  /** A copy is taken of the text itself. */
  readonly act: "insert" | "delete" | "replace" | "copy";
  /** Which unit it begins with, how many it takes away or copies, and from where it copies. */
  readonly at: number;
  readonly count: number;
  readonly from: number;
  readonly text: string;
}

/** What is typed: for each unit a text. */
export type TypedText = Readonly<Record<TypedEdit["unit"], fc.Arbitrary<string>>>;

export const typedText: TypedText = {
  character: fc.constantFrom(...',, \n0156abdnr"#:->'.split(""), "\r", "\r\n", "\t", "♭", "\u2028", "\u0000", "𝄪"),
  word: fc.constantFrom(...SCALE_SUBJECTS, ...CHORD_SUBJECTS, ...TERMS).map((each) => `${each} `),
  line: line.map((each) => `${each}\n`),
  day: fc.oneof(
    fc.tuple(fc.constantFrom(...DAYS), lines).map(([day, below]) => `${day}\n${below}\n`),
    practice.map((days) => days.map((day) => `${day}\n`).join("")),
  ),
};

export const typedEdit = typedEditOf(typedText);

/** Edits that type such texts. */
export function typedEditOf(texts: TypedText): fc.Arbitrary<TypedEdit> {
  return fc
    .constantFrom<TypedEdit["unit"]>("character", "character", "word", "word", "line", "line", "day")
    .chain((unit) =>
      fc.record({
        unit: fc.constant(unit),
        act: fc.constantFrom<TypedEdit["act"]>("insert", "insert", "insert", "delete", "delete", "replace", "copy"),
        at: fc.nat(100_000),
        count: fc.constantFrom(1, 1, 1, 2, 5),
        from: fc.nat(100_000),
        text: texts[unit],
      }),
    );
}

/** The stretch of a text that an edit takes away, in UTF-16 units, and what comes in its place. */
export function replacedBy(text: string, { unit, act, at, count, from, text: typed }: TypedEdit) {
  const starts = [...startsOf(text, unit), text.length];
  const first = at % starts.length;
  const start = starts[first]!;
  const end = act === "delete" || act === "replace" ? (starts[first + count] ?? text.length) : start;
  const copied = from % starts.length;
  const copy = text.slice(starts[copied]!, starts[copied + count]);
  return { start, end, text: act === "delete" ? "" : act === "copy" ? copy : typed };
}

const UNITS = { word: /[^\s,]+/g, line: /(?<=^|\n|\r(?!\n))[\s\S]/g, day: /(?<=^|[\r\n])\d{4}-/g } as const;

function startsOf(text: string, unit: TypedEdit["unit"]): readonly number[] {
  if (unit === "character") return Array.from(text, (_, i) => i).slice(0, text.length);
  return Array.from(text.matchAll(UNITS[unit]), ({ index }) => index);
}

/** The journal after a step. */
export function taken(journal: Journal, { file, change, kind }: Step): Journal {
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

/** The same texts, read by nobody before. */
export function afresh(journal: Journal): Journal {
  return new Journal(ROOT, new Map([...journal.files].map(([uri, each]) => [uri, createDocument(textOf(each))])));
}

/** A journal of three files, the marker first. */
export function journalOf(texts: readonly string[]): Journal {
  return new Journal(ROOT, new Map(texts.map((text, i) => [FILES[i]!, createDocument(text)])));
}
