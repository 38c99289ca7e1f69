import type { PreviewLine, PreviewPiece, PreviewTableRow } from "../../../shared/preview.ts";
import { pieceStrip } from "../../charts/piece-strip.ts";
import { barsOfPlace } from "../../history/bars-played.ts";
import { placeInWords } from "../../history/place-words.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { placeKey } from "../../history/strand-key.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { dayBack } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { scaleText } from "../../journal/subject-text.ts";
import { daysAhead, forDay } from "../../plan/day-words.ts";
import { pieceTexts } from "../../plan/piece-texts.ts";
import type { Part } from "../../plan/pieces-in-hand.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { line, placeOfRecord } from "./lines.ts";
import { pieceRowTexts } from "./piece-row-texts.ts";
import { hashOf, placeOf, shownText } from "./text.ts";

/** So long after its day a piece says what it was for. */
const DAYS_SHOWN = 28;

/** A piece whose bars are known: its strip, and its places as a table. */
export function pieceRow(journal: Journal, part: Part, today: DayNumber): PreviewPiece {
  const { line: declaredLine, records } = part;
  const { declared } = declaredLine;
  const name = nameOfPart(part);
  const last = records.at(-1);
  const key = hashOf(name);
  const wanted = declared.goal?.bpm;
  const drawing = pieceStrip(
    {
      title: name,
      bars: declared.bars ?? 0,
      ...(wanted === undefined ? {} : { wanted }),
      worked: records.flatMap(({ where, day, rate, reached }) =>
        barsOfPlace(where, declared.bars).map((bars) => ({
          ...bars,
          daysAgo: today - day,
          reached: reached === true ? rate : null,
        })),
      ),
    },
    `piece ${key}`,
  );
  return {
    key,
    name,
    facts: factsOf(journal, part),
    due: dueWords(part, today),
    latest: tempo(latestReached(records)?.rate),
    wanted: tempo(wanted),
    day: last ? dayBack(last.day, today) : pieceRowTexts.notYet,
    place: last
      ? placeOfRecord(journal, last)
      : placeOf(journal, declaredLine.uri, declaredLine.block, declaredLine.line),
    chart: {
      svg: drawing.ok ? drawing.svg : "",
      table: {
        caption: pieceRowTexts.byPlace(name),
        headings: pieceRowTexts.headings,
        rows: placesOf(journal, records, today),
        foot: drawing.ok ? "" : drawing.reason,
      },
    },
  };
}

/** A piece or study without bars: its place, the latest tempo there, its date. */
export function plainLine(journal: Journal, part: Part, today: DayNumber): PreviewLine {
  const { line: declaredLine, records } = part;
  const last = records.at(-1);
  const due = dueWords(part, today);
  if (!last) {
    const place = placeOf(journal, declaredLine.uri, declaredLine.block, declaredLine.line);
    return line(nameOfPart(part), place, pieceRowTexts.notYet, { below: due });
  }
  return line(nameOfPart(part), placeOfRecord(journal, last), dayBack(last.day, today), {
    behind: latestPlace(records),
    below: due,
  });
}

/** A title that is not declared. */
export function titleLine(journal: Journal, records: readonly AttemptRecord[], today: DayNumber): PreviewLine {
  const last = records.at(-1)!;
  return line(shownText(last.subject), placeOfRecord(journal, last), dayBack(last.day, today), {
    behind: latestPlace(records),
  });
}

/** One that was worked before. */
export function earlierLine(journal: Journal, part: Part, today: DayNumber): PreviewLine {
  const last = part.records.at(-1)!;
  return line(nameOfPart(part), placeOfRecord(journal, last), dayBack(last.day, today), {
    behind: latestPlace(part.records),
  });
}

function nameOfPart({ line: { declared } }: Part): string {
  if (declared.type === "piece") return shownText(withShort(declared));
  const { title, movement, name } = declared;
  return shownText(pieceRowTexts.movement(title, movement, name));
}

/** `Twelve Stairs no. 9 (Attic)`: with what the rest of the page calls it, where its title does not have that. */
function withShort({ title, short }: { readonly title: string; readonly short?: string }): string {
  return short === undefined || nameKey(title).includes(nameKey(short)) ? title : `${title} (${short})`;
}

/** `C major, 90 bars`. */
function factsOf(journal: Journal, { line: { declared } }: Part): string {
  const key = declared.key ? [scaleText(declared.key, journal.names).replace(" natural minor", " minor")] : [];
  const bars = declared.bars === undefined ? [] : [pieceTexts.bars(declared.bars)];
  return shownText([...key, ...bars].join(", "));
}

/** `, lines 1–3: 54`. */
function latestPlace(records: readonly AttemptRecord[]): string {
  const reached = latestReached(records);
  const { where } = reached ?? records.at(-1)!;
  const place = where === null ? "" : `, ${shownText(placeInWords(where))}`;
  return `${place}${reached ? `: ${tempo(reached.rate)}` : ""}`;
}

function latestReached(records: readonly AttemptRecord[]): AttemptRecord | undefined {
  return records.findLast(({ reached, rate }) => reached === true && rate !== null);
}

function tempo(rate: number | null | undefined): string {
  return rate == null ? "" : String(Math.round(rate * 10) / 10);
}

function dueWords({ due }: Part, today: DayNumber): string {
  if (due === undefined || due < today - DAYS_SHOWN) return "";
  return due > today + 1 ? `${forDay(due, today)} (${daysAhead(due - today)})` : forDay(due, today);
}

/** Each place of the piece that was worked, the latest first. */
function placesOf(journal: Journal, records: readonly AttemptRecord[], today: DayNumber): PreviewTableRow[] {
  const byPlace = new Map<string, AttemptRecord[]>();
  for (const record of records) {
    const key = record.where === null ? "" : placeKey(record.where);
    byPlace.set(key, [...(byPlace.get(key) ?? []), record]);
  }
  return [...byPlace]
    .sort(([, a], [, b]) => inTimeOrder(b.at(-1)!, a.at(-1)!))
    .map(([, own]) => {
      const last = own.at(-1)!;
      const rates = own.flatMap(({ reached, rate }) => (reached === true && rate !== null ? [rate] : []));
      return {
        cells: [
          shownText(last.where === null ? pieceRowTexts.wholePiece : placeInWords(last.where)),
          tempo(rates.at(-1)),
          tempo(rates.length > 0 ? Math.max(...rates) : null),
          dayBack(last.day, today),
        ],
        place: placeOfRecord(journal, last),
      };
    });
}
