import type { Item, MeaningOf } from "../syntax/words/meaning.ts";
import { isAmiss } from "../syntax/words/outcome-words.ts";
import { type Condition, isCondition } from "../syntax/words/term-types.ts";
import type { Attempt, Conditions, Outcome, Place, Tempo } from "./model.ts";

type Term = Item<Condition>;

/** One attempt in the making: its tempo, and what was said right after it. */
interface Trial {
  readonly tempo?: Tempo;
  readonly item?: Item;
  readonly outcomes: Outcome[];
  /** What tells how it went, as it stands: outcomes, tries, and words that nothing was made of. */
  readonly said: Item[];
  tries?: { readonly got: number; readonly count: number };
  /** Conditions that stand after this trial's tempo and before the next one's. */
  readonly after: Term[];
}

/**
 * The attempts of an entry's terms (format.md, Entries): what stands before the first tempo holds for all; a condition
 * after a tempo holds from the next one on, or for the whole line where no tempo follows; an outcome belongs to the
 * tempo before it, or to the one right behind it in the same breath where that has none before (`clean at 60`).
 */
export function attemptsOf(
  items: readonly Item[],
  line: number,
  whole: { readonly start: number; readonly end: number },
): readonly Attempt[] {
  return playedTrials(items).map(({ trial, terms }) =>
    attempt(trial, conditionsOf(terms), placeOf(trial.item ?? whole, line)),
  );
}

/**
 * The terms that say the conditions of one attempt, in the order they were put in force.
 *
 * @param attempt its index among those of `attemptsOf`
 */
export function termsOfAttempt(items: readonly Item[], attempt: number): readonly Item[] {
  return playedTrials(items)[attempt]?.terms ?? [];
}

/** What tells how each attempt of `attemptsOf` went, as it stands on the line. */
export function saidOfAttempts(items: readonly Item[]): readonly (readonly Item[])[] {
  return playedTrials(items).map(({ trial }) => trial.said);
}

interface PlayedTrial {
  readonly trial: Trial;
  readonly terms: readonly Term[];
}

function playedTrials(items: readonly Item[]): readonly PlayedTrial[] {
  const trials = trialsOf(items);
  const [before, ...tried] = trials;
  if (tried.length === 0) return [{ trial: before!, terms: termsAfter([], before!.after) }];
  let terms = termsAfter([], [...before!.after, ...tried.at(-1)!.after]);
  const played: PlayedTrial[] = [];
  for (const [k, trial] of trials.entries()) {
    if (k > 1) terms = termsAfter(terms, trials[k - 1]!.after);
    if (trial.tempo || trial.outcomes.length > 0) played.push({ trial, terms });
  }
  return played;
}

/** The first has no tempo: what stands before the first one, or the whole line. */
function trialsOf(items: readonly Item[]): readonly Trial[] {
  const trials: Trial[] = [{ outcomes: [], said: [], after: [] }];
  const swapped = swappedOutcomes(items);
  const dealt = dealtOutcomes(items);
  let named: Trial | undefined; // again, for what is said of it
  for (const [i, item] of items.entries()) {
    if (swapped.some(({ from, to }) => i >= from && i < to)) continue;
    if (item.meaning.type === "tempo") named = item.meaning.again && trialAt(trials, item.meaning);
    if (named && item.meaning.type === "tempo") continue;
    const back = dealt.get(i);
    const trial = back === undefined ? named : trials.at(-1 - back);
    if (trial && isSaying(item)) say(trial, item);
    if (trial && isSaying(item)) continue;
    const pair = swapped.find(({ tempo }) => tempo === i);
    for (const each of pair ? [item, ...items.slice(pair.from, pair.to)] : [item]) take(trials, each);
  }
  return trials;
}

function trialAt(trials: readonly Trial[], { bpm }: MeaningOf<"tempo">): Trial | undefined {
  return trials.find(({ tempo }) => tempo?.bpm === bpm);
}

