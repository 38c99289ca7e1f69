import { recordsOfBlock } from "../../history/attempts.ts";
import { latestHistory } from "../../history/journal-history.ts";
import { inTimeOrder } from "../../history/record.ts";
import type { Exercise, Strand } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import { keyOfPiece } from "../../journal/likely-key.ts";
import type { Subject } from "../../journal/model.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { sameName } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { nearestSteps } from "../../music/notes/note-value.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { WrittenNote } from "../../syntax/words/meaning.ts";
import { daysAgo } from "../explain/days-away.ts";
import { NOTHING_REACHED, startTempo } from "../explain/start-tempo.ts";
import { LATEST_DAYS, weightAfter } from "./lately.ts";
import { type PractisedLine, practisedLine } from "./practised-line.ts";
import { type Candidate, formOf } from "./rank.ts";
import { looksOf, type Tonic, tonicIn, withTonic } from "./subjects.ts";

/** Where a practised exercise is offered. */
export interface PractisedPlace {
  readonly journal: Journal;
  readonly conventions: Conventions;
  readonly uri: string;
  readonly day: Block;
  /** The line that is being typed, from 0 within the day. */
  readonly line: number;
  readonly typed: string;
  readonly today: DayNumber;
  readonly fit: number;
}

/** A handful to choose from; of those that what is typed may mean, the others come later in the list. */
const HANDFUL = 6;
/** Later ones come behind plain subjects. */
const LATER = 2;
/** The strands that are looked at, those practised most and latest. */
const MOST_STRANDS = 120;
/** What was practised in so many days is in practice; the rest is resting. Our own choice. */
const IN_PRACTICE = 28;

/**
 * Practised exercises as whole lines, with where to start today. Before anything is typed a handful of different ones
 * that the day does not have yet; after that whatever what is typed may mean. Nothing where no history is at hand:
 * making one takes longer than whoever types should wait.
 */
export function practisedCandidates(place: PractisedPlace): readonly Candidate[] {
  const { typed, fit } = place;
  const practised = practisedLines(place);
  if (typed === "") return handful(place, practised).map(({ candidate }) => ({ ...candidate, fit }));
  const { names } = place.journal;
  const tonic = tonicIn(typed, names);
  return practised
    .map(({ candidate, subject }) => ({ ...candidate, label: asTyped(candidate.label, subject, { tonic, names }) }))
    .filter((candidate) => formOf(candidate, typed) !== undefined)
    .map((candidate, i) => ({ ...candidate, fit: i < HANDFUL ? fit : fit + LATER }));
}

/** With accidentals as they are typed. The letter stays: by itself it tells major from minor. */
function asTyped(
  label: string,
  { type }: Subject,
  { tonic, names }: { readonly tonic: Tonic | undefined; readonly names: NoteNames },
): string {
  const text = withTonic(label, type, tonic, names);
  return text[0]?.toLowerCase() === label[0]?.toLowerCase() ? label[0] + text.slice(1) : text;
}

/** One way of playing each exercise, without those that stand in the day on other lines. */
function handful({ journal, uri, day, line }: PractisedPlace, practised: readonly Practised[]): Practised[] {
  const had = new Set<string>();
  for (const record of recordsOfBlock(journal, uri, day)) if (record.line !== line) had.add(record.exerciseKey);
  const chosen: Practised[] = [];
  for (const each of practised) {
    if (chosen.length === HANDFUL) break;
    if (had.has(each.exerciseKey)) continue;
    had.add(each.exerciseKey);
    chosen.push(each);
  }
  return chosen;
}

/** A strand that may be practised again. */
interface Practised {
  readonly exerciseKey: string;
  readonly subject: Subject;
  readonly candidate: Omit<Candidate, "fit">;
}

type Reading = Pick<PractisedPlace, "journal" | "conventions" | "today">;

/**
 * The same array while the history, the conventions and the day are the same, so that a key press looks nothing up
 * anew.
 */
function practisedLines(reading: Reading): readonly Practised[] {
  const index = latestHistory(reading.journal);
  return index ? kept(index, "practised", reading, () => ranked([...index.exercises.values()], reading)) : [];
}

/** What hangs on a history or a strand, and on what else goes into a reading. */
function kept<T>(object: object, name: string, { journal, conventions, today }: Reading, make: () => T): T {
  return journal.memo.from(object, name, [conventions, today], make);
}

