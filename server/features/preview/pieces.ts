import type { PreviewChart, PreviewPiece, PreviewPieces } from "../../../shared/preview.ts";
import { type BarStrip, barRuns, lastBar, RECENCIES } from "../../charts/bar-data.ts";
import { barStrip } from "../../charts/bar-strip.ts";
import { ROW_SIZE } from "../../charts/look.ts";
import { barsOfPlace } from "../../history/bars-played.ts";
import { rateAsWritten } from "../../history/exercise-row.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { latestOf } from "../../history/strands.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { daysAhead } from "../explain/days-away.ts";
import {
  type DeclaredConcert,
  type DeclaredLine,
  type DeclaredMovement,
  type DeclaredPiece,
  ofType,
} from "../explain/declared-lines.ts";
import { hashOf, placeOf, sentence, shownText } from "./text.ts";

/** A piece that was worked in so many days is in hand: the twelve weeks that the page speaks of. */
const DAYS_IN_HAND = 84;
const HEIGHT = 74;

type DeclaredPart = DeclaredPiece | DeclaredMovement;

/** A piece or a movement with what was practised of it, oldest first. */
export interface Part {
  readonly line: DeclaredPart;
  readonly records: readonly AttemptRecord[];
  readonly due?: DayNumber;
}

/**
 * The pieces and studies in hand, or their movements, in the order in which they are given; where there are none, the
 * latest.
 */
export function piecesSection(
  journal: Journal,
  { parts, inHand }: { readonly parts: readonly Part[]; readonly inHand: readonly Part[] },
  lines: readonly DeclaredLine[],
  today: DayNumber,
): PreviewPieces {
  const movements = ofType(lines, "movement");
  return {
    inHand: inHand.flatMap((piece) => partsOf(piece, movements)).map((part) => shownPart(journal, part, today)),
    latest: inHand.length > 0 ? null : workedLast(journal, parts),
  };
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

/** The pieces that are worked on, are new or have a day ahead: the nearest day first, then the latest worked. */
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

function workedLast(journal: Journal, parts: readonly Part[]): PreviewPieces["latest"] {
  const latest = latestOf(parts);
  const part = parts.find(({ records }) => latest !== undefined && records.at(-1) === latest);
  if (!latest || !part) return null;
  const { day, uri, block, line } = latest;
  return { text: nameOfPart(part.line), note: isoDate(day), place: placeOf(journal, uri, block, line) };
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

function recordsByTitle(journal: Journal, today: DayNumber): ReadonlyMap<string, readonly AttemptRecord[]> {
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
function partsOf(piece: Part, all: readonly DeclaredMovement[]): Part[] {
  const title = nameKey((piece.line.declared as { readonly title: string }).title);
  const movements = all
    .filter(({ declared }) => nameKey(declared.title) === title)
    .map(
      (line): Part => ({
        ...piece,
        line,
        records: piece.records.filter((each) => each.movement === `mvt ${line.declared.movement}`),
      }),
    )
    .filter(({ records }) => records.length > 0);
  const whole = movements.length === 0 ? piece.records : piece.records.filter(({ movement }) => movement === null);
  return movements.length > 0 && whole.length === 0 ? movements : [{ ...piece, records: whole }, ...movements];
}

function shownPart(journal: Journal, part: Part, today: DayNumber): PreviewPiece {
  const { line, records } = part;
  const name = nameOfPart(line);
  const last = records.at(-1);
  return {
    name,
    place: last ? placeOf(journal, last.uri, last.block, last.line) : placeOf(journal, line.uri, line.block, line.line),
    sentences: [tempoOf(part), ...dayOf(part, today)],
    chart: stripOf(part, name, today),
  };
}

function nameOfPart({ declared }: DeclaredPart): string {
  if (declared.type === "piece") return shownText(declared.title);
  const { title, movement, name } = declared;
  return shownText(`${title}, movement ${movement}${name ? `: ${name}` : ""}`);
}

/** The latest tempo reached, where in the piece, and the goal. */
function tempoOf({ line: { declared }, records }: Part): string {
  const reached = records.findLast((record) => record.reached && record.rate !== null);
  const goal = declared.goal
    ? `; the goal is ${rateAsWritten(declared.goal.bpm, { unit: "beats" }, { beat: declared.goal.beat })}`
    : "";
  if (!reached) return `No tempo was reached so far${goal}.`;
  const where = reached.where === null ? "" : ` (${shownText(reached.where)})`;
  return sentence(
    `latest reached ${rateAsWritten(reached.rate!, reached, reached)}${where}, ${isoDate(reached.day)}${goal}`,
  );
}

function dayOf({ due }: Part, today: DayNumber): string[] {
  if (due === undefined) return [];
  return [due < today ? `Its day, ${isoDate(due)}, has passed.` : `For ${isoDate(due)}, ${daysAhead(due - today)}.`];
}

function stripOf({ line: { declared }, records }: Part, name: string, today: DayNumber): PreviewChart {
  const last = new Map(records.map(({ where, day }) => [where, day])); // in their order, so that the latest stays
  const worked = [...last].flatMap(([where, day]) =>
    barsOfPlace(where, declared.bars).map((bars) => ({ ...bars, daysAgo: today - day })),
  );
  const data: BarStrip = {
    title: `${name}: bars worked`,
    worked,
    ...(declared.bars === undefined ? {} : { bars: declared.bars }),
  };
  const drawing = barStrip(data, {
    kind: "classes",
    width: ROW_SIZE.width,
    height: HEIGHT,
    id: `piece ${hashOf(name)}`,
  });
  if (!drawing.ok) return drawing;
  const rows = barRuns(data, lastBar(data)).map(({ from, to, recency }) => [
    from === to ? String(from) : `${from}–${to}`,
    recency === RECENCIES.length - 1 ? RECENCIES[recency]!.words : `within ${RECENCIES[recency]!.words}`,
  ]);
  const table = {
    caption: `Of ${lastBar(data)} bars, those that were worked`,
    headings: ["Bars", "Last worked"],
    rows,
  };
  return { ok: true, svg: drawing.svg, table };
}
