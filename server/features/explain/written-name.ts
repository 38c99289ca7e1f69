import { entryMadeOnce } from "../../history/entry-of-record.ts";
import { patternOfRecord } from "../../history/exercise-name.ts";
import { exerciseInWords } from "../../history/exercise-words.ts";
import type { AttemptRecord } from "../../history/record.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { subjectKey, subjectText } from "../../journal/subject-text.ts";
import { ON_NOTE } from "../../syntax/lexicon/note-leads.ts";
import type { Meaning } from "../../syntax/words/meaning.ts";

/** What has no spelling of its own to be shown in: `dbl tonguing`, `lange Töne auf D`, `C-Dur Dreiklang`. */
const IN_OWN_WORDS: readonly Meaning["type"][] = ["technique", "figure", "chord"];

/**
 * An exercise as the line of an entry calls it: techniques, figures, chords and patterns in the words that stand there,
 * scales and titles by their names.
 *
 * @param text the line
 * @param named how it is called where the line has no words of its own for it: subject, and pattern if any
 */
export function nameAsWritten(
  { source, subject }: Pick<Entry, "source" | "subject">,
  text: string,
  named: Pick<AttemptRecord, "subject" | "pattern">,
): string {
  const own = source.subject;
  const isOwn = own && !goesOn(source) && own.meaning.type === subject?.type && IN_OWN_WORDS.includes(own.meaning.type);
  const pattern = source.items.find(({ meaning }) => meaning.type === "pattern");
  const isPlain = pattern === undefined || named.pattern === null || named.pattern.includes(",");
  return exerciseInWords(
    isOwn ? wordsIn(text, own) : named.subject,
    isPlain ? named.pattern : wordsIn(text, pattern).replace(/^(?:in|en) /i, ""),
  );
}

/** The same of an entry that has a subject, in the journal's names of notes. */
export function nameOfEntry(entry: Entry, text: string, { names }: Conventions): string {
  const subject = entry.subject ? subjectText(entry.subject, names) : "";
  return nameAsWritten(entry, text, { subject, pattern: patternOfRecord(entry) });
}

/** The same of what a record comes from. */
export function nameOfRecord(journal: Journal, record: AttemptRecord): string {
  const entry = entryMadeOnce(journal, record);
  const named = entry && goesOn(entry.source) ? namedAbove(journal, record) : entry;
  const text = named && record.block.lines[named.place.line];
  return text === undefined ? exerciseInWords(record.subject, record.pattern) : nameAsWritten(named!, text, record);
}

/** `same`, `ditto`, `same in G`: what is practised stands in the entry above, or a part of it. */
function goesOn({ above }: Entry["source"]): boolean {
  return above !== undefined;
}

/** The entry that a line goes on with, where it names the same. */
function namedAbove(journal: Journal, { block, line, subjectKey: key }: AttemptRecord): Entry | undefined {
  const above = journal.model(block).entries.findLast(({ place, source }) => place.line < line && !goesOn(source));
  return above?.subject && subjectKey(above.subject) === key ? above : undefined;
}

/** `dbl tonguing`, `lange Töne`: what a record practises, on whichever notes. */
export function techniqueOfRecord(journal: Journal, record: AttemptRecord): string {
  return nameOfRecord(journal, record).replace(ON_NOTES, "");
}

const ON_NOTES = new RegExp(`\\s(?:in|${ON_NOTE.join("|")})\\s.*$`, "iu");

function wordsIn(text: string, { start, end }: { readonly start: number; readonly end: number }): string {
  return text.slice(start, end).trim().replaceAll(/\s+/g, " ");
}
