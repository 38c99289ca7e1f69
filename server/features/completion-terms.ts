import { metronomeOf } from "../history/words.ts";
import { isoDate } from "../journal/calendar.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { DayNumber, Entry, NoteValue } from "../journal/model.ts";
import { subjectKey } from "../journal/subject-text.ts";
import { printName } from "../music/note.ts";
import { variantsOf } from "../music/pattern.ts";
import { nearestSteps, notesPerMinute } from "../music/value.ts";
import type { Item, Meaning, MeaningOf } from "../syntax/meaning.ts";
import type { Candidate } from "./completion-rank.ts";
import { exerciseKey, type Usage, type Used } from "./completion-usage.ts";
import { termKey } from "./term-key.ts";

/** An entry as far as it is written before the cursor, and what stands behind the cursor. */
export interface EntrySituation {
  readonly journal: Journal;
  readonly conventions: Conventions;
  readonly usage: Usage;
  /** What is written before what is being typed. */
  readonly entry: Entry;
  /** All terms of the line but the word being typed. */
  readonly items: readonly Item[];
  /** A comma or a colon stands between the last term and what is being typed. */
  readonly separated: boolean;
  readonly today: DayNumber;
  /** `aim` or `set`, where it is no entry of a day. */
  readonly work?: "aim" | "set";
}

/** The order in which players write the terms of a line. */
const ORDER: readonly Meaning["type"][] = [
  "inversion",
  "pattern",
  "quoted",
  "variant",
  "place",
  "direction",
  "span",
  "articulation",
  "rhythm",
  "note value",
  "tempo",
  "without click",
  "outcome",
  "tries",
  "manner",
  "focus",
  "with",
  "instrument",
  "amount",
  "date",
  "done",
];

/** Terms that a line has once. What may change with the tempo is not among them. */
const ONCE: readonly Meaning["type"][] = [
  "pattern",
  "quoted",
  "variant",
  "inversion",
  "focus",
  "instrument",
  "amount",
  "date",
  "done",
];
/** Terms that a line has once, but for a change after a tempo. */
const ONCE_UNTIL_TEMPO: readonly Meaning["type"][] = [
  "direction",
  "span",
  "articulation",
  "rhythm",
  "note value",
  "without click",
];

/** What a subject has no use for. */
const UNFIT: Readonly<Record<string, readonly Meaning["type"][]>> = {
  scale: ["place", "inversion"],
  chain: ["place", "inversion"],
  chord: ["place"],
  figure: ["place", "inversion", "pattern", "quoted", "variant", "span"],
  title: ["pattern", "quoted", "variant", "inversion", "span"],
  activity: ORDER.filter((type) => !["manner", "focus", "with", "instrument", "amount", "done", "date"].includes(type)),
};

type TermType = Meaning["type"];

/** A candidate for a term, before it is known how it fits. */
interface Term extends Omit<Candidate, "fit" | "usage"> {
  readonly type: TermType;
  readonly key?: string;
}

/** What stood beside this subject counts so many times as much as what stood anywhere. */
const BESIDE = 3;

/** Every term that may stand next, each with its fit. */
export function termCandidates(situation: EntrySituation): Candidate[] {
  const last = lastItem(situation);
  const { subject } = situation.entry;
  const beside: Beside = subject ? situation.usage.beside(subjectKey(subject)) : new Map();
  const terms = [
    ...languageTerms(situation.journal),
    ...GENERATED,
    ...usedTerms(situation.usage),
    ...instrumentTerms(situation),
    ...focusTerms(situation.conventions),
    ...ownTerms(situation, beside),
  ];
  const fitting = terms.flatMap(({ type, key, ...term }): Candidate[] => {
    const fit = fitOf(type, key, situation, last);
    if (fit === undefined) return [];
    const bonus = key === undefined ? 0 : BESIDE * (beside.get(key)?.score ?? 0);
    return [{ ...term, fit, usage: key, bonus, resolve: term.resolve ?? { topic: "term", key: term.label } }];
  });
  return [...tempoCandidates(situation, last), ...fitting];
}

