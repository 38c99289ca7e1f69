import { bestReading } from "../checks/best-reading.ts";
import { type ClaimedExercise, rungsIn } from "../checks/claimed-exercise.ts";
import { attemptsOfJournal, recordsAt } from "../history/attempts.ts";
import { patternOfRecord } from "../history/exercise-name.ts";
import type { AttemptRecord } from "../history/record.ts";
import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Attempt, Conditions, DayNumber, Entry } from "../journal/model.ts";
import { subjectKey, subjectText } from "../journal/subject-text.ts";
import { exerciseToPlay, subjectToPlay } from "../journal/to-play.ts";
import type { ExerciseInput } from "../music/exercise.ts";
import { modulo, type NoteName, printName, printNote } from "../music/note.ts";
import { patternById, patternDegrees } from "../music/pattern.ts";
import { ordinal } from "../music/scale.ts";
import { printSteps, stepsOf } from "../music/steps.ts";
import { notesPerMinute } from "../music/value.ts";
import { blockIndexAt, lineAt } from "../syntax/document.ts";
import { nameKey } from "../syntax/fold.ts";
import type { Claim, ClaimedNote } from "../syntax/line.ts";
import type { Item, MeaningOf } from "../syntax/meaning.ts";
import { explainTerm, metronomeWords, sentenceCase } from "./explain.ts";
import { exerciseHistory, historyInMarkdown, lastTime } from "./hover-history.ts";
import { pieceFacts } from "./hover-piece.ts";
import { cutRow, type Explain, rowOf, sentenceOf, signatureHover, theoryOf, theoryOfSubject } from "./hover-theory.ts";
import { escapedExtract, escapeMarkdown } from "./markdown.ts";

/** An entry, and where it stands. */
export interface EntryAt {
  readonly journal: Journal;
  readonly uri: string;
  /** From 0, within the file. */
  readonly line: number;
  readonly text: string;
  readonly entry: Entry;
  readonly today: DayNumber;
  readonly explain: Explain;
}

interface Said {
  readonly start: number;
  readonly end: number;
  readonly markdown: string | undefined;
}

/** Markdown of paragraphs. */
function paragraphs(parts: readonly (string | undefined)[]): string | undefined {
  return parts.filter(Boolean).join("\n\n") || undefined;
}

/** What was said last time, where to start, the weeks and the trend; then what theory says. */
export function subjectHover(at: EntryAt): string | undefined {
  const { subject } = at.entry;
  if (!subject || subject.type === "free") return undefined;
  return paragraphs([`**${escapedExtract(headingOf(at.entry))}**`, ...history(at), ...theory(at)]);
}

function headingOf(entry: Entry): string {
  const pattern = patternOfRecord(entry);
  return (
    subjectText(entry.subject!) +
    (pattern === null || pattern === "straight" || pattern === "broken chord" ? "" : `, ${pattern}`)
  );
}

function history(at: EntryAt): readonly string[] {
  const { journal, uri, line, entry, today } = at;
  const conventions = journal.conventions(uri);
  const instrument = entry.instrument ?? conventions.instrument;
  const practised = {
    pattern: patternOfRecord(entry),
    instrument: instrumentOf(instrument, conventions)?.id ?? instrument ?? null,
    movement: entry.where?.movement ?? null,
    where: entry.where?.text || null,
  };
  const records = recordsBySubject(journal).get(subjectKey(entry.subject!)) ?? [];
  const found = exerciseHistory(records, recordsAt(journal, uri, line), practised, today);
  if (!found) return entry.subject!.type === "activity" ? [] : ["Not practised yet."];
  return [...(found.before ? [earlierLine(journal, found.before)] : []), ...historyInMarkdown(found, today)];
}

/** The records of a journal by the key of their subject; worked out once for each state of the journal. */
function recordsBySubject(journal: Journal): ReadonlyMap<string, readonly AttemptRecord[]> {
  return journal.memo.of(journal, "records by subject", () => {
    const bySubject = new Map<string, AttemptRecord[]>();
    for (const record of attemptsOfJournal(journal)) {
      const records = bySubject.get(record.subjectKey);
      if (records) records.push(record);
      else bySubject.set(record.subjectKey, [record]);
    }
    return bySubject;
  });
}

