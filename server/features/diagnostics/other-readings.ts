import { type FindingFix, quoted, replacement } from "../../checks/finding.ts";
import { fixTexts } from "../../checks/fix-texts.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { readPart } from "../../syntax/line/part.ts";
import type { Item, SubjectMeaning } from "../../syntax/words/meaning.ts";
import type { CodeAction, Range } from "../types.ts";
import { actionOf, type EntryIn, entryWith, saidBeside, touchesRange } from "./line-in.ts";

/** What `minor` and `octatonic` leave open. */
const LEFT_OPEN = {
  natural: ["natural minor", "harmonic minor", "melodic minor"],
  octatonic: ["half-whole", "whole-half"],
} as const;

/**
 * A subject that can be read in two ways was taken in the likelier one: the others, as words that say only that. What
 * neither reading is likelier of is the fix of a diagnostic.
 */
export function otherReadings(at: EntryIn, range: Range): readonly CodeAction[] {
  const { subject } = at.line;
  if (!subject || subject.meaning.type === "faulty subject" || !touchesRange(subject, range)) return [];
  const typed = at.text.slice(subject.start, subject.end);
  return offersFor(at, subject as Item<SubjectMeaning>, typed)
    .map((offer) => replacement(fixTexts.changeTo(fixTexts.quoted(quoted(offer))), subject, offer))
    .filter((fix) => isOnlySubject(at, fix))
    .map((fix) => actionOf(fix, at));
}

function offersFor({ journal }: EntryIn, { meaning }: Item<SubjectMeaning>, typed: string): readonly string[] {
  if (meaning.type === "chord") return isNote(typed, journal) ? [`notes ${typed}`, `long tones on ${typed}`] : [];
  if (meaning.type !== "scale" || meaning.unsaid === undefined || meaning.unsaid === "major") return [];
  return LEFT_OPEN[meaning.unsaid].map((kind) => subjectText({ ...meaning, kind, unsaid: undefined }, journal.names));
}

/** `C7` is a chord, and the highest C of a flute. */
function isNote(typed: string, { vocabulary }: EntryIn["journal"]): boolean {
  const [item, more] = readPart(typed, vocabulary);
  return more === undefined && item?.meaning.type === "note";
}

/** Whether the line says another subject, whose words leave nothing open, and all else as before. */
function isOnlySubject(at: EntryIn, fix: FindingFix): boolean {
  const line = entryWith(at, fix);
  const meaning = line?.subject?.meaning;
  if (!line || !meaning || meaning.type === "faulty subject") return false;
  if (meaning.type === "scale" && meaning.unsaid !== undefined) return false;
  return saidBeside({ ...line, subject: at.line.subject }, () => false) === saidBeside(at.line, () => false);
}
