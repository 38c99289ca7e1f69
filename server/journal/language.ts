import { CHORDS } from "../music/chords/chord.ts";
import { INSTRUMENTS } from "../music/instruments/instruments.ts";
import { inLanguage, NOTE_NAMES, type NoteNames } from "../music/notes/note-names.ts";
import { PATTERNS, VARIANTS } from "../music/patterns/pattern.ts";
import { KINDS } from "../music/scales/kinds.ts";
import { type Phrase, TERMS } from "../syntax/words/terms.ts";

/** Words that belong to a kind of scale and do not name one by themselves, or name it in another language. */
const PARTS_OF_KINDS: readonly (readonly [string, readonly string[]])[] = [
  ["harmonic", ["harmonic minor"]],
  ["melodic", ["melodic minor"]],
  ["natural", ["natural minor"]],
  ["pentatonic", ["major pentatonic", "minor pentatonic"]],
  ["diminished scale", ["half-whole", "whole-half"]],
  ["symmetric diminished", ["half-whole", "whole-half"]],
  ["diminished", ["diminished arpeggio", "diminished seventh", "half-whole", "whole-half"]],
  ["dominant", ["dominant seventh", "mixolydian"]],
  ["ascending melodic minor", ["melodic minor, up", "jazz minor"]],
  ["maj", ["major"]],
  ["min", ["minor"]],
  ...NOTE_NAMES.flatMap(({ major, minor }) => [
    ...major.map((said) => [said, ["major"]] as const),
    ...minor.map((said) => [said, ["minor"]] as const),
  ]),
];

const TRIADS = ["major", "minor", "augmented", "diminished"];
/** Triads that are called common chords. */
const COMMON = ["major", "minor"];

/**
 * Every phrase of the language itself: the terms of the format, and the names in the tables of `music/`. Major and
 * minor are called as notes are named, and in English.
 */
export function languagePhrases(names: NoteNames): readonly Phrase[] {
  return [
    ...TERMS,
    ...kinds(names),
    ...partsOfKinds(names),
    ...chordPhrases(names),
    ...patterns(),
    ...variants(),
    ...instruments(),
  ];
}

function kinds(noteNames: NoteNames): Phrase[] {
  return KINDS.flatMap(({ id, names, sentence }) =>
    names.map((name): Phrase => {
      const unsaid = name === "minor" ? "natural" : id === "octatonic" ? "octatonic" : undefined;
      const words = inLanguage(name, noteNames);
      return { words, meaning: { type: "kind", id, ...(unsaid ? { unsaid } : {}) }, sentence };
    }),
  );
}

function partsOfKinds({ major, minor }: NoteNames): Phrase[] {
  const own = ["major", "minor", ...major, ...minor];
  const foreign = NOTE_NAMES.flatMap((names) => [...names.major, ...names.minor]);
  return PARTS_OF_KINDS.filter(([word]) => !own.includes(word)).map(([word, offers]) => ({
    words: [word],
    meaning: { type: "part of a kind", offers },
    ...(foreign.includes(word) ? { foreign: true } : {}),
  }));
}

/** `minor arpeggio`, `arpeggio` alone for major, `broken chord`; a seventh chord needs no further word. */
export function chordPhrases(noteNames: NoteNames): Phrase[] {
  return CHORDS.flatMap(({ id, names, shortNames = [], sentence }) => {
    const triad = TRIADS.includes(id);
    const shapes = [...names, ...shortNames, ...(id === "major" ? [""] : [])];
    const whole = shapes.flatMap((name) =>
      [
        ...(triad || shortNames.includes(name) ? [] : [name]),
        `${name} arpeggio`,
        `${name} arpeggios`,
        `${name} arp`,
        `${name} chord`,
        `${name} triad`,
        ...(COMMON.includes(id) ? [`${name} common chord`] : []),
      ].flatMap((words) => inLanguage(words.trim(), noteNames)),
    );
    const broken = shapes.flatMap((name) => inLanguage(`${name} broken chord`.trim(), noteNames));
    return [
      { words: whole, meaning: { type: "chord kind", id, broken: false }, sentence },
      { words: broken, meaning: { type: "chord kind", id, broken: true }, sentence },
    ] satisfies Phrase[];
  });
}

function patterns(): Phrase[] {
  return PATTERNS.map(({ id, names, sentence }) => ({ words: names, meaning: { type: "pattern", id }, sentence }));
}

function variants(): Phrase[] {
  return VARIANTS.map(({ id, names, sentence }) => ({ words: names, meaning: { type: "variant", id }, sentence }));
}

/** `piano` by itself is how softly it is played; a treble is a clef, and a descant a part of a hymn. */
const BEHIND_ON = ["piano", "pianoforte", "treble", "descant"];

/** Of a name with a flat in it also the form in words: `clarinet in B flat`. */
function instruments(): Phrase[] {
  return INSTRUMENTS.flatMap(({ id, names }) => {
    const words = [...names, ...names.filter((name) => FLAT.test(name)).map((name) => name.replace(FLAT, "$1 flat"))];
    const meaning = { type: "instrument", id, declared: false } as const;
    const behind = words.filter((word) => BEHIND_ON.includes(word));
    const free = words.filter((word) => !BEHIND_ON.includes(word));
    return [
      ...(free.length > 0 ? [{ words: free, meaning }] : []),
      ...(behind.length > 0 ? [{ words: behind, meaning: { ...meaning, behindOn: true as const } }] : []),
    ];
  });
}

const FLAT = /\b([A-G])b\b/;
