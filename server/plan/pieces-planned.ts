import { isWholePiece } from "../history/bars-played.ts";
import { type AttemptRecord, compareText, inTimeOrder } from "../history/record.ts";
import { DAYS_BEFORE_A_CONCERT, DAYS_IN_HAND } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { PieceFacts } from "../journal/declarations/declared.ts";
import { ofType } from "../journal/declared-lines.ts";
import { nameKey } from "../syntax/words/fold.ts";
import { pieceTexts } from "./piece-texts.ts";
import { declaredParts, inHandOf, isDatePassed, nameOfPart, partsOf, recordsByTitle } from "./pieces-in-hand.ts";
import type { PlanBasis } from "./plan-basis.ts";

/** A piece or a movement in hand, as a plan takes it. */
export interface PlannedPiece {
  /** As sentences call it: `Ground`, `Gates (Iron)`. */
  readonly name: string;
  /** As a line begins: `Ground`, `"Gates", mvt 2`. */
  readonly written: string;
  readonly title: string;
  readonly facts: PieceFacts;
  /** Its own day or that of a concert, where it lies ahead. */
  readonly due?: DayNumber;
  /** What was practised of it on the instrument before the day, oldest first. */
  readonly records: readonly AttemptRecord[];
}

/**
 * The pieces in hand: those whose day is within two weeks first, the nearest of them first; then in turn, the one whose
 * places were worked longest ago. Playing one through at the end of a day is no turn at it.
 */
export function piecesPlanned(basis: PlanBasis): readonly PlannedPiece[] {
  const { day } = basis;
  const all = [...declaredPieces(basis), ...undeclaredPieces(basis)].flatMap((piece) => byMovement(piece, day));
  const isNear = ({ due }: PlannedPiece): number =>
    due !== undefined && due - day <= DAYS_BEFORE_A_CONCERT ? due : Number.MAX_SAFE_INTEGER;
  const nearness = ({ due }: PlannedPiece): number => due ?? Number.MAX_SAFE_INTEGER;
  return all.sort(
    (a, b) =>
      isNear(a) - isNear(b) ||
      lastWorked(a) - lastWorked(b) ||
      nearness(a) - nearness(b) ||
      compareText(a.written, b.written),
  );
}

/** The last day on which a place of it was worked; of a piece that has none, on which it was played. */
function lastWorked({ records, facts }: PlannedPiece): DayNumber {
  const places = records.filter(({ where }) => !isWholePiece(where));
  const turns = facts.bars === undefined && places.length === 0 ? records : places;
  return turns.at(-1)?.day ?? Number.MIN_SAFE_INTEGER;
}

function declaredPieces(basis: PlanBasis): readonly PlannedPiece[] {
  const { journal, day, lines } = basis;
  const movements = ofType(lines, "movement");
  const parts = inHandOf(declaredParts(journal, lines, day - 1), day).filter((part) => !isDatePassed(part, day));
  return parts
    .flatMap((piece) => partsOf(piece, movements))
    .flatMap((part): PlannedPiece[] => {
      const records = ownRecords(basis, part.records);
      if (!records) return [];
      const { declared } = part.line;
      const short = part.short ?? (declared.type === "piece" ? declared.short : undefined);
      const title = short ?? inQuotes(declared.title);
      const movement = declared.type === "movement" ? `, mvt ${declared.movement}` : "";
      if (title === undefined) return [];
      const due = part.due !== undefined && part.due >= day ? { due: part.due } : {};
      const name = nameOfPart(part);
      return [{ name, written: title + movement, title: declared.title, facts: declared, records, ...due }];
    });
}

/** Titles that are nowhere declared, but were worked on in the last twelve weeks. */
function undeclaredPieces(basis: PlanBasis): readonly PlannedPiece[] {
  const { journal, day, lines } = basis;
  const declared = new Set(ofType(lines, "piece").map((line) => nameKey(line.declared.title)));
  return [...recordsByTitle(journal, day - 1)].flatMap(([key, all]): PlannedPiece[] => {
    const records = ownRecords(basis, all);
    const last = records?.at(-1);
    if (declared.has(key) || !records || !last || last.day <= day - DAYS_IN_HAND) return [];
    const written = inQuotes(last.subject);
    return written === undefined ? [] : [{ name: last.subject, written, title: last.subject, facts: {}, records }];
  });
}

/** A piece whose movements nobody declared, by those that were worked on lately; what names none is the piece's own. */
function byMovement(piece: PlannedPiece, day: DayNumber): readonly PlannedPiece[] {
  const { facts, written, name, records } = piece;
  if ("movement" in facts || records.every(({ movement }) => movement === null)) return [piece];
  return [...new Set(records.map(({ movement }) => movement))].flatMap((movement): PlannedPiece[] => {
    const own = records.filter((record) => record.movement === movement);
    if (movement === null) return [{ ...piece, records: own }];
    if (own.at(-1)!.day <= day - DAYS_IN_HAND) return [];
    const called = pieceTexts.ofPiece(name, pieceTexts.movement(movement.replace(/^mvt /, "")));
    return [{ ...piece, name: called, written: `${written}, ${movement}`, facts: {}, records: own }];
  });
}

/** Those on the plan's instrument; undefined for a piece that was only played on others. */
function ownRecords(
  { instrument }: PlanBasis,
  records: readonly AttemptRecord[],
): readonly AttemptRecord[] | undefined {
  const own = records.filter((record) => record.instrument === instrument);
  return own.length === 0 && records.length > 0 ? undefined : own;
}

/** Undefined where the title holds a quote itself, so that it cannot be written so. */
function inQuotes(title: string): string | undefined {
  return /["“”„«»]/.test(title) ? undefined : `"${title}"`;
}

/** Played from the beginning to the end, oldest first. */
export function wholeRuns({ records }: PlannedPiece): readonly AttemptRecord[] {
  return records.filter(({ where }) => isWholePiece(where)).sort(inTimeOrder);
}
