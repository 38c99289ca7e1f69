import { inversionText } from "../../history/exercise-name.ts";
import { noteValueName } from "../../history/value-names.ts";
import { saidOfAttempts } from "../../journal/conditions.ts";
import { patternText } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry, Tempo } from "../../journal/model.ts";
import { subjectText } from "../../journal/subject-text.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { Line, LineOf } from "../../syntax/line/line.ts";
import type { Item, MeaningOf } from "../../syntax/words/meaning.ts";
import type { MeaningType } from "../../syntax/words/term-types.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { isKept } from "./kept-words.ts";

/** What a line is to a musician who looks over the player's shoulder. */
export type LineKind =
  | "exercise"
  | "piece"
  | "activity"
  | "remark"
  | "total"
  | "teacher"
  | "heading"
  | "rest"
  | "set"
  | "pain"
  | "question"
  | "date"
  | "declaration"
  | "fault";

/** How one line was read. What it does not say is null, or empty. */
export interface LineRow {
  /** Absolute, from 0. */
  readonly line: number;
  readonly kind: LineKind;
  /** In the journal's names, or those asked for. */
  readonly subject: string | null;
  readonly pattern: string | null;
  readonly articulation: string | null;
  /** As typed: where in a piece, or how far an exercise goes. */
  readonly place: string | null;
  /** As `8ths`. */
  readonly noteValue: string | null;
  /** Beats a minute, one for each attempt, empty for one without a tempo beside others; a range as `52-60`. */
  readonly tempos: readonly string[];
  /** As typed, one for each attempt, empty where nothing is said of it beside others. */
  readonly outcomes: readonly string[];
  readonly minutes: number | null;
  /** As typed: what nothing was made of. */
  readonly wordsLeft: readonly string[];
}

type Facts = Pick<LineRow, "kind"> & Partial<LineRow>;

/** A line's text, and what the journal makes of it. */
interface Around {
  readonly text: string;
  /** Of a line that is an entry. */
  readonly entry: Entry | undefined;
  readonly names: NoteNames;
  readonly vocabulary: Vocabulary;
}

/** How each line of a file was read; blank lines are left out. */
export function lineRows(journal: Journal, uri: string, names: NoteNames = journal.names): readonly LineRow[] {
  const { vocabulary } = journal;
  const { blocks, starts } = journal.files.get(uri)!;
  return blocks.flatMap((block, i) => {
    const { lines, entries } = journal.readOnce(block);
    const byLine = new Map(entries.map((entry) => [entry.place.line, entry]));
    return lines.flatMap((line, k) => {
      const facts = factsOf(line, { text: block.lines[k]!, entry: byLine.get(k), names, vocabulary });
      return facts ? [{ line: starts[i]! + k, ...NOTHING, ...facts }] : [];
    });
  });
}

const NOTHING = {
  subject: null,
  pattern: null,
  articulation: null,
  place: null,
  noteValue: null,
  tempos: [],
  outcomes: [],
  minutes: null,
  wordsLeft: [],
} satisfies Omit<LineRow, "line" | "kind">;

type FactsBy = { readonly [T in Line["type"]]: (line: LineOf<T>, around: Around) => Facts | undefined };

/** What each type of line comes to: the one table. */
const FACTS: FactsBy = {
  blank: () => undefined,
  day: (line, around) => ({ kind: says(line.items, "rest") ? "rest" : "date", ...frameFacts(line, around) }),
  session: (line, around) => ({ kind: "heading", subject: "session", ...frameFacts(line, around) }),
  phase: (line, around) => ({ kind: "heading", subject: phaseOf(line), ...frameFacts(line, around) }),
  break: (line, around) => ({ kind: "heading", subject: "break", ...frameFacts(line, around) }),
  plan: (line, around) => ({ kind: "heading", subject: "plan", ...frameFacts(line, around) }),
  rest: () => ({ kind: "rest" }),
  total: (line, around) => ({ kind: "total", ...frameFacts(line, around) }),
  set: () => ({ kind: "set" }),
  said: () => ({ kind: "teacher" }),
  asked: () => ({ kind: "question" }),
  body: ({ total }, around) => ({ kind: "pain", ...frameFacts({ items: total ? [total] : [] }, around) }),
  entry: (line, around) => entryFacts(line, around),
  remark: () => ({ kind: "remark" }),
  prose: () => ({ kind: "remark" }),
  "near declaration": () => ({ kind: "remark" }),
  declaration: ({ word }) => (word === "set" ? { kind: "set" } : { kind: "declaration", subject: word }),
  "conflict marker": () => ({ kind: "fault" }),
  "too long": () => ({ kind: "fault" }),
};

