import { orderOf } from "../../checks/file/journal-order.ts";
import type { Document } from "../../syntax/document/document.ts";
import { datedDays } from "../explain/dated-days.ts";

/**
 * A file of so many days is told with all that they hold. Of a longer one, only its latest days (`LATEST_DAYS`) are;
 * those before are told by themselves. Editors ask for the whole of a file again at every pause, and take longer to
 * unpack that of many years than to show it is worth.
 */
export const MOST_DAYS_WHOLE = 366;
/** A quarter of a year. */
export const LATEST_DAYS = 92;

/** The blocks of a file that are told with what they hold; a file may begin with them or end with them. */
export interface LatestBlocks {
  readonly newestFirst: boolean;
  has(index: number): boolean;
}

export function latestBlocks(uri: string, document: Document): LatestBlocks {
  const { newestFirst } = orderOf(datedDays(uri, document));
  const { blocks } = document;
  const first = blocks.findIndex(({ day }) => day);
  if (blocks.length - first <= MOST_DAYS_WHOLE) return { newestFirst, has: () => true };
  const [from, to] = newestFirst ? [0, first + LATEST_DAYS] : [blocks.length - LATEST_DAYS, blocks.length];
  return { newestFirst, has: (index) => index >= from && index < to };
}
