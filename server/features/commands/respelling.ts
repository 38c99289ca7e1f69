import { renamed } from "../../checks/notes/note-style.ts";
import type { Conventions } from "../../journal/conventions.ts";
import { kindOf } from "../../journal/conventions.ts";
import { chordById } from "../../music/chords/chord.ts";
import { chordSignature, isTheoreticalChord } from "../../music/chords/chord-signature.ts";
import { fifthsOf, type Note, type NoteName, nameAtFifths, printName } from "../../music/notes/note.ts";
import { isTheoretical } from "../../music/scales/signature.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import type { MeaningOf, ScaleMeaning, WrittenNote } from "../../syntax/words/meaning.ts";

/** Other names for the notes of a line; each sounds the same. */
export interface Respelling {
  readonly note: (note: WrittenNote) => WrittenNote;
  /** A key signature, in sharps or, negative, flats. */
  readonly fifths: (fifths: number) => number;
}

type Key = ScaleMeaning | MeaningOf<"chord">;

/** Twelve fifths apart two names sound the same. */
const ENHARMONIC = 12;
const MOST_ACCIDENTALS = 7;

/**
 * How a line may be spelled otherwise: a key by the one that sounds the same, where seven accidentals or fewer serve
 * for that, and all its notes with it; several keys one by one; notes without a key in flats where one has a sharp,
 * else in sharps. Undefined where there is no other spelling.
 */
export function respellingOf(
  line: EntryLine,
  notes: readonly WrittenNote[],
  conventions: Conventions,
): Respelling | undefined {
  const keys = keysOf(line);
  if (keys.length === 0) return withoutKey(notes);
  const [key] = keys;
  return keys.length === 1 ? ofOneKey(key!, conventions) : ofKeys(keys, conventions);
}

function keysOf({ subject }: EntryLine): readonly Key[] {
  const meaning = subject?.meaning;
  switch (meaning?.type) {
    case "scale":
    case "chord":
      return [meaning];
    case "figure":
    case "activity":
      return meaning.scale ? [meaning.scale] : [];
    case "chain":
      return meaning.scales;
    case "several":
      return meaning.subjects.flatMap((each) => {
        if (each.type === "technique") return [];
        return each.type === "figure" ? (each.scale ?? []) : [each];
      });
    default:
      return [];
  }
}

function ofOneKey(key: Key, conventions: Conventions): Respelling | undefined {
  const shift = shiftOf(key, conventions);
  if (shift === undefined) return undefined;
  const tonic = tonicOf(key);
  // A chromatic scale is spelled as it rises and falls, whatever its tonic is called.
  const isFree = key.type === "scale" && kindOf(key.kind, key.declared, conventions)?.family === "chromatic";
  return {
    note: (note) => (isFree && printName(note) !== printName(tonic) ? note : shifted(note, shift)),
    fifths: (fifths) => fifths + shift,
  };
}

function ofKeys(keys: readonly Key[], conventions: Conventions): Respelling | undefined {
  const shifts = new Map<string, number>();
  for (const key of keys) {
    const shift = shiftOf(key, conventions);
    if (shift !== undefined) shifts.set(printName(tonicOf(key)), shift);
  }
  if (shifts.size === 0) return undefined;
  return { note: (note) => shifted(note, shifts.get(printName(note)) ?? 0), fifths: (fifths) => fifths };
}

function tonicOf(key: Key): NoteName {
  return key.type === "scale" ? key.tonic : (key.key ?? key.root);
}

/** To which side a key goes on the line of fifths. */
function shiftOf(key: Key, conventions: Conventions): number | undefined {
  return [-ENHARMONIC, ENHARMONIC].find((shift) => {
    const name = nameAtFifths(fifthsOf(tonicOf(key)) + shift);
    return Math.abs(name.alter) <= 2 && isInUse(key, name, conventions);
  });
}

function isInUse(key: Key, tonic: NoteName, conventions: Conventions): boolean {
  if (key.type === "scale") {
    const kind = kindOf(key.kind, key.declared, conventions);
    return kind !== undefined && !isTheoretical(tonic, kind);
  }
  const chord = chordById(key.chord);
  if (!chord) return false;
  if (!key.key) return !isTheoreticalChord(tonic, chord);
  return Math.abs(chordSignature(key.root, chord, tonic, key.keyMode)!.fifths) <= MOST_ACCIDENTALS;
}

/** More than two accidentals cannot be typed: then a note keeps its name. */
function shifted(note: WrittenNote, shift: number): WrittenNote {
  const name = nameAtFifths(fifthsOf(note) + shift);
  return shift === 0 || Math.abs(name.alter) > 2 ? note : named(note, name);
}

function named(note: WrittenNote, { letter, alter }: NoteName): WrittenNote {
  if (note.octave === undefined) return { ...note, letter, alter };
  const octave = renamed(note as Note, { letter, alter }).octave;
  return octave < 0 || octave > 9 ? note : { ...note, letter, alter, octave };
}

function withoutKey(notes: readonly WrittenNote[]): Respelling | undefined {
  if (notes.every(({ alter }) => alter === 0)) return undefined;
  const isSharp = notes.some(({ alter }) => alter > 0);
  return {
    note: (note) => {
      if (isSharp ? note.alter <= 0 : note.alter >= 0) return note;
      return shifted(note, isSharp ? -ENHARMONIC : ENHARMONIC);
    },
    fifths: (fifths) => fifths,
  };
}