/** Best first: what is in practice; what rests and stands on the tonic of a piece in hand; what rests. */
function ranked(exercises: readonly Exercise[], reading: Reading): Practised[] {
  const scored = exercises
    .flatMap(({ strands }) => strands)
    .flatMap((strand) => {
      const use = kept(strand, "use", reading, () => useOf(strand, reading.today));
      return use ? [{ strand, ...use }] : [];
    });
  const best = scored
    .sort((a, b) => b.score - a.score || inTimeOrder(b.strand.records.at(-1)!, a.strand.records.at(-1)!))
    .slice(0, MOST_STRANDS);
  const tonics = tonicsInHand(reading);
  const tiers: [Practised[], Practised[], Practised[]] = [[], [], []];
  const offered = new Set<string>();
  for (const { strand, gap } of best) {
    const line = kept(strand, "practised line", reading, () =>
      practisedLine(reading.journal, reading.conventions, strand, reading.today),
    );
    if (!line || offered.has(line.phrase)) continue; // a line for several exercises, once
    offered.add(line.phrase);
    const tier = gap <= IN_PRACTICE ? 0 : tonics.some((tonic) => isOn(line.subject, tonic)) ? 1 : 2;
    tiers[tier].push(practised(strand, line, gap, reading.journal.names));
  }
  return tiers.flat();
}

/** Days since a strand was practised, and how lately and often it was. */
interface Use {
  readonly gap: number;
  readonly score: number;
}

/** Undefined where all of it lies ahead. Days count, not attempts. */
function useOf({ records }: Strand, today: DayNumber): Use | undefined {
  let gap: number | undefined;
  let score = 0;
  let counted = Number.NaN;
  for (let i = records.length - 1; i >= 0; i--) {
    const ago = today - records[i]!.day;
    if (ago < 0 || ago === counted) continue;
    if (gap !== undefined && ago > LATEST_DAYS) break;
    gap ??= ago;
    counted = ago;
    score += weightAfter(ago);
  }
  return gap === undefined ? undefined : { gap, score };
}

/** The tonics of the pieces in hand: those begun and not past their day. */
function tonicsInHand({ conventions, today }: Reading): readonly WrittenNote[] {
  const inHand = conventions.pieces.filter(({ from = today, due = today }) => from <= today && due >= today);
  return inHand.flatMap((piece) => keyOfPiece(piece)?.key.tonic ?? []);
}

function isOn(subject: Subject, tonic: WrittenNote): boolean {
  if (subject.type === "scale") return sameName(subject.tonic, tonic);
  return subject.type === "chord" && sameName(subject.root, tonic);
}

function practised(
  { key, records }: Strand,
  { text, subject, start }: PractisedLine,
  gap: number,
  names: NoteNames,
): Practised {
  const name = subjectText(subject, names);
  return {
    exerciseKey: records.at(-1)!.exerciseKey,
    subject,
    candidate: {
      label: text,
      aliases: subject.type === "title" ? [name, `"${name}"`] : [name],
      ...looksOf(subject.type),
      detail: start ? `last reached ${start.reached}, ${daysAgo(start.gap)}` : `practised ${daysAgo(gap)}`,
      identity: `practised ${key}`,
      resolve: { topic: "start", key: start ? `${start.reached} ${start.gap}` : "" },
    },
  };
}

/** Why a line starts where it does; the key holds the tempo last reached and the days since, or nothing. */
export function explainStart(key: string): string | undefined {
  if (key === "") return NOTHING_REACHED;
  const found = /^(\d{1,4}(?:\.\d)?) (\d{1,7})$/.exec(key);
  if (!found) return undefined;
  const [reached, gap] = [Number(found[1]), Number(found[2])];
  return `${found[1]} was reached last, ${daysAgo(gap)}${startWords(reached, gap)}.`;
}

function startWords(reached: number, gap: number): string {
  const [start, unrested] = [startTempo(reached, gap), startTempo(reached, 0)];
  if (start === reached) return ": a good place to start again";
  if (start === unrested) return `: ${start} is the metronome step below it`;
  const steps = nearestSteps(unrested).below === start ? "one metronome step" : "two metronome steps";
  return `. So long after, ${start}, ${steps} lower, is where to start`;
}
