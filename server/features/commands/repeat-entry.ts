import { recordsAt } from "../../history/attempts.ts";
import { type Ceiling, ceilingOn } from "../../history/ceiling.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { withoutLeaps } from "../../history/leaps.ts";
import { playedEntry } from "../../history/played.ts";
import { proposedTempo } from "../../history/proposed-tempo.ts";
import type { AttemptRecord } from "../../history/record.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Attempt, Entry, Tempo } from "../../journal/model.ts";
import { METRONOME_STEPS, nearestSteps } from "../../music/notes/note-value.ts";
import { doubtedTempo, lowerTempo, withoutTempo } from "../../plan/care-words.ts";
import type { Position } from "../../syntax/document/document.ts";
import { type EntryUnderCursor, entryUnderCursor } from "../explain/line-under-cursor.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import { goesOnToday, isPast } from "./into-today.ts";
import { repeatedLine } from "./repeated-line.ts";

export interface RepeatOptions {
  readonly today: DayNumber;
  readonly step: "faster" | "slower";
}

/**
 * A copy of the entry at a position with its tempo a notch of the metronome on: below the entry and its remarks. Slower
 * goes from its last tempo, faster from the last that was reached. An entry of an earlier day is repeated today: in the
 * same phase, or at the end; where the journal has no today, it is begun. The cursor goes behind the tempo.
 * Never faster than the day allows; without a tempo where it allows none.
 */
export function repeatEntry(
  journal: Journal,
  uri: string,
  position: Position,
  { today, step }: RepeatOptions,
): CommandAnswer {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const { entry, text } = found;
  if (!entry.subject || hasOpenQuote(entry)) return UNREADABLE;
  if (!entry.attempts.some(({ tempo }) => tempo)) return NO_TEMPO;
  const from = step === "faster" ? reachedIn(journal, uri, found, today) : lastIn(entry);
  if (!from) return NOT_REACHED;
  const { above, below } = nearestSteps(from.bpm);
  const next = step === "faster" ? above : below;
  if (next === undefined) return beyondSteps(step);
  if (isPast(found, today) && entry.source.same) return GOES_ON;
  const played = { uri, line: found.first + found.line, attempt: from.attempt, bpm: tempoOf(entry, from.attempt) };
  const ceiling = ceilingOn(journal, today, recordsAt(journal, uri, played.line)[0]?.instrument);
  const bpm = proposedTempo(journal, ceiling, played, next, today);
  const { text: repeated, tempoEnd: cursor } = repeatedLine(text, entry, from.attempt, bpm);
  const done = goesOnToday(journal, uri, found, { text: repeated, cursor }, today);
  const note = cautionOn(ceiling, { bpm, next, from: played.bpm }, today);
  return done.ok && note !== undefined ? { ...done, note } : done;
}

/** Why the tempo is lower than was asked for, or there is none. */
function cautionOn(
  ceiling: Ceiling,
  { bpm, next, from }: { readonly bpm: number | undefined; readonly next: number; readonly from: number },
  today: DayNumber,
): string | undefined {
  if (ceiling.kind === "usual") return bpm === next ? undefined : doubtedTempo(from);
  if (bpm === undefined) return ceiling.said && withoutTempo(ceiling.said, today);
  return bpm < next ? lowerTempo(ceiling, bpm, today) : undefined;
}

const UNREADABLE = refusal(commandTexts.unknownExercise);
const GOES_ON = refusal(commandTexts.goesOn);
const NO_TEMPO = refusal(commandTexts.noTempo);
const NOT_REACHED = refusal(commandTexts.notReached);

/** An end of it that is not closed takes the tempo with it. */
function hasOpenQuote({ source }: Entry): boolean {
  return source.items.some(({ meaning }) => meaning.type === "quoted" && !meaning.closed);
}

function beyondSteps(step: RepeatOptions["step"]): Refusal {
  return refusal(
    step === "faster"
      ? commandTexts.topOfMetronome(METRONOME_STEPS.at(-1)!)
      : commandTexts.bottomOfMetronome(METRONOME_STEPS[0]!),
  );
}

/** Where a repetition goes on from: the attempt whose words it has, and a tempo in the beat of that one. */
interface From {
  readonly attempt: number;
  readonly bpm: number;
}

function tempoOf({ attempts }: Entry, attempt: number): number {
  return attempts[attempt]!.tempo!.bpm;
}

function lastIn({ attempts }: Entry): From | undefined {
  return fromLast(attempts, () => true);
}

function fromLast(attempts: readonly Attempt[], isMeant: (attempt: Attempt) => boolean): From | undefined {
  const attempt = attempts.findLastIndex((each) => each.tempo && isMeant(each));
  return attempt < 0 ? undefined : { attempt, bpm: attempts[attempt]!.tempo!.bpm };
}

/**
 * The last tempo of a line that was reached; where nothing was said of any, the last; where none was reached, the one
 * that was before this line, in the same way of playing. What failed is no start.
 */
function reachedIn(journal: Journal, uri: string, found: EntryUnderCursor, today: DayNumber): From | undefined {
  const { attempts } = found.entry;
  return (
    fromLast(attempts, ({ reached }) => reached === true) ??
    fromLast(attempts, ({ reached }) => reached === null) ??
    reachedBefore(journal, uri, found, today)
  );
}

/** In the beat of the line's last tempo; not above it, as that one failed. */
function reachedBefore(journal: Journal, uri: string, found: EntryUnderCursor, today: DayNumber): From | undefined {
  const { entry, block, line, model } = found;
  const attempt = entry.attempts.findLastIndex(({ tempo }) => tempo);
  const played = playedEntry(entry, journal.conventions(uri)).attempts.find((each) => each.attempt === attempt);
  const tempo: Tempo | undefined = entry.attempts[attempt]?.tempo;
  const day = model.day?.date;
  if (!played?.rate || !tempo || day === undefined) return undefined;
  const isBefore = (each: AttemptRecord): boolean =>
    each.day < day || (each.day === day && (each.block !== block || each.line < line));
  const strands = journalHistory(journal).exercises.get(played.manner.exerciseKey)?.strands ?? [];
  const strand = strands.find(({ key }) => key === played.manner.strandKey);
  const told = strand ? withoutLeaps(strand.records, today) : [];
  const record = told.findLast((each) => each.reached && each.rate !== null && isBefore(each));
  if (!record) return undefined;
  const reached = (tempo.bpm * record.rate!) / played.rate;
  const bpm = Math.min(reached, nearestSteps(tempo.bpm).below ?? tempo.bpm);
  return (nearestSteps(bpm).above ?? tempo.bpm) <= tempo.bpm ? { attempt, bpm } : undefined;
}
