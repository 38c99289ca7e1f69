import { orderOf } from "../checks/journal-order.ts";
import type { Document } from "../syntax/document.ts";
import { datedDays } from "./dated-days.ts";

/**
 * So many days of a file, the latest, are told with what they hold; of those before, where all would be too much, only
 * themselves. Editors ask for the whole of a file again at every pause, and take longer to unpack that of many years than to
 * show it is worth.
 */
export const DAYS_TOLD_WHOLE = 366;

/** The blocks of a file that are its latest; a file may begin with them or end with them. */
export interface LatestBlocks {
  readonly newestFirst: boolean;
  has(index: number): boolean;
}

export function latestBlocks(uri: string, document: Document): LatestBlocks {
  const { newestFirst } = orderOf(datedDays(uri, document));
  const { blocks } = document;
  const end = blocks.findIndex(({ day }) => day) + DAYS_TOLD_WHOLE;
  const start = blocks.length - DAYS_TOLD_WHOLE;
  return { newestFirst, has: (index) => (newestFirst ? index < end : index >= start) };
}
