import { CHORDS } from "../music/chord.ts";
import { INSTRUMENTS } from "../music/instrument.ts";
import { KINDS } from "../music/kind.ts";
import { PATTERNS } from "../music/pattern.ts";
import { type Phrase, TERMS } from "../syntax/terms.ts";

/** Words that belong to a kind of scale and do not name one by themselves, or name it in another language. */
const PARTS_OF_KINDS: readonly (readonly [string, readonly string[]])[] = [
  ["harmonic", ["harmonic minor"]],
  ["melodic", ["melodic minor"]],
  ["natural", ["natural minor"]],
  ["pentatonic", ["major pentatonic", "minor pentatonic"]],
  ["diminished scale", ["half-whole", "whole-half"]],
  ["dur", ["major"]],
  ["maj", ["major"]],
  ["majeur", ["major"]],
  ["maggiore", ["major"]],
  ["mayor", ["major"]],
  ["groot", ["major"]],
  ["moll", ["minor"]],
  ["min", ["minor"]],
  ["mineur", ["minor"]],
  ["minore", ["minor"]],
  ["menor", ["minor"]],
  ["klein", ["minor"]],
];

const TRIADS = ["major", "minor", "augmented", "diminished"];

/** Every phrase of the language itself: the terms of the format, and the names in the tables of `music/`. */
export function languagePhrases(): readonly Phrase[] {
  return [...TERMS, ...kinds(), ...partsOfKinds(), ...chords(), ...patterns(), ...instruments()];
}

function kinds(): Phrase[] {
  return KINDS.flatMap(({ id, names, sentence }) =>
    names.map((name): Phrase => {
      const unsaid = name === "minor" ? "natural" : id === "octatonic" ? "octatonic" : undefined;
      return { words: [name], meaning: { type: "kind", id, ...(unsaid ? { unsaid } : {}) }, sentence };
    }),
  );
}

function partsOfKinds(): Phrase[] {
  return PARTS_OF_KINDS.map(([word, offers]) => ({ words: [word], meaning: { type: "part of a kind", offers } }));
}

/** `minor arpeggio`, `arpeggio` alone for major, `broken chord`; a seventh chord needs no further word. */
function chords(): Phrase[] {
  return CHORDS.flatMap(({ id, names, sentence }) => {
    const triad = TRIADS.includes(id);
    const shapes = id === "major" ? [...names, ""] : names;
    const whole = shapes.flatMap((name) =>
      [
        ...(triad ? [] : [name]),
        `${name} arpeggio`,
        `${name} arpeggios`,
        `${name} arp`,
        `${name} chord`,
        `${name} triad`,
      ].map((words) => words.trim()),
    );
    const broken = shapes.map((name) => `${name} broken chord`.trim());
    return [
      { words: whole, meaning: { type: "chord kind", id, broken: false }, sentence },
      { words: broken, meaning: { type: "chord kind", id, broken: true }, sentence },
    ] satisfies Phrase[];
  });
}

function patterns(): Phrase[] {
  return PATTERNS.map(({ id, names, sentence }) => ({ words: names, meaning: { type: "pattern", id }, sentence }));
}

/** `piano` by itself is how softly it is played. */
const BEHIND_ON = ["piano"];

/** Of a name with a flat in it also the form in words: `clarinet in B flat`. */
function instruments(): Phrase[] {
  return INSTRUMENTS.map(({ id, names }) => ({
    words: [...names, ...names.filter((name) => FLAT.test(name)).map((name) => name.replace(FLAT, "$1 flat"))],
    meaning: {
      type: "instrument",
      id,
      declared: false,
      ...(BEHIND_ON.includes(id) ? ({ behindOn: true } as const) : {}),
    },
  }));
}

const FLAT = /\b([A-G])b\b/;
