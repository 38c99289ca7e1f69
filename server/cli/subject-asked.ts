import { entryIn } from "../history/entry-of-record.ts";
import { exerciseInWords } from "../history/exercise-words.ts";
import type { AttemptRecord } from "../history/record.ts";
import { eachSubject } from "../journal/each-subject.ts";
import { patternText } from "../journal/entry-exercise.ts";
import type { Journal } from "../journal/journal.ts";
import { subjectKey } from "../journal/subject-text.ts";
import { titleIndex } from "../journal/titles/journal-titles.ts";
import { withoutAccents } from "../syntax/words/fold.ts";
import { nearest } from "./nearest.ts";

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

/** Fewer letters are in too many names. */
const LEAST_LETTERS = 3;

/**
 * The subject among those practised that was probably meant: one spelled nearly so, also without the words in its
 * middle (`D mino` for D natural minor), one in whose name the words are, one of another kind, or without the pattern.
 *
 * @param practised the likelier first
 */
export function nearestSubject(words: string, practised: readonly AttemptRecord[]): string | undefined {
  const asked = withoutAccents(words.trim().replace(/^["“]|["”]$/g, ""));
  const calls = new Map<string, string>();
  for (const { subject, pattern } of practised)
    for (const name of [subject, exerciseInWords(subject, pattern)])
      for (const call of [name, withoutMiddle(name)])
        if (!calls.has(withoutAccents(call))) calls.set(withoutAccents(call), name);
  const alike = [...calls.keys()].sort((a, b) => alikeUpTo(b, asked) - alikeUpTo(a, asked));
  const found = nearest(asked, alike) ?? alike.find((call) => asked.length >= LEAST_LETTERS && call.includes(asked));
  const key = found ?? withoutMiddle(asked);
  if (calls.has(key)) return calls.get(key);
  const comma = words.indexOf(",");
  return comma < 0 ? undefined : nearestSubject(words.slice(0, comma), practised);
}

/** `D minor, thirds` of `D natural minor, thirds`. */
function withoutMiddle(name: string): string {
  const [subject = "", ...terms] = name.split(",");
  const words = subject.split(" ");
  return words.length < 3 ? name : [`${words[0]} ${words.at(-1)}`, ...terms].join(",");
}

/** How many letters two texts begin with alike. */
function alikeUpTo(a: string, b: string): number {
  let count = 0;
  while (count < a.length && a[count] === b[count]) count++;
  return count;
}

/** A title as the journal knows it: by a short form as well. */
function titleKey(words: string, journal: Journal): string {
  const title = journal.vocabulary.title(words) ?? titleIndex(journal).named(words) ?? words.trim();
  return subjectKey({ type: "title", title, declared: false });
}
