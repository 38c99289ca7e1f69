import { termsOfAttempt } from "../../journal/conditions.ts";
import type { Entry } from "../../journal/model.ts";
import { type Cut, cutLine } from "../../syntax/line/cut.ts";
import type { Item, MeaningOf } from "../../syntax/words/meaning.ts";
import { isCondition, termType } from "../../syntax/words/term-types.ts";

type TempoItem = Item<MeaningOf<"tempo">>;

export interface RepeatedLine {
  /** From the subject on, without what the line is led in by. */
  readonly text: string;
  /** The column in it behind the tempo, where an outcome is typed. */
  readonly tempoEnd: number;
}

/**
 * An entry to be played once more as one of its attempts was, at another tempo: one tempo, in the beat and the words of
 * that attempt's, with the conditions that held for it. What was found then, outcomes, minutes and remarks, is left
 * off; so are words that are not known, unless they stand before the tempo, where they say what is played.
 *
 * @param attempt the index of one with a tempo
 * @param bpm     beats a minute, in the beat of that tempo; none leaves the tempo off
 */
export function repeatedLine(
  text: string,
  { source: line, attempts }: Entry,
  attempt: number,
  bpm: number | undefined,
): RepeatedLine {
  const { place: at } = attempts[attempt]!;
  const tempos = line.items.filter(isTempo);
  const played = tempos.filter(({ start }) => start <= at.start);
  const kept = new Set(termsOfAttempt(line.items, attempt));
  const first = tempos[0]!;
  const last = played.at(-1)!;
  const isBetween = (item: Item): boolean => item.start > first.start && item.start < last.start;
  // `8ths at 60 clean, 66 clean` goes on from `8ths`, `slurred at 60 clean, tongued at 66 clean` from `tongued`.
  const place = [...kept].some(isBetween) ? last : first;
  const goes = (item: Item): boolean =>
    item !== place && (isCondition(item.meaning) ? !kept.has(item) : termType(item.meaning.type)?.tells === "result");
  const front = Math.max(first.end, line.subject?.end ?? 0, ...line.claims.map(({ end }) => end));
  const where = line.items.find(({ meaning }) => meaning.type === "place");
  // It says nothing that is known; or a further place, which is where something happened.
  const isWords = (item: Item): boolean =>
    termType(item.meaning.type) === undefined || (item.meaning.type === "place" && item !== where);
  const stays = line.items.filter((item) => item.start >= front && !goes(item) && !isWords(item));
  const changes = line.items.flatMap((item, i): Change[] => {
    if (item.start >= front && !stays.includes(item)) return [];
    if (item === place) return [{ ...stretch(item), text: bpm === undefined ? "" : tempoText(text, played, bpm) }];
    if (goes(item)) return [{ ...stretch(item), text: "" }];
    // `straight` is the even rhythm only before its note value.
    const next = line.items[i + 1];
    const isEven = item.meaning.type === "rhythm" && item.meaning.even;
    return isEven && next && goes(next) ? [{ ...stretch(item), text: "even" }] : [];
  });
  const { cuts } = cutLine(text.slice(0, line.end), line.start);
  const all = [
    ...changes,
    ...subjectOfItsOwn(text, line, at.start),
    ...cuts.flatMap((cut) => wordsIn(text, cut, front, stays)),
  ];
  const repeated = joined(
    text,
    cuts,
    all.sort((a, b) => a.start - b.start),
    place.start,
  );
  return bpm === undefined ? { ...repeated, tempoEnd: repeated.text.length } : repeated;
}

/**
 * `D minor 60 clean, G minor 66`: what is played once more is what the attempt was at, where that stands behind what
 * was said of the first. An arpeggio is told with its key: `B flat major, arpeggio`.
 */
function subjectOfItsOwn(text: string, { subject }: Entry["source"], attempt: number): Change[] {
  if (subject?.meaning.type !== "several" || !subject.meaning.at) return [];
  const { at, subjects } = subject.meaning;
  const own = at.findLastIndex(({ end }) => subject.start + end <= attempt);
  if (own < 1 || subject.start + at[own]!.start < subject.end) return [];
  const words = text.slice(subject.start + at[own]!.start, subject.start + at[own]!.end);
  const isOfKeyBefore = subjects[own]!.type === "chord" && /^\p{L}{3,}\.?$/u.test(words);
  const key = text.slice(subject.start + at[own - 1]!.start, subject.start + at[own - 1]!.end);
  return [{ ...stretch(subject), text: isOfKeyBefore ? `${key}, ${words}` : words }];
}