type Beside = ReadonlyMap<string, Used>;

function lastItem({ entry }: EntrySituation): Item | undefined {
  return entry.source.items.reduce<Item | undefined>(
    (last, item) => (!last || item.end > last.end ? item : last),
    undefined,
  );
}

/** How well a kind of term fits the place, or undefined where the line has it or has no use for it. */
function fitOf(
  type: TermType,
  key: string | undefined,
  situation: EntrySituation,
  last: Item | undefined,
): number | undefined {
  const { entry, items, separated } = situation;
  const subject = entry.subject?.type ?? "scale";
  if (UNFIT[subject]?.includes(type) || hasAlready(type, key, situation)) return undefined;
  const before = last?.meaning.type;
  if (type === "tries") return before === "outcome" && !separated ? 0 : undefined;
  if (type === "variant") return variantFit(key, entry, before);
  if (type === "direction" && key === "direction back and forth") return subject === "figure" ? 2 : 7;
  if (type === "direction" && before === "articulation" && !separated) return 1;
  if (type === "place" && before === undefined) return 1;
  if (type === "amount") return 4;
  if (type === "done") return entry.planned ? 2 : 8;
  if (type === "outcome") return outcomeFit(before, separated, items);
  if (before === undefined) return 2;
  return ORDER.indexOf(type) > ORDER.indexOf(before) ? 2 : 5;
}

function variantFit(key: string | undefined, { pattern }: Entry, before: TermType | undefined): number | undefined {
  if (pattern?.type !== "known" || pattern.variant) return undefined;
  return variantsOf(pattern.id).some((variant) => key === `variant ${variant}`)
    ? before === "pattern"
      ? 1
      : 5
    : undefined;
}

/** An outcome answers a tempo; without one it fits after words such as `slow`, or late. */
function outcomeFit(before: TermType | undefined, separated: boolean, items: readonly Item[]): number {
  if (before === "tempo") return 0;
  if (before === "outcome" && !separated) return 3;
  if (before === "without click") return 1;
  return items.some(({ meaning }) => meaning.type === "without click" || meaning.type === "tempo") ? 4 : 6;
}

function hasAlready(type: TermType, key: string | undefined, { items }: EntrySituation): boolean {
  const stands = (meaning: Meaning): boolean =>
    meaning.type === type ||
    (type === "pattern" && meaning.type === "quoted") ||
    (type === "quoted" && meaning.type === "pattern");
  if (type === "outcome" || type === "tries") return false;
  const standing = items.findLast(({ meaning }) => stands(meaning));
  if (!standing) return false;
  if (key !== undefined && items.some(({ meaning }) => termKey(meaning) === key)) return true;
  if (ONCE.includes(type)) return true;
  if (!ONCE_UNTIL_TEMPO.includes(type)) return false;
  const isHalf = standing.meaning.type === "articulation" && standing.meaning.half !== undefined;
  return !isHalf && !items.some(({ meaning, start }) => meaning.type === "tempo" && start > standing.start);
}

const LANGUAGE: readonly TermType[] = [
  "pattern",
  "variant",
  "inversion",
  "direction",
  "span",
  "articulation",
  "rhythm",
  "note value",
  "without click",
  "outcome",
  "manner",
  "done",
];

/** The language's own terms, in the order in which it has them. */
function languageTerms({ vocabulary, memo }: Journal): readonly Term[] {
  return memo.of(vocabulary, "terms", () =>
    vocabulary.own.flatMap(({ words, meaning }): Term[] => {
      if (!LANGUAGE.includes(meaning.type)) return [];
      const [label, ...alternatives] = words;
      return [
        {
          label: label!,
          alternatives,
          kind: meaning.type === "pattern" || meaning.type === "variant" ? "pattern" : "term",
          type: meaning.type,
          key: termKey(meaning),
        },
      ];
    }),
  );
}

