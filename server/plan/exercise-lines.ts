import { attemptOfRecord, entryMadeOnce } from "../history/entry-of-record.ts";
import { exerciseInWords } from "../history/exercise-words.ts";
import { factsOfStrand } from "../history/journal-facts.ts";
import { playedEntry } from "../history/played.ts";
import type { AttemptRecord } from "../history/record.ts";
import { afterRest, highestTempo, notchAtOrBelow, startTempo } from "../history/start-tempo.ts";
import { EXERCISES_WITHIN, FIRST_TEMPO_AT, TURN } from "../history/thresholds.ts";
import { noteValueName } from "../history/value-names.ts";
import { instrumentOf } from "../journal/conventions.ts";
import { patternText } from "../journal/entry-exercise.ts";
import type { Entry } from "../journal/model.ts";
import { subjectText } from "../journal/subject-text.ts";
import { articulationsOf } from "../music/instruments/articulations.ts";
import { SLOWEST } from "../syntax/words/tempo-words.ts";
import { type ExerciseState, isFluent } from "./exercise-states.ts";
import { figure } from "./figure.ts";
import type { LineDraft, PlanRule } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { phraseIn, standsAlone, type Written, type WrittenTerm, writtenFor } from "./practised-line.ts";
import { lately } from "./reached-lately.ts";
import { readLine } from "./read-line.ts";
import { tempoSteps } from "./tempo-steps.ts";

/** What a line is wanted for. */
export interface Wanted {
  readonly rule: PlanRule;
  readonly reasons: readonly string[];
  /** Its place among the lines of the day: what is listened for takes turns. */
  readonly place: number;
  /** The rate of an aim at it, above which nothing is proposed. */
  readonly most?: number;
}

/** Slow work at an exercise as it was played last; undefined where it cannot be written. */
export function groundworkLine(basis: PlanBasis, state: ExerciseState, wanted: Wanted): LineDraft | undefined {
  const written = writtenState(basis, state);
  if (!written) return undefined;
  const { rate: perBeat } = written;
  const { standing } = state;
  const known = perBeat === undefined ? undefined : startOf(basis, state, perBeat);
  const first = known === undefined ? firstTempo(basis, state, perBeat, wanted.most) : undefined;
  const [start] = [known ?? first].filter((tempo) => tempo === undefined || tempo >= SLOWEST);
  const focus = lastFocus(basis, state) ?? focusByOutcome(basis, state);
  const listened = focus ?? (start === undefined ? focusInTurn(basis, wanted.place) : undefined);
  const text = start === undefined ? phraseIn([...written.terms, SLOW]) : written.phrase + written.opening + start;
  const slowly =
    start !== undefined && standing.steady !== null ? [planTexts.slow(figure(standing.steady / perBeat!))] : [];
  return draftOf(basis, state, {
    ...wanted,
    text: listened === undefined ? text : `${text}, focus ${listened}`,
    phase: "groundwork",
    reasons: [
      ...wanted.reasons,
      ...slowly,
      ...(first === undefined ? [] : [planTexts.firstTempo]),
      ...untimed(state, start),
    ],
  });
}

/** What went well without the metronome, and has no aim that says how fast it is to be: the player sets the tempo. */
function untimed({ noted, strand: { records } }: ExerciseState, start: number | undefined): readonly string[] {
  const isReady = start === undefined && noted?.reached === true && records.every(({ rate }) => rate === null);
  return isReady ? [planTexts.untimed] : [];
}

/** With the metronome for the first time, where an aim names a tempo; undefined where it did not go well yet. */
function firstTempo(
  { ceiling }: PlanBasis,
  { strand: { records }, noted }: ExerciseState,
  perBeat: number | undefined,
  most: number | undefined,
): number | undefined {
  const isReady = noted?.reached === true && records.every(({ rate }) => rate === null);
  if (!isReady || perBeat === undefined || most === undefined || ceiling.share !== undefined) return undefined;
  return notchAtOrBelow((most * FIRST_TEMPO_AT) / perBeat);
}

/** An exercise that goes well, with one thing changed; undefined where it cannot be written. */
export function fluencyLine(basis: PlanBasis, state: ExerciseState, wanted: Wanted): LineDraft | undefined {
  const written = writtenState(basis, state);
  const { standing } = state;
  if (!written?.rate || standing.steady === null) return undefined;
  const start = startOf(basis, state, written.rate);
  if (start === undefined) return undefined;
  for (const change of changesInTurn(basis, state)) {
    const text = changed(basis, state, written, change, { start, most: wanted.most });
    const draft =
      text &&
      draftOf(basis, state, {
        ...wanted,
        text: text.line,
        phase: "fluency",
        reasons: [...wanted.reasons, text.why],
      });
    if (draft) return draft;
  }
  return undefined;
}