function factsOf<T extends Line["type"]>(line: LineOf<T>, around: Around): Facts | undefined {
  return FACTS[line.type as T](line, around);
}

function says(items: readonly Item[], word: MeaningOf<"line word">["id"]): boolean {
  return items.some(({ meaning }) => meaning.type === "line word" && meaning.id === word);
}

function phaseOf({ items }: LineOf<"phase">): string | null {
  return items.flatMap(({ meaning }) => (meaning.type === "phase" ? [meaning.id] : []))[0] ?? null;
}

function frameFacts({ items }: { readonly items: readonly Item[] }, around: Around): Partial<LineRow> {
  const amount = items.find(isOf("amount"))?.meaning;
  return { minutes: amount?.possible ? amount.minutes : null, wordsLeft: wordsLeft(items, around) };
}

function entryFacts({ subject: written, items }: LineOf<"entry">, around: Around): Facts {
  const entry = around.entry!;
  const { attempts, subject, minutes = null } = entry;
  const tempos = attempts.map(({ tempo }) => (tempo ? tempoText(tempo) : ""));
  const byAttempt = saidOfAttempts(items).map((each) => each.map((item) => typed(item, around)).join(" "));
  const said = byAttempt.length === 1 && byAttempt[0] === "" ? [saidAtEnd(items, around)] : byAttempt;
  const value = attempts.find(({ conditions }) => conditions.noteValue)?.conditions.noteValue;
  return {
    kind: kindOf(entry),
    subject: subject ? subjectText(subject, around.names) : null,
    pattern: patternOf(entry),
    articulation: joined(
      attempts.flatMap(({ conditions: { articulation, rhythm } }) => [articulation?.text, rhythm?.text]),
    ),
    place: joined(items.flatMap((item) => (isOf("place")(item) || isOf("span")(item) ? typed(item, around) : []))),
    noteValue: value ? noteValueName(value) : null,
    tempos: tempos.some((each) => each !== "") ? tempos : [],
    outcomes: said.some((each) => each !== "") ? said : [],
    minutes,
    wordsLeft: wordsLeft(written ? [written, ...items] : items, around),
  };
}

/** Without a tempo the words behind the last comma or stop say how it went. */
function saidAtEnd(items: readonly Item[], around: Around): string {
  const last = items.at(-1);
  const isApart = last !== undefined && /[,.;:–—-]\s*$/.test(around.text.slice(0, last.start));
  return isApart && last.meaning.type === "unknown" ? typed(last, around) : "";
}

function tempoText({ bpm, low }: Tempo): string {
  return low === undefined ? `${bpm}` : `${low}-${bpm}`;
}

function kindOf({ planned, subject, sore }: Entry): LineKind {
  if (planned) return "set";
  if (!subject) return sore === undefined ? "exercise" : "pain";
  if (subject.type === "title") return "piece";
  return subject.type === "activity" || subject.type === "free" ? "activity" : "exercise";
}

/** The pattern with what bears on it; a scale that is played straight has none. */
function patternOf({ pattern, inversion, attempts }: Entry): string | null {
  const named = pattern ? patternText(pattern) : undefined;
  return joined([
    named === "straight" ? undefined : named,
    inversion ? inversionText(inversion) : undefined,
    ...attempts.map(({ conditions }) => conditions.direction),
  ]);
}

function wordsLeft(items: readonly Item[], around: Around): readonly string[] {
  return items.filter((item) => isKept(item, around.vocabulary)).map((item) => typed(item, around));
}

function typed({ start, end }: Item, { text }: Around): string {
  return text.slice(start, end);
}

/** Each once. */
function joined(texts: readonly (string | undefined)[]): string | null {
  return [...new Set(texts.filter((text) => text !== undefined && text !== ""))].join(", ") || null;
}

function isOf<T extends MeaningType>(type: T): (item: Item) => item is Item<MeaningOf<T>> {
  return (item): item is Item<MeaningOf<T>> => item.meaning.type === type;
}
