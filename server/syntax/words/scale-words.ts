import { BEFORE_LEAD, ON_NOTE } from "../lexicon/note-leads.ts";
import { tonicsMeant } from "./faulty-subject.ts";
import { kindAt } from "./kind-at.ts";
import type { ScaleMeaning, WrittenNote } from "./meaning.ts";
import { joinedLetters, type Notes, noteIn, rangeAt, registerAt } from "./note-rows.ts";
import type { NoteRun } from "./note-word.ts";
import { type Found, longest, type Words, withScaleWord } from "./words.ts";

/** A tonic and a kind; `"name" on D`; `chromatic from G4 to G6`; `chromatic` alone; `scale of D`. */
export function scaleAt(words: Words, i: number): Found<ScaleMeaning> | undefined {
  return longest([
    tonicAndKind(words, i),
    declaredScale(words, i),
    chromatic(words, i),
    rangeChromatic(words, i),
    kindOnTonic(words, i),
    scaleOf(words, i),
  ]);
}

export function tonicAndKind(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const tonic = words.note(i) ?? germanTonic(words, i);
  if (!tonic) return undefined;
  const declared = words.quoted(i + tonic.length);
  const name = declared && words.vocabulary.scale(declared.text);
  if (name !== undefined)
    return { length: tonic.length + 1, meaning: { type: "scale", tonic: tonic.note, kind: name, declared: true } };
  const kind = kindAt(words, i + tonic.length);
  if (!kind) return isNamedScale(words, i, tonic) ? loneTonic(tonic, 1) : undefined;
  const { id, unsaid } = kind.meaning;
  const length = withScaleWord(words, i, tonic.length + kind.length);
  return {
    length,
    meaning: { type: "scale", tonic: tonic.note, kind: id, declared: false, ...(unsaid ? { unsaid } : {}) },
  };
}

/** `F scale`; in English also `g scale`, but `a scale` is any. */
function isNamedScale(words: Words, i: number, tonic: NoteRun): boolean {
  if (!tonic.lower) return words.standard(i + tonic.length) === "scale";
  return words.is(i + tonic.length, "scale") && words.typed(i) !== "a";
}

/** `H moll` and `fis moll` where notes are not named so: the German word tells. A `B` may be either, and stays open. */
function germanTonic(words: Words, i: number): NoteRun | undefined {
  const typed = words.typed(i);
  if (!/^(?:[Hh]|[A-Ga-gHh](?:is|es|s))$/.test(typed) || !words.is(i + 1, "dur", "moll")) return undefined;
  const [note] = tonicsMeant(typed);
  return note && { note, length: 1, lower: typed[0]! >= "a" };
}

/** `scale of D minor`, `gamme de do majeur`; `scale of D`, `scales F`: a letter alone needs more to be a tonic. */
function scaleOf(words: Words, i: number): Found<ScaleMeaning> | undefined {
  if (words.standard(i) !== "scale") return undefined;
  const start = 1 + (words.is(i + 1, ...OF) ? 1 : 0);
  const at = i + start;
  const scale = tonicAndKind(words, at) ?? chromatic(words, at) ?? kindOnTonic(words, at);
  if (scale) return { length: start + scale.length, meaning: scale.meaning };
  const tonic =
    (start > 1 && !words.is(i + 1, "in")) || words.is(i, "scales", "sc", "sc.") ? words.note(at) : undefined;
  return tonic && !tonic.lower && tonic.note.octave === undefined ? loneTonic(tonic, start) : undefined;
}

/** What joins a scale or a chord with its tonic, in the languages of names. */
export const OF = ["of", "in", "de", "en", "di", "von", "auf", "van", "op"];

/** An upper-case letter alone is major. */
export function loneTonic(tonic: NoteRun, further: number): Found<ScaleMeaning> {
  return {
    length: tonic.length + further,
    meaning: { type: "scale", tonic: tonic.note, kind: "major", declared: false, unsaid: "major" },
  };
}

function declaredScale(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const quoted = words.quoted(i);
  const name = quoted && words.vocabulary.scale(quoted.text);
  const tonic = name !== undefined && words.is(i + 1, "on", "from", "in") ? words.note(i + 2) : undefined;
  if (name === undefined || !tonic) return undefined;
  return {
    length: withScaleWord(words, i, 2 + tonic.length),
    meaning: { type: "scale", tonic: tonic.note, kind: name, declared: true },
  };
}

/** `chromatic from G4 to G6`, `chromatic f-f'''`, `f-f''' chromatic`; `chromatic` alone. */
function chromatic(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const kind = words.phrase(i, "kind");
  if (kind?.meaning.id !== "chromatic") return undefined;
  const length = withScaleWord(words, i, kind.length);
  const led = leadIn(words, i + length);
  const at = i + length + led;
  const notes = rangeAt(words, at) ?? lettersJoined(words, at);
  if (notes) return { length: length + led + notes.length, meaning: chromaticOn(notes.notes[0]!, notes.notes[1]) };
  const lone = led ? noteIn(words, at) : undefined;
  return lone
    ? { length: length + led + lone.length, meaning: chromaticOn(lone.note) }
    : { length, meaning: { ...chromaticOn({ letter: "C", alter: 0 }), fromLowest: true } };
}

/** `f-f''' chromatic`, `low F to high F chromatic`. */
function rangeChromatic(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const notes = lettersJoined(words, i) ?? rangeAt(words, i);
  const kind = notes && words.phrase(i + notes.length, "kind");
  if (!notes || kind?.meaning.id !== "chromatic") return undefined;
  const length = withScaleWord(words, i, notes.length + kind.length);
  return { length, meaning: chromaticOn(notes.notes[0]!, notes.notes[1]) };
}

function lettersJoined(words: Words, i: number): Notes | undefined {
  const notes = joinedLetters(words, i);
  return notes?.notes.length === 2 ? notes : undefined;
}

/** @param to where it ends; it tells how far it goes where one of both has an octave */
export function chromaticOn(from: WrittenNote, to?: WrittenNote): ScaleMeaning {
  const meaning = { type: "scale", tonic: from, kind: "chromatic", declared: false } as const;
  const isReach = to !== undefined && (from.octave !== undefined || to.octave !== undefined);
  return isReach ? { ...meaning, to } : meaning;
}

/** `whole-tone scale on C`. */
function kindOnTonic(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const kind = words.phrase(i, "kind");
  if (!kind || kind.meaning.id === "chromatic") return undefined;
  const length = withScaleWord(words, i, kind.length);
  const led = leadIn(words, i + length);
  const tonic = led ? words.note(i + length + led) : undefined;
  if (!tonic) return undefined;
  const { id, unsaid } = kind.meaning;
  return {
    length: length + led + tonic.length,
    meaning: { type: "scale", tonic: tonic.note, kind: id, declared: false, ...(unsaid ? { unsaid } : {}) },
  };
}

/**
 * How many words lead to a tonic behind its kind: `on`, `from`, `starting on`, `down from low`; none before an
 * instrument.
 */
export function leadIn(words: Words, i: number): number {
  const before = words.is(i, ...BEFORE_LEAD) ? 1 : 0;
  const leads = words.is(i + before, ...ON_NOTE, "de", "di") && !words.phrase(i + before + 1, "instrument");
  return leads ? before + 1 + registerAt(words, i + before + 1) : 0;
}
