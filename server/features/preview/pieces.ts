import type { PreviewLine, PreviewPieces } from "../../../shared/preview.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { DAYS_IN_HAND } from "../../history/thresholds.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { type DeclaredLine, ofType } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { type Part, partsOf, recordsByTitle } from "../../plan/pieces-in-hand.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { earlierLine, pieceRow, plainLine, titleLine } from "./piece-rows.ts";

/**
 * The pieces and studies in hand, or their movements: those with bars as a strip, the others as a line. Then those that
 * were worked before. Null where there is neither.
 */
export function piecesSection(
  journal: Journal,
  { parts, inHand }: { readonly parts: readonly Part[]; readonly inHand: readonly Part[] },
  lines: readonly DeclaredLine[],
  today: DayNumber,
): PreviewPieces | null {
  const movements = ofType(lines, "movement");
  const current = inHand.flatMap((piece) => partsOf(piece, movements));
  const hasBars = ({ line }: Part) => line.declared.bars !== undefined;
  const titles = undeclaredTitles(journal, parts, today);
  const isLate = (records: readonly AttemptRecord[]) => records.at(-1)!.day > today - DAYS_IN_HAND;
  const before = parts.filter((part) => !inHand.includes(part) && part.records.length > 0);
  const earlier: readonly { last: AttemptRecord; line: PreviewLine }[] = [
    ...before.map((part) => ({ last: part.records.at(-1)!, line: earlierLine(journal, part, today) })),
    ...titles
      .filter((records) => !isLate(records))
      .map((records) => ({ last: records.at(-1)!, line: titleLine(journal, records, today) })),
  ];
  const shown: PreviewPieces = {
    inHand: current.filter(hasBars).map((part) => pieceRow(journal, part, today)),
    plain: [
      ...current.filter((part) => !hasBars(part)).map((part) => plainLine(journal, part, today)),
      ...titles.filter(isLate).map((records) => titleLine(journal, records, today)),
    ],
    earlier: [...earlier].sort((a, b) => inTimeOrder(b.last, a.last)).map(({ line }) => line),
  };
  return shown.inHand.length + shown.plain.length + shown.earlier.length > 0 ? shown : null;
}

/** What was practised of each title that is not declared, the latest first. */
export function undeclaredTitles(
  journal: Journal,
  parts: readonly Part[],
  today: DayNumber,
): (readonly AttemptRecord[])[] {
  const declared = new Set(parts.map(({ line }) => nameKey((line.declared as { readonly title: string }).title)));
  return [...recordsByTitle(journal, today)]
    .filter(([title, records]) => !declared.has(title) && records.length > 0)
    .map(([, records]) => records)
    .sort((a, b) => inTimeOrder(b.at(-1)!, a.at(-1)!));
}
