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
 * An entry to be played once more as its last attempt was, at another tempo: one tempo, in the beat and the words of
 * the last one, with the conditions that held for it. What was found then, outcomes, minutes and remarks, is left off.
 *
 * @param entry one with a tempo
 * @param bpm   beats a minute, in the beat of the last tempo
 */
export function repeatedLine(text: string, { source: line, attempts }: Entry, bpm: number): RepeatedLine {
  const tempos = line.items.filter(isTempo);
  const lastPlayed = attempts.findLastIndex(({ tempo }) => tempo !== undefined);
  const kept = new Set(termsOfAttempt(line.items, lastPlayed));
  const first = tempos[0]!;
  const last = tempos.at(-1)!;
  const isBetween = (item: Item): boolean => item.start > first.start && item.start < last.start;
  // `8ths at 60 clean, 66 clean` goes on from `8ths`, `slurred at 60 clean, tongued at 66 clean` from `tongued`.
  const place = [...kept].some(isBetween) ? last : first;
  const goes = (item: Item): boolean =>
    item !== place && (isCondition(item.meaning) ? !kept.has(item) : termType(item.meaning.type)?.tells === "result");
  const changes = line.items.flatMap((item, i): Change[] => {
    if (item === place) return [{ ...stretch(item), text: tempoText(text, tempos, bpm) }];
    if (goes(item)) return [{ ...stretch(item), text: "" }];
    // `straight` is the even rhythm only before its note value.
    const next = line.items[i + 1];
    const isEven = item.meaning.type === "rhythm" && item.meaning.even;
    return isEven && next && goes(next) ? [{ ...stretch(item), text: "even" }] : [];
  });
  return joined(text, cutLine(text.slice(0, line.end), line.start).cuts, changes, place.start);
}

function isTempo(item: Item): item is TempoItem {
  return item.meaning.type === "tempo";
}

/** The last tempo, in the words of the last that says more than its figure: `66` after `at 60` becomes `at 69`. */
function tempoText(text: string, tempos: readonly TempoItem[], bpm: number): string {
  const words = tempos.map(({ start, end }) => text.slice(start, end));
  const spoken = words.findLast((each) => !/^[\d.]+(?:\s*(?:to|-|–)\s*[\d.]+)?$/i.test(each)) ?? words[0]!;
  return spoken.replace(/\d+(?:\.\d+)?(?:\s*(?:to|-|–)\s*\d+(?:\.\d+)?)?(?=\s*(?:bpm)?$)/i, String(bpm));
}

interface Change {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

function stretch({ start, end }: Item): { readonly start: number; readonly end: number } {
  return { start, end };
}

/** The parts of a line after the changes in them; one in which nothing is left goes with the separator before it. */
function joined(text: string, cuts: readonly Cut[], changes: readonly Change[], tempoAt: number): RepeatedLine {
  let line = "";
  let tempoEnd = 0;
  for (const [i, cut] of cuts.entries()) {
    const pieces = piecesOf(text, cut, changes, tempoAt);
    if (pieces.length === 0) continue;
    if (line !== "") line += text.slice(cuts[i - 1]!.end, cut.start);
    for (const [k, piece] of pieces.entries()) {
      // Where something went, two terms meet that a comma keeps apart: `focus ease 66 slips slurred`.
      if (k > 0) line += piece.start === tempoAt ? " " : ", ";
      line += piece.text;
      if (piece.tempoEnd !== undefined) tempoEnd = line.length - piece.text.length + piece.tempoEnd;
    }
  }
  return { text: line, tempoEnd };
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
