import { entryIn } from "../features/explain/entry-of-record.ts";
import type { AttemptRecord } from "../history/record.ts";
import { patternText } from "../journal/entry-exercise.ts";
import type { Journal } from "../journal/journal.ts";
import { subjectKey } from "../journal/subject-text.ts";

export interface SubjectAsked {
  readonly key: string;
  /** As records have it; undefined where any will do. */
  readonly pattern?: string;
}

/** The subject that somebody asks for in the words of an entry; what is no other subject is a title, quoted or not. */
export function subjectAsked(words: string, journal: Journal): SubjectAsked {
  const entry = entryIn(journal, words);
  if (!entry?.subject)
    return { key: subjectKey({ type: "title", title: titleOf(words, journal.vocabulary), declared: false }) };
  return { key: subjectKey(entry.subject), ...(entry.pattern && { pattern: patternText(entry.pattern) }) };
}

/** Whether an attempt was one at what is asked for; at anything where nothing is. */
export function isAttemptAt(
  asked: SubjectAsked | undefined,
  { subjectKey: key, pattern }: Pick<AttemptRecord, "subjectKey" | "pattern">,
): boolean {
  return asked === undefined || (key === asked.key && (asked.pattern === undefined || asked.pattern === pattern));
}

function titleOf(words: string, vocabulary: Journal["vocabulary"]): string {
  return vocabulary.title(words) ?? words.trim();
}
