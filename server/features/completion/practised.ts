import { recordsOfBlock } from "../../history/attempts.ts";
import { type Ceiling, ceilingOn } from "../../history/ceiling.ts";
import { sinceLately } from "../../history/journal-facts.ts";
import { latestHistory } from "../../history/journal-history.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import type { Exercise, Strand } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import { keyOfPiece } from "../../journal/likely-key.ts";
import type { Subject } from "../../journal/model.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { sameName } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { withoutTempo } from "../../plan/care-words.ts";
import { daysAgo } from "../../plan/day-words.ts";
import { figure } from "../../plan/figure.ts";
import { type PractisedLine, practisedLine, type StartTempo } from "../../plan/practised-line.ts";
import type { Block } from "../../syntax/document/document.ts";
import type { WrittenNote } from "../../syntax/words/meaning.ts";
import { startTexts } from "../explain/start-texts.ts";
import { startInWords } from "../explain/start-words.ts";
import { completionTexts } from "./completion-texts.ts";
import { LATEST_DAYS, weightAfter } from "./lately.ts";
import { type Candidate, formOf } from "./rank.ts";
import { type SetEntry, setEntries } from "./set-work.ts";
import { standsStill } from "./standing.ts";
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
 * Practised exercises as whole lines, with where to start today, and work that was set. Before anything is typed a
 * handful of different ones that the day does not have yet, set work first; after that whatever what is typed may mean.
 * Of practised ones none where no history is at hand: making one takes longer than whoever types should wait.
 */
export function practisedCandidates(place: PractisedPlace): readonly Candidate[] {
  const { journal, conventions, today, typed, fit } = place;
  const likely = withSetWork(standing(place), setEntries(journal, conventions, today));
  if (typed === "") return handful(place, likely).map(({ candidate }) => ({ ...candidate, fit }));
  const { names } = journal;
  const tonic = tonicIn(typed, names);
  return likely
    .map(({ candidate, subject }) => ({ ...candidate, label: asTyped(candidate.label, subject, { tonic, names }) }))
    .filter((candidate) => formOf(candidate, typed) !== undefined)
    .map((candidate, i) => ({ ...candidate, fit: i < HANDFUL ? fit : fit + LATER }));
}

/** What is offered as a whole line. */
interface Likely {
  readonly exerciseKey: string | undefined;
  readonly subject: Subject;
  readonly candidate: Omit<Candidate, "fit">;
}

/** Set work first: where it was practised, in the words and with the tempo of that. */
function withSetWork(practised: readonly Practised[], sets: readonly SetEntry[]): readonly Likely[] {
  if (sets.length === 0) return practised;
  const isFor = ({ exerciseKey }: SetEntry, each: Practised): boolean => each.exerciseKey === exerciseKey;
  const first = sets.flatMap((work): Likely[] => {
    const known = practised.find((each) => isFor(work, each));
    return [
      known ?? { ...work, candidate: { label: work.phrase, ...looksOf(work.subject.type), detail: work.detail } },
    ];
  });
  return [...first, ...practised.filter((each) => !first.includes(each))];
}

