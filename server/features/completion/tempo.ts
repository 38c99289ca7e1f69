import { metronomeOf } from "../../history/trend-words.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { Entry, NoteValue } from "../../journal/model.ts";
import { nearestSteps, notesPerMinute, QUARTER } from "../../music/notes/note-value.ts";
import type { Meaning, MeaningOf } from "../../syntax/words/meaning.ts";
import type { Candidate } from "./rank.ts";
import { type EntrySituation, lastItem } from "./situation.ts";
import { exerciseKey } from "./usage.ts";

/** Where to start: the tempo that was last reached in this exercise; once a tempo stands, what is next to it. */
export function tempoCandidates(situation: EntrySituation): Candidate[] {
  const { entry, items, separated } = situation;
  const last = lastItem(entry.source.items);
  if (entry.subject?.type === "activity" || last?.meaning.type === "tempo") return [];
  const tempo = items.findLast(({ meaning }) => meaning.type === "tempo")?.meaning as MeaningOf<"tempo"> | undefined;
  if (tempo) return last && isAnswer(last.meaning) ? (separated ? nextSteps(tempo, entry) : []) : again(tempo);
  const fit = last?.meaning.type === "note value" ? 0 : 1;
  const start = lastReached(situation);
  if (!start) return [{ ...atTempo("60", "one beat a second"), fit: fit + 2 }];
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
  const rate = notesPerMinute(bpm, beat ?? QUARTER, then);
  return { text: String(Math.round(metronomeOf(rate, { noteValue: now }))), day: found.day };
}

function isSameValue(a: NoteValue, b: NoteValue): boolean {
  return a.numerator * b.denominator === b.numerator * a.denominator;
}
