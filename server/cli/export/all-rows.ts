import { dayMinutes } from "../../history/day-minutes.ts";
import { sharedMinutes } from "../../history/minutes.ts";
import { isExercise, playedEntry, toldBy } from "../../history/played.ts";
import { type DayNumber, isoDate, weekLabel } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { declaredIn } from "../../journal/declared-lines.ts";
import { eachSubject } from "../../journal/each-subject.ts";
import { patternText } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { subjectKey, subjectText } from "../../journal/subject-text.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { Line } from "../../syntax/line/line.ts";
import { type AttemptsAsked, isDayAsked, type NamedJournal, namedJournals } from "../attempts-asked.ts";
import type { ReadJournals } from "../journals.ts";
import { type SubjectAsked, subjectAsked } from "../subject-asked.ts";
import type { Cell } from "./csv.ts";
import { ALL_COLUMN_NAMES, type AllColumn, type RowType } from "./export-columns.ts";
import { attemptsInBlock, inColumns, ownerOf, playCells, type ReadBlock, rowOf, toMillionth } from "./export-rows.ts";

export type AllRow = Readonly<Record<AllColumn, Cell>>;

type Cells = Partial<AllRow> & { readonly type: RowType };

/** A row to be, where it is, and what it is about. */
interface Found {
  readonly cells: Cells;
  /** Of its block. */
  readonly line: number;
  /** Of what is played in it, or of the entry that a remark is at. */
  readonly entry?: Entry;
}

export interface AllAsked extends AttemptsAsked {
  /** The current folder, an absolute path. */
  readonly cwd: string;
  /** What notes are called in subjects; where not given, what the journal calls them. */
  readonly names?: NoteNames;
}

/**
 * All that the files named say of practice: attempts, activities, days, remarks, and what is set, said, asked or aimed
 * at; not what was only planned. One journal after the other, the oldest first; what has no date comes before, and is
 * left out where days are asked for.
 * One by one, as all rows of a long diary are many times its text.
 */
export function* allRows(read: ReadJournals, asked: AllAsked): Generator<AllRow, void> {
  for (const named of namedJournals(read)) yield* rowsOfJournal(named, asked);
}

function* rowsOfJournal(named: NamedJournal, asked: AllAsked): Generator<AllRow, void> {
  const { journal } = named;
  const of = ownerOf(named, asked.cwd);
  const at = asked.subject === undefined ? undefined : subjectAsked(asked.subject, journal);
  for (const { file, block, start, date } of blocksAsked(named, asked)) {
    const about = { file, of, start, model: journal.readOnce(block) };
    for (const found of rowsOfBlock(journal, block, about, asked.names))
      if (isAbout(at, found)) yield row(found.cells, found.line, about, date);
  }
}

/** The blocks of the days that are asked for, the oldest first, and behind each other as they stand. */
function blocksAsked({ journal, files }: NamedJournal, asked: AllAsked) {
  const isLimited = asked.since !== undefined || asked.until !== undefined;
  return files
    .flatMap((file) => {
      const { blocks, starts } = journal.files.get(file.uri)!;
      return blocks.flatMap((block, i) => {
        const date = dayOfBlock(block);
        if (date === undefined ? isLimited : !isDayAsked(date, asked)) return [];
        return [{ file, block, start: starts[i]!, date }];
      });
    })
    .sort((a, b) => (a.date ?? Number.NEGATIVE_INFINITY) - (b.date ?? Number.NEGATIVE_INFINITY) || 0);
}

function row(cells: Cells, line: number, { file, of, start }: ReadBlock, date: DayNumber | undefined): AllRow {
  const when = date === undefined ? {} : { date: isoDate(date), week: weekLabel(date) };
  return inColumns(ALL_COLUMN_NAMES, { ...when, file: file.path, line: start + line + 1, ...of, ...cells });
}

/** Whether a row is about a subject that is asked for; what names no subject is about none. */
function isAbout(at: SubjectAsked | undefined, { entry, cells }: Found): boolean {
  if (at === undefined) return true;
  if (!entry?.subject) return false;
  const keys = eachSubject(entry).map((one) => subjectKey(one.entry.subject!));
  const pattern = cells.pattern ?? (entry.pattern && patternText(entry.pattern));
  return keys.some((key) => at.keys.includes(key)) && (at.pattern === undefined || at.pattern === pattern);
}

/** In the order of its lines, the day first. */
function rowsOfBlock(journal: Journal, block: Block, about: ReadBlock, names: NoteNames | undefined): Found[] {
  const { model, start } = about;
  const attempts = attemptsInBlock(journal, block, about).map((each): Found => {
    return { cells: { type: "attempt", ...rowOf(each, names) }, line: each.line - start, entry: each.entry };
  });
  const context = { conventions: journal.conventions(about.file.uri), names: names ?? journal.names };
  const found = [
    ...dayOf(about),
    ...attempts,
    ...activitiesOf(about, context),
    ...declaredOf(journal, block, about, context),
    ...model.lines.flatMap((line, i) => writtenOn(line, block.lines[i]!).map((cells) => ({ cells, line: i }))),
    ...model.sore.map(({ place, words }): Found => ({ cells: { type: "pain", text: words }, line: place.line })),
  ];
  const entries = entriesByLine(about);
  return found.map((each) => withEntry(each, entries, context.names)).sort((a, b) => a.line - b.line);
}