/** The line as it was written, and the remarks below it. */
function earlierLine(journal: Journal, record: AttemptRecord): string {
  const document = journal.files.get(record.uri)!;
  const index = blockIndexAt(document, record.line);
  const earlier = journal
    .model(document.blocks[index]!)
    .entries.find(({ place }) => document.starts[index]! + place.line === record.line);
  const text = lineAt(document, record.line).slice(earlier?.place.start ?? 0, earlier?.place.end);
  return [
    `${lastTime(record)}: ${escapedExtract(text)}`,
    ...(earlier?.remarks ?? []).map((remark) => `– ${escapedExtract(remark)}`),
  ].join("  \n");
}

function theory({ journal, uri, entry, today, explain }: EntryAt): readonly string[] {
  const conventions = journal.conventions(uri);
  const subject = entry.subject!;
  if (subject.type === "title") {
    const pieces = conventions.pieces.filter(({ title }) => nameKey(title) === nameKey(subject.title));
    const movement = entry.where?.movement;
    return pieces
      .filter((each) => each.type === "piece" || each.movement === movement)
      .map((each) => pieceFacts(each, today));
  }
  if (subject.type === "chain")
    return explain === "none"
      ? []
      : subject.scales.map((scale) =>
          [`**${escapedExtract(subjectText(scale))}**`, ...theoryOfSubject(scale, conventions, explain)].join("  \n"),
        );
  if (subject.type === "figure" || subject.type === "activity")
    return subject.scale ? theoryOfSubject(subject.scale, conventions, explain) : [];
  const input = inputOf(entry, entry.attempts[0], conventions);
  const sentence = sentenceOf(subject, conventions);
  const found = input ? theoryOf(input, explain) : [];
  const unsaid = subject.type === "scale" && subject.unsaid ? sentence : undefined;
  if (explain === "none") return unsaid ? [unsaid] : [];
  return [...(sentence ? [sentence] : []), found.join("  \n")].filter(Boolean);
}

function inputOf(entry: Entry, attempt: Attempt | undefined, conventions: Conventions): ExerciseInput | undefined {
  return exerciseToPlay(entry, attempt?.conditions, conventions);
}

/** What a term means where it stands. */
export function termHover(at: EntryAt, item: Item): string | undefined {
  const { meaning } = item;
  const { journal, uri, entry } = at;
  const conventions = journal.conventions(uri);
  switch (meaning.type) {
    case "tempo":
      return tempoHover(at, item as Item<MeaningOf<"tempo">>);
    case "pattern":
    case "variant":
    case "quoted":
      return patternHover(entry, meaning, at);
    case "instrument": {
      const instrument = instrumentOf(meaning.id, conventions);
      const range = instrument ? `: ${printNote(instrument.low)} to ${printNote(instrument.high)} as written.` : ".";
      return `${sentenceCase(escapedExtract(meaning.id))}${range}${instrument?.soft ? ` ${sentenceCase(instrument.soft)}.` : ""}`;
    }
    default:
      return explainTerm(meaning, journal.vocabulary);
  }
}

/** `8ths at 72 are 144 notes a minute; metronome: 69 below, 76 above`. */
function tempoHover({ journal, uri, entry, text }: EntryAt, { start, meaning }: Item<MeaningOf<"tempo">>): string {
  const conditions = entry.attempts.find(({ place }) => place.start === start)?.conditions;
  const noteValue = conditions?.noteValue ?? journal.conventions(uri).noteValue;
  const { bpm, low, beat } = meaning;
  const top = low === undefined ? "" : ` ${low} to ${bpm} is one attempt, at the top.`;
  const metronome = bpm > 0 ? `; ${metronomeWords(bpm)}.` : ".";
  if (entry.subject?.type === "title") return `${bpm} beats a minute${metronome}${top}`;
  if (!noteValue) return `At ${bpm}, one note a beat, ${bpm} notes a minute${metronome}${top}`;
  const rate = Math.round(notesPerMinute(bpm, beat ?? { numerator: 1, denominator: 4 }, noteValue) * 10) / 10;
  const named = entry.source.items.find(
    ({ meaning: each }) =>
      each.type === "note value" &&
      each.value.numerator === noteValue.numerator &&
      each.value.denominator === noteValue.denominator,
  );
  const own = journal.vocabulary.own.find(
    ({ meaning: each }) =>
      each.type === "note value" &&
      each.value.numerator === noteValue.numerator &&
      each.value.denominator === noteValue.denominator,
  );
  const value = named ? text.slice(named.start, named.end) : (own?.words[0] ?? "notes");
  return `${sentenceCase(escapeMarkdown(value))} at ${bpm} are ${rate} notes a minute${metronome}${top}`;
}