/** What of a part stands behind a column and between the items that stay there, as stretches that go. */
function wordsIn(text: string, cut: Cut, from: number, stays: readonly Item[]): Change[] {
  const ends = [
    ...stays.filter(({ start }) => start >= cut.start && start < cut.end),
    { start: cut.end, end: cut.end },
  ];
  let at = Math.max(cut.start, from);
  return ends.flatMap(({ start, end }): Change[] => {
    const words = text.slice(at, start);
    const first = at + words.length - words.trimStart().length;
    at = Math.max(at, end);
    return words.trim() === "" ? [] : [{ start: first, end: first + words.trim().length, text: "" }];
  });
}

function isTempo(item: Item): item is TempoItem {
  return item.meaning.type === "tempo";
}

/** The last tempo, in the words of the last that says more than its figure: `66` after `at 60` becomes `at 69`. */
function tempoText(text: string, tempos: readonly TempoItem[], bpm: number): string {
  const isSpoken = ({ start, end }: TempoItem): boolean => !ONLY_FIGURES.test(text.slice(start, end));
  const { start, end, meaning } = tempos.findLast(isSpoken) ?? tempos[0]!;
  const words = text.slice(start, end);
  const numbers = [...words.matchAll(NUMBERS)];
  const own = numbers.findLast(({ groups }) => Number(groups!["top"]) === meaning.bpm) ?? numbers.at(-1);
  return own ? words.slice(0, own.index) + bpm + words.slice(own.index + own[0].length) : words;
}

const ONLY_FIGURES = /^[\d.]+(?:\s*(?:to|-|–)\s*[\d.]+)?$/i;
/** One, or two of which the second is the top. */
const NUMBERS = /(?:\d+(?:\.\d+)?\s*(?:to|-|–)\s*)?(?<top>\d+(?:\.\d+)?)/gi;

interface Change {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

function stretch({ start, end }: Pick<Item, "start" | "end">): { readonly start: number; readonly end: number } {
  return { start, end };
}

/** The parts of a line after the changes in them; one in which nothing is left goes with the separator before it. */
function joined(text: string, cuts: readonly Cut[], changes: readonly Change[], tempoAt: number): RepeatedLine {
  let line = "";
  let tempoEnd = 0;
  for (const [i, cut] of cuts.entries()) {
    const pieces = piecesOf(text, cut, changes, tempoAt);
    const separator = i === 0 ? "" : text.slice(cuts[i - 1]!.end, cut.start);
    // A bracket is parted from the comma behind it by an empty part.
    if (pieces.length === 0 && separator.includes(")") && isOpen(line)) line += separator;
    if (pieces.length === 0) continue;
    if (line !== "") line += separator;
    for (const [k, piece] of pieces.entries()) {
      // Where something went, two terms meet that a comma keeps apart: `focus ease 66 slips slurred`.
      if (k > 0) line += piece.start === tempoAt ? " " : ", ";
      line += piece.text;
      if (piece.tempoEnd !== undefined) tempoEnd = line.length - piece.text.length + piece.tempoEnd;
    }
  }
  return { text: line, tempoEnd };
}

function isOpen(line: string): boolean {
  return line.lastIndexOf("(") > line.lastIndexOf(")");
}

interface Piece {
  readonly start: number;
  readonly text: string;
  /** Where in it the tempo ends, if it holds that. */
  readonly tempoEnd?: number;
}

/** What is left of one part, in pieces between which something went. */
function piecesOf(text: string, cut: Cut, changes: readonly Change[], tempoAt: number): readonly Piece[] {
  const within = changes.filter(({ start, end }) => start >= cut.start && end <= cut.end);
  const gone = within.filter((change) => change.text === "");
  return [...gone, { start: cut.end, end: cut.end }].flatMap(({ start: to }, i): Piece[] => {
    const from = gone[i - 1]?.end ?? cut.start;
    const left = text.slice(from, to);
    const start = from + left.length - left.trimStart().length;
    const inside = within.filter((change) => change.text !== "" && change.start >= from && change.end <= to);
    const piece = replaced(text, { start, end: from + left.trimEnd().length }, inside, tempoAt);
    return left.trim() === "" ? [] : [piece];
  });
}

function replaced(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
  changes: readonly Change[],
  tempoAt: number,
): Piece {
  let words = "";
  let at = start;
  let tempoEnd: number | undefined;
  for (const change of changes) {
    words += text.slice(at, change.start) + change.text;
    if (change.start === tempoAt) tempoEnd = words.length;
    at = change.end;
  }
  return { start, text: words + text.slice(at, end), tempoEnd };
}