interface Context {
  readonly conventions: Conventions;
  readonly names: NoteNames;
}

/** A day that was practised or rested on; one that was only planned is none. */
function dayOf({ model }: ReadBlock): Found[] {
  const { day, entries } = model;
  if (day?.date === undefined) return [];
  const time = dayMinutes(model);
  const minutes = toMillionth(time.phases.reduce((sum, phase) => sum + phase.minutes, 0)) || null;
  const isPlan = minutes === null && (day.planned || entries.some(({ planned }) => planned));
  if (isPlan && entries.every(({ planned }) => planned)) return [];
  const cells: Cells =
    day.rest === undefined ? { type: "day", minutes } : { type: "rest", minutes, text: day.rest || null };
  return [{ cells: { ...cells, about: minutes === null ? null : false }, line: 0 }];
}

/** Activities and free practice take their time, and are nothing that a tempo is compared of. */
function activitiesOf({ model }: ReadBlock, { conventions, names }: Context): Found[] {
  const shares = sharedMinutes(model);
  return model.entries.flatMap((entry, i): Found[] => {
    if (!entry.subject || entry.planned || isExercise(entry)) return [];
    const { minutes, about } = shares[i]!;
    const cells: Cells = {
      type: "activity",
      phase: entry.phase ?? null,
      instrument: toldBy(entry, conventions).instrument,
      subject: subjectText(entry.subject, names),
      outcome: entry.attempts.flatMap(({ outcomes }) => outcomes).join(" ") || null,
      minutes: toMillionth(minutes) || null,
      about,
    };
    return [{ cells, line: entry.place.line, entry }];
  });
}

/** Aims, and work that is set by a declaration; of several subjects each has its row. */
function declaredOf(journal: Journal, block: Block, { file }: ReadBlock, { conventions, names }: Context): Found[] {
  return declaredIn(journal, file.uri, block).flatMap(({ declared, line, text }): Found[] => {
    if (declared.type !== "aim" && declared.type !== "set") return [];
    const days = declared.type === "set" ? (declared.days ?? null) : null;
    const cells = { type: declared.type, text, due: declared.by === undefined ? null : isoDate(declared.by), days };
    const whole = declared.entry && readEntry(declared.entry, line, journal.vocabulary);
    if (!whole?.subject) return [{ cells, line }];
    const { attempts } = playedEntry(whole, conventions);
    return eachSubject(whole).map(({ entry, attempts: own }, i): Found => {
      const of = attempts.filter(({ subject }) => subject === i);
      const played = of.find(({ rate }) => rate !== null) ?? of[0];
      const attempt = played && entry.attempts[own.indexOf(played.attempt)];
      const told = attempt
        ? playCells({ entry, manner: played.manner, attempt, rate: played.rate }, names)
        : { subject: subjectText(entry.subject!, names) };
      return { cells: { ...told, ...cells }, line, entry };
    });
  });
}

/** What a line says in words of its own. */
function writtenOn(line: Line, text: string): Cells[] {
  const remark: Cells[] = line.remark?.text ? [{ type: "remark", text: line.remark.text }] : [];
  const spoken = (type: RowType, from: number, end: number): Cells[] => {
    const words = text.slice(from, end).trim();
    return words === "" ? remark : [{ type, text: words }, ...remark];
  };
  switch (line.type) {
    case "said":
      return spoken("said", line.from, line.end);
    case "asked":
      return spoken("question", line.from, line.end);
    case "set":
      return spoken("set", line.from, line.end);
    case "prose":
    case "near declaration":
      return spoken("remark", line.start, line.end);
    case "body":
      return line.sore ? remark : spoken("remark", line.start, line.end);
    default:
      return remark;
  }
}

/** The entry of each line that is one, or a remark right under one. */
function entriesByLine({ model }: ReadBlock): ReadonlyMap<number, Entry> {
  const entries = new Map(model.entries.map((entry) => [entry.place.line, entry]));
  for (const [i, { type }] of model.lines.entries()) {
    const above = entries.get(i - 1);
    if (type === "remark" && above) entries.set(i, above);
  }
  return entries;
}

/** What is said beside an entry has its subject. */
function withEntry(found: Found, entries: ReadonlyMap<number, Entry>, names: NoteNames): Found {
  const entry = found.entry ?? entries.get(found.line);
  if (found.entry || !entry?.subject || found.cells.type === "day") return found;
  return { ...found, entry, cells: { subject: subjectText(entry.subject, names), ...found.cells } };
}
