import { TONICS_THAT_ARE_WORDS } from "../lexicon/note-leads.ts";
import { chordAt } from "./chord-words.ts";
import { faultyAt } from "./faulty-subject.ts";
import { figureAt } from "./figure-words.ts";
import { keySetAt } from "./key-sets.ts";
import type { FaultySubject, MeaningOf, ScaleMeaning, SubjectMeaning } from "./meaning.ts";
import { loneTonic, scaleAt, tonicAndKind } from "./scale-words.ts";
import { type Found, longest, type Words } from "./words.ts";

/** The subject that begins at a token: a scale, a chord, a title, a figure, an activity, or one that is at fault. */
export function subjectAt(words: Words, i: number): Found<SubjectMeaning | FaultySubject> | undefined {
  return longest([
    chordAt(words, i),
    scaleAt(words, i),
    atConcertPitch(words, i),
    formsOfMinor(words, i),
    keySetAt(words, i),
    figureAt(words, i),
    freeAt(words, i),
    activityAt(words, i),
    words.phrase(i, "title"),
    faultyAt(words, i),
  ]);
}

/** `A minor, all three forms` without the comma; `all forms of A minor`. */
function formsOfMinor(words: Words, i: number): Found<MeaningOf<"several">> | undefined {
  const first = allForms(words, i);
  const of = first && words.is(i + first, "of", "on", "in") ? first + 1 : 0;
  const scale = first ? (of ? tonicAndKind(words, i + of) : undefined) : tonicAndKind(words, i);
  const lone = of && !scale ? words.note(i + of) : undefined;
  const tonic = scale?.meaning.unsaid === "natural" ? scale.meaning.tonic : lone?.note;
  if (!tonic) return undefined;
  const end = of + (scale?.length ?? lone!.length);
  const last = first ?? allForms(words, i + end);
  if (!last) return undefined;
  const subjects = MINORS.map((kind) => ({ type: "scale", tonic, kind, declared: false }) as const);
  return { length: first ? end : end + last, meaning: { type: "several", subjects } };
}

const MINORS = ["natural minor", "harmonic minor", "melodic minor"];

/** How many words say all forms, of a minor scale; undefined where none do. */
function allForms(words: Words, i: number): number | undefined {
  const start = i + (words.is(i, "in") ? 1 : 0);
  const all = words.is(start, "all") ? 1 : 0;
  const three = words.is(start + all, "three", "3") ? 1 : 0;
  const named = words.is(start + all + three, "forms", "kinds", "minors", "versions");
  return named && all + three > 0 ? start - i + all + three + 1 : undefined;
}

/** `concert Bb`, `concert eb scale`: a key as it sounds, and no concert. */
function atConcertPitch(words: Words, i: number): Found<ScaleMeaning> | undefined {
  if (!words.is(i, "concert")) return undefined;
  const lone = TONICS_THAT_ARE_WORDS.has(words.typed(i + 1)) ? undefined : words.note(i + 1); // `concert a week later`
  const scale = scaleAt(words, i + 1) ?? (lone && lone.note.octave === undefined ? loneTonic(lone, 0) : undefined);
  return scale && { length: 1 + scale.length, meaning: scale.meaning };
}

function freeAt(words: Words, i: number): Found<MeaningOf<"free">> | undefined {
  const quoted = words.is(i, "done") ? words.quoted(i + 1) : undefined;
  return quoted && { length: 2, meaning: { type: "free", words: quoted.text } };
}

/** In some languages a concerto is called so. */
const GIG = "gig";

function activityAt(words: Words, i: number): Found<MeaningOf<"activity">> | undefined {
  const activity = words.phrase(i, "activity");
  if (!activity) return undefined;
  if (activity.meaning.name === GIG && tonicAndKind(words, i + activity.length)) return undefined; // `Konzert Es-Dur`
  const on = words.is(i + activity.length, "on", "in") && !words.phrase(i + activity.length + 1, "instrument");
  const lone = on ? words.note(i + activity.length + 1) : undefined;
  const scale = on
    ? (scaleAt(words, i + activity.length + 1) ?? (lone && !lone.lower ? loneTonic(lone, 0) : undefined))
    : undefined;
  return scale
    ? { length: activity.length + 1 + scale.length, meaning: { ...activity.meaning, scale: scale.meaning } }
    : activity;
}
