import { chordById } from "../../music/chords/chord.ts";
import type { NoteName } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";

/** `Ab major`, `"double harmonic" on D`: a scale in the words of a journal. */
export function scaleName({ kind }: Pick<ScaleToPlay, "kind">, tonic: NoteName, names: NoteNames): string {
  if (kind.family === "declared") return `"${kind.names[0]}" on ${names.name(tonic)}`;
  return names.key(tonic, kind.names[0]!);
}

/** `D minor arpeggio`, `A dominant seventh`, `D minor broken chord`; with a key, `dominant seventh in D`. */
export function chordName(
  { chord, broken, key, keyMode }: Pick<ChordToPlay, "chord" | "broken" | "key" | "keyMode">,
  root: NoteName,
  names: NoteNames,
): string {
  const kind = chordById(chord)!;
  if (key) return `${kind.names[0]} in ${keyMode ? names.key(key, keyMode) : names.name(key)}`;
  const shape = broken ? " broken chord" : kind.degrees.length === 3 ? " arpeggio" : "";
  return names.key(root, kind.names[0] + shape);
}
