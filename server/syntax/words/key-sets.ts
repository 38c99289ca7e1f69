import { kindAt } from "./kind-at.ts";
import type { MeaningOf, WrittenNote } from "./meaning.ts";
import type { Phrase } from "./terms.ts";
import type { Found, Words } from "./words.ts";

type Several = MeaningOf<"several">;

/** What is practised in every key, by its name. */
type KeySetId =
  | "all major scales"
  | "all minor scales"
  | "all harmonic minor scales"
  | "all melodic minor scales"
  | "all scales"
  | "all major arpeggios"
  | "all minor arpeggios"
  | "circle of fifths"
  | "circle of fourths";

/** Twelve keys a fifth apart, from none of which a signature has more than six sharps or flats. */
const MAJOR_KEYS = "C G D A E B F# Db Ab Eb Bb F".split(" ").map(noteIn);
/** The relative minors. */
const MINOR_KEYS = "A E B F# C# G# D# Bb F C G D".split(" ").map(noteIn);

function noteIn(name: string): WrittenNote {
  const alter = name[1] === "#" ? 1 : name[1] === "b" ? -1 : 0;
  return { letter: name[0] as WrittenNote["letter"], alter };
}

/** The words of every such set, in the words given for each, parted by ` | `. */
export function keySetPhrases(words: Partial<Readonly<Record<KeySetId, string>>>): Phrase[] {
  return Object.entries(words).map(([id, said]) => ({
    words: said.split(" | "),
    meaning: keySet(id as KeySetId),
    foreign: true,
  }));
}

function keySet(called: KeySetId): Several {
  return { type: "several", subjects: subjectsOf(called), called };
}

function subjectsOf(set: KeySetId): Several["subjects"] {
  switch (set) {
    case "all major scales":
    case "circle of fifths":
      return scales("major");
    case "circle of fourths":
      return fourths(scales("major"));
    case "all minor scales":
      return scales("natural minor");
    case "all harmonic minor scales":
      return scales("harmonic minor");
    case "all melodic minor scales":
      return scales("melodic minor");
    case "all scales":
      return [...scales("major"), ...scales("natural minor")];
    case "all major arpeggios":
      return MAJOR_KEYS.map((root) => ({ type: "chord", root, chord: "major", broken: false }));
    case "all minor arpeggios":
      return MINOR_KEYS.map((root) => ({ type: "chord", root, chord: "minor", broken: false }));
  }
}

function scales(kind: string): Several["subjects"] {
  const tonics = / minor$/.test(kind) ? MINOR_KEYS : MAJOR_KEYS;
  const unsaid = kind === "natural minor" ? ({ unsaid: "natural" } as const) : {};
  return tonics.map((tonic) => ({ type: "scale", tonic, kind, declared: false, ...unsaid }));
}

/** The same keys, a fourth apart, from the first on. */
function fourths(subjects: Several["subjects"]): Several["subjects"] {
  return [subjects[0]!, ...subjects.slice(1).reverse()];
}

/** `all majors`, `circle of fifths`, `circle of 5ths harmonic minor`. */
export function keySetAt(words: Words, i: number): Found<Several> | undefined {
  const set = words.phrase(i, "several");
  const circle = set?.meaning.called?.startsWith("circle ") ? set : undefined;
  const kind = circle && kindAt(words, i + circle.length);
  if (!circle || !kind || kind.meaning.id === "chromatic") return set;
  const all = scales(kind.meaning.id);
  const subjects = circle.meaning.called === "circle of fourths" ? fourths(all) : all;
  const called = `${circle.meaning.called} ${kind.meaning.id}`;
  return { length: circle.length + kind.length, meaning: { type: "several", subjects, called } };
}