/** Where it begins; never above what the day allows. */
function startOf(
  basis: PlanBasis,
  { standing, strand: { records } }: ExerciseState,
  perBeat: number,
): number | undefined {
  const { day, ceiling } = basis;
  const start = startTempo(lately(basis, records, standing), day, perBeat, ceiling);
  const most = highestTempo(ceiling, standing);
  return start === undefined || most === undefined ? start : Math.min(start, notchAtOrBelow(most / perBeat));
}

type Change = "tempo" | "articulation" | "rhythm" | "direction" | "nothing";

const CHANGES: readonly Change[] = ["tempo", "articulation", "rhythm", "direction"];

/** One after another by its practised days; where the first cannot be, the next, and in the end none. */
function changesInTurn(
  { kind, journal, day }: PlanBasis,
  { days, strand, exercise }: ExerciseState,
): readonly Change[] {
  const isUnhurried = kind.kind !== "usual" || factsOfStrand(journal, strand, day).settled !== null;
  const isVaried = exercise.pattern !== null; // of a figure or a technique these are other exercises
  const first = days % CHANGES.length;
  const inTurn = [...CHANGES.slice(first), ...CHANGES.slice(0, first)];
  const may = (change: Change): boolean => (change === "tempo" ? !isUnhurried : isVaried);
  const all = inTurn.map((change) => (change === "tempo" && isUnhurried ? "articulation" : change)).filter(may);
  return [...all, "nothing"];
}

function changed(
  basis: PlanBasis,
  { standing, latest }: ExerciseState,
  { terms, opening, phrase, rate }: Written,
  change: Change,
  { start, most }: { readonly start: number; readonly most?: number },
): { readonly line: string; readonly why: string } | undefined {
  const known = standing.steady! / rate!;
  const steady = figure(known);
  const other = (words: string, type: WrittenTerm["type"], why: string) => ({
    line: phraseIn(withTerm(terms, { type, words, runsOn: false })) + opening + start,
    why,
  });
  switch (change) {
    case "tempo": {
      const cap = most === undefined ? {} : { most: most / rate! };
      const steps = tempoSteps({ start, known: afterRest(known, standing, basis.day), unhurried: false, ...cap });
      const above = steps.some((step) => step > known);
      return {
        line: phrase + opening + steps.join(", "),
        why: above ? planTexts.tempoAbove(steady) : planTexts.tempoUpTo(steady),
      };
    }
    case "articulation": {
      const { joined, parted } = articulationsOf(basis.played);
      const next = latest.tonguing === "slurred" ? parted : joined;
      return other(next, "articulation", planTexts.articulation);
    }
    case "rhythm":
      return latest.evenness === "uneven" ? undefined : other("dotted", "rhythm", planTexts.rhythm);
    case "direction":
      return latest.direction === "down and up" ? undefined : other("top down", "direction", planTexts.direction);
    case "nothing":
      return { line: phrase + opening + start, why: planTexts.slow(steady) };
  }
}

/** A term in place of others of its type, before the note value, with which the tempo goes. */
function withTerm(terms: readonly WrittenTerm[], term: WrittenTerm): readonly WrittenTerm[] {
  const others = terms.filter(({ type }) => type !== term.type);
  const value = others.findIndex(({ type }) => type === "note value");
  return value < 0 ? [...others, term] : [...others.slice(0, value), term, ...others.slice(value)];
}

const SLOW: WrittenTerm = { type: "without click", words: "slow", runsOn: false };

/**
 * A state in the words of its latest line that says by itself what is practised, or in plain terms. Undefined where
 * such a line practises something else as well that has its rest.
 */
function writtenState(basis: PlanBasis, { strand, latest, exercise }: ExerciseState): Written | undefined {
  const { journal, conventions, day } = basis;
  const own = (record: AttemptRecord): boolean => record.day < day && standsAlone(journal, record);
  const isPlain = (record: AttemptRecord): boolean => own(record) && record.direction !== "down and up";
  const isTimed = ({ rate }: AttemptRecord): boolean => rate !== null;
  const source =
    strand.records.findLast((record) => isTimed(record) && isPlain(record)) ??
    strand.records.findLast((record) => isTimed(record) && own(record)) ??
    strand.records.findLast(own);
  const written = (source && writtenFor(journal, conventions, source)) ?? inPlainTerms(basis, latest);
  const keys = written ? playedEntry(written.entry, conventions).attempts.map(({ manner }) => manner.exerciseKey) : [];
  return keys.some((key) => key !== exercise.key && isResting(basis, key)) ? undefined : written;
}

/** Whether an exercise was played so lately that it waits for its turn. */
function isResting({ exercises, day }: PlanBasis, key: string): boolean {
  const strands = exercises.find((each) => each.key === key)?.strands ?? [];
  return strands.some(({ records }) => records.some((record) => record.day < day && record.day >= day - TURN + 1));
}

