import { type Note, staffStep } from "../music/notes/note.ts";
import { signatureAccidentals } from "../music/scales/signature.ts";

/**
 * The accidental that is shown before each note, in semitones; null where none is. There are no bar lines, so that
 * nothing says for how long an accidental holds: every note that differs from the signature has its own, and where a
 * letter was altered before, the next note on it that does not differ has one, too. Whoever lets accidentals hold for a
 * single note and whoever lets them hold for the line read the same.
 *
 * @param fifths the signature, sharps or, negative, flats
 */
export function shownAccidentals(notes: readonly Note[], fifths: number): readonly (number | null)[] {
  const signature = new Map(signatureAccidentals(fifths).map(({ letter, alter }) => [letter, alter]));
  const altered = new Set<number>();
  const lettersAltered = new Set<string>();
  return notes.map((note) => {
    const usual = signature.get(note.letter) ?? 0;
    const place = staffStep(note);
    if (note.alter !== usual) {
      altered.add(place);
      lettersAltered.add(note.letter);
      return note.alter;
    }
    const recalled = altered.delete(place) || lettersAltered.has(note.letter);
    lettersAltered.delete(note.letter);
    return recalled ? note.alter : null;
  });
}
