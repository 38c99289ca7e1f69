import { fifthsOf, midi, type Note, type NoteName, nameAtFifths, printName } from "../music/note.ts";
import type { ClaimedNote } from "../syntax/line.ts";

/** How a player writes notes: what stands in a fix is written alike. */
export interface NoteStyle {
  readonly signs: "plain" | "signs" | "words";
  /** Double sharps as `x` or `𝄪` rather than `##`. */
  readonly cross: boolean;
  readonly lower: boolean;
  readonly octaves: boolean;
  /** Names in another language. */
  readonly nameText?: (name: NoteName) => string;
}

/** What most of the list does; signs or words go by the first note that has one. */
export function styleOf(notes: readonly ClaimedNote[], nameText?: (name: NoteName) => string): NoteStyle {
  const known = notes.filter(({ note }) => note);
  const most = (holds: (note: ClaimedNote) => boolean): boolean => 2 * known.filter(holds).length > known.length;
  const marked = known.find(({ text }) => /[#♯♭𝄪𝄫]|.b|sharp|flat/iu.test(text));
  const signs = !marked
    ? "plain"
    : /[♯♭𝄪𝄫]/u.test(marked.text)
      ? "signs"
      : /sharp|flat/iu.test(marked.text)
        ? "words"
        : "plain";
  return {
    signs,
    cross: known.some(({ text }) => /x|𝄪/u.test(text)),
    lower: most(({ text }) => /^[a-g]/u.test(text)),
    octaves: most(({ note }) => note?.octave !== undefined),
    nameText,
  };
}

const SIGNS: Readonly<Record<NoteStyle["signs"], readonly [sharp: string, flat: string]>> = {
  plain: ["#", "b"],
  signs: ["♯", "♭"],
  words: [" sharp", " flat"],
};

function accidentals(alter: number, { signs, cross }: NoteStyle): string {
  const [sharp, flat] = SIGNS[signs];
  if (signs === "words" && Math.abs(alter) === 2) return ` double${alter > 0 ? sharp : flat}`;
  if (alter === 2 && cross) return signs === "signs" ? "𝄪" : "x";
  return (alter > 0 ? sharp : flat).repeat(Math.abs(alter));
}

/** The same key by another name: the octave goes with the letter. */
export function renamed(note: Note, name: NoteName): Note {
  const octaves = [note.octave, note.octave - 1, note.octave + 1];
  return { ...name, octave: octaves.find((octave) => midi({ ...name, octave }) === midi(note)) ?? note.octave };
}

/** Three sharps or flats cannot be typed: the same key by the next letter, twelve fifths nearer. */
function typable(note: Note): Note {
  if (Math.abs(note.alter) <= 2) return note;
  return renamed(note, nameAtFifths(fifthsOf(note) - 12 * Math.sign(note.alter)));
}

/** A note as the player would write it; with its octave number in the styles that have one. */
export function writtenNote(written: Note, style: NoteStyle): string {
  const note = typable(written);
  const { signs, lower, octaves, nameText } = style;
  // `F sharp 4` is no note: with an octave, words give way to signs.
  const plain: NoteStyle = octaves && signs === "words" ? { ...style, signs: "plain" } : style;
  const letter = lower ? note.letter.toLowerCase() : note.letter;
  const name = nameText ? nameText(note) : letter + accidentals(note.alter, plain);
  return octaves ? name + note.octave : name;
}

/** The style for what replaces one note: that note's own letter case and octave number, where it is a note. */
export function styleInPlaceOf({ note, text }: ClaimedNote, style: NoteStyle): NoteStyle {
  if (!note) return style;
  return { ...style, lower: /^[a-g]/u.test(text), octaves: note.octave !== undefined };
}

/** A name in a message. */
export function shownName(name: NoteName, { nameText }: Pick<NoteStyle, "nameText">): string {
  return nameText ? nameText(name) : printName(name);
}
