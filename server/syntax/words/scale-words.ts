import { tonicsMeant } from "./faulty-subject.ts";
import { kindAt } from "./kind-at.ts";
import type { ScaleMeaning } from "./meaning.ts";
import { HEIGHTS, rangeAt } from "./note-rows.ts";
import type { NoteRun } from "./note-word.ts";
import { type Found, longest, type Words, withScaleWord } from "./words.ts";

/** A tonic and a kind; `"name" on D`; `chromatic from G4 to G6`; `chromatic` alone; `scale of D`. */
export function scaleAt(words: Words, i: number): Found<ScaleMeaning> | undefined {
  return longest([
    tonicAndKind(words, i),
    declaredScale(words, i),
    chromatic(words, i),
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
  if (!kind) return !tonic.lower && words.standard(i + tonic.length) === "scale" ? loneTonic(tonic, 1) : undefined;
  const { id, unsaid } = kind.meaning;
  const length = withScaleWord(words, i, tonic.length + kind.length);
  return {
    length,
    meaning: { type: "scale", tonic: tonic.note, kind: id, declared: false, ...(unsaid ? { unsaid } : {}) },
  };
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
  const tonic = (start > 1 && !words.is(i + 1, "in")) || words.is(i, "scales") ? words.note(at) : undefined;
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

function chromatic(words: Words, i: number): Found<ScaleMeaning> | undefined {
  const kind = words.phrase(i, "kind");
  if (kind?.meaning.id !== "chromatic") return undefined;
  const length = withScaleWord(words, i, kind.length);
  const led = leadIn(words, i + length);
  const notes = rangeAt(words, i + length + led);
  const lone = led && !notes ? words.note(i + length + led) : undefined;
  const [from, to] = notes?.notes ?? (lone ? [lone.note] : []);
  if (!from)
    return {
      length,
      meaning: {
        type: "scale",
        tonic: { letter: "C", alter: 0 },
        kind: "chromatic",
        declared: false,
        fromLowest: true,
      },
    };
  const meaning = { type: "scale", tonic: from, kind: "chromatic", declared: false } as const;
  const end = length + led + (notes?.length ?? lone!.length);
  const isReach = to !== undefined && (from.octave !== undefined || to.octave !== undefined);
  return { length: end, meaning: isReach ? { ...meaning, to } : meaning };
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

/** What leads to a tonic behind its kind, in the languages of names. */
const ON = [
  "on",
  "from",
  "off",
  "von",
  "ab",
  "auf",
  "de",
  "sur",
  "van",
  "vanaf",
  "op",
  "di",
  "da",
  "su",
  "desde",
  "sobre",
];

/**
 * How many words lead to a tonic behind its kind: `on`, `from`, `starting on`, `off low`; none before an instrument.
 */
export function leadIn(words: Words, i: number): number {
  const before = words.is(i, "starting", "beginning") ? 1 : 0;
  const leads = words.is(i + before, ...ON) && !words.phrase(i + before + 1, "instrument");
  if (!leads) return 0;
  return before + 1 + (words.is(i + before + 1, ...HEIGHTS) ? 1 : 0);
}