function term(type: TermType, label: string, key: string, kind: Term["kind"] = "term"): Term {
  return { type, label, key, kind };
}

/** Terms with a number in them, as they are often written. */
const GENERATED: readonly Term[] = [
  term("span", "five notes", 'span {"type":"degrees","count":5}'),
  term("span", "2 octaves", 'span {"type":"octaves","count":2}'),
  term("articulation", "slur 2+2", "articulation slur 2+2"),
  term("articulation", "t-k", "articulation t-k"),
  term("articulation", "d-g", "articulation d-g"),
  term("rhythm", "LSS", "rhythm LSS"),
  term("rhythm", "SLL", "rhythm SLL"),
  term("tries", "5 in a row", "tries 5/5"),
  term("tries", "3 in a row", "tries 3/3"),
  term("tries", "4 of 5", "tries 4/5"),
  term("amount", "5 min", "amount 5"),
  term("amount", "10 min", "amount 10"),
  term("amount", "15 min", "amount 15"),
  term("amount", "20 min", "amount 20"),
];

const USED: readonly TermType[] = ["span", "articulation", "rhythm", "tries", "amount", "with", "focus"];

/** Terms in words that only this journal has, as it typed them. */
function usedTerms({ used }: Usage): Term[] {
  return [...used].flatMap(([key, { text, type }]) =>
    USED.includes(type) && text.length <= 60 ? [term(type, text, key, type === "focus" ? "name" : "term")] : [],
  );
}

/** `on tenor recorder`: the journal's own first, then the rest. */
function instrumentTerms({ journal, conventions }: EntrySituation): Term[] {
  const { declared, own } = journal.vocabulary;
  const names = own.flatMap(({ words, meaning }) => (meaning.type === "instrument" ? [{ id: meaning.id, words }] : []));
  const all = [...declared.instruments.map((id) => ({ id, words: [id] as readonly string[] })), ...names];
  const more = conventions.instrument;
  return all
    .filter(({ id }) => id !== more)
    .map(({ id, words: [name, ...others] }) => ({
      ...term("instrument", `on ${name}`, `instrument ${id}`, "name"),
      alternatives: others.map((other) => `on ${other}`),
    }));
}

/** What is usually listened for, in the order of the format, then the journal's own. */
const FOCUSES = [
  "ease",
  "sound",
  "tuning",
  "evenness",
  "finger changes",
  "tonguing",
  "breath",
  "rhythm",
  "right notes",
  "high notes",
  "half holes",
  "phrasing",
];

function focusTerms({ focuses }: Conventions): Term[] {
  return [...FOCUSES, ...focuses].map((words) =>
    term("focus", `focus ${words}`, `focus ${words.toLowerCase()}`, "name"),
  );
}

/** Patterns that the journal declares, places in a piece, a drone, a date to reach an aim by. */
function ownTerms(situation: EntrySituation, beside: Beside): Term[] {
  const { journal, entry, today, work } = situation;
  const { subject } = entry;
  const patterns = journal.vocabulary.declared.patterns.map(
    (name): Term => ({ ...term("quoted", `"${name}"`, `quoted ${name.toLowerCase()}`, "pattern"), aliases: [name] }),
  );
  const drone =
    subject?.type === "scale" && !subject.fromLowest
      ? [term("with", `with drone ${printName(subject.tonic)}`, "with drone")]
      : [];
  const by = isoDate(today + DAYS_FOR_AN_AIM);
  const dates: Term[] = work
    ? [{ ...term("date", `by ${by}`, "date", "date"), resolve: { topic: "date", key: by } }]
    : [];
  const places = subject?.type === "title" ? placeTerms(situation, subject, beside) : [];
  return [...patterns, ...drone, ...dates, ...places];
}

/** Four weeks. */
const DAYS_FOR_AN_AIM = 28;

