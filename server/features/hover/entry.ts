import type { Palette } from "../../../shared/protocol.ts";
import { recordsAt } from "../../history/attempts.ts";
import { movementOfRecord, patternOfRecord } from "../../history/exercise-name.ts";
import { journalHistory, weeksOfStrand } from "../../history/journal-history.ts";
import type { AttemptRecord } from "../../history/record.ts";
import { type Exercise, latestFirst } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { subjectKey, subjectText } from "../../journal/subject-text.ts";
import { BoundedMemo } from "../../syntax/words/bounded-memo.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { exerciseInWords } from "../explain/exercise-words.ts";
import { escapedExtract, paragraphs } from "../explain/markdown.ts";
import { type Explain, sentenceOf, theoryOf, theoryOfSubject } from "../explain/theory.ts";
import { hardestStepHover } from "./fingers.ts";
import { exerciseHistory, historyInMarkdown, lastTime, playedUpTo } from "./history.ts";
import { pieceParagraphs } from "./piece.ts";

/** An entry, and where it stands. */
export interface EntryAt {
  readonly journal: Journal;
  readonly uri: string;
  /** From 0, within the file. */
  readonly line: number;
  readonly text: string;
  /** Where the cursor is on one of several subjects, for that. */
  readonly entry: Entry;
  readonly today: DayNumber;
  /** The day that it stands on: none where that has no date; today for an aim or set work above the first day. */
  readonly day: DayNumber | undefined;
  readonly explain: Explain;
  /** The colours of pictures; without them there are none. */
  readonly palette?: Palette;
}

/**
 * What was said last time, where to start, the weeks and the trend; then what theory says. Kept for as long as the
 * journal stays as it is: a pointer comes by the same line again and again.
 */
export function subjectHover(at: EntryAt): string | undefined {
  const { journal, uri, line, today, explain, palette, entry } = at;
  if (!entry.subject || entry.subject.type === "free") return undefined;
  const told = journal.memo.of(journal, "hovers", () => new BoundedMemo<string | null>(MOST_BYTES, textBytes));
  const key = JSON.stringify([uri, line, subjectKey(entry.subject), today, explain, palette]);
  return told.of(key, () => toldOf(at) ?? null) ?? undefined;
}

/** Some hundred hovers: a chart in one takes tens of thousands. */
const MOST_BYTES = 4_000_000;

function textBytes(text: string | null): number {
  return 2 * (text?.length ?? 0);
}

function toldOf(at: EntryAt): string | undefined {
  const heading = `**${escapedExtract(headingOf(at))}**`;
  return paragraphs([heading, ...history(at), ...theory(at).filter((told) => told !== heading)]);
}

function headingOf({ entry, journal, uri }: EntryAt): string {
  return exerciseInWords(subjectText(entry.subject!, journal.conventions(uri).names), patternOfRecord(entry));
}

function history(at: EntryAt): readonly string[] {
  const { journal, uri, line, entry, today, day, palette } = at;
  const conventions = journal.conventions(uri);
  const instrument = entry.instrument ?? conventions.instrument;
  const practised = {
    pattern: patternOfRecord(entry),
    instrument: instrumentOf(instrument, conventions)?.id ?? instrument ?? null,
    movement: movementOfRecord(entry),
    where: entry.where?.text || null,
  };
  const key = subjectKey(entry.subject!);
  const own = recordsAt(journal, uri, line).filter((record) => record.subjectKey === key);
  const found = exerciseHistory(exercisesCalled(journal, key), own, practised, today);
  const hardest = hardestStepHover(entry, journal, uri, day);
  if (!found) return entry.subject!.type === "activity" ? [] : ["Not practised yet.", ...hardest];
  const strand = playedUpTo(found.strand, today);
  const telling = { title: headingOf(at), today, palette, hardest };
  return [
    ...(found.before ? [earlierLine(journal, found.before)] : []),
    ...(strand
      ? historyInMarkdown({ ...found, strand }, weeksOfStrand(journal, strand), telling)
      : [AHEAD, ...hardest]),
  ];
}

const AHEAD = "It was not practised like this up to today; what is dated ahead counts once its day has come.";

/** Every exercise at one subject, the latest practised first. */
function exercisesCalled(journal: Journal, key: string): readonly Exercise[] {
  const { exercises } = journalHistory(journal);
  return [...exercises.values()].filter(({ subjectKey }) => subjectKey === key).sort(latestFirst);
}

/** The line as it was written, and the remarks below it. */
function earlierLine(journal: Journal, record: AttemptRecord): string {
  const { block, line } = record;
  const earlier = journal.model(block).entries.find(({ place }) => place.line === line);
  const text = block.lines[line]!.slice(earlier?.place.start ?? 0, earlier?.place.end);
  return [
    `${lastTime(record)}: ${escapedExtract(text)}`,
    ...(earlier?.remarks ?? []).map((remark) => `– ${escapedExtract(remark)}`),
  ].join("  \n");
}

function theory({ journal, uri, entry, today, explain }: EntryAt): readonly string[] {
  const conventions = journal.conventions(uri);
  const hidden = notesHidden(entry, conventions);
  const subject = entry.subject!;
  if (subject.type === "title") {
    const pieces = conventions.piecesByTitle.get(nameKey(subject.title)) ?? [];
    const movement = entry.where?.movement;
    return pieces
      .filter((each) => each.type === "piece" || each.movement === movement)
      .flatMap((each) => pieceParagraphs(each, conventions.names, today));
  }
  if (subject.type === "chain" || subject.type === "several") {
    const each = subject.type === "chain" ? subject.scales : subject.subjects;
    return explain === "none"
      ? []
      : each.map((one) =>
          [
            `**${escapedExtract(subjectText(one, conventions.names))}**`,
            ...theoryOfSubject(one, conventions, { explain, hidden }),
          ].join("  \n"),
        );
  }
  if (subject.type === "figure" || subject.type === "activity")
    return subject.scale ? theoryOfSubject(subject.scale, conventions, { explain, hidden }) : [];
  if (subject.type === "technique") return [];
  const input = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions);
  const sentence = sentenceOf(subject, conventions);
  const found = input ? theoryOf(input, { explain, names: conventions.names, hidden }, conventions) : [];
  const unsaid = subject.type === "scale" && subject.unsaid ? sentence : undefined;
  if (explain === "none") return unsaid ? [unsaid] : [];
  return [...(sentence ? [sentence] : []), found.join("  \n")].filter(Boolean);
}
