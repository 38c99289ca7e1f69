import { later } from "./workbench/bring-up-to.mjs";

const DAY_LINE = /^(?=\d{4}-\d{2}-\d{2})/m;
const WEEK = 604_800_000;

/**
 * A sample journal as one text: the declarations, what the week says of itself, then all days. Every date is moved on
 * by whole weeks, so that its last day is `today` (ISO 8601) or one of the six before; a sample that ends later stays
 * as it is.
 *
 * @param files its declarations, its earlier days and its week
 */
export function sampleText([journal, earlier, week]: readonly [string, string, string], today: string): string {
  const [, ...before] = earlier.split(DAY_LINE);
  const [head, ...days] = week.split(DAY_LINE);
  const text = `${[journal, head, ...before, ...days].map((part) => part!.trim()).join("\n\n")}\n`;
  const last = days
    .map((day) => day.slice(0, 10))
    .sort()
    .at(-1)!;
  return later(text, Math.max(0, Math.floor((Date.parse(today) - Date.parse(last)) / WEEK)));
}
