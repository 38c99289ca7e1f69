import { recordsOfBlock } from "../history/attempts.ts";
import { type Bars, barsOfPlace } from "../history/bars-played.ts";
import type { AttemptRecord } from "../history/record.ts";
import { SPARING_DAYS } from "../history/thresholds.ts";
import { bodySaidIn, namesEarsAlone } from "../journal/body-said.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { datedBlocks } from "../journal/dated-blocks.ts";
import type { Journal } from "../journal/journal.ts";

/** Lines with a word of pain within four weeks. */
export interface WhatHurt {
  /** The records of those lines. */
  readonly records: readonly AttemptRecord[];
  /** The keys of exercises that are no titles. */
  readonly exercises: ReadonlySet<string>;
  /** The latest day with such a word; undefined where there is none. */
  readonly last?: DayNumber;
}

/**
 * What was played on lines that say that something hurt, in the four weeks up to a day. A line of its own, or a remark,
 * speaks of the entry above it.
 */
export function whatHurt(journal: Journal, day: DayNumber): WhatHurt {
  let last: DayNumber | undefined;
  const records = datedBlocks(journal, day - SPARING_DAYS, day).flatMap(({ uri, block, day: on }) => {
    const said = bodySaidIn(journal, block).filter(({ says }) => says === "hurts");
    if (said.length === 0) return [];
    last = Math.max(on, last ?? on);
    // Ears ring from how loud it was, and not from which bars were played.
    const hurting = said.filter(({ words }) => !namesEarsAlone(words, journal));
    const all = recordsOfBlock(journal, uri, block);
    return hurting.flatMap(({ line }) => {
      const above = all.findLast((record) => record.line <= line)?.line;
      return all.filter((record) => record.line === above);
    });
  });
  const exercises = records.filter(({ unit }) => unit === "notes").map(({ exerciseKey }) => exerciseKey);
  return { records, exercises: new Set(exercises), ...(last === undefined ? {} : { last }) };
}

/** Whether a place of a piece holds bars that hurt, or may do so: places that name no bars are held by their words. */
export function isHurtPlace(
  { records }: WhatHurt,
  { subjectKey, movement, where }: Pick<AttemptRecord, "subjectKey" | "movement" | "where">,
  bars: number | undefined,
): boolean {
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
