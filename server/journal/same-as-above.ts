import type { EntryLine, Line } from "../syntax/line/line.ts";
import type { PartContext } from "../syntax/line/parts.ts";
import { parseSame } from "../syntax/line/same-line.ts";
import type { Item, Meaning, SubjectMeaning } from "../syntax/words/meaning.ts";
import { attemptsOf, termsOfAttempt } from "./conditions.ts";

/** What of the line above tells which exercise it was. */
const WHAT: readonly Meaning["type"][] = ["pattern", "quoted", "variant", "inversion", "place", "instrument"];
/** Said of one time, and not of the next: `no metronome`, `by heart`. */
const OF_THAT_TIME: readonly Meaning["type"][] = ["manner", "without click"];
/** They go with the subject. */
const OF_SUBJECT: readonly Meaning["type"][] = ["place", "inversion"];

/**
 * An entry that goes on with the one above: its subject, or beside a subject of its own its terms; what it says itself
 * counts. Prose where there is nothing to go on with.
 */
export function sameAs(line: EntryLine, text: string, above: EntryLine, context: PartContext): Line {
  const { same, start, end, remark } = line;
  const subject = line.subject ?? above.subject!;
  const meaning = line.subject ? onTonic(line.subject.meaning, above.subject!.meaning) : subject.meaning;
  const isNothing = meaning === undefined || meaning.type === "faulty subject" || meaning.type === "free";
  const own = line.subject ? line : isNothing ? undefined : parseSame(text, same!, end, context, meaning);
  if (isNothing || !own) return { type: "prose", start, end, remark };
  const at = line.subject ?? { start: same!.start, end: same!.end };
  const terms = termsIn(above).filter(({ meaning: { type } }) => !line.subject || !OF_SUBJECT.includes(type));
  return { ...own, subject: { start: at.start, end: at.end, meaning }, above: without(terms, own.items), remark };
}

type Subject = NonNullable<EntryLine["subject"]>["meaning"];

/** `same in G`: a tonic alone takes the kind of what stands above; undefined where that has none. */
function onTonic(own: Subject, above: Subject): Subject | undefined {
  if (own.type !== "scale" || own.unsaid !== "major") return own;
  if (above.type === "chord") return { type: "chord", root: own.tonic, chord: above.chord, broken: above.broken };
  if (above.type !== "scale") return undefined;
  const { kind, declared, unsaid } = above;
  return { type: "scale", tonic: own.tonic, kind, declared, ...(unsaid ? { unsaid } : {}) } satisfies SubjectMeaning;
}

/** What holds at the end of an entry: the terms that tell what it is, and the ways of its last attempt. */
function termsIn(line: EntryLine): readonly Item[] {
  const items = [...(line.above ?? []), ...line.items];
  const last = attemptsOf(items, 0, line).length - 1;
  const ways = termsOfAttempt(items, last).filter(({ meaning }) => !OF_THAT_TIME.includes(meaning.type));
  return [...items.filter(({ meaning }) => WHAT.includes(meaning.type)), ...ways];
}

/** Of a type that is said anew, what was said above holds no more; a variant goes with its pattern. */
function without(terms: readonly Item[], own: readonly Item[]): readonly Item[] {
  const types = own.map(({ meaning }) => meaning.type);
  const isPatternOwn = types.includes("pattern") || types.includes("quoted");
  return terms.filter(({ meaning: { type } }) => !types.includes(type) && !(isPatternOwn && PATTERN.includes(type)));
}

const PATTERN: readonly Meaning["type"][] = ["pattern", "variant", "quoted"];
