import { quoted } from "../../checks/finding.ts";
import { styleInPlaceOf, styleOf, writtenNote } from "../../checks/notes/note-style.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Position } from "../../syntax/document/document.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";
import type { Meaning } from "../../syntax/words/meaning.ts";
import { isAsked } from "../explain/action-kinds.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import type { CodeAction, Range, TextEdit } from "../types.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import type { Replaced } from "./nameless-notes.ts";
import { isNote, noteStretchesIn } from "./note-stretches.ts";
import { type Respelling, respellingOf } from "./respelling.ts";

const KIND = "refactor.rewrite";

/**
 * The entry at a position with other names for its notes, which sound the same: F# major as Gb major, D# major as Eb
 * major, its claims and the ends of its span with it; octaves go with the letters. The cursor stays on the line.
 */
export function respell(journal: Journal, uri: string, position: Position): CommandAnswer {
  const found = respelled(journal, uri, position);
  if (!found.ok) return found;
  return { ok: true, uri, edits: found.edits, cursor: { line: position.line, character: found.end } };
}

/**
 * The same as an action, where there is another spelling.
 *
 * @param only as in `codeActionsIn`
 */
export function respellIn(
  journal: Journal,
  uri: string,
  { start, end }: Range,
  only?: readonly string[],
): readonly CodeAction[] {
  if (!isAsked(KIND, only) || start.line !== end.line) return [];
  const found = respelled(journal, uri, start);
  if (!found.ok || start.character > found.last || end.character < found.first) return [];
  const title = commandTexts.respellAs(quoted(found.called));
  return [{ title, kind: KIND, edits: found.edits, preferred: false, diagnostics: [] }];
}

interface Respelled {
  readonly ok: true;
  readonly edits: readonly TextEdit[];
  /** What stands in the place of the subject, or of the notes. */
  readonly called: string;
  /** From the first column to the last that is about notes. */
  readonly first: number;
  readonly last: number;
  /** Behind what is called so, after the edits. */
  readonly end: number;
}

function respelled(journal: Journal, uri: string, position: Position): Respelled | Refusal {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const { text, block, line: at } = found;
  const { source } = found.entry;
  const stretches = noteStretchesIn(text, source, journal.names);
  if (stretches.length === 0) return NO_NOTES;
  const respelling = respellingOf(
    source,
    stretches.map(({ note }) => note),
    journal.conventions(uri),
  );
  if (!respelling) return NO_OTHER;
  const style = styleOf(stretches, journal.names);
  const inNotes = stretches.map((stretch): Replaced => {
    const note = respelling.note(stretch.note);
    const own = styleInPlaceOf(stretch, style);
    const isSame = note.letter === stretch.note.letter && note.alter === stretch.note.alter;
    const written = isSame ? stretch.text : writtenNote({ ...note, octave: note.octave ?? MIDDLE }, own);
    return { start: stretch.start, end: stretch.end, text: written };
  });
  const changes = [...inNotes, ...signatures(source, text, respelling)].filter(
    ({ start, end, text: written }) => text.slice(start, end) !== written,
  );
  if (changes.length === 0) return NO_OTHER;
  const after = withChanges(text, changes, text.length);
  const titles = journal.titlesOf(block)?.get(at);
  const again = after.length <= LONGEST_LINE ? parseLine(after, { ...journal.partContext, head: false, titles }) : null;
  if (again?.type !== "entry" || said(again) !== said(source, respelling)) return NOT_WHOLE;
  const subject = source.subject ?? { start: stretches[0]!.start, end: stretches.at(-1)!.end };
  const shown = withChanges(text, changes, subject.end);
  return {
    ok: true,
    edits: changes.map(({ start, end, text: newText }) => ({
      range: { start: { line: position.line, character: start }, end: { line: position.line, character: end } },
      newText,
    })),
    called: shown.slice(subject.start),
    first: subject.start,
    last: Math.max(subject.end, stretches.at(-1)!.end),
    end: shown.length,
  };
}

const NO_NOTES = refusal(commandTexts.nothingToRespell);
const NO_OTHER = refusal(commandTexts.noOtherSpelling);
const NOT_WHOLE = refusal(commandTexts.respelledOtherwise);

/** Where none is written it is not shown. */
const MIDDLE = 4;

/** The claimed signatures of a line: `6 sharps` becomes `6 flats`. */
function signatures({ claims }: EntryLine, text: string, respelling: Respelling): readonly Replaced[] {
  return claims.flatMap((claim): Replaced[] => {
    if (claim.type !== "signature") return [];
    const typed = text.slice(claim.start, claim.end);
    const fifths = respelling.fifths(claim.fifths);
    const turned = Math.sign(fifths) === Math.sign(claim.fifths) ? typed : typed.replace(SIGN, (sign) => OTHER[sign]!);
    return [{ start: claim.start, end: claim.end, text: turned.replace(/\d+/, String(Math.abs(fifths))) }];
  });
}

const OTHER: Readonly<Record<string, string>> = { sharp: "flat", flat: "sharp", "#": "b", b: "#", "♯": "♭", "♭": "♯" };
const SIGN = /sharp|flat|#|♯|♭|b/;

/** The first columns of a text with changes among them. */
function withChanges(text: string, changes: readonly Replaced[], to: number): string {
  let [after, at] = ["", 0];
  for (const { start, end, text: written } of [...changes].sort((a, b) => a.start - b.start)) {
    if (end > to) break;
    after += text.slice(at, start) + written;
    at = end;
  }
  return after + text.slice(at, to);
}

const NOT_SAID: ReadonlySet<string> = new Set(["start", "end", "text"]);

/** All that an entry says, with its notes called otherwise. */
function said(line: EntryLine, respelling?: Respelling): string {
  const call = (value: unknown): unknown => {
    if (typeof value !== "object" || value === null) return value;
    if (Array.isArray(value)) return value.map(call);
    if (isNote(value)) {
      const { letter, alter, octave } = respelling?.note(value) ?? value;
      return [letter, alter, octave];
    }
    const { fifths, type } = value as { readonly fifths?: number; readonly type?: Meaning["type"] };
    if (type === "signature" && fifths !== undefined) return [type, respelling?.fifths(fifths) ?? fifths];
    return Object.entries(value).flatMap(([name, each]) =>
      NOT_SAID.has(name) || each === undefined ? [] : [[name, call(each)]],
    );
  };
  const { subject, items, claims } = line;
  return JSON.stringify(call([subject?.meaning ?? null, items, claims]));
}
