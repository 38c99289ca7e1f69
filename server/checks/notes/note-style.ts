import { fifthsOf, midi, type Note, type NoteName, nameAtFifths } from "../../music/notes/note.ts";
import type { NoteNames, Spelling } from "../../music/notes/note-names.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { withoutAccents } from "../../syntax/words/fold.ts";

/** How a player writes notes: what stands in a fix is written alike. */
export interface NoteStyle {
  /** The journal's own. */
  readonly names: NoteNames;
  readonly spelling: Spelling;
  /** Double sharps as `x` or `𝄪` rather than `##`. */
  readonly cross: boolean;
  readonly lower: boolean;
  readonly octaves: "none" | "numbers" | "strokes";
}

/** What most of the list does; signs or words go by the first note that has one. */
export function styleOf(notes: readonly ClaimedNote[], names: NoteNames): NoteStyle {
  const known = notes.filter(({ note }) => note);
  const most = (holds: (note: ClaimedNote) => boolean): boolean => 2 * known.filter(holds).length > known.length;
  const marked = known.find(({ note }) => note!.alter !== 0)?.text ?? "";
  return {
    names,
    spelling: /[♯♭𝄪𝄫]/u.test(marked) ? "signs" : isSpoken(marked, names) ? "words" : "plain",
    cross: known.some(({ text }) => /x|𝄪/u.test(text)),
    lower: most(({ text }) => isLower(text)),
    octaves: most(hasOctave) ? (known.some(({ text }) => hasStrokes(text)) ? "strokes" : "numbers") : "none",
  };
}

/** `F sharp`, `F-sharp`, `fa dièse`: a word behind the name that is an accidental. */
function isSpoken(text: string, { accidentals: spoken }: NoteNames): boolean {
  return text.split(/[\s-]+/u).some((word, i) => i > 0 && Boolean(spoken.get(withoutAccents(word))));
}

function isLower(text: string): boolean {
  return /^\p{Ll}/u.test(text);
}

function hasOctave({ note }: ClaimedNote): boolean {
  return note?.octave !== undefined;
}

/** Whether the octave of a note, or of the last one of several, is told by strokes. */
export function hasStrokes(text: string): boolean {
  return /['’‘′]$/u.test(text);
}

const SIGNS = { plain: ["#", "b"], signs: ["♯", "♭"], words: [" sharp", " flat"] } as const;

/** An accidental in English. */
function accidentals(alter: number, spelling: Spelling, cross: boolean): string {
  const [sharp, flat] = SIGNS[spelling];
  if (spelling === "words" && Math.abs(alter) === 2) return ` double${alter > 0 ? sharp : flat}`;
  if (alter === 2 && cross) return spelling === "signs" ? "𝄪" : "x";
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

/** A note as the player would write it; with its octave in the styles that have one. */
export function writtenNote(written: Note, style: NoteStyle): string {
  const note = typable(written);
  const { names, cross, lower, octaves } = style;
  // `F sharp 4` is no note: with an octave, words give way to signs.
  const spelling = octaves !== "none" && style.spelling === "words" ? "plain" : style.spelling;
  const english = names.words === null;
  const name = english ? note.letter + accidentals(note.alter, spelling, cross) : names.name(note, spelling);
  const octave = octaveText(note.octave, octaves);
  // In English strokes are read behind small letters.
  return cased(name, lower || (english && octave.startsWith("'")), names) + octave;
}

/** Small letters stay small in a name, and syllables as they are shown. */
function cased(name: string, lower: boolean, { words, accidentals: spoken }: NoteNames): string {
  if (words !== null && spoken.size > 0) return name;
  return lower ? name[0]!.toLowerCase() + name.slice(1) : name;
}

/** Strokes count from the octave of middle C; lower ones have numbers. */
function octaveText(octave: number, octaves: NoteStyle["octaves"]): string {
  if (octaves === "none") return "";
  return octaves === "strokes" && octave >= MIDDLE ? "'".repeat(octave - MIDDLE + 1) : String(octave);
}

const MIDDLE = 4;

/** The style for what replaces one note: that note's own letter case and octave, where it is a note. */
export function styleInPlaceOf(claimed: ClaimedNote, style: NoteStyle): NoteStyle {
  if (!claimed.note) return style;
  const octaves = !hasOctave(claimed) ? "none" : hasStrokes(claimed.text) ? "strokes" : "numbers";
  return { ...style, lower: isLower(claimed.text), octaves };
}

/** A name in a message. */
export function shownName(name: NoteName, { names }: Pick<NoteStyle, "names">): string {
  return names.name(name);
}
