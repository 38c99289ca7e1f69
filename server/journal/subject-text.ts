import { chordById } from "../music/chord.ts";
import { printName } from "../music/note.ts";
import { nameKey } from "../syntax/fold.ts";
import type { MeaningOf, ScaleMeaning, WrittenNote } from "../syntax/meaning.ts";
import type { Subject } from "./model.ts";

/** A subject in the words that are shown: `D melodic minor`, `A dominant seventh`, a title without quotes. */
export function subjectText(subject: Subject): string {
  switch (subject.type) {
    case "scale":
      return scaleText(subject);
    case "chord":
      return chordText(subject);
    case "title":
      return subject.title;
    case "chain":
      return subject.scales.map(scaleText).join(" > ");
    case "figure":
      return figureText(subject);
    case "activity":
      return subject.scale ? `${subject.name} on ${scaleText(subject.scale)}` : subject.name;
    case "free":
      return subject.words;
  }
}

/** What makes two subjects the same, whatever the words they were named by. */
export function subjectKey(subject: Subject): string {
  return `${subject.type}: ${nameKey(subjectText(subject)).replace(/\boctatonic\b/, "half-whole")}`;
}

export function scaleText({ tonic, kind, declared, to, fromLowest }: ScaleMeaning): string {
  if (fromLowest) return kind;
  if (declared) return `"${kind}" on ${writtenName(tonic)}`;
  if (to) return `${kind} from ${writtenName(tonic)} to ${writtenName(to)}`;
  return `${writtenName(tonic)} ${kind}`;
}

function chordText({ root, chord, broken }: MeaningOf<"chord">): string {
  const triad = chordById(chord)?.degrees.length === 3;
  const shape = broken ? " broken chord" : triad ? " arpeggio" : "";
  return `${writtenName(root)} ${chord}${shape}`;
}

function figureText({ figure, notes, scale }: MeaningOf<"figure">): string {
  const names = notes.map(writtenName);
  if (figure === "notes") return `notes ${names.join(" ")}`;
  if (figure === "trill") return names[1] ? `trill ${names[0]} with ${names[1]}` : `trill ${names[0]}`;
  if (scale) return `long tones on ${scaleText(scale)}`;
  return names.length ? `long tones on ${names.join(" ")}` : "long tones";
}

function writtenName(note: WrittenNote): string {
  return `${printName(note)}${note.octave ?? ""}`;
}
