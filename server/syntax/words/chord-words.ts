import { fold } from "./fold.ts";
import type { MeaningOf, WrittenNote } from "./meaning.ts";
import type { NoteRun } from "./note-word.ts";
import { leadIn, OF } from "./scale-words.ts";
import type { Found, Words } from "./words.ts";

const FIFTH_ABOVE: Readonly<Record<WrittenNote["letter"], WrittenNote["letter"]>> = {
  C: "G",
  D: "A",
  E: "B",
  F: "C",
  G: "D",
  A: "E",
  B: "F",
};

/** `D minor arpeggio`, `A dominant seventh`, `diminished seventh on A`, `dominant seventh in D`. */
export function chordAt(words: Words, i: number): Found<MeaningOf<"chord">> | undefined {
  const root = words.note(i);
  if (!root) return chordOnRoot(words, i) ?? dominantIn(words, i);
  const kind = words.phrase(i + root.length, "chord kind") ?? seventhAt(words, i + root.length);
  if (!kind) return undefined;
  const { id, broken } = kind.meaning;
  const length = root.length + kind.length;
  const figure = root.note.octave === undefined ? undefined : CHORDS_BY_FIGURE[root.note.octave];
  const { letter, alter } = root.note;
  if (figure !== undefined && !broken && (id === figure || (id === "major" && !isMajorSaid(words, i + root.length))))
    return { length, meaning: { type: "chord", root: { letter, alter }, chord: figure, broken } };
  return { length, meaning: { type: "chord", root: root.note, chord: id, broken } };
}

/** `F 7th`: by habit the dominant's. */
function seventhAt(words: Words, i: number): Found<MeaningOf<"chord kind">> | undefined {
  if (!words.is(i, "7th", "seventh")) return undefined;
  const length = words.standard(i + 1) === "arpeggio" ? 2 : 1;
  return { length, meaning: { type: "chord kind", id: "dominant seventh", broken: false } };
}

/** What a figure behind a root names where it is no octave: `C7`, `C6 arpeggio`. */
export const CHORDS_BY_FIGURE: Readonly<Record<number, string>> = {
  6: "major sixth",
  7: "dominant seventh",
  9: "dominant ninth",
};

function isMajorSaid(words: Words, i: number): boolean {
  return words.standard(i) === "major" || words.vocabulary.notes.major.some((said) => fold(said) === words.word(i));
}

/** `diminished seventh starting on A`, `arpeggio of D minor`. */
function chordOnRoot(words: Words, i: number): Found<MeaningOf<"chord">> | undefined {
  const kind = words.phrase(i, "chord kind");
  if (!kind) return undefined;
  const { id: chord, broken } = kind.meaning;
  const isBare = chord === "major" && !isMajorSaid(words, i);
  const isOf = isBare && words.is(i + kind.length, ...OF);
  const led = leadIn(words, i + kind.length) || (isOf ? 1 : 0);
  const start = i + kind.length + led;
  const root = words.note(start);
  if (!root || (led === 0 && !words.phrase(start + root.length, "kind") && !isLoneRoot(words, start, root)))
    return undefined;
  const mode = isBare ? words.phrase(start + root.length, "kind") : undefined;
  const isMode = mode?.meaning.id === "major" || mode?.meaning.unsaid === "natural";
  const length = start - i + root.length + (isMode ? mode!.length : 0);
  const meant = isMode && mode!.meaning.id !== "major" ? "minor" : chord;
  return { length, meaning: { type: "chord", root: root.note, chord: meant, broken } };
}

/** `dim7 B`, `arp F 72`: a capital right behind the chord, and nothing behind it or how it was played. */
function isLoneRoot(words: Words, i: number, { note, lower, length }: NoteRun): boolean {
  if (lower || note.octave !== undefined) return false;
  const end = i + length;
  return end >= words.tokens.length || /^[@♩\d]/.test(words.typed(end)) || words.phrase(end, ...WAYS) !== undefined;
}

const WAYS = ["articulation", "span", "direction", "note value", "pattern", "rhythm"] as const;

/** A dominant seventh by its key. */
function dominantIn(words: Words, i: number): Found<MeaningOf<"chord">> | undefined {
  const dominant = words.phrase(i, "chord kind");
  if (dominant?.meaning.id !== "dominant seventh" || !words.is(i + dominant.length, "in", "of")) return undefined;
  const led = dominant.length + keyLed(words, i + dominant.length);
  const key = words.note(i + led);
  if (!key) return undefined;
  const end = led + key.length;
  const mode = words.phrase(i + end, "kind");
  const minor = mode && MINOR_KEYS.includes(mode.meaning.id) ? ({ keyMode: "minor" } as const) : undefined;
  const said = mode && (minor || mode.meaning.id === "major") ? mode.length : 0;
  const { id: chord, broken } = dominant.meaning;
  return {
    length: end + said,
    meaning: { type: "chord", root: fifthAbove(key.note), chord, broken, key: key.note, ...minor },
  };
}

const MINOR_KEYS: readonly string[] = ["natural minor", "harmonic minor", "melodic minor"];

/** The words that lead from a chord to its key: `in`, `of`, `in the key of`. */
function keyLed(words: Words, i: number): number {
  const whole = words.is(i + 1, "the") && words.is(i + 2, "key") && words.is(i + 3, "of");
  return whole ? 4 : 1;
}

function fifthAbove({ letter, alter }: WrittenNote): WrittenNote {
  return { letter: FIFTH_ABOVE[letter], alter: letter === "B" ? alter + 1 : alter };
}
