import { type Ceiling, ceilingOn } from "../../history/ceiling.ts";
import { sinceLately } from "../../history/journal-facts.ts";
import { latestHistory } from "../../history/journal-history.ts";
import { withoutLeaps } from "../../history/leaps.ts";
import { playedEntry } from "../../history/played.ts";
import { countingOf, rateBy } from "../../history/rate.ts";
import { standingOf, startTempo } from "../../history/start-tempo.ts";
import { metronomeOf } from "../../history/trend-words.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { Entry, NoteValue } from "../../journal/model.ts";
import { nearestSteps, notesPerMinute, QUARTER } from "../../music/notes/note-value.ts";
import { figure } from "../../plan/figure.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import type { Meaning, MeaningOf } from "../../syntax/words/meaning.ts";
import { completionTexts } from "./completion-texts.ts";
import type { Candidate } from "./rank.ts";
import { type EntrySituation, lastItem } from "./situation.ts";
import { exerciseKey } from "./usage.ts";

/**
 * Where to start: by the history of the exercise, or without one at hand the tempo that was last reached; once a tempo
 * stands, what is next to it. Never faster than the day allows.
 */
export function tempoCandidates(situation: EntrySituation): Candidate[] {
  const { journal, today, entry, items, separated } = situation;
  const ceiling = ceilingOn(journal, today);
  const last = lastItem(entry.source.items);
  if (entry.subject?.type === "activity" || last?.meaning.type === "tempo") return [];
  if (ceiling.kind === "without instrument") return [];
  const tempo = items.findLast(({ meaning }) => meaning.type === "tempo")?.meaning as MeaningOf<"tempo"> | undefined;
  if (tempo)
    return last && isAnswer(last.meaning) ? (separated ? nextSteps(tempo, entry, ceiling) : []) : again(tempo, ceiling);
  const fit = last?.meaning.type === "note value" ? 0 : 1;
  const known = startIn(situation);
  if (known) return [{ ...known, fit }];
  if (ceiling.share !== undefined) return [];
  if (isDoubted(situation)) return [];
  const start = lastReached(situation);
  if (!start) return [{ ...atTempo("60", completionTexts.oneBeatASecond), fit: fit + 2 }];
  return [{ ...atTempo(start.text, completionTexts.lastReached(isoDate(start.day))), aliases: [start.text], fit }];
}

/**
 * Where to start in the way of playing that is written so far, by the history at hand; undefined where it has none of
 * that.
 */
function startIn({ journal, today, entry, conventions }: EntrySituation): Candidate | undefined {
  const played = playedEntry(entry, conventions).attempts[0];
  const strand = played && latestHistory(journal)?.strandOf(played.manner);
  const counting = strand && countingOf(entry, entry.attempts[0]!.conditions, {}, conventions);
  const perBeat = counting && rateBy(counting, 1);
  if (!strand || !perBeat) return undefined;
  const ceiling = ceilingOn(journal, today, played.manner.instrument);
  const standing = standingOf(strand.records, today, sinceLately(journal, strand, today));
  const tempo = startTempo(standing, today, perBeat, ceiling);
  if (tempo === undefined || standing.reached === null || standing.reachedOn === null) return undefined;
  const detail = completionTexts.lastReachedAt(figure(standing.reached / perBeat), isoDate(standing.reachedOn));
  return { ...atTempo(String(tempo), detail), aliases: [String(tempo)], fit: 0 };
}

/** Whether the exercise has a leap that stands alone, by the history at hand: what was reached last is no start. */
function isDoubted({ journal, today, entry, conventions }: EntrySituation): boolean {
  const played = playedEntry(entry, conventions).attempts[0];
  const exercise = played && latestHistory(journal)?.exercises.get(played.manner.exerciseKey);
  return exercise?.strands.some(({ records }) => withoutLeaps(records, today + 1) !== records) ?? false;
}

function atTempo(text: string, detail: string): Omit<Candidate, "fit"> {
  const label = text.includes("=") ? text : `at ${text}`;
  return { label, kind: "term", detail, resolve: { topic: "term", key: label } };
}

function isAnswer({ type }: Meaning): boolean {
  return type === "outcome" || type === "tries";
}

/** A notch up after what was reached, else a notch down first; from what failed none goes up. */
function nextSteps({ bpm }: MeaningOf<"tempo">, { attempts }: Entry, { kind }: Ceiling): Candidate[] {
  const { below, above: faster } = nearestSteps(bpm);
  const above = kind === "usual" ? faster : undefined;
  const reached = attempts.at(-1)?.reached ?? null;
  const steps = reached ? [above, below] : reached === null ? [below, above] : [below];
  return steps.flatMap((step, fit): Candidate[] => {
    if (step === undefined) return [];
    const at = atTempo(String(step), stepWords(step, bpm));
    return [{ ...at, label: String(step), alternatives: [at.label], fit }];
  });
}

function stepWords(step: number, from: number): string {
  return step > from ? completionTexts.notchUp : completionTexts.notchDown;
}

/** After a change of articulation or rhythm: the same tempo once more, or one beside it. */
function again({ bpm }: MeaningOf<"tempo">, { kind }: Ceiling): Candidate[] {
  const { below, above } = nearestSteps(bpm);
  const beside = [below, ...(kind === "usual" ? [above] : [])].flatMap((step): Candidate[] =>
    step === undefined ? [] : [{ ...atTempo(String(step), stepWords(step, bpm)), fit: 3 }],
  );
  return [{ ...atTempo(String(bpm), completionTexts.tempoBefore), fit: 2 }, ...beside];
}

/** In the note value of the line where that is another than the one it was reached in. */
function lastReached({
  usage,
  entry,
  conventions,
}: EntrySituation): { readonly text: string; readonly day: DayNumber } | undefined {
  if (!entry.subject) return undefined;
  const key = exerciseKey(entry);
  const place = nameKey(entry.where?.text ?? "");
  const isTitle = entry.subject.type === "title";
  const found = usage.reached().find((each) => each.exercise === key && (!isTitle || each.place === place));
  if (!found) return undefined;
  const then = found.noteValue ?? conventions.noteValue;
  const now = entry.attempts[0]?.conditions.noteValue ?? conventions.noteValue;
  if (isTitle || !now || !then || isSameValue(now, then)) return found;
  const { bpm, beat } = found.tempo;
  const rate = notesPerMinute(bpm, beat ?? QUARTER, then);
  return { text: String(Math.round(metronomeOf(rate, { noteValue: now }))), day: found.day };
}

function isSameValue(a: NoteValue, b: NoteValue): boolean {
  return a.numerator * b.denominator === b.numerator * a.denominator;
}
