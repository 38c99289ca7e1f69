import { BETWEEN_NOTES, ON_NOTE, REGISTERS, REGISTERS_BEHIND } from "../lexicon/note-leads.ts";
import { fold } from "../words/fold.ts";
import type { FaultySubject, Item, MeaningOf, SubjectMeaning, WrittenNote } from "../words/meaning.ts";
import { chromaticOn } from "../words/scale-words.ts";

type Subject = Item<SubjectMeaning | FaultySubject>;

interface Found {
  readonly subject: Subject;
  readonly items: readonly Item[];
}

/** A note, where its words begin and end among the items, and the note that its range ends on. */
interface Tonic {
  readonly from: number;
  readonly end: number;
  readonly notes: readonly [WrittenNote, WrittenNote?];
}

/**
 * A chromatic scale without its tonic takes it from what stands behind: `chromatic, 2 octaves from D`, `chromatic, low
 * F to high F`.
 */
export function withTonicBehind({ subject, items }: Found): Found {
  if (subject.meaning.type !== "scale" || !subject.meaning.fromLowest) return { subject, items };
  const tonic = tonicIn(items);
  if (!tonic) return { subject, items };
  const [from, to] = tonic.notes;
  return {
    subject: { ...subject, meaning: chromaticOn(from, to) },
    items: [...items.slice(0, tonic.from), ...items.slice(tonic.end)],
  };
}

/** Up to how it went; behind a tempo a range of notes is no tonic, and `uneven from G on` is said of notes. */
function tonicIn(items: readonly Item[]): Tonic | undefined {
  let behindTempo = false;
  for (const [i, { meaning }] of items.entries()) {
    if (meaning.type === "outcome") return undefined;
    behindTempo ||= meaning.type === "tempo" || meaning.type === "number";
    const tonic = meaning.type === "note" ? tonicAt(items, i, meaning.note) : undefined;
    if (tonic && !(behindTempo && tonic.notes[1])) return tonic;
  }
  return undefined;
}

function tonicAt(items: readonly Item[], i: number, note: WrittenNote): Tonic | undefined {
  const before = wordsAt(items, i - 1);
  const range = rangeEnd(items, i);
  const led = before !== undefined && isLead(before) && wordsAt(items, i + 1)?.[0] !== "on";
  if (!led && !range) return undefined;
  const isRegister = before?.every((word) => REGISTERS.includes(word));
  const end = withRegister(items, (range?.at ?? i) + 1);
  return { from: led || isRegister ? i - 1 : i, end, notes: [note, range?.note] };
}

/** `from`, `start on`, `from low`. */
function isLead(words: readonly string[]): boolean {
  const lead = words.findLastIndex((word) => ON_NOTE.includes(word));
  return lead >= 0 && words.slice(lead + 1).every((word) => REGISTERS.includes(word));
}

/** `F to high F`. */
function rangeEnd(items: readonly Item[], i: number): { readonly note: WrittenNote; readonly at: number } | undefined {
  const between = wordsAt(items, i + 1);
  const next = items[i + 2]?.meaning;
  if (!between || next?.type !== "note" || !between.some((word) => BETWEEN_NOTES.includes(word))) return undefined;
  const isRange = between.every(
    (word) => BETWEEN_NOTES.includes(word) || [...REGISTERS, ...REGISTERS_BEHIND].includes(word),
  );
  return isRange ? { note: next.note, at: i + 2 } : undefined;
}

function withRegister(items: readonly Item[], i: number): number {
  const words = wordsAt(items, i);
  return words?.every((word) => REGISTERS_BEHIND.includes(word)) ? i + 1 : i;
}

/** The words of an item that nothing was made of. */
function wordsAt(items: readonly Item[], i: number): readonly string[] | undefined {
  const meaning = items[i]?.meaning as MeaningOf<"unknown"> | undefined;
  return meaning?.type === "unknown" ? fold(meaning.words).split(/\s+/) : undefined;
}
