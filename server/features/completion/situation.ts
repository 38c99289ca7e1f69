import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import type { Usage } from "./usage.ts";

/** An entry as far as it is written before the cursor, and what stands behind the cursor. */
export interface EntrySituation {
  readonly journal: Journal;
  readonly conventions: Conventions;
  readonly usage: Usage;
  /** What is written before what is being typed. */
  readonly entry: Entry;
  /** All terms of the line but the word being typed. */
  readonly items: readonly Item[];
  /** A comma or a colon stands between the last term and what is being typed. */
  readonly separated: boolean;
  readonly today: DayNumber;
  /** What is typed of the next term. */
  readonly typed: string;
  /** `aim` or `set`, where it is no entry of a day. */
  readonly work?: "aim" | "set";
}

/** The term right before what is being typed; undefined behind the subject. */
export function lastItem(items: readonly Item[]): Item | undefined {
  return items.reduce<Item | undefined>((last, item) => (!last || item.end > last.end ? item : last), undefined);
}
