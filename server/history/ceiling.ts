import { type BodySaid, bodySaidIn } from "../journal/body-said.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { type DatedBlock, datedBlocks } from "../journal/dated-blocks.ts";
import type { Journal } from "../journal/journal.ts";
import type { Block } from "../syntax/document/document.ts";
import { LineWords } from "../syntax/line/line-words.ts";
import { recordsOfBlock } from "./attempts.ts";
import { BEGIN_AT, BREAK_DAYS, DAYS_WITHOUT_PAIN, EASING_DAYS, RETURN_DAYS, SPARING_DAYS } from "./thresholds.ts";

/**
 * How fast anything may be proposed on a day. Whatever proposes a tempo asks it.
 *
 * - `without instrument`: on that day or the day before the body hurts; no tempo at all.
 * - `sparing`: it hurt within four weeks, and fewer than three days were practised since without a word of it.
 * - `easing`: the first practised days after that.
 * - `return`: the first practised days after a break of three weeks, or the first after being ill.
 */
export type CeilingKind = "without instrument" | "sparing" | "easing" | "return" | "usual";

export interface Ceiling {
  readonly kind: CeilingKind;
  /** The most that may be proposed: a part of the steady tempo, or else of the last reached. Missing without limit. */
  readonly share?: number;
  /** What was said of the body last; only where that sets the limit. */
  readonly said?: BodySaid & { readonly day: DayNumber };
}

const SHARES = { "without instrument": 0, sparing: BEGIN_AT, easing: 1, return: BEGIN_AT, usual: undefined } as const;

/**
 * The ceiling of a day, by what its journal says of the body and of breaks, up to that day.
 *
 * @param instrument on which a break counts; any practice where it is left out
 */
export function ceilingOn(journal: Journal, day: DayNumber, instrument?: string | null): Ceiling {
  const known = journal.memo.of(journal, "ceilings", () => new Map<string, Ceiling>());
  const key = JSON.stringify([day, instrument ?? 0, instrument === null]); // an instrument may be called anything
  const ceiling = known.get(key) ?? found(journal, day, instrument);
  known.set(key, ceiling);
  return ceiling;
}

function found(journal: Journal, day: DayNumber, instrument: string | null | undefined): Ceiling {
  const pain = journal.memo.from(journal, "after pain", [day], () => afterPain(journal, day));
  if (pain) return { kind: pain.kind, share: SHARES[pain.kind], said: pain.said };
  const kind = isReturn(journal, day, instrument) ? "return" : "usual";
  const share = SHARES[kind];
  return share === undefined ? { kind } : { kind, share };
}

interface AfterPain {
  readonly kind: "without instrument" | "sparing" | "easing";
  readonly said: NonNullable<Ceiling["said"]>;
}

function afterPain(journal: Journal, day: DayNumber): AfterPain | undefined {
  let practised = 0;
  let practisedAtEase = 0;
  let isEased = false;
  for (const each of datedBlocks(journal, day - SPARING_DAYS, day)) {
    const said = bodySaidIn(journal, each.block);
    const hurts = said.findLast(({ says }) => says === "hurts");
    if (hurts) {
      const last = { ...hurts, day: each.day };
      if (each.day >= day - 1) return { kind: "without instrument", said: last };
      const since = isEased ? practisedAtEase : practised - DAYS_WITHOUT_PAIN;
      if (since < 0) return { kind: "sparing", said: last };
      return since < EASING_DAYS ? { kind: "easing", said: last } : undefined;
    }
    if (said.some(({ says }) => says === "eased")) {
      isEased = true;
      practisedAtEase = practised;
    }
    if (each.day < day && recordsOfBlock(journal, each.uri, each.block).length > 0) practised++;
  }
  return undefined;
}

function isReturn(journal: Journal, day: DayNumber, instrument: string | null | undefined): boolean {
  for (const back of FURTHER_BACK) {
    const told = returnIn(journal, datedBlocks(journal, day - back, day), day, instrument);
    if (told !== undefined) return told;
  }
  return false;
}

/** In days: so far back it is looked, one after the other; the first is enough while one practises. */
const FURTHER_BACK = [10 * BREAK_DAYS, 40 * BREAK_DAYS, 160 * BREAK_DAYS, Number.POSITIVE_INFINITY];

/** Undefined where these days do not tell. */
function returnIn(
  journal: Journal,
  days: readonly DatedBlock[],
  day: DayNumber,
  instrument: string | null | undefined,
): boolean | undefined {
  let later = day;
  let practised = 0;
  for (const each of days) {
    if (each.day >= later) continue;
    if (practised === 0 && isIllness(journal, each.block)) return true;
    const own = recordsOfBlock(journal, each.uri, each.block);
    if (!own.some((record) => instrument === undefined || record.instrument === instrument)) continue;
    if (later - each.day > BREAK_DAYS) return true;
    practised++;
    if (practised === RETURN_DAYS) return false;
    later = each.day;
  }
  return undefined;
}

/** A day of rest for being ill, and nothing played: the first practice after it is a return. */
function isIllness(journal: Journal, block: Block): boolean {
  const reason = journal.model(block).day?.rest;
  if (!reason) return false;
  const words = new LineWords(reason, 0, reason.length, [], journal.vocabulary);
  return Array.from({ length: words.count }, (_, i) => words.meaningOf(i, "rest")).includes("ill");
}