/** What a pattern is, its degrees over the span and its notes, in the way stated or rising. */
function patternHover(
  entry: Entry,
  meaning: MeaningOf<"pattern" | "variant" | "quoted">,
  { journal, uri }: EntryAt,
): string | undefined {
  const conventions = journal.conventions(uri);
  const pattern = entry.pattern;
  const sentence =
    meaning.type === "quoted" ? declaredSentence(meaning.text, conventions) : explainTerm(meaning, journal.vocabulary);
  const conditions: Conditions | undefined = entry.attempts[0]?.conditions;
  const input = pattern && inputOf(entry, entry.attempts[0], conventions);
  if (!input)
    return paragraphs([
      sentence,
      pattern?.type === "known" && patternById(pattern.id)
        ? `Degrees over an octave: ${cutRow(patternDegrees(pattern.id, pattern.variant, 8, true))}`
        : undefined,
    ]);
  const row = rowOf({ ...input, direction: conditions?.direction ?? "up" });
  const way = conditions?.direction ?? "rising";
  if (row.notes === "") return paragraphs([sentence, "Nothing of it lies within this span."]);
  return paragraphs([sentence, `Degrees, ${way}: ${row.degrees}  \nNotes: ${row.notes}`]);
}

function declaredSentence(name: string, { cells }: Conventions): string | undefined {
  const cell = cells.get(nameKey(name));
  if (!cell) return undefined;
  const steps = cell.step === 1 ? "a step" : `${cell.step} steps`;
  return `${escapedExtract(name)}: a pattern of this journal, ${cell.degrees.join(" ")}, moved by ${steps} at a time.`;
}

/** A claim, and for a note list the note of it at the column. */
export function claimHover(at: EntryAt, claim: Claim, character: number): Said | undefined {
  const { entry, journal, uri } = at;
  const conventions = journal.conventions(uri);
  const subject = entry.subject && subjectToPlay(entry.subject, entry.inversion ?? 0, conventions);
  const stretch = { start: claim.start, end: claim.end };
  if (claim.type === "signature") return { ...stretch, markdown: signatureHover(claim.fifths, subject) };
  if (claim.type === "steps") {
    const right =
      subject?.type === "scale"
        ? ` ${escapedExtract(subjectText(entry.subject!))} has ${printSteps(stepsOf(subject.kind), "TS")}.`
        : "";
    return {
      ...stretch,
      markdown: `Steps, read upward: a tone is \`T\` or \`W\`, a semitone \`S\` or \`H\`, three semitones are \`A\` or \`3\`.${right}`,
    };
  }
  const index = claim.notes.findLastIndex(({ start, end }) => start <= character && character <= end);
  const note = claim.notes[index];
  return note && { start: note.start, end: note.end, markdown: noteHover(at, claim.notes, index) };
}

function noteHover({ entry, journal, uri }: EntryAt, notes: readonly ClaimedNote[], index: number): string | undefined {
  const { note, text } = notes[index]!;
  if (!note) return `${escapedExtract(text)} is no note.`;
  const claimed = claimedExercise(entry, journal.conventions(uri));
  const found = claimed && bestReading(notes, claimed);
  if (!claimed || !found) return undefined;
  const name = printName(note as NoteName);
  const { steps } = found.alignment;
  const step = steps.find((each) => each.typed === index && each.type !== "missing");
  const whole = escapedExtract(claimed.subjectText);
  const expected = step && step.type !== "extra" ? found.reading.notes[step.expected] : undefined;
  if (!expected) return `${name}: one note more than ${whole} has here.`;
  const degree = modulo(expected.degree - 1, rungsIn(found.reading.subject, expected.falling).length) + 1;
  const what = claimed.subject.type === "chord" ? "note" : "degree";
  if (step!.type !== "same" && step!.type !== "octave")
    return `${name} stands where ${printName(expected.note)} belongs: the ${ordinal(degree)} ${what} of ${whole}.`;
  return `${name} is the ${ordinal(degree)} ${what} of ${whole}.`;
}

function claimedExercise(entry: Entry, conventions: Conventions): ClaimedExercise | undefined {
  const toPlay = inputOf(entry, entry.attempts[0], conventions);
  return toPlay && { ...toPlay, subjectText: subjectText(entry.subject!) };
}
