import { isoDate } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import { subjectKey } from "../../journal/subject-text.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { MeaningOf } from "../../syntax/words/meaning.ts";
import { type MeaningType, type TermType, termType } from "../../syntax/words/term-types.ts";
import { termKey } from "../explain/term-key.ts";
import { fitAt } from "./fit.ts";
import { headDeclarations } from "./heads.ts";
import { type Candidate, formOf } from "./rank.ts";
import type { EntrySituation } from "./situation.ts";
import { tempoCandidates } from "./tempo.ts";
import type { Usage, Used } from "./usage.ts";

/** A candidate for a term, before it is known how it fits. */
interface Term extends Omit<Candidate, "fit" | "usage"> {
  readonly type: MeaningType;
  readonly key?: string;
}

/** What stood beside this subject counts so many times as much as what stood anywhere. */
const BESIDE = 3;

type Beside = ReadonlyMap<string, Used>;

/** Every term that may stand next and completes what is typed, each with its fit. */
export function termCandidates(situation: EntrySituation): Candidate[] {
  const { journal, conventions, usage, typed } = situation;
  const { subject } = situation.entry;
  const beside: Beside = subject ? usage.beside(subjectKey(subject)) : new Map();
  const fitOf = fitAt(situation);
  const sources: readonly (readonly Term[])[] = [
    languageTerms(journal),
    GENERATED,
    usedTerms(usage),
    instrumentTerms(journal, conventions),
    focusTerms(conventions),
    ownTerms(situation, beside),
  ];
  const candidates = tempoCandidates(situation);
  for (const terms of sources) {
    for (const term of terms) {
      const fits = formOf(term, typed) && fitOf(term.type, term.key);
      if (fits !== undefined) candidates.push(candidateOf(term, fits, beside));
    }
  }
  return candidates;
}

function candidateOf(term: Term, fit: number, beside: Beside): Candidate {
  const { label, alternatives, aliases, kind, detail, insert, key, resolve = { topic: "term", key: label } } = term;
  const bonus = BESIDE * ((key === undefined ? undefined : beside.get(key)?.score) ?? 0);
  return { label, alternatives, aliases, kind, detail, insert, fit, usage: key, bonus, resolve };
}

const OWN_WORDS: readonly (TermType["words"] | undefined)[] = ["fixed", "fixed or figures"];

/** Terms that are read and not offered: what begins so is a tempo or an instrument nearly always. */
const SELDOM = /^(?:on|at the|with) /;

/** The language's own terms, in the order in which it has them, and those that the journal declares. */
function languageTerms({ vocabulary, memo }: Journal): readonly Term[] {
  return memo.of(vocabulary, "terms", () => [
    ...vocabulary.own.flatMap(({ words, meaning }): Term[] => {
      const [label, ...alternatives] = words.filter((each) => !SELDOM.test(each));
      if (!OWN_WORDS.includes(termType(meaning.type)?.words) || label === undefined) return [];
      return [
        {
          label,
          alternatives,
          kind: meaning.type === "pattern" || meaning.type === "variant" ? "pattern" : "term",
          type: meaning.type,
          key: termKey(meaning),
        },
      ];
    }),
    ...vocabulary.declared.articulations.map(({ name }) => term("articulation", name, `articulation ${name}`, "name")),
    ...vocabulary.declared.outcomes.map(({ words }) => term("outcome", words, `outcome ${words}`, "name")),
  ]);
}

function term(type: MeaningType, label: string, key: string, kind: Term["kind"] = "term"): Term {
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

const PLAYERS_WORDS: readonly (TermType["words"] | undefined)[] = ["figures", "fixed or figures", "free"];

/** Terms in words that only this journal has, as it typed them. */
function usedTerms({ used }: Usage): Term[] {
  return [...used].flatMap(([key, { text, type }]) =>
    PLAYERS_WORDS.includes(termType(type)?.words) && text.length <= 60
      ? [term(type, text, key, type === "focus" ? "name" : "term")]
      : [],
  );
}

/** `on tenor recorder`: the journal's own first, then the rest; not the one that is meant anyway. */
function instrumentTerms(journal: Journal, { instrument }: Conventions): readonly Term[] {
  const { vocabulary, memo } = journal;
  const own = headDeclarations(journal).flatMap((each) => (each.type === "instrument" ? [each.id] : []));
  return memo.from(vocabulary, "instrument terms", [instrument, ...own], () => {
    const wordsOf = new Map<string, readonly string[]>(own.map((id) => [id, [id]]));
    for (const { id, words } of knownInstruments(journal)) if (!wordsOf.has(id)) wordsOf.set(id, words);
    return [...wordsOf].flatMap(([id, words]) => (id === instrument ? [] : [instrumentTerm(id, words)]));
  });
}

function instrumentTerm(id: string, [name, ...others]: readonly string[]): Term {
  return {
    ...term("instrument", `on ${name}`, `instrument ${id}`, "name"),
    alternatives: others.map((other) => `on ${other}`),
    resolve: { topic: "instrument", key: id },
  };
}

function knownInstruments({
  vocabulary,
  memo,
}: Journal): readonly { readonly id: string; readonly words: readonly string[] }[] {
  return memo.of(vocabulary, "instruments", () =>
    vocabulary.own.flatMap(({ words, meaning }) => (meaning.type === "instrument" ? [{ id: meaning.id, words }] : [])),
  );
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
      ? [term("with", `with drone ${situation.conventions.names.name(subject.tonic)}`, "with drone")]
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
  const movements = (conventions.piecesByTitle.get(nameKey(title)) ?? []).flatMap((piece) =>
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
