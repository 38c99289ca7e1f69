import { chordById } from "../music/chord.ts";
import type { ChordToPlay, ScaleToPlay } from "../music/exercise.ts";
import { type NoteName, printName } from "../music/note.ts";

/** `Ab major`, `"double harmonic" on D`: a scale in the words of a journal. */
export function scaleName({ kind }: Pick<ScaleToPlay, "kind">, tonic: NoteName): string {
  const on = printName(tonic);
  return kind.family === "declared" ? `"${kind.names[0]}" on ${on}` : `${on} ${kind.names[0]}`;
}

/** `D minor arpeggio`, `A dominant seventh`, `D minor broken chord`; with a key, `dominant seventh in D`. */
export function chordName(
  { chord, broken, key }: Pick<ChordToPlay, "chord" | "broken" | "key">,
  root: NoteName,
): string {
  const kind = chordById(chord)!;
  if (key) return `${kind.names[0]} in ${printName(key)}`;
  const shape = broken ? " broken chord" : kind.degrees.length === 3 ? " arpeggio" : "";
  return `${printName(root)} ${kind.names[0]}${shape}`;
}
