import { exerciseInWords } from "../history/exercise-words.ts";
import { compareText } from "../history/record.ts";
import { dateInWords } from "../journal/date-words.ts";
import { ofType, withoutDay } from "../journal/declared-lines.ts";
import type { Entry } from "../journal/model.ts";
import type { Candidate } from "./candidate.ts";
import { onDay } from "./day-words.ts";
import { figure } from "./figure.ts";
import { setNow } from "./lesson.ts";
import type { LineDraft } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { phraseOf } from "./practised-line.ts";
import { type LineRead, readLine } from "./read-line.ts";
import { dueOf, type SetWork } from "./set-work.ts";
import { textOfSet } from "./set-work-words.ts";
import { isHurtPlace } from "./what-hurt.ts";

/** What is set and still to be done on a day. */
export interface SetOnDay {
  readonly exercises: readonly Candidate[];
  /** On titles: first among the pieces. */
  readonly pieces: readonly LineDraft[];
  /** In free words, or in such that are no line of practice, as written. */
  readonly words: readonly string[];
}

/**
 * Work that is open on a day: not done on it yet, and its days not full. What has as many days left as it wants is
 * first.
 */
export function setOnDay(basis: PlanBasis): SetOnDay {
  const { journal, day, lines } = basis;
  const open = setNow(journal, ofType(lines, "set"), day).filter(
    ({ work, done }) =>
      !done.includes(day) &&
      dueOf(work, day) >= day &&
      (work.declared.days === undefined || done.filter((each) => each < day).length < work.declared.days),
  );
  const inOrder = [...open].sort(
    (a, b) => spare(a) - spare(b) || compareDue(a, b) || compareText(a.work.text, b.work.text),
  );
  const exercises: Candidate[] = [];
  const pieces: LineDraft[] = [];
  const words: string[] = [];
  for (const set of inOrder) {
    const text = textOfSet(set.work).trim();
    const draft = isWords(basis, set, text) ? undefined : setLine(basis, set, text);
    if (draft === "hurts") continue;
    if (!draft) words.push(text);
    else if (pieces.some((other) => other.text === draft.text))
      continue; // set twice
    else if (draft.phase === "pieces") pieces.push(draft);
    else exercises.push(asCandidate(basis, draft));
  }
  return { exercises, pieces, words };

  /** 0 where every day that is left is needed. */
  function spare({ work, done }: SetWork): number {
    const { days } = work.declared;
    return days !== undefined && days - done.length >= dueOf(work, day) - day + 1 ? 0 : 1;
  }

  function compareDue(a: SetWork, b: SetWork): number {
    return dueOf(a.work, day) - dueOf(b.work, day);
  }
}

/** Words are words, unless they begin with a title that was learnt: a declaration knows the declared ones. */
function isWords(basis: PlanBasis, { work: { declared, text } }: SetWork, shown: string): boolean {
  if (declared.words === undefined) return false;
  if (declared.asTitle || shown !== withoutDay(text).trim()) return true;
  const subject = readLine(basis, shown)?.entry.subject;
  return subject?.type !== "title";
}

function asCandidate(basis: PlanBasis, draft: LineDraft): Candidate {
  const key = readLine(basis, draft.text)?.exerciseKey ?? draft.text;
  return { key, fluent: false, write: (phase) => (phase === "groundwork" ? draft : undefined) };
}

/**
 * A line of set work as it is written; on days on which something is spared without its tempo. Undefined where it is no
 * line of practice, `hurts` where it is what hurt.
 */
function setLine(basis: PlanBasis, { work }: SetWork, text: string): LineDraft | "hurts" | undefined {
  const entry = readLine(basis, text)?.entry;
  if (!entry?.subject || entry.subject.type === "activity" || entry.subject.type === "free") return undefined;
  const isSpared = basis.ceiling.share !== undefined;
  const phrase = isSpared ? phraseOf(entry, `  ${text}`) : withoutMinutes(entry, `  ${text}`);
  const read = phrase === undefined ? undefined : readLine(basis, phrase);
  if (phrase === undefined || !read) return undefined;
  if (isHurt(basis, read)) return "hurts";
  const isTitle = read.entry.subject?.type === "title";
  const fastest = Math.max(0, ...entry.attempts.map(({ tempo }) => tempo?.bpm ?? 0));
  const wait = isSpared && fastest > 0 ? [planTexts.askTeacher(figure(fastest))] : [];
  const { manner } = read.attempts[0] ?? {};
  return {
    text: phrase,
    phase: isTitle ? "pieces" : "groundwork",
    rule: "set",
    exercise: manner ? exerciseInWords(manner.subject, manner.pattern) : null,
    reasons: [setReason(basis, work), ...wait],
    ...(read.place === undefined ? {} : { place: read.place }),
  };
}

function setReason({ day }: PlanBasis, { declared: { by }, day: on }: SetWork["work"]): string {
  if (by !== undefined) return by === day ? planTexts.setForToday : planTexts.setFor(dateInWords(by, day));
  return on === undefined ? planTexts.setByTeacher : planTexts.setByTeacherOn(onDay(on, day));
}

/** The line without an amount of time: a plan says its own. */
function withoutMinutes({ source: { items, start, end } }: Entry, text: string): string {
  const amounts = items.filter(({ meaning }) => meaning.type === "amount");
  let left = text.slice(0, end);
  for (const amount of [...amounts].reverse())
    left = left.slice(0, amount.start).replace(/[\s,]+$/, "") + left.slice(amount.end);
  return left.slice(start).trim();
}

function isHurt({ hurt, ceiling }: PlanBasis, { entry: { subject, where }, exerciseKeys }: LineRead): boolean {
  if (ceiling.share === undefined) return false;
  if (subject?.type !== "title") return exerciseKeys.some((key) => hurt.exercises.has(key));
  const records = hurt.records.filter(({ exerciseKey }) => exerciseKeys.includes(exerciseKey));
  const [first] = records;
  if (!first) return false;
  const movement = where?.movement === undefined ? null : `mvt ${where.movement}`;
  return isHurtPlace(hurt, { subjectKey: first.subjectKey, movement, where: where?.text || null }, undefined);
}
