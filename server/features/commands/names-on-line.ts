import { styleInPlaceOf, styleOf, writtenNote } from "../../checks/notes/note-style.ts";
import { readDeclaration } from "../../journal/declarations/declaration.ts";
import type { Declaration, DeclarationContext } from "../../journal/declarations/declared.ts";
import { subjectText } from "../../journal/subject-text.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { TitleMatch } from "../../syntax/line/known-title.ts";
import type { EntryLine, Line } from "../../syntax/line/line.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { Item, Meaning, SubjectMeaning } from "../../syntax/words/meaning.ts";
import { isSyllabic } from "../../syntax/words/note-word.ts";
import { TERMS } from "../../syntax/words/terms.ts";
import type { Replaced } from "./nameless-notes.ts";
import { isNote, type NoteStretch, noteStretchesIn, notesOf, notesWithin } from "./note-stretches.ts";

/** How a journal names notes, and reads its lines by that. */
export interface Naming {
  readonly names: NoteNames;
  readonly context: DeclarationContext;
}

/** A line as it is read. */
export interface LineToRename {
  readonly text: string;
  readonly head: boolean;
  readonly titles?: readonly TitleMatch[];
}

export interface LineRenamed {
  readonly changes: readonly Replaced[];
  /** It is read as it was before. */
  readonly same: boolean;
}

/**
 * A line with its notes and keys named in another language: as they are shown there, where they were written as they
 * are shown, else word by word. A term that the other language does not know becomes the English one, which all know.
 */
export function renamedLine(line: LineToRename, from: Naming, to: Naming): LineRenamed {
  const before = readIn(line, from);
  const said = saidBy(before);
  const regions = regionsOf(line.text, before, from);
  const isSame = (changes: readonly Replaced[]): boolean =>
    saidBy(readIn({ ...line, text: changed(line.text, changes) }, to)) === said;
  let changes: readonly Replaced[] | undefined;
  for (const way of [asTheyStand, asShown, onlySubject]) {
    const named = regions.flatMap((region) => way(line.text, region, from, to));
    for (const also of [() => [], () => termsIn(line.text, before, to)]) {
      const all = withoutOverlap([...named, ...also()]);
      if (isSame(all)) return { changes: all, same: true };
      changes ??= all;
    }
  }
  return { changes: changes ?? [], same: false };
}

interface ReadLine {
  readonly line: Line;
  readonly declaration?: Declaration;
}

function readIn({ text, head, titles }: LineToRename, { context }: Naming): ReadLine {
  const line = parseLine(text, { ...context, head, ...(titles ? { titles } : {}) });
  return line.type === "declaration" ? { line, declaration: readDeclaration(text, line, context) } : { line };
}

/** A stretch of a line that names notes, and what is read there. */
interface Region {
  readonly start: number;
  readonly end: number;
  readonly meaning?: SubjectMeaning;
  readonly notes: readonly NoteStretch[];
}

function regionsOf(text: string, { line, declaration }: ReadLine, { names }: Naming): readonly Region[] {
  const entry = line.type === "entry" ? line : entryOf(declaration);
  if (entry) return entryRegions(text, entry, names);
  return declaration ? declaredRegions(text, declaration, names) : [];
}

function entryOf(declaration: Declaration | undefined): EntryLine | undefined {
  const declared = declaration?.declared;
  return declared?.type === "aim" || declared?.type === "set" ? declared.entry : undefined;
}

function entryRegions(text: string, entry: EntryLine, names: NoteNames): readonly Region[] {
  const { subject } = entry;
  const all = noteStretchesIn(text, entry, names);
  if (!subject || !isKeyed(subject.meaning)) return all.map(alone);
  const isIn = ({ start, end }: NoteStretch): boolean => start >= subject.start && end <= subject.end;
  const { start, end, meaning } = subject;
  return [{ start, end, meaning, notes: all.filter(isIn) }, ...all.filter((each) => !isIn(each)).map(alone)];
}

function alone(note: NoteStretch): Region {
  return { start: note.start, end: note.end, notes: [note] };
}

const KEYED: readonly Meaning["type"][] = ["scale", "chord", "figure", "chain", "several", "activity", "technique"];

function isKeyed(meaning: Meaning): meaning is SubjectMeaning {
  return KEYED.includes(meaning.type);
}

