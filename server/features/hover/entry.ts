import type { Palette } from "../../../shared/protocol.ts";
import { weeksOfStrand } from "../../history/journal-history.ts";
import { playedUpTo } from "../../history/strands.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { subjectKey, subjectText } from "../../journal/subject-text.ts";
import type { StaffDrawer } from "../../notation/staff-look.ts";
import { BoundedMemo } from "../../syntax/words/bounded-memo.ts";
import { nameKey } from "../../syntax/words/fold.ts";
import { type ExerciseHistory, historyOfEntry } from "../explain/exercise-history.ts";
import { sentenceCase } from "../explain/explain.ts";
import { escapedExtract, paragraphs } from "../explain/markdown.ts";
import { type Explain, furtherTheory, notesAndSignature, sentenceOf, theoryOfSubject } from "../explain/theory.ts";
import { nameOfEntry } from "../explain/written-name.ts";
import { hardestStepHover } from "./fingers.ts";
import { type HistoryInMarkdown, historyInMarkdown } from "./history.ts";
import { historyTexts } from "./history-texts.ts";
import { lastTimeInWords } from "./last-time.ts";
import { pieceParagraphs } from "./piece.ts";
import { staffInMarkdown } from "./staff.ts";
import { wayBeside, wayOfLine } from "./ways.ts";

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
  /** Draws staves; without it notes are told in words. */
  readonly staves?: StaffDrawer;
}

/**
 * What was said last time, where to start, the weeks and the trend; then what theory says. Kept for as long as the
 * journal stays as it is: a pointer comes by the same line again and again.
 */
export function subjectHover(at: EntryAt): string | undefined {
  const { journal, uri, line, today, explain, palette, staves, entry } = at;
  if (!entry.subject || entry.subject.type === "free") return undefined;
  const told = journal.memo.of(journal, "hovers", () => new BoundedMemo<string | null>(MOST_BYTES, textBytes));
  const key = JSON.stringify([uri, line, subjectKey(entry.subject), today, explain, palette, staves !== undefined]);
  return told.of(key, () => toldOf(at) ?? null) ?? undefined;
}

/** Some hundred hovers: a chart in one takes tens of thousands. */
const MOST_BYTES = 4_000_000;

function textBytes(text: string | null): number {
  return 2 * (text?.length ?? 0);
}

function toldOf(at: EntryAt): string | undefined {
  const name = `**${escapedExtract(headingOf(at))}**`;
  const { way, first, below } = history(at);
  const { notes, further } = theory(at);
  const staff = notes && staffInMarkdown(at, headingOf(at));
  const hardest = hardestStepHover(at.entry, at.journal, at.uri, at.day);
  const heading = way === "" ? name : `${name}, ${way}`;
  return paragraphs([
    heading,
    ...first,
    staff ?? notes,
    ...hardest,
    ...below,
    ...further.filter((told) => told !== name),
  ]);
}

function headingOf({ entry, journal, uri, text }: EntryAt): string {
  return nameOfEntry(entry, text, journal.conventions(uri));
}

/** How the line is played, and what the history says of that. */
function history(at: EntryAt): HistoryInMarkdown & { readonly way: string } {
  const { journal, entry, today, palette, text } = at;
  const found = historyOfEntry(at);
  if (!found)
    return { way: "", first: entry.subject!.type === "activity" ? [] : [historyTexts.notPractisedYet], below: [] };
  const { strand, isOwn, others, notation } = found;
  const way = isOwn ? wayOfLine(strand, entry, text) : "";
  const last = lastTime(journal, found, today);
  if (!isOwn) return { way, first: last, below: [] };
  const played = playedUpTo(strand, today);
  if (!played) return { way, first: [...last, historyTexts.ahead], below: [] };
  const weeks = weeksOfStrand(journal, played);
  const told = historyInMarkdown({
    journal,
    strand: played,
    others,
    weeks,
    notation,
    title: headingOf(at),
    today,
    palette,
  });
  return { way, first: [...last, ...told.first], below: told.below };
}

/** What was last done before the line, in the same way; else in another, and that it was another. */
function lastTime(
  journal: Journal,
  { strand, isOwn, others, before, otherwise }: ExerciseHistory,
  today: DayNumber,
): readonly string[] {
  const record = before ?? otherwise;
  if (!record) return [];
  const of = before ? strand : others.find(({ key }) => key === record.strandKey)!;
  const { words, remarks } = lastTimeInWords(journal, of, record, today);
  const another = isOwn ? sentenceCase(wayBeside(journal, of, strand)) : historyTexts.anotherWay;
  const told = before && isOwn ? words : historyTexts.notThisWay(another, words);
  return [[told, ...remarks].join("  \n")];
}

/** What theory says: the notes with their signature, in one line; and all else. */
interface Theory {
  readonly notes?: string;
  readonly further: readonly string[];
}

function theory({ journal, uri, entry, today, explain }: EntryAt): Theory {
  const conventions = journal.conventions(uri);
  const hidden = notesHidden(entry, conventions);
  const subject = entry.subject!;
  if (subject.type === "title") {
    const pieces = conventions.piecesByTitle.get(nameKey(subject.title)) ?? [];
    const movement = entry.where?.movement;
    const own = pieces.filter((each) => each.type === "piece" || each.movement === movement);
    return { further: own.flatMap((each) => pieceParagraphs(each, conventions.names, today)) };
  }
  if (subject.type === "chain" || subject.type === "several") {
    const each = subject.type === "chain" ? subject.scales : subject.subjects;
    if (explain === "none") return { further: [] };
    return {
      further: each.map((one) =>
        [
          `**${escapedExtract(subjectText(one, conventions.names))}**`,
          ...theoryOfSubject(one, conventions, { explain, hidden }),
        ].join("  \n"),
      ),
    };
  }
  if (subject.type === "figure" || subject.type === "activity")
    return { further: subject.scale ? theoryOfSubject(subject.scale, conventions, { explain, hidden }) : [] };
  if (subject.type === "technique") return { further: [] };
  const input = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions);
  const sentence = sentenceOf(subject, conventions);
  const unsaid = subject.type === "scale" && subject.unsaid ? sentence : undefined;
  if (explain === "none") return { further: unsaid ? [unsaid] : [] };
  if (!input) return { further: sentence ? [sentence] : [] };
  const telling = { explain, names: conventions.names, hidden };
  return {
    notes: notesAndSignature(input, telling),
    further: [furtherTheory(input, telling, conventions).join("  \n"), ...(sentence ? [sentence] : [])].filter(Boolean),
  };
}
