import { entryIn } from "../features/explain/entry-of-record.ts";
import type { AttemptRecord } from "../history/record.ts";
import { eachSubject } from "../journal/each-subject.ts";
import { patternText } from "../journal/entry-exercise.ts";
import type { Journal } from "../journal/journal.ts";
import { subjectKey } from "../journal/subject-text.ts";
import { titleIndex } from "../journal/titles/journal-titles.ts";

export interface SubjectAsked {
  /** Any of these: several may be named in a row. */
  readonly keys: readonly string[];
  /** As records have it; undefined where any will do. */
  readonly pattern?: string;
}

/** The subject that somebody asks for in the words of an entry; what is no other subject is a title, quoted or not. */
export function subjectAsked(words: string, journal: Journal): SubjectAsked {
  const entry = entryIn(journal, words);
  if (!entry?.subject) return { keys: [titleKey(words, journal)] };
  if (entry.subject.type === "title" && !entry.subject.declared)
    return { keys: [titleKey(entry.subject.title, journal)] };
  const keys = eachSubject(entry).map((each) => subjectKey(each.entry.subject!));
  return { keys, ...(entry.pattern && { pattern: patternText(entry.pattern) }) };
}

/** Whether an attempt was one at what is asked for; at anything where nothing is. */
export function isAttemptAt(
  asked: SubjectAsked | undefined,
  { subjectKey: key, pattern }: Pick<AttemptRecord, "subjectKey" | "pattern">,
): boolean {
  return (
    asked === undefined || (asked.keys.includes(key) && (asked.pattern === undefined || asked.pattern === pattern))
  );
}

/** A title as the journal knows it: by a short form as well. */
function titleKey(words: string, journal: Journal): string {
  const title = journal.vocabulary.title(words) ?? titleIndex(journal).named(words) ?? words.trim();
  return subjectKey({ type: "title", title, declared: false });
}