/** What is behind the colon of a declaration: a key, as it is shown or otherwise, and single notes. */
function declaredRegions(text: string, { line, declared }: Declaration, names: NoteNames): readonly Region[] {
  const closed = Math.max(
    line.wordEnd,
    ...[...text.slice(0, line.end).matchAll(/["“”„«»‟]/g)].map(({ index }) => index),
  );
  const start = text.indexOf(":", closed) + 1;
  if (start === 0 || start > line.end || !declared) return [];
  const notes = notesWithin(text, { start, end: line.end }, notesOf(declared), names);
  const key = "key" in declared ? declared.key : undefined;
  const first = key && notes.find(({ note }) => note.letter === key.tonic.letter && note.alter === key.tonic.alter);
  if (!key || !first) return notes.map(alone);
  const end = first.start + /^[^,]*/.exec(text.slice(first.start, line.end))![0].trimEnd().length;
  const inKey = notes.filter((note) => note.start >= first.start && note.end <= end);
  const others = notes.filter((note) => !inKey.includes(note));
  return [{ start: first.start, end, meaning: key, notes: inKey }, ...others.map(alone)];
}

/** As it is shown in the other language, if it was in this one; else word by word. */
function asTheyStand(text: string, region: Region, from: Naming, to: Naming): readonly Replaced[] {
  const { start, end, meaning, notes } = region;
  if (meaning && text.slice(start, end) === subjectText(meaning, from.names))
    return [{ start, end, text: subjectText(meaning, to.names) }];
  return notes.map((note) => (meaning && keyAt(text, note, region, from, to)) ?? noteIn(note, from, to));
}

function asShown(text: string, region: Region, from: Naming, to: Naming): readonly Replaced[] {
  const { start, end, meaning } = region;
  return meaning ? [{ start, end, text: subjectText(meaning, to.names) }] : asTheyStand(text, region, from, to);
}

/** What has no part in the subject may be no note, as `bb 88` for bars. */
function onlySubject(text: string, region: Region, from: Naming, to: Naming): readonly Replaced[] {
  return region.meaning ? asTheyStand(text, region, from, to) : [];
}

function noteIn(stretch: NoteStretch, from: Naming, to: Naming): Replaced {
  const style = styleInPlaceOf(stretch, styleOf([stretch], from.names));
  const lower = style.lower && !isSyllabic(from.names);
  const note = { ...stretch.note, octave: stretch.note.octave ?? MIDDLE };
  const { start, end } = stretch;
  return { start, end, text: writtenNote(note, { ...style, lower, names: to.names }) };
}

/** Where none is written it is not shown. */
const MIDDLE = 4;

/** A tonic with the word for its mode: `fis-Moll`. */
function keyAt(text: string, note: NoteStretch, { end }: Region, from: Naming, to: Naming): Replaced | undefined {
  if (note.note.octave !== undefined) return undefined;
  const behind = text.slice(note.end, end);
  for (const mode of ["major", "minor"] as const)
    for (const word of from.names[mode]) {
      const found = new RegExp(`^(?:[-‐‑]|\\s+)${word}(?!\\p{L})`, "iu").exec(behind);
      if (found) return { start: note.start, end: note.end + found[0].length, text: to.names.key(note.note, mode) };
    }
  return undefined;
}

/** The terms of a line that are not known in the other language, in English. */
function termsIn(text: string, { line, declaration }: ReadLine, { context }: Naming): readonly Replaced[] {
  const entry = line.type === "entry" ? line : entryOf(declaration);
  const items: readonly Item[] = entry?.items ?? ("items" in line ? line.items : []);
  return items.flatMap(({ start, end, meaning }): Replaced[] => {
    if (meaning.type === "note" || meaning.type === "unknown") return [];
    const said = JSON.stringify(meaning);
    const isKnown = (words: string): boolean => {
      const alone = parseLine(`${ANY_SUBJECT}, ${words}`, { ...context, head: false });
      return alone.type === "entry" && alone.items.length === 1 && JSON.stringify(alone.items[0]!.meaning) === said;
    };
    if (isKnown(text.slice(start, end))) return [];
    const english = inEnglish(meaning).find(isKnown);
    return english === undefined ? [] : [{ start, end, text: english }];
  });
}

/** In every language. */
const ANY_SUBJECT = "C major";

function inEnglish(meaning: Meaning): readonly string[] {
  if (meaning.type === "span" && meaning.reach.type === "octaves") return [`${meaning.reach.count} octaves`];
  const key = JSON.stringify(meaning);
  const words = TERMS.find((each) => JSON.stringify(each.meaning) === key)?.words ?? [];
  return "id" in meaning ? [meaning.id, ...words] : words;
}

function withoutOverlap(changes: readonly Replaced[]): readonly Replaced[] {
  const sorted = [...changes].sort((a, b) => a.start - b.start || b.end - a.end);
  let at = 0;
  return sorted.filter(({ start, end }) => {
    const isFree = start >= at;
    if (isFree) at = end;
    return isFree;
  });
}

/** A text with changes that are in order and do not overlap. */
export function changed(text: string, changes: readonly Replaced[]): string {
  let [after, at] = ["", 0];
  for (const { start, end, text: written } of changes) {
    after += text.slice(at, start) + written;
    at = end;
  }
  return after + text.slice(at);
}

/** Columns, and the case of a letter; of something wrong what is proposed. */
const NOT_SAID: ReadonlySet<string> = new Set(
  "start end lower dateEnd wordEnd line at because offers sentence".split(" "),
);

/** All that is read of a line, but for the words in which its notes are written. */
function saidBy({ line, declaration }: ReadLine): string {
  const declared = declaration && [declaration.declared, declaration.faults.map(({ code }) => code)];
  const { items, ...frame } = "items" in line ? line : { ...line, items: [] };
  // Where no entry is, words that are kept and single notes say the same: nothing.
  const telling = items.filter(({ meaning }) => meaning.type !== "note" && meaning.type !== "unknown");
  return JSON.stringify(
    declared ?? (line.type === "entry" ? line : [frame, telling]),
    function (this: object, name, value: unknown) {
      if (NOT_SAID.has(name) || (name === "from" && typeof value === "number")) return undefined;
      if (name === "text" && "note" in this) return undefined;
      return typeof value === "object" && value !== null && isNote(value)
        ? [value.letter, value.alter, value.octave]
        : value;
    },
  );
}
