import { USUAL_DAY_LINE } from "../journal/day-of-block.ts";
import type { NoteName } from "../music/notes/note.ts";
import { inLanguage, type NoteNames } from "../music/notes/note-names.ts";
import { patternById } from "../music/patterns/pattern.ts";
import { KINDS } from "../music/scales/kinds.ts";
import { isTheoretical } from "../music/scales/signature.ts";
import { DECLARATION_WORDS } from "../syntax/line/declaration-word.ts";
import { fold, phraseKey, withoutAccents } from "../syntax/words/fold.ts";
import type { Meaning } from "../syntax/words/meaning.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";
import { FASTEST, SLOWEST } from "./line/entry-order.ts";

/** Expressions for days in their usual order and spacing. Both are sticky. */
export interface QuickDay {
  /**
   * A day line: its date, then its short weekday and its minutes where they are stated. Whether they agree is still to be
   * asked (`usualDay`).
   */
  readonly opening: RegExp;
  /**
   * As many lines as cannot be at fault and bear on their day only by the minutes of its phases: entries without an amount,
   * phases, remarks, blank lines. A phase that states its minutes ends with ` min`.
   */
  readonly plain: RegExp;
}

/** What players listen for most often; other words stand in no quick line. */
const FOCUSES =
  "ease|sound|tuning|evenness|finger changes|tonguing|breath|rhythm|right notes|high notes|half holes|phrasing";
const LETTERS = ["C", "D", "E", "F", "G", "A", "B"] as const;
const ALTERED = [0, 1, -1] as const;
/** Where one of several of a kind in a row is the last. Written so that each table stands in the expression once. */
const END = "(?=,|\\n|$| -- )";

/**
 * Days in their usual order and spacing, as regular expressions, which run as machine code from the first line on. Made of
 * the same tables as the parser's; what they let through must be what reading each line in full finds nothing on
 * (test/properties/survey.test.ts). Undefined where a declared name may be taken for a word of the language, so that
 * nothing can be told from the tables alone.
 */
export function quickDay(vocabulary: Vocabulary, names: NoteNames): QuickDay | undefined {
  if (namesMayMislead(vocabulary)) return undefined;
  const titles = vocabulary.declared.titles.flatMap(({ short }) => (short ? [escaped(short)] : []));
  const chain = `(?:${scales(names)}(?: > (?=[A-Za-zÀ-ÿ])|${END}))+`;
  const outcome = `(?:${phrases(vocabulary, "outcome")})(?: (?:[1-9] in a row|${shares()}))?`;
  const tempo = `(?:(?:${phrases(vocabulary, "note value")}) )?at (?:${beatsAMinute()}(?: ${outcome})?(?:, (?=\\d)|${END}))+`;
  const terms = [
    `(?:, (?:${patterns(vocabulary)}))?`,
    "(?:, bars \\d{1,3}-\\d{1,3})?",
    `(?:, (?:${phrases(vocabulary, "articulation")}|slur [1-9]\\+[1-9]|[tdg]-[kgr]))?`,
    `(?:, (?:${phrases(vocabulary, "without click")}|${tempo}))?`,
    `(?:, focus (?:${FOCUSES}))?`,
  ];
  const entry = `(?:${[chain, ...titles].join("|")})${terms.join("")}(?: -- .*)?`;
  const phase = `(?:${phases(vocabulary)})(?:, [1-9]\\d{0,2} min)?`;
  return {
    opening: new RegExp(`${USUAL_DAY_LINE}(?:\\n|$)`, "y"),
    plain: new RegExp(`(?: *(?:${entry}|${phase}|--.*|)(?:\\n|$))*`, "y"),
  };
}

const FURTHER_FIRST_WORDS: readonly string[] = ["at", "bars", "slur", "focus", "on", "with"];

/** A name without quotes that begins like a word of the language, a tonic or a declaration could change what a line says. */
function namesMayMislead({ own, notes, declared }: Vocabulary): boolean {
  const names = [
    ...declared.titles.flatMap(({ short }) => short ?? []),
    ...declared.phases,
    ...declared.activities,
    ...declared.instruments,
  ];
  if (!names.length) return false;
  const first = new Set(names.map(firstWord));
  const initials = new Set([...first].map((word) => word[0]));
  const isFirst = (words: string): boolean => initials.has(words[0]) && first.has(firstWord(words));
  return (
    names.some((name) => !/^\p{L}{3,}(?: \p{L}+)*$/u.test(name)) ||
    FURTHER_FIRST_WORDS.some(isFirst) ||
    names.some((name) => notes.words?.has(withoutAccents(firstWord(name)))) ||
    DECLARATION_WORDS.some(isFirst) ||
    own.some(({ words }) => words.some((each) => isFirst(each.toLowerCase())))
  );
}

function firstWord(words: string): string {
  const end = words.search(/[\s-]/);
  return fold(end < 0 ? words : words.slice(0, end));
}

/** Tonics and kinds that go together without a word of advice, the kinds by the tonics they go with. */
function scales(names: NoteNames): string {
  const byTonics = new Map<string, string[]>();
  for (const kind of KINDS) {
    if (kind.id === "chromatic") continue;
    const tonics = LETTERS.flatMap((letter) =>
      ALTERED.flatMap((alter) => (isTheoretical({ letter, alter }, kind) ? [] : spellings({ letter, alter }, names))),
    );
    const kinds = kind.names.flatMap((name) => inLanguage(name, names).map(escaped));
    byTonics.set(longestFirst(tonics), [...(byTonics.get(longestFirst(tonics)) ?? []), ...kinds]);
  }
  const joint = names.hyphened ? "[ -]" : " ";
  return `(?:${[...byTonics].map(([tonics, kinds]) => `(?:${tonics})${joint}(?:${longestFirst(kinds)})`).join("|")})`;
}

/** As it is shown; in other languages than English in small letters and in words, too. */
function spellings(name: NoteName, names: NoteNames): readonly string[] {
  const shown = names.name(name);
  return names.words === null ? [shown] : [...new Set([shown, shown.toLowerCase(), names.name(name, "words")])];
}

/** Phases that are called like nothing else. */
function phases(vocabulary: Vocabulary): string {
  const known = vocabulary.own.flatMap(({ words, meaning }) => (meaning.type === "phase" ? words : []));
  const isOnlyPhase = (words: string): boolean =>
    vocabulary.meanings(phraseKey(words))?.every(({ type }) => type === "phase") ?? false;
  return longestFirst([...known, ...vocabulary.declared.phases].filter(isOnlyPhase).map(escaped));
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
