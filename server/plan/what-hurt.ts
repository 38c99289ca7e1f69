import { recordsOfBlock } from "../history/attempts.ts";
import { type Bars, barsOfPlace } from "../history/bars-played.ts";
import { journalHistory } from "../history/journal-history.ts";
import type { AttemptRecord } from "../history/record.ts";
import type { Exercise } from "../history/strands.ts";
import { SPARING_DAYS } from "../history/thresholds.ts";
import { bodySaidIn, namesEarsAlone } from "../journal/body-said.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { datedBlocks } from "../journal/dated-blocks.ts";
import type { Journal } from "../journal/journal.ts";
import { keysOf, LineWords } from "../syntax/line/line-words.ts";

/** Lines with a word of pain within four weeks. */
export interface WhatHurt {
  /** The records of those lines. */
  readonly records: readonly AttemptRecord[];
  /** The keys of exercises that are no titles. */
  readonly exercises: ReadonlySet<string>;
  /** The subject keys of pieces that such a line names, so that all of them is left alone. */
  readonly pieces: ReadonlySet<string>;
  /** The latest day with such a word; undefined where there is none. */
  readonly last?: DayNumber;
}

/**
 * What was played on lines that say that something hurt, in the four weeks up to a day. A line of its own, or a remark,
 * speaks of the entry above it, and of what it names.
 */
export function whatHurt(journal: Journal, day: DayNumber): WhatHurt {
  let last: DayNumber | undefined;
  const named: Exercise[] = [];
  const records = datedBlocks(journal, day - SPARING_DAYS, day).flatMap(({ uri, block, day: on }) => {
    const said = bodySaidIn(journal, block).filter(({ says }) => says === "hurts");
    if (said.length === 0) return [];
    last = Math.max(on, last ?? on);
    // Ears ring from how loud it was, and not from which bars were played.
    const hurting = said.filter(({ words }) => !namesEarsAlone(words, journal));
    const all = recordsOfBlock(journal, uri, block);
    named.push(...hurting.flatMap(({ words }) => namedIn(words, journal)));
    return hurting.flatMap(({ line }) => {
      const above = all.findLast((record) => record.line <= line)?.line;
      return all.filter((record) => record.line === above);
    });
  });
  const played = records.filter(({ unit }) => unit === "notes").map(({ exerciseKey }) => exerciseKey);
  const exercises = named.filter((exercise) => !isPiece(exercise)).map(({ key }) => key);
  const pieces = named.filter(isPiece).map(({ subjectKey }) => subjectKey);
  return {
    records,
    exercises: new Set([...played, ...exercises]),
    pieces: new Set(pieces),
    ...(last === undefined ? {} : { last }),
  };
}

/** What words name of what was played: a piece by one long word of its title, all else by its whole subject. */
function namedIn(words: string, journal: Journal): readonly Exercise[] {
  const said = new LineWords(words, 0, words.length, [], journal.vocabulary);
  const partOfBody = (i: number): boolean => said.is(i, "body-part") || said.is(i + 1, "body-part"); // `little finger`
  const keys = keysOf(said);
  const told = new Set(keys.filter((_, i) => !partOfBody(i)));
  return [...journalHistory(journal).exercises.values()].filter((exercise) => {
    const { subject } = exercise;
    const own = keysOf(new LineWords(subject, 0, subject.length, [], journal.vocabulary));
    if (!isPiece(exercise)) return own.every((word) => told.has(word));
    return own.some((word) => word.length >= TELLING && told.has(word));
  });
}

function isPiece({ strands: [first] }: Exercise): boolean {
  return first!.title;
}

/** Letters: shorter words of a title, as `the`, tell nothing. A word too many costs little: a piece is left alone. */
const TELLING = 4;

/** Whether a place of a piece holds bars that hurt, or may do so: places that name no bars are held by their words. */
export function isHurtPlace(
  { records, pieces }: WhatHurt,
  { subjectKey, movement, where }: Pick<AttemptRecord, "subjectKey" | "movement" | "where">,
  bars: number | undefined,
): boolean {
  if (pieces.has(subjectKey)) return true;
  const asked = barsOfPlace(where, bars);
  return records.some((record) => {
    if (record.unit !== "beats" || record.subjectKey !== subjectKey || record.movement !== movement) return false;
    if (where === null || where === "from the top" || record.where === where) return true;
    const hurting = barsOfPlace(record.where, bars);
    // Where one of the two names no bars, nobody can tell that it is another place.
    if (hurting.length === 0 || asked.length === 0) return true;
    return hurting.some((own) => asked.some((other) => overlap(own, other)));
  });
}

export function overlap(a: Bars, b: Bars): boolean {
  return a.from <= b.to && b.from <= a.to;
}