/** Without what was only written since the history was made and is gone again, and without the line being typed. */
function standing(place: PractisedPlace): readonly Practised[] {
  const { journal, today } = place;
  const stands = standsStill(journal, place);
  return practisedLines(place).flatMap((each): Practised[] => {
    const { strand, from } = each;
    if (from.every(stands) && stands(strand.records.at(-1)!)) return [each];
    const left = { ...strand, records: strand.records.filter(stands) };
    const use = left.records.length > 0 ? useOf(left, today) : undefined;
    const ceiling = ceilingOn(journal, today, strand.records.at(-1)!.instrument);
    const line = use && practisedLine(journal, place.conventions, left, today, ceiling);
    return line ? [practised(left, line, use.gap, { ...place, ceiling })] : [];
  });
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
function handful({ journal, uri, day, line }: PractisedPlace, likely: readonly Likely[]): Likely[] {
  const had = new Set<string>();
  for (const record of recordsOfBlock(journal, uri, day)) if (record.line !== line) had.add(record.exerciseKey);
  const chosen: Likely[] = [];
  for (const each of likely) {
    if (chosen.length === HANDFUL) break;
    if (each.exerciseKey !== undefined && had.has(each.exerciseKey)) continue;
    if (each.exerciseKey !== undefined) had.add(each.exerciseKey);
    chosen.push(each);
  }
  return chosen;
}

/** A strand that may be practised again. */
interface Practised extends Likely {
  readonly strand: Strand;
  /** The attempts that its line was made from. */
  readonly from: readonly AttemptRecord[];
}

interface Reading extends Pick<PractisedPlace, "journal" | "conventions" | "today"> {
  readonly ceiling: Ceiling;
  /** The day from which on a strand is looked at, where that is not its first. */
  readonly since?: DayNumber;
}

/**
 * The same array while the history, the conventions, the day and how fast it may be are the same, so that a key press
 * looks nothing up anew.
 */
function practisedLines({ journal, conventions, today }: PractisedPlace): readonly Practised[] {
  const index = latestHistory(journal);
  const reading = { journal, conventions, today, ceiling: ceilingOn(journal, today) };
  return index ? kept(index, "practised", reading, () => ranked([...index.exercises.values()], reading)) : [];
}

/** What hangs on a history or a strand, and on what else goes into a reading. */
function kept<T>(
  object: object,
  name: string,
  { journal, conventions, today, ceiling, since }: Reading,
  make: () => T,
): T {
  return journal.memo.from(object, name, [conventions, today, ceiling.kind, since], make);
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
    const ceiling = ceilingOn(reading.journal, reading.today, strand.records.at(-1)!.instrument);
    const since = sinceLately(reading.journal, strand, reading.today);
    const line = kept(strand, "practised line", { ...reading, ceiling, since }, () =>
      practisedLine(reading.journal, reading.conventions, strand, reading.today, ceiling, since),
    );
    if (!line || offered.has(line.phrase)) continue; // a line for several exercises, once
    offered.add(line.phrase);
    const tier = gap <= IN_PRACTICE ? 0 : tonics.some((tonic) => isOn(line.subject, tonic)) ? 1 : 2;
    tiers[tier].push(practised(strand, line, gap, reading));
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
  strand: Strand,
  { text, subject, start, from }: PractisedLine,
  gap: number,
  { journal, today, ceiling }: Reading,
): Practised {
  const name = subjectText(subject, journal.names);
  return {
    strand,
    from,
    exerciseKey: strand.records.at(-1)!.exerciseKey,
    subject,
    candidate: {
      label: text,
      aliases: subject.type === "title" ? [name, `"${name}"`] : [name],
      ...looksOf(subject.type),
      detail: daysAgo(start?.gap ?? gap), // short, so that the line's tempo is in sight
      identity: `practised ${strand.key}`,
      resolve: { topic: "start", key: start ? startKey(start) : careKey(ceiling, today) },
    },
  };
}

function startKey({ tempo, steady, reached, gap }: StartTempo): string {
  return `${figure(tempo)} ${steady === undefined ? "-" : figure(steady)} ${figure(reached)} ${gap}`;
}

function careKey({ kind, said }: Ceiling, today: DayNumber): string {
  return kind === "without instrument" && said ? `${CARE}${withoutTempo(said, today)}` : "";
}

/** What opens the key of a line without a tempo; why it has none follows. */
const CARE = "care: ";

const START_KEY = /^(\d{1,4}(?:\.\d)?) (-|\d{1,4}(?:\.\d)?) (\d{1,4}(?:\.\d)?) (\d{1,7})$/;

/**
 * Why a line starts where it does. The key holds where to start, the steady tempo, the one reached last and the days
 * since; or why there is no tempo; or nothing.
 */
export function explainStart(key: string): string | undefined {
  if (key === "") return startTexts.nothingReached;
  const found = START_KEY.exec(key);
  if (!found) return key.startsWith(CARE) ? key.slice(CARE.length) : undefined;
  const [tempo, steady, reached, gap] = found.slice(1);
  const start = steady === "-" ? { tempo: Number(tempo) } : { tempo: Number(tempo), steady: Number(steady) };
  return `${startInWords(start)} ${completionTexts.youLastReached(reached!, daysAgo(Number(gap)))}`;
}