function take(trials: Trial[], item: Item): void {
  const { meaning } = item;
  const trial = trials.at(-1)!;
  if (isOutcome(item) || isSaidInWords(item, trial)) trial.said.push(item);
  if (meaning.type === "tempo") trials.push({ tempo: tempoOf(meaning), item, outcomes: [], said: [], after: [] });
  else if (meaning.type === "outcome") trial.outcomes.push(meaning.id);
  else if (meaning.type === "tries") trial.tries = meaning.tries;
  else if (isTerm(item)) trial.after.push(item);
}

type Saying = Item<MeaningOf<"outcome" | "unknown">>;

function isSaying(item: Item): item is Saying {
  return item.meaning.type === "outcome" || item.meaning.type === "unknown";
}

function say(trial: Trial, saying: Saying): void {
  if (saying.meaning.type === "outcome") trial.outcomes.push(saying.meaning.id);
  trial.said.push(saying);
}

/** Words right behind a tempo say how it went, whatever they mean. */
function isSaidInWords({ meaning }: Item, { tempo, said, after }: Trial): boolean {
  return meaning.type === "unknown" && tempo !== undefined && said.length === 0 && after.length === 0;
}

/**
 * Outcomes in a row, by the index of each, and how many trials before the last one it belongs to: `60/72/80 ✓✓✗`. They
 * are dealt out where the tempos that stand right before them are as many.
 */
function dealtOutcomes(items: readonly Item[]): ReadonlyMap<number, number> {
  const dealt = new Map<number, number>();
  for (let from = 0; from < items.length; from++) {
    let to = from;
    while (isInRow(items[to])) to++;
    const count = to - from;
    if (count < 2) continue;
    let tempos = from;
    while (items[tempos - 1]?.meaning.type === "tempo") tempos--;
    if (from - tempos === count) for (let i = from; i < to; i++) dealt.set(i, to - 1 - i);
    from = to;
  }
  return dealt;
}

function isInRow(item: Item | undefined): boolean {
  return item !== undefined && isSaying(item) && item.meaning.inRow === true;
}

/** Outcomes, by their indexes, that stand before the tempo they can only belong to. */
export interface SwappedOutcomes {
  readonly from: number;
  readonly to: number;
  readonly tempo: number;
}

/**
 * `clean at 60`: outcomes right before a tempo that answer no tempo before them; and `clean, at 60` where the line's
 * first tempo has no outcome of its own and nothing without a metronome stands before it. `60, 10 min clean 66 nearly`
 * has one for each.
 */
export function swappedOutcomes(items: readonly Item[]): readonly SwappedOutcomes[] {
  const found: SwappedOutcomes[] = [];
  for (const [tempo, item] of items.entries()) {
    if (item.meaning.type !== "tempo") continue;
    let from = tempo;
    while (isOutcome(items[from - 1])) from--;
    const close = items[tempo - 1] !== undefined && item.start - items[tempo - 1]!.end <= 1;
    const lonely =
      !isOutcome(items[tempo + 1]) && !items.slice(0, from).some(({ meaning }) => meaning.type === "without click");
    const answers = items.slice(0, from).some(({ meaning }) => meaning.type === "tempo");
    const answersOne = items[from - 1]?.meaning.type === "tempo" || (isOutcome(items[tempo + 1]) && waits(items, from));
    if (from < tempo && items[from]!.meaning.type === "outcome" && (close ? !answersOne : !answers && lonely))
      found.push({ from, to: tempo, tempo });
  }
  return found;
}

/** Whether nothing was said yet of the last tempo before an item. */
function waits(items: readonly Item[], before: number): boolean {
  const last = items.slice(0, before).findLast((item) => item.meaning.type === "tempo" || isOutcome(item));
  return last?.meaning.type === "tempo";
}

function isOutcome(item: Item | undefined): boolean {
  return item?.meaning.type === "outcome" || item?.meaning.type === "tries";
}

function isTerm(item: Item): item is Term {
  return isCondition(item.meaning);
}

/** What holds after terms that stand together: their manners take the place of those before, all of them. */
function termsAfter(held: readonly Term[], terms: readonly Term[]): readonly Term[] {
  return terms.reduce(withTerm, terms.some(isManner) ? held.filter((term) => !isManner(term)) : held);
}

