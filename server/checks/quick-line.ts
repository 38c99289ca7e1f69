import type { Conventions } from "../journal/conventions.ts";
import { subjectToPlay } from "../journal/to-play.ts";
import { patternById } from "../music/pattern.ts";
import { DECLARATION_WORDS } from "../syntax/declaration-word.ts";
import { fold } from "../syntax/fold.ts";
import type { Meaning, WrittenNote } from "../syntax/meaning.ts";
import type { Vocabulary } from "../syntax/vocabulary.ts";
import { FASTEST, SLOWEST } from "./entry-order.ts";
import { checkKey } from "./key.ts";

/** Expressions for lines that cannot be at fault and say nothing that bears on their day but that they are there. */
export interface QuickLines {
  /** An entry without an amount. */
  readonly entry: RegExp;
  /** A phase: its words, and its minutes where they are stated. */
  readonly phase: RegExp;
  /** Blank, or a remark. */
  readonly nothing: RegExp;
  /** A day line: its date, its weekday and its minutes where they are stated. Whether they agree is still to be asked. */
  readonly day: RegExp;
}

/** What players listen for most often; other words stand in no quick line. */
const FOCUSES =
  "ease|sound|tuning|evenness|finger changes|tonguing|breath|rhythm|right notes|high notes|half holes|phrasing";
const LETTERS = ["C", "D", "E", "F", "G", "A", "B"] as const;
const SIGNS = [
  ["", 0],
  ["#", 1],
  ["b", -1],
] as const;
/** Where one of several of a kind in a row is the last. Written so that each table stands in the expression once. */
const END = "(?=,|$| -- )";

/** As they stand on day lines, from Monday. */
export const SHORT_WEEKDAYS: readonly string[] = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/**
 * Lines in their usual order and spacing, as one regular expression for entries and one for phases: an expression runs as
 * machine code from the first line on. Made of the same tables as the parser's; what it lets through must be what reading
 * the line in full finds nothing on (test/properties/survey.test.ts). Undefined where a declared name may be taken for a
 * word of the language, so that nothing can be told from the tables alone.
 */
export function quickLines(vocabulary: Vocabulary, conventions: Conventions): QuickLines | undefined {
  if (namesMayMislead(vocabulary)) return undefined;
  const titles = vocabulary.declared.titles.flatMap(({ short }) => (short ? [escaped(short)] : []));
  const chain = `(?:${scales(vocabulary, conventions)}(?: > (?=[A-G])|${END}))+`;
  const outcome = `(?:${phrases(vocabulary, "outcome")})(?: (?:[1-9] in a row|${shares()}))?`;
  const tempo = `(?:(?:${phrases(vocabulary, "note value")}) )?at (?:${beatsAMinute()}(?: ${outcome})?(?:, (?=\\d)|${END}))+`;
  const terms = [
    `(?:, (?:${patterns(vocabulary)}))?`,
    "(?:, bars \\d{1,3}-\\d{1,3})?",
    `(?:, (?:${phrases(vocabulary, "articulation")}|slur [1-9]\\+[1-9]|[tdg]-[kgr]))?`,
    `(?:, (?:${phrases(vocabulary, "without click")}|${tempo}))?`,
    `(?:, focus (?:${FOCUSES}))?`,
  ];
  const phase = [phrases(vocabulary, "phase"), ...vocabulary.declared.phases.map(escaped)].join("|");
  return {
    entry: new RegExp(`^ *(?:${[chain, ...titles].join("|")})${terms.join("")}(?: -- .*)?$`),
    phase: new RegExp(`^ *(${phase})(?:, ([1-9]\\d{0,2}) min)?$`),
    nothing: /^ *(?:--.*)?$/,
    day: new RegExp(`^(\\d{4}-\\d\\d-\\d\\d)(?: (${SHORT_WEEKDAYS.join("|")}))?(?:, ([1-9]\\d{0,2}) min)?$`),
  };
}

/** A name without quotes that begins like a word of the language, a tonic or a declaration could change what a line says. */
function namesMayMislead({ own, declared }: Vocabulary): boolean {
  const names = [
    ...declared.titles.flatMap(({ short }) => short ?? []),
    ...declared.phases,
    ...declared.activities,
    ...declared.instruments,
  ];
  if (!names.length) return false;
  const taken = new Set([
    ...own.flatMap(({ words }) => words.map(firstWord)),
    ...DECLARATION_WORDS.map(firstWord),
    "at",
    "bars",
    "slur",
    "focus",
    "on",
    "with",
  ]);
  return names.some((name) => !/^\p{L}{3,}(?: \p{L}+)*$/u.test(name) || taken.has(firstWord(name)));
}

function firstWord(words: string): string {
  return fold(words).split(/[\s-]/)[0]!;
}

/** Tonics and kinds that go together without a word of advice, the kinds by the tonics they go with. */
function scales({ own }: Vocabulary, conventions: Conventions): string {
  const byTonics = new Map<string, string[]>();
  const tonicsOf = new Map<string, string>();
  for (const { words, meaning } of own) {
    if (meaning.type !== "kind" || meaning.id === "chromatic") continue;
    const { id } = meaning;
    const tonics = () =>
      LETTERS.flatMap((letter) =>
        SIGNS.flatMap(([sign, alter]) => (isUsual({ letter, alter }, id, conventions) ? [letter + sign] : [])),
      );
    const key = tonicsOf.get(id) ?? tonics().join("|");
    tonicsOf.set(id, key);
    byTonics.set(key, [...(byTonics.get(key) ?? []), ...words.map(escaped)]);
  }
  return `(?:${[...byTonics].map(([tonics, kinds]) => `(?:${tonics}) (?:${longestFirst(kinds)})`).join("|")})`;
}

function isUsual(tonic: WrittenNote, kind: string, conventions: Conventions): boolean {
  const subject = subjectToPlay({ type: "scale", tonic, kind, declared: false }, 0, conventions);
  return subject !== undefined && checkKey(subject, 0, 0).length === 0;
}

function patterns({ own }: Vocabulary): string {
  const names = own.flatMap(({ words, meaning }) => {
    const variants = meaning.type === "pattern" ? (patternById(meaning.id)?.variants ?? []) : undefined;
    return variants ? words.flatMap((word) => [word, ...variants.map((variant) => `${word} ${variant}`)]) : [];
  });
  return longestFirst(names.map(escaped));
}

function phrases({ own }: Vocabulary, type: Meaning["type"]): string {
  return longestFirst(own.filter(({ meaning }) => meaning.type === type).flatMap(({ words }) => words.map(escaped)));
}

/** `4 of 5`, and never `6 of 5`. */
function shares(): string {
  return [1, 2, 3, 4, 5, 6, 7, 8, 9].map((count) => `[1-${count}] of ${count}`).join("|");
}

/** Whole numbers in the range of a metronome. */
function beatsAMinute(): string {
  const [tens, hundreds] = [Math.floor(SLOWEST / 10), Math.floor(FASTEST / 100)];
  return `(?:[${tens}-9]\\d|[1-${hundreds - 1}]\\d\\d|${FASTEST})`;
}

function longestFirst(words: readonly string[]): string {
  return [...words].sort((a, b) => b.length - a.length).join("|");
}

function escaped(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&");
}