function inPlainTerms(basis: PlanBasis, record: AttemptRecord): Written | undefined {
  const entry = entryMadeOnce(basis.journal, record);
  if (!entry) return undefined;
  const own = attemptOfRecord(entry, record);
  const terms = plainTerms(basis, { ...entry, attempts: own ? [own] : [] });
  const phrase = phraseIn(terms);
  const opening = terms.at(-1)?.type === "note value" ? " at " : ", at ";
  const bpm = 60;
  const read = readLine(basis, phrase + opening + bpm);
  const [attempt] = read?.attempts ?? [];
  if (!read || attempt?.manner.strandKey !== record.strandKey) return undefined;
  return { phrase, opening, entry: read.entry, terms, ...(attempt.rate ? { rate: attempt.rate / bpm } : {}) };
}

/** An exercise in the words of the format: its subject, pattern, articulation, and note value where it has one. */
export function plainTerms(basis: PlanBasis, entry: Entry): readonly WrittenTerm[] {
  const { names } = basis.journal;
  const conditions = entry.attempts[0]?.conditions;
  const term = (type: WrittenTerm["type"], words: string | undefined): WrittenTerm[] =>
    words === undefined ? [] : [{ type, words, runsOn: false }];
  const { subject, pattern } = entry;
  return [
    ...term(subject!.type, subjectText(subject!, names)),
    ...term("pattern", pattern && (pattern.type === "known" ? patternText(pattern) : `"${pattern.name}"`)),
    ...term("articulation", conditions?.articulation?.half ? undefined : conditions?.articulation?.text),
    ...onInstrument(basis),
    ...term("note value", conditions?.noteValue && noteValueName(conditions.noteValue)),
  ];
}

/** The instrument is named where it is not the journal's usual one. */
export function onInstrument({ instrument, conventions }: PlanBasis): readonly WrittenTerm[] {
  const usual = instrumentOf(conventions.instrument, conventions)?.id ?? conventions.instrument;
  return instrument === null || instrument === usual
    ? []
    : [{ type: "instrument", words: `on ${instrument}`, runsOn: false }];
}

/** A line without a metronome, of an exercise that nothing is known of yet; undefined where it cannot be read so. */
export function slowLine(
  basis: PlanBasis,
  terms: readonly WrittenTerm[],
  { rule, reasons, place, exercise, key }: Wanted & { readonly exercise: string | null; readonly key?: string },
): LineDraft | undefined {
  const text = `${phraseIn(terms)}, slow, focus ${focusInTurn(basis, place)}`;
  const read = readLine(basis, text);
  if (!read || (key !== undefined && read.exerciseKey !== key)) return undefined;
  return { text, phase: "groundwork", rule, exercise, reasons };
}

/** A draft that is read as the exercise it was made for; undefined where it is not. */
function draftOf(
  basis: PlanBasis,
  state: ExerciseState,
  { text, phase, rule, reasons }: Pick<LineDraft, "text" | "phase" | "rule" | "reasons">,
): LineDraft | undefined {
  const { exercise } = state;
  const read = readLine(basis, text);
  if (read?.exerciseKey !== exercise.key) return undefined;
  const { exerciseKeys } = read;
  const named = exerciseInWords(exercise.subject, exercise.pattern);
  return { text, phase, rule, exercise: named, reasons, exerciseKeys, steady: isFluent(state) };
}

/** So many records back it is looked for what was listened for. */
const RECORDS_BACK = 40;

/** What was listened for last, in the player's words. */
function lastFocus({ journal, day }: PlanBasis, { strand }: ExerciseState): string | undefined {
  const { records } = strand;
  let left = RECORDS_BACK;
  for (let i = records.length - 1; i >= 0 && left > 0; i--) {
    const record = records[i]!;
    if (record.day >= day) continue;
    if (record.day < day - EXERCISES_WITHIN) return undefined;
    left--;
    if (journal.ownModel(record.block).day?.planned) continue; // the plan's own words, not the player's
    const focus = entryMadeOnce(journal, record)?.focus;
    if (focus !== undefined) return focus;
  }
  return undefined;
}

const LISTENED_FOR: Readonly<Record<string, string>> = {
  uneven: "evenness",
  slips: "right notes",
  "broke down": "right notes",
  tense: "ease",
  rushed: "rhythm",
};

function focusByOutcome({ journal }: PlanBasis, { noted }: ExerciseState): string | undefined {
  const entry = noted && entryMadeOnce(journal, noted);
  const outcomes = entry ? (attemptOfRecord(entry, noted)?.outcomes ?? []) : [];
  return outcomes.map((outcome) => LISTENED_FOR[outcome]).find((focus) => focus !== undefined);
}

const IN_TURN = ["ease", "sound", "evenness"] as const;

/** One thing at a time, another each day and on each line. */
export function focusInTurn({ day }: Pick<PlanBasis, "day">, place: number): string {
  const turn = (day + place) % IN_TURN.length;
  return IN_TURN[(turn + IN_TURN.length) % IN_TURN.length]!;
}
