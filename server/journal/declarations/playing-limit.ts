import { parseIsoDate } from "../calendar.ts";
import { bodyItems } from "./body.ts";
import { declarationTexts } from "./declaration-texts.ts";
import { type Body, type Fault, fault, type PlayingLimit } from "./declared.ts";

/** A body without the limit at its end, and the limit. */
export interface LimitCut {
  readonly body: Body;
  readonly limit?: PlayingLimit;
  readonly faults: readonly Fault[];
}

const LIMIT = /(?:^|[\s,])at most\b.*$/is;
const SHAPE = /^at most\s+.+?\s+(?:a|per|each|every)\s+day(?:\s+until\s+(?<until>\S+))?$/is;

/** `…, at most 15 min a day until 2026-04-30`: taken off the end of what an instrument is declared with. */
export function withoutLimit(body: Body, from: number): LimitCut {
  const text = body.text.slice(from, body.end);
  const found = LIMIT.exec(text);
  if (!found) return { body, faults: [] };
  const lead = found[0].length - found[0].replace(/^[\s,]+/, "").length;
  const start = from + found.index + lead;
  const words = text.slice(found.index + lead).trimEnd();
  const end = start + words.length;
  const rest = { ...body, end: from + text.slice(0, found.index).replace(/[\s,]+$/, "").length };
  const shape = SHAPE.exec(words);
  const amounts = bodyItems({ ...body, end }, start).flatMap(({ meaning }) =>
    meaning.type === "amount" && meaning.possible ? [meaning.minutes] : [],
  );
  const [minutes, ...others] = amounts;
  const until = shape?.groups?.["until"];
  const day = until === undefined ? undefined : parseIsoDate(until);
  if (!shape || minutes === undefined || others.length > 0)
    return { body: rest, faults: [fault({ start, end }, declarationTexts.limit)] };
  if (until !== undefined && day === undefined) {
    const at = { start: end - until.length, end };
    const because = declarationTexts.dateAfter("until");
    return { body: rest, limit: { minutes }, faults: [{ ...at, code: "bad-date", because }] };
  }
  return { body: rest, limit: { minutes, ...(day === undefined ? {} : { until: day }) }, faults: [] };
}
