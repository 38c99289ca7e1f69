import type { LineRow } from "../../../server/features/explain/line-rows.ts";
import type { Meant, WrittenLine } from "./written-lines.ts";

// Whether a line was read as it was meant. Annotators and program write the same thing in other words, so both sides are
// brought to one form first: in small letters without accents, the trade's short forms written out, the words of a subject in
// any order, `natural` beside `minor` left out, octave numbers too, several subjects as a set.

const PRACTICE = ["exercise", "piece", "activity"];

/** What an annotator was unsure of does not count. */
export function isCertain({ comment }: Meant): boolean {
  return !/\bunsure:/.test(comment);
}

/** An exercise or a piece. */
export function isPlayed({ kind }: Meant): boolean {
  return kind === "exercise" || kind === "piece";
}

export function isPractice({ kind }: { readonly kind: string }): boolean {
  return PRACTICE.includes(kind);
}

/** An entry without a subject, as an amount alone is, is told of nowhere as practice. */
export function countsAsPractice(read: LineRow): boolean {
  return isPractice(read) && read.subject !== null;
}

/** Kind and subject of an exercise or a piece. */
export function isAsMeant({ meant, read }: WrittenLine): boolean {
  return read.kind === meant.kind && hasSubject(meant, read);
}

function hasSubject(meant: Meant, { subject, pattern }: LineRow): boolean {
  if (subject === null) return false;
  if (meant.kind === "piece") return sameSet(meant.subject, subject, letters);
  if (sameSet(meant.subject, subject, subjectForm)) return true;
  // broken chords are a pattern to one and a subject to the other
  const [said, heard] = [withBroken(meant.subject, meant.pattern), withBroken(subject, pattern ?? "")];
  return sameSet(said, heard, subjectForm) || isLongTones(meant.subject, subject);
}

function withBroken(subject: string, pattern: string): string {
  return /^broken chords?\b/.test(pattern)
    ? subject
        .split(";")
        .map((each) => `${each} broken chord`)
        .join(";")
    : subject;
}

/** The notes of long tones may stand in either's subject or not. */
function isLongTones(meant: string, read: string): boolean {
  return meant === "long tones" && read.startsWith("long tones");
}

/** Several subjects: `A;B`, `A > B`, or `A, B`; one that has a comma is tried as a whole first. */
function sameSet(meant: string, read: string, form: (text: string) => string): boolean {
  if (form(meant) === form(read)) return true;
  const [said, heard] = [meant.split(";"), read.split(/;| > |, /)].map((each) => new Set(each.map(form)));
  return said!.size === heard!.size && [...said!].every((each) => heard!.has(each));
}

/** A title by its letters and figures alone. */
export function letters(text: string): string {
  return plain(text).replace(/[^\p{L}\p{N}#]+/gu, "");
}

function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();
}

const WORDS: Readonly<Record<string, string>> = {
  maj: "major",
  min: "minor",
  arp: "arpeggio",
  arpegio: "arpeggio",
  dim: "diminished",
  dom: "dominant",
  "7th": "seventh",
  "7": "seventh",
  pent: "pentatonic",
  note: "tone",
};
const LEFT_OUT = ["", "with", "on", "from", "scale", "and", "in"];

/** The words of a scale, chord or figure, in the order of the alphabet. */
export function subjectForm(text: string): string {
  const words = plain(text)
    .replace(/\b([a-g]) ?(?:-? ?sharp)\b/g, "$1#")
    .replace(/\b([a-g]) ?(?:-? ?flat)\b/g, "$1b")
    .replace(/\bchromatic from (\S+) to \S+/, "chromatic $1")
    .split(/[^\p{L}\p{N}#]+/u)
    .map((word) => word.replace(/^([a-g](?:##?|bb?)?)\d$/, "$1"))
    .map((word) => (word.length > 3 ? word.replace(/s$/, "") : word))
    .map((word) => WORDS[word] ?? word)
    .filter((word) => !LEFT_OUT.includes(word));
  const isMinor = words.includes("minor");
  const isSeventh = words.includes("seventh"); // a seventh alone is its arpeggio
  return words
    .filter((word) => !(isMinor && word === "natural") && !(isSeventh && word === "arpeggio"))
    .sort()
    .join(" ");
}

/** A range is its two numbers. */
export function hasTempos({ tempos }: Meant, read: LineRow): boolean {
  return numbers(tempos) === numbers(read.tempos.join(";"));
}

function numbers(text: string): string {
  return (text.match(/\d+/g) ?? []).join(";");
}

/** One for each tempo, letters, figures and marks alone; what may be an outcome or nothing is either. */
export function hasOutcomes({ outcomes, comment }: Meant, read: LineRow): boolean {
  const heard = said(read.outcomes.join(";"));
  return said(outcomes) === heard || (/accept as outcome or nothing/.test(comment) && heard === "");
}

function said(outcomes: string): string {
  const each = outcomes.split(";").map((text) => plain(text).replace(/[^\p{L}\p{N}✓✔✗✘+?±]+/gu, ""));
  return each.join(";").replace(/^;+$/, "");
}

export function hasPlace({ place }: Meant, read: LineRow): boolean {
  return letters(place) === letters(read.place ?? "");
}

/** Of several amounts on a line, their sum. */
export function hasMinutes({ minutes }: Meant, read: LineRow): boolean {
  return read.minutes === minutes.split(";").reduce((sum, each) => sum + Number(each), 0);
}
