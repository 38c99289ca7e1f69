import { dayFindings } from "../checks/day/day-findings.ts";
import type { Finding } from "../checks/finding.ts";
import { checkLine } from "../checks/line/line.ts";
import { type PlayedAttempt, playedEntry } from "../history/played.ts";
import { isoDate } from "../journal/calendar.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Entry } from "../journal/model.ts";
import { subjectKey } from "../journal/subject-text.ts";
import { createDocument } from "../syntax/document/document.ts";
import type { TitleMatch } from "../syntax/line/known-title.ts";
import { parseLine } from "../syntax/line/parse-line.ts";
import { BoundedMemo } from "../syntax/words/bounded-memo.ts";
import type { PlanBasis } from "./plan-basis.ts";

/** A line as it would be read in the journal. */
export interface LineRead {
  readonly entry: Entry;
  readonly attempts: readonly PlayedAttempt[];
  /** The key of its exercise; of several subjects the first. */
  readonly exerciseKey?: string;
  /** The keys of all exercises that it practises. */
  readonly exerciseKeys: readonly string[];
  /** Of a title: what makes two places the same, with the movement. */
  readonly place?: string;
}

type ReadingBasis = Pick<PlanBasis, "journal" | "conventions" | "day">;

/**
 * A line that is to be proposed, read as a planned one: undefined where a check would have anything to say of it, but
 * that a title is not declared yet. That is said of the player's own lines as well, and whoever declares no piece plays
 * some all the same. What by itself is no entry may be one of a title that the journal knows by then; what is one is
 * read the same on any day, and plans propose the same lines day after day.
 */
export function readLine(basis: ReadingBasis, text: string): LineRead | undefined {
  const { journal, conventions } = basis;
  const known = journal.memo.of(conventions, "lines of plans", () => new BoundedMemo<Reading>(MOST_BYTES, () => BYTES));
  const kept = known.get(text);
  if (kept) return kept.read;
  const { read, byTitle } = readingOf(basis, text);
  if (!byTitle) known.set(text, { read });
  return read;
}

/** What is kept of the lines that were read last, and what one of them takes, in bytes. */
const MOST_BYTES = 1_000_000;
const BYTES = 2_000;

interface Reading {
  readonly read: LineRead | undefined;
}

/** `byTitle`: as it is by itself no entry, what it is rests on the titles that were written before. */
function readingOf({ journal, conventions, day }: ReadingBasis, text: string): Reading & { readonly byTitle: boolean } {
  const block = createDocument(`${isoDate(day)}, plan\n  ${text}\n`).blocks.at(-1)!;
  const own = journal.ownModelOnce(block);
  const byTitle = own.entries.length === 0;
  const named = byTitle ? journal.titlesOf(block)?.get(1) : undefined;
  const findings = named
    ? findingsOf(journal, conventions, block.lines[1]!, named)
    : dayFindings(journal, conventions).of(block).findings;
  if (findings.some(({ code }) => code !== "unknown-title")) return { read: undefined, byTitle };
  const { entries, lines } = named ? journal.readOnce(block) : own;
  const [entry] = entries;
  const isOneLine = entries.length === 1 && lines.length <= 2 + Number(block.text.endsWith("\n"));
  return { read: isOneLine && entry?.subject ? madeOf(entry, entry.subject, conventions) : undefined, byTitle };
}

function madeOf(entry: Entry, subject: NonNullable<Entry["subject"]>, conventions: Conventions): LineRead {
  const { attempts } = playedEntry(entry, conventions);
  const exerciseKey = attempts[0]?.manner.exerciseKey;
  const { where } = entry;
  const place =
    subject.type === "title" ? `${subjectKey(subject)}\n${where?.movement ?? ""}\n${where?.text ?? ""}` : undefined;
  return {
    entry,
    attempts,
    exerciseKeys: [...new Set(attempts.map(({ manner }) => manner.exerciseKey))],
    ...(exerciseKey === undefined ? {} : { exerciseKey }),
    ...(place === undefined ? {} : { place }),
  };
}

/** Of a line that names a title which the journal knows by then. */
function findingsOf(
  { partContext }: Journal,
  conventions: Conventions,
  text: string,
  titles: readonly TitleMatch[],
): readonly Finding[] {
  const context = { ...partContext, head: false };
  return checkLine(parseLine(text, { ...context, titles }), { ...context, conventions, text });
}
