import { entryMadeOnce } from "../history/entry-of-record.ts";
import { journalHistory } from "../history/journal-history.ts";
import { type AttemptRecord, compareText, inTimeOrder } from "../history/record.ts";
import type { Exercise } from "../history/strands.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { kindOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { Subject } from "../journal/model.ts";
import { chordWords, subjectText } from "../journal/subject-text.ts";
import { chordById } from "../music/chords/chord.ts";
import { CHORDS } from "../music/chords/chord-kinds.ts";
import { chordSignature } from "../music/chords/chord-signature.ts";
import { type NoteName, printName } from "../music/notes/note.ts";
import type { NoteNames } from "../music/notes/note-names.ts";
import type { ScaleKind } from "../music/scales/kind.ts";
import { KINDS } from "../music/scales/kinds.ts";
import { keySignature } from "../music/scales/signature.ts";
import type { ScaleMeaning } from "../syntax/words/meaning.ts";

/** Which days are looked at, both ends included, and of which instrument; null of any. */
export interface PlayedAsked {
  readonly since?: DayNumber;
  readonly today: DayNumber;
  readonly instrument: string | null;
}

/** Where on the line of fifths a scale or chord stands. */
export interface KeyOfSubject {
  readonly kind: string;
  readonly tonic: NoteName;
  /** Its key signature, sharps or flats where negative; null where it belongs to no key. */
  readonly fifths: number | null;
  readonly name: string;
}

/** What was practised of one kind in one key, over all its patterns. */
export interface PractisedKey {
  key: KeyOfSubject;
  readonly days: Set<DayNumber>;
  last: AttemptRecord;
}

/** Each kind and key once. */
export function practisedKeys(
  journal: Journal,
  { since = Number.NEGATIVE_INFINITY, today, instrument }: PlayedAsked,
): readonly PractisedKey[] {
  const found = new Map<string, PractisedKey>();
  for (const exercise of journalHistory(journal).exercises.values()) {
    if (instrument !== null && exercise.instrument !== instrument) continue;
    const records = exercise.strands.flatMap((strand) =>
      strand.records.filter(({ day }) => day >= since && day <= today),
    );
    if (records.length === 0) continue;
    const last = records.reduce((a, b) => (inTimeOrder(a, b) < 0 ? b : a));
    for (const key of keysOf(journal, exercise)) {
      const name = `${key.kind}\n${printName(key.tonic)}`;
      const known = found.get(name);
      const practised = known ?? { key, days: new Set<DayNumber>(), last };
      for (const { day } of records) practised.days.add(day);
      if (inTimeOrder(practised.last, last) < 0) {
        practised.last = last;
        practised.key = key; // as it was called last
      }
      if (!known) found.set(name, practised);
    }
  }
  return [...found.values()];
}

/** The keys of an exercise's subject: one, or those of a chain or of a set; none for titles and figures. */
export function keysOf(journal: Journal, exercise: Exercise): readonly KeyOfSubject[] {
  return journal.memo.of(exercise, "keys", () => {
    const last = exercise.strands[0]!.records.at(-1)!;
    const subject = entryMadeOnce(journal, last)?.subject;
    const conventions = journal.conventions(last.uri);
    const all = subject?.type === "chain" ? subject.scales : subject?.type === "several" ? subject.subjects : [subject];
    return all.flatMap((each): KeyOfSubject[] => {
      if (each?.type === "chord") return [keyOfChord(each, journal.names)];
      if (each?.type !== "scale") return [];
      return [keyOfScale(each, kindOf(each.kind, each.declared, conventions), journal.names)];
    });
  });
}

function keyOfScale(scale: ScaleMeaning, kind: ScaleKind | undefined, names: NoteNames): KeyOfSubject {
  const fifths = kind ? (keySignature(scale.tonic, kind)?.fifths ?? null) : null;
  return { kind: scale.kind, tonic: scale.tonic, fifths, name: subjectText(scale, names) };
}

function keyOfChord(chord: Extract<Subject, { readonly type: "chord" }>, names: NoteNames): KeyOfSubject {
  const known = chordById(chord.chord);
  const fifths = known ? (chordSignature(chord.root, known, chord.key, chord.keyMode)?.fifths ?? null) : null;
  const whole = { ...chord, broken: false };
  return { kind: chordWords(whole), tonic: chord.root, fifths, name: subjectText(whole, names) };
}

/** Scales in the order of the language's own table, then chords, then declared kinds. */
export function kindsInOrder(practised: readonly PractisedKey[]): readonly string[] {
  const known: readonly string[] = [
    ...KINDS.map(({ id }) => id),
    ...CHORDS.flatMap(({ id }) => [`${id} arpeggio`, id]),
  ];
  const rank = (kind: string): number => (known.includes(kind) ? known.indexOf(kind) : known.length);
  const kinds = new Set(practised.map(({ key }) => key.kind));
  return [...kinds].sort((a, b) => rank(a) - rank(b) || compareText(a, b));
}

/** `minor` for any form of it, else the kind. */
export function modeOf(kind: string): string {
  return /^(?:natural|harmonic|melodic) minor$/.test(kind) ? "minor" : kind;
}