/**
 * Manners stand beside each other, and so do the articulations of two halves; anything else takes the place of its
 * like.
 */
function withTerm(held: readonly Term[], term: Term): readonly Term[] {
  if (isManner(term)) return [...held, term];
  const like = held.filter(({ meaning }) => meaning.type === term.meaning.type);
  const others = held.filter((each) => !like.includes(each));
  return isOtherHalf(like, term) ? [...others, ...like, term] : [...others, term];
}

function isManner({ meaning }: Term): boolean {
  return meaning.type === "manner";
}

function isOtherHalf(like: readonly Term[], { meaning }: Term): boolean {
  const [only, ...more] = like.map(halfOf);
  const half = halfOf({ meaning });
  return more.length === 0 && only !== undefined && half !== undefined && only !== half;
}

function halfOf({ meaning }: Pick<Term, "meaning">): MeaningOf<"articulation">["half"] {
  return meaning.type === "articulation" ? meaning.half : undefined;
}

function conditionsOf(terms: readonly Term[]): Conditions {
  return terms.reduce<Conditions>((conditions, { meaning }) => withCondition(conditions, meaning), { manner: [] });
}

function withCondition(conditions: Conditions, term: Condition): Conditions {
  switch (term.type) {
    case "articulation":
      return { ...conditions, articulation: articulationWith(conditions, term) };
    case "rhythm":
      return { ...conditions, rhythm: { text: term.id, even: term.even } };
    case "note value":
      return { ...conditions, noteValue: term.value };
    case "span":
      return { ...conditions, reach: term.reach as Conditions["reach"] };
    case "direction":
      return { ...conditions, direction: term.id };
    case "manner":
      return { ...conditions, manner: [...conditions.manner, term.id] };
    case "without click":
      return { ...conditions, withoutClick: term.id };
  }
}

/** `slurred up, tongued down`: two halves make one articulation, mixed where they differ. */
function articulationWith(
  { articulation }: Conditions,
  term: MeaningOf<"articulation">,
): NonNullable<Conditions["articulation"]> {
  const text = term.half ? `${term.id} ${term.half}` : term.id;
  if (!articulation) return { text, tonguing: term.tonguing, ...(term.half ? { half: term.half } : {}) };
  const tonguing =
    articulation.tonguing === term.tonguing && articulation.text.startsWith(`${term.id} `) ? term.tonguing : "mixed";
  return { text: `${articulation.text}, ${text}`, tonguing };
}

function attempt(trial: Trial, conditions: Conditions, place: Place): Attempt {
  const tries = trial.tries ?? { got: 1, count: 1 };
  const { tempo, outcomes, said } = trial;
  const verdicts = said.flatMap(({ meaning }) => (meaning.type === "outcome" ? [meaning] : []));
  const good = verdicts.some(({ says }) => says === "reached");
  const amiss = verdicts.some(isAmiss);
  const reached = outcomes.length === 0 ? null : isReached(good, amiss, tries);
  const got = outcomes.length === 0 ? 0 : triesReached(good, amiss, tries);
  return { ...(tempo ? { tempo } : {}), outcomes, tries, reached, got, conditions, place };
}

/**
 * Whether what was said of a tempo means that it was reached, in at least half of the tries.
 *
 * @param good something that was said is that it was reached
 * @param amiss something keeps it from that (`isAmiss`)
 */
export function isReached(good: boolean, amiss: boolean, { got, count }: Attempt["tries"]): boolean {
  return good && !amiss && got * 2 >= count;
}

/** In how many of the tries it was reached: in 4 of `clean 4 of 5`, in 1 of `clean`, in none of `uneven`. */
export function triesReached(good: boolean, amiss: boolean, { got }: Attempt["tries"]): number {
  return good && !amiss ? got : 0;
}

function tempoOf({ bpm, low, beat }: MeaningOf<"tempo">): Tempo {
  return { bpm, ...(low === undefined ? {} : { low }), ...(beat ? { beat } : {}) };
}

function placeOf({ start, end }: { readonly start: number; readonly end: number }, line: number): Place {
  return { line, start, end };
}
