import { chordById } from "../music/chords/chord.ts";
import { ENGLISH_NAMES, type NoteNames, noteText } from "../music/notes/note-names.ts";
import { nameKey } from "../syntax/words/fold.ts";
import type { MeaningOf, ScaleMeaning, WrittenNote } from "../syntax/words/meaning.ts";
import type { Subject } from "./model.ts";

/** A subject in the words that are shown: `D melodic minor`, `A dominant seventh`, a title without quotes. */
export function subjectText(subject: Subject, names: NoteNames): string {
  switch (subject.type) {
    case "scale":
      return scaleText(subject, names);
    case "chord":
      return chordText(subject, names);
    case "title":
      return subject.title;
    case "chain":
      return subject.scales.map((scale) => scaleText(scale, names)).join(" > ");
    case "several":
      return subject.called ?? subject.subjects.map((each) => subjectText(each, names)).join(", ");
    case "figure":
      return figureText(subject, names);
    case "activity":
      return subject.scale ? `${subject.name} on ${scaleText(subject.scale, names)}` : subject.name;
    case "technique":
      return subject.notes ? `${subject.name} on ${notesText(subject.notes, names)}` : subject.name;
    case "free":
      return subject.words;
  }
}

/** The same as the history calls it: a title that is short for another by that one. */
export function subjectName(subject: Subject, names: NoteNames): string {
  return (subject.type === "title" && subject.of) || subjectText(subject, names);
}

/** What makes two subjects the same, whatever the words they were named by, in whatever language. */
export function subjectKey(subject: Subject): string {
  return `${subject.type}: ${nameKey(subjectName(subject, ENGLISH_NAMES)).replace(/\boctatonic\b/, "half-whole")}`;
}

export function scaleText({ tonic, kind, declared, to, fromLowest }: ScaleMeaning, names: NoteNames): string {
  if (fromLowest) return kind;
  if (declared) return `"${kind}" on ${noteText(tonic, names)}`;
  if (to) return `${kind} from ${noteText(tonic, names)} to ${noteText(to, names)}`;
  return names.key(tonic, kind, octaveText(tonic, names));
}

function chordText(chord: MeaningOf<"chord">, names: NoteNames): string {
  return names.key(chord.root, chordWords(chord), octaveText(chord.root, names));
}

/** A chord without its root, in English: `minor arpeggio`, `major broken chord`, `dominant seventh`. */
export function chordWords({ chord, broken }: Pick<MeaningOf<"chord">, "chord" | "broken">): string {
  const triad = chordById(chord)?.degrees.length === 3;
  return chord + (broken ? " broken chord" : triad ? " arpeggio" : "");
}

/** A tonic that has an octave is spelled as in a list. */
function octaveText(tonic: WrittenNote, names: NoteNames): string | undefined {
  return tonic.octave === undefined ? undefined : noteText(tonic, names);
}

function notesText(notes: readonly WrittenNote[], names: NoteNames): string {
  return notes.map((note) => noteText(note, names)).join(" ");
}

function figureText({ figure, notes, scale }: MeaningOf<"figure">, names: NoteNames): string {
  const written = notes.map((note) => noteText(note, names));
  if (figure === "notes") return `notes ${notesText(notes, names)}`;
  if (figure === "trill") return written[1] ? `trill ${written[0]} with ${written[1]}` : `trill ${written[0]}`;
  if (figure !== "long tones") return written.length ? `${figure} on ${written.join(" ")}` : figure;
  if (scale) return `long tones on ${scaleText(scale, names)}`;
  return written.length ? `long tones on ${notesText(notes, names)}` : "long tones";
}
