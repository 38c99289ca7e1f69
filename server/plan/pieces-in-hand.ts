import { journalHistory } from "../history/journal-history.ts";
import { type AttemptRecord, inTimeOrder } from "../history/record.ts";
import { DAYS_IN_HAND } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import {
  type DeclaredConcert,
  type DeclaredLine,
  type DeclaredMovement,
  type DeclaredPiece,
  ofType,
} from "../journal/declared-lines.ts";
import type { Journal } from "../journal/journal.ts";
import { nameKey } from "../syntax/words/fold.ts";
import { pieceTexts } from "./piece-texts.ts";

/** A piece or a movement with what was practised of it, oldest first. */
export interface Part {
  readonly line: DeclaredPiece | DeclaredMovement;
  readonly records: readonly AttemptRecord[];
  readonly due?: DayNumber;
  /** Of a movement: what its piece is called for short. */
  readonly short?: string;
}

/** `Ground`, as the journal calls it for short; of a movement also its name or number: `Gates (Iron)`. */
export function nameOfPart({ line: { declared }, short }: Part): string {
  if (declared.type === "piece") return declared.short ?? declared.title;
  return pieceTexts.ofPiece(short ?? declared.title, declared.name ?? pieceTexts.movement(declared.movement));
}

/** Every piece and study that is declared, with what was practised of it up to today. */
export function declaredParts(journal: Journal, lines: readonly DeclaredLine[], today: DayNumber): Part[] {
  const byTitle = recordsByTitle(journal, today);
  const concerts = ofType(lines, "concert");
  return firstOfEach(ofType(lines, "piece")).map((line) => {
    const records = byTitle.get(nameKey(line.declared.title)) ?? [];
    const due = dueOf(line, concerts, today);
    return { line, records, ...(due === undefined ? {} : { due }) };
  });
}

/**
 * The pieces that were worked on in the last twelve weeks, are new or have a day ahead: the nearest day first, then the
 * latest worked.
 */
export function inHandOf(parts: readonly Part[], today: DayNumber): Part[] {
  return parts
    .filter(({ line: { declared }, records, due }) => {
      if (declared.from !== undefined && declared.from > today) return false;
      if (due !== undefined && due >= today) return true;
      const last = records.at(-1);
      return last === undefined ? due === undefined : last.day > today - DAYS_IN_HAND;
    })
    .sort(
      (a, b) => nearness(a, today) - nearness(b, today) || (b.records.at(-1)?.day ?? 0) - (a.records.at(-1)?.day ?? 0),
    );
}

/** Its day is over, and it was not touched since: it waits for nobody. */
export function isDatePassed({ due, records }: Part, today: DayNumber): boolean {
  return due !== undefined && due < today && (records.at(-1)?.day ?? due) <= due;
}

function nearness({ due }: Part, today: DayNumber): number {
  return due === undefined || due < today ? Number.MAX_SAFE_INTEGER : due;
}

/** A title that is declared twice counts as it was first. */
function firstOfEach(lines: readonly DeclaredPiece[]): readonly DeclaredPiece[] {
  const first = new Map<string, DeclaredPiece>();
  for (const line of lines) {
    const key = nameKey(line.declared.title);
    if (!first.has(key)) first.set(key, line);
  }
  return [...first.values()];
}

/** What was practised of each title up to a day, by its key. */
export function recordsByTitle(journal: Journal, today: DayNumber): ReadonlyMap<string, readonly AttemptRecord[]> {
  const byTitle = new Map<string, AttemptRecord[]>();
  for (const { subject, strands } of journalHistory(journal).exercises.values()) {
    if (!strands[0]!.title) continue;
    const own = strands.flatMap(({ records }) => records.filter(({ day }) => day <= today));
    const key = nameKey(subject);
    byTitle.set(key, [...(byTitle.get(key) ?? []), ...own]); // one title on several instruments
  }
  for (const records of byTitle.values()) records.sort(inTimeOrder);
  return byTitle;
}

/** Its own day or that of a concert: the next one ahead, else the one that passed last. */
function dueOf(
  { declared }: DeclaredPiece,
  concerts: readonly DeclaredConcert[],
  today: DayNumber,
): DayNumber | undefined {
  const title = nameKey(declared.title);
  const own = concerts.filter((each) => each.declared.titles.some((name) => nameKey(name) === title));
  const days = [declared.due, ...own.map((each) => each.declared.on)]
    .filter((day) => day !== undefined)
    .sort((a, b) => a - b);
  return days.find((day) => day >= today) ?? days.at(-1);
}

/** The piece, or those of its movements that were worked on; both where some work names no movement. */
export function partsOf(piece: Part, all: readonly DeclaredMovement[]): Part[] {
  const { declared } = piece.line;
  const title = nameKey(declared.title);
  const short = declared.type === "piece" ? declared.short : undefined;
  const movements = all
    .filter(({ declared }) => nameKey(declared.title) === title)
    .map(
      (line): Part => ({
        ...piece,
        ...(short === undefined ? {} : { short }),
        line,
        records: piece.records.filter((each) => each.movement === `mvt ${line.declared.movement}`),
      }),
    )
    .filter(({ records }) => records.length > 0);
  const whole = movements.length === 0 ? piece.records : piece.records.filter(({ movement }) => movement === null);
  return movements.length > 0 && whole.length === 0 ? movements : [{ ...piece, records: whole }, ...movements];
}