/** The movements of a piece, and where it was worked on lately. */
function placeTerms({ conventions }: EntrySituation, { title }: MeaningOf<"title">, beside: Beside): Term[] {
  const movements = conventions.pieces.flatMap((piece) =>
    piece.type === "movement" && piece.title === title ? [piece] : [],
  );
  const places = [...beside].flatMap(([key, { text, type }]) => (type === "place" ? [term("place", text, key)] : []));
  return [
    ...movements.map(
      ({ movement, name }): Term => ({ ...term("place", `mvt ${movement}`, `place mvt ${movement}`), detail: name }),
    ),
    ...places,
    term("place", "from the top", "place from the top"),
  ];
}

/** Where to start: the tempo that was last reached in this exercise; once a tempo stands, what is next to it. */
function tempoCandidates(situation: EntrySituation, last: Item | undefined): Candidate[] {
  const { entry, items, separated } = situation;
  if (entry.subject?.type === "activity" || last?.meaning.type === "tempo") return [];
  const tempo = items.findLast(({ meaning }) => meaning.type === "tempo")?.meaning as MeaningOf<"tempo"> | undefined;
  if (tempo) return last && isAnswer(last.meaning) ? (separated ? nextSteps(tempo, entry) : []) : again(tempo);
  const fit = last?.meaning.type === "note value" ? 0 : 1;
  const start = lastReached(situation);
  if (!start) return [{ label: "at", insert: "at ", kind: "term", detail: "a tempo, in beats a minute", fit: 3 }];
  return [{ ...atTempo(start.text, `last reached ${isoDate(start.day)}`), aliases: [start.text], fit }];
}

function atTempo(text: string, detail: string): Omit<Candidate, "fit"> {
  const label = text.includes("=") ? text : `at ${text}`;
  return { label, kind: "term", detail, resolve: { topic: "term", key: label } };
}

function isAnswer({ type }: Meaning): boolean {
  return type === "outcome" || type === "tries";
}

/** One step up after what was reached, one down after what was not. */
function nextSteps({ bpm }: MeaningOf<"tempo">, { attempts }: Entry): Candidate[] {
  const { below, above } = nearestSteps(bpm);
  const steps = attempts.at(-1)?.reached ? [above, below] : [below, above];
  return steps.flatMap((step, fit): Candidate[] => {
    if (step === undefined) return [];
    const at = atTempo(String(step), stepWords(step, bpm));
    return [{ ...at, label: String(step), alternatives: [at.label], fit }];
  });
}

function stepWords(step: number, from: number): string {
  return `one metronome step ${step > from ? "up" : "down"}`;
}

/** After a change of articulation or rhythm: the same tempo once more, or one beside it. */
function again({ bpm }: MeaningOf<"tempo">): Candidate[] {
  const { below, above } = nearestSteps(bpm);
  const beside = [below, above].flatMap((step): Candidate[] =>
    step === undefined ? [] : [{ ...atTempo(String(step), stepWords(step, bpm)), fit: 3 }],
  );
  return [{ ...atTempo(String(bpm), "the tempo before"), fit: 2 }, ...beside];
}

/** In the note value of the line where that is another than the one it was reached in. */
function lastReached({
  usage,
  entry,
  conventions,
}: EntrySituation): { readonly text: string; readonly day: DayNumber } | undefined {
  if (!entry.subject) return undefined;
  const key = exerciseKey(entry);
  const place = entry.where?.text ?? "";
  const isTitle = entry.subject.type === "title";
  const found = usage.reached.find((each) => each.exercise === key && (!isTitle || each.place === place));
  if (!found) return undefined;
  const then = found.noteValue ?? conventions.noteValue;
  const now = entry.attempts[0]?.conditions.noteValue ?? conventions.noteValue;
  if (isTitle || !now || !then || isSameValue(now, then)) return found;
  const { bpm, beat } = found.tempo;
  const rate = notesPerMinute(bpm, beat ?? { numerator: 1, denominator: 4 }, then);
  return { text: String(Math.round(metronomeOf(rate, { noteValue: now }))), day: found.day };
}

function isSameValue(a: NoteValue, b: NoteValue): boolean {
  return a.numerator * b.denominator === b.numerator * a.denominator;
}
