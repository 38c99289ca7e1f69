import { CODES } from "../../checks/codes.ts";
import { quoted } from "../../checks/finding.ts";
import { checkLine } from "../../checks/line/line.ts";
import { chordName, scaleName } from "../../checks/notes/subject-name.ts";
import type { Journal } from "../../journal/journal.ts";
import { chordsOf } from "../../music/chords/chords-of-notes.ts";
import { type NoteName, pitchClass } from "../../music/notes/note.ts";
import { KINDS } from "../../music/scales/kinds.ts";
import { isExactly, scalesHolding } from "../../music/scales/scales-holding.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import { isAsked } from "../explain/action-kinds.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import type { CodeAction, Range } from "../types.ts";
import { commandTexts } from "./command-texts.ts";
import { type NamelessNotes, namelessNotes, type Replaced } from "./nameless-notes.ts";

const KIND = "refactor.rewrite";
/** So many names are offered, and so many tried: those further down are ever less near. */
const MOST_OFFERED = 3;
const MOST_TRIED = 12;
/** Fewer pitches are in so many scales that to name one would be to guess. */
const FEWEST_PITCHES = 5;

/** The line of an entry as it stands, and where. */
interface LineAt {
  readonly journal: Journal;
  readonly uri: string;
  readonly text: string;
  readonly line: EntryLine;
}

/**
 * Names for the notes at a place: for `notes D E F G A Bb C#`, or such notes with no subject before them, the nearest
 * scales and chords under which they can stand as a claim; for a claim that is not what its subject says, the subjects
 * that it is exactly. Each is offered only where the line that it makes has no fault in this place. It changes what was
 * practised, so it mends no diagnostic and is never applied unasked.
 *
 * @param only as in `codeActionsIn`
 */
export function nameNotesIn(
  journal: Journal,
  uri: string,
  range: Range,
  only?: readonly string[],
): readonly CodeAction[] {
  if (!isAsked(KIND, only)) return [];
  const at = entryLineIn(journal, uri, range);
  const found = at && namelessNotes(at.line, at.text);
  if (!found || !touches(found, range)) return [];
  if (found.form === "claim" && !isUntrue(at, found)) return [];
  const actions: CodeAction[] = [];
  for (const name of namesFor(found, at).slice(0, MOST_TRIED)) {
    const replaced = found.namedAs(name).find((each) => isRight(at, found, each));
    if (replaced) actions.push(actionFor(name, found, replaced, range.start.line));
    if (actions.length === MOST_OFFERED) break;
  }
  return actions;
}

function entryLineIn(journal: Journal, uri: string, { start, end }: Range): LineAt | undefined {
  const found = start.line === end.line ? entryUnderCursor(journal, uri, start) : undefined;
  return found?.ok ? { journal, uri, text: found.text, line: found.entry.source } : undefined;
}

/** Whether the range shares a place with the notes or what stands for their subject. */
function touches({ start, end }: NamelessNotes, range: Range): boolean {
  return range.start.character <= end && start <= range.end.character;
}

/** As journals write them, the nearest first; for a claim only what has exactly its notes. */
function namesFor({ form, notes }: NamelessNotes, { journal, uri }: LineAt): string[] {
  const conventions = journal.conventions(uri);
  const kinds = [...KINDS, ...conventions.kinds.values()];
  const chords = chordsOf(notes)
    .filter(({ respelled }) => respelled.length === 0)
    .map(({ chord, root }) => chordName({ chord: chord.id, broken: false }, root, conventions.names));
  const scales = scalesHolding(notes, kinds)
    .filter((reading) => (form === "claim" ? isExactly(reading) : isKnownEnough(notes)))
    .filter(({ tonic }) => isAtEitherEnd(tonic, notes))
    .map(({ kind, tonic }) => scaleName({ kind }, tonic, conventions.names));
  return [...chords, ...scales];
}

/** A list that is a scale's begins or ends on its tonic. */
function isAtEitherEnd(tonic: NoteName, notes: readonly NoteName[]): boolean {
  return [notes[0]!, notes.at(-1)!].some((note) => pitchClass(note) === pitchClass(tonic));
}

function isKnownEnough(notes: readonly NoteName[]): boolean {
  return new Set(notes.map(pitchClass)).size >= FEWEST_PITCHES;
}

/** Whether something is wrong with a claim as it stands. */
function isUntrue(at: LineAt, { start, end }: NamelessNotes): boolean {
  return faultsOf(at, at.text).some((fault) => fault.start <= end && start <= fault.end);
}

/** Whether the line has no faults but those that it had elsewhere. */
function isRight(at: LineAt, { start, end }: NamelessNotes, replaced: Replaced): boolean {
  const text = at.text.slice(0, replaced.start) + replaced.text + at.text.slice(replaced.end);
  if (text.length > LONGEST_LINE) return false;
  const elsewhere = faultsOf(at, at.text).filter((fault) => fault.end < start || end < fault.start);
  return faultsOf(at, text).length <= elsewhere.length;
}

/** The errors and warnings of a line in the place of this one. */
function faultsOf({ journal, uri }: LineAt, text: string): readonly { start: number; end: number }[] {
  const context = { ...journal.partContext, head: false };
  const findings = checkLine(parseLine(text, context), { ...context, text, conventions: journal.conventions(uri) });
  return findings.filter(({ code }) => CODES[code] === "error" || CODES[code] === "warning");
}

function actionFor(name: string, { form }: NamelessNotes, replaced: Replaced, line: number): CodeAction {
  const range = { start: { line, character: replaced.start }, end: { line, character: replaced.end } };
  return {
    title: form === "claim" ? commandTexts.changeSubject(quoted(name)) : commandTexts.nameAs(quoted(name)),
    kind: KIND,
    edits: [{ range, newText: replaced.text }],
    preferred: false,
    diagnostics: [],
  };
}
