import { type DayNumber, mondayOf, weekIndex } from "../../journal/calendar.ts";
import { weekInWords } from "../../journal/date-words.ts";
import { datedBlocks } from "../../journal/dated-blocks.ts";
import { eachSubject } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import { termType } from "../../syntax/words/term-types.ts";
import { nameOfEntry } from "../explain/written-name.ts";
import {
  exerciseItem,
  isExercise,
  type Sheet,
  type SheetEntry,
  type SheetItem,
  type SheetPart,
  type SheetShown,
  wordsOf,
} from "./sheet.ts";
import { sheetTexts } from "./sheet-texts.ts";

/** Days whose exercises are wanted. */
export interface SheetDays {
  readonly since: DayNumber;
  readonly until: DayNumber;
  /** `2026-W11 (9 to 15 March)`. */
  readonly title: string;
}

/**
 * What was played or planned in some days, each exercise once, as the latest of its lines has it. Remarks, outcomes and
 * what the body said stay in the journal.
 */
export function daysSheet(
  journal: Journal,
  { since, until, title }: SheetDays,
  shown: SheetShown & { readonly name: string },
): Sheet {
  const entries = latestOfEach(entriesBetween(journal, since, until));
  const exercises = entries.filter(isExercise).flatMap((each) => exerciseItem(each, shown) ?? []);
  const pieces = entries.filter(({ entry }) => entry.subject?.type === "title").map(pieceItem);
  const parts: readonly SheetPart[] = [
    { heading: sheetTexts.scales, items: exercises },
    { heading: sheetTexts.pieces, items: pieces },
  ];
  const filled = parts.filter(({ items }) => items.length > 0);
  const sentences = filled.length === 0 ? [sheetTexts.nothing] : [];
  return { title: sheetTexts.exercises(title), name: shown.name, sentences, parts: filled };
}

/** The same of the week of a day, up to that day. */
export function weekSheet(journal: Journal, today: DayNumber, shown: Parameters<typeof daysSheet>[2]): Sheet {
  const monday = mondayOf(weekIndex(today));
  return daysSheet(journal, { since: monday, until: today, title: weekInWords(monday) }, shown);
}

/** In the order in which they were played; each of several subjects on a line by itself. */
function entriesBetween(journal: Journal, since: DayNumber, until: DayNumber): readonly SheetEntry[] {
  const blocks = [...datedBlocks(journal, since, until)].sort((a, b) => a.day - b.day);
  return blocks.flatMap(({ day, uri, block }) => {
    const conventions = journal.conventions(uri);
    return journal.model(block).entries.flatMap((entry) => {
      const text = block.lines[entry.place.line]!;
      return eachSubject(entry).map(({ entry: one }) => ({ entry: one, text, conventions, day }));
    });
  });
}

/** Each where it was first played, in the words of its latest line. */
function latestOfEach(entries: readonly SheetEntry[]): readonly SheetEntry[] {
  const latest = new Map<string, SheetEntry>();
  for (const each of entries) latest.set(JSON.stringify([whatOf(each), howOf(each)]), each);
  const all = [...latest.values()];
  const told = new Set(all.filter((each) => howOf(each).length > 0).map(whatOf));
  // A line that only spells the notes of a scale is the same exercise as one that says how it was played.
  return all.filter((each) => howOf(each).length > 0 || !told.has(whatOf(each)));
}

function whatOf({ entry, text, conventions }: SheetEntry): string {
  const place = entry.where === undefined ? undefined : [entry.where.movement, entry.where.text];
  return JSON.stringify([nameOfEntry(entry, text, conventions), entry.instrument, place]);
}

/** How it is played, but for its tempo; empty where a line says nothing of that. */
function howOf({ entry }: SheetEntry): readonly string[] {
  const { articulation, noteValue, rhythm, reach, direction } = entry.attempts[0]?.conditions ?? {};
  const said = { articulation: articulation?.text, noteValue, rhythm: rhythm?.text, reach, direction };
  return Object.entries(said).flatMap(([name, how]) => (how === undefined ? [] : [`${name} ${JSON.stringify(how)}`]));
}

function pieceItem(asked: SheetEntry): SheetItem {
  const { entry, text, conventions } = asked;
  const way = wordsOf(asked, ({ type }) => type === "tempo" || (termType(type)?.tells ?? "") === "how");
  const place = entry.where?.text ?? "";
  const name = nameOfEntry(entry, text, conventions);
  return { name, way: [place, way].filter((each) => each !== "").join(", "), instead: "" };
}
