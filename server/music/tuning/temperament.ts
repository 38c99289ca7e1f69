import { fifthsOf, midi, modulo, type Note, type NoteName, nameAtFifths, pitchClass } from "../notes/note.ts";
import { temperamentTexts } from "./temperament-texts.ts";

/** The cents of a ratio of frequencies: 1200 to the octave (A. J. Ellis, 1885). */
export function centsOf(ratio: number): number {
  return 1200 * Math.log2(ratio);
}

/** Cents of the intervals without beats, from their ratios (common practice). */
export const PURE = { fifth: centsOf(3 / 2), majorThird: centsOf(5 / 4), minorThird: centsOf(6 / 5) } as const;

/** By how much twelve pure fifths pass seven octaves, in cents: 23.46. */
export const PYTHAGOREAN_COMMA = 12 * PURE.fifth - 7 * 1200;
/** By how much four pure fifths pass two octaves and a pure major third, in cents: 21.51. */
export const SYNTONIC_COMMA = centsOf(81 / 80);
const SCHISMA = PYTHAGOREAN_COMMA - SYNTONIC_COMMA;

/** The circle from its open end: the fifth on G# leads back to E flat. */
const CIRCLE = ["Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#", "C#", "G#"] as const;
type Key = (typeof CIRCLE)[number];
/** Places on the line of fifths of the first and the last of the circle. */
const E_FLAT = -3;
const ALL_BUT_THE_LAST = CIRCLE.slice(0, -1);

/** Fifths that are narrower than pure, each named by its lower note, and by how many cents. */
interface Narrowed {
  readonly cents: number;
  readonly fifths: readonly Key[];
}

interface TemperamentKind<Id extends string = string> {
  readonly id: Id;
  /** All ways to write it; the first is the one to show. Case, spaces and hyphens make no difference. */
  readonly names: readonly [string, ...string[]];
  /** What is not named is pure. The fifth G# to E flat is what the other eleven leave, named here or not. */
  readonly narrowed: readonly Narrowed[];
  /** Its fifths in words; which of them is a wolf is worked out. */
  readonly sentence: string;
}

/**
 * Every temperament that goes by fifths, for twelve keys to the octave. The divisions of the comma are those of common
 * practice (J. M. Barbour, Tuning and Temperament, 1951, is the usual account); test/reference holds the cents of each.
 */
const BY_FIFTHS = [
  {
    id: "equal",
    names: ["equal", "equal temperament", "12-TET"],
    narrowed: [{ cents: PYTHAGOREAN_COMMA / 12, fifths: CIRCLE }],
    sentence: "All twelve fifths are narrowed by a twelfth of the Pythagorean comma, so that every key sounds alike.",
  },
  {
    id: "vallotti",
    names: ["Vallotti"],
    narrowed: [{ cents: PYTHAGOREAN_COMMA / 6, fifths: ["F", "C", "G", "D", "A", "E"] }],
    sentence: "The six fifths from F to B are narrowed by a sixth of the Pythagorean comma; the other six are pure.",
  },
  {
    id: "young ii",
    names: ["Young II", "Young 2", "Young no. 2"],
    narrowed: [{ cents: PYTHAGOREAN_COMMA / 6, fifths: ["C", "G", "D", "A", "E", "B"] }],
    sentence: "The six fifths from C to F# are narrowed by a sixth of the Pythagorean comma; the other six are pure.",
  },
  {
    id: "werckmeister iii",
    names: ["Werckmeister III", "Werckmeister 3", "Werckmeister no. 3"],
    narrowed: [{ cents: PYTHAGOREAN_COMMA / 4, fifths: ["C", "G", "D", "B"] }],
    sentence:
      "The fifths C to G, G to D, D to A and B to F# are narrowed by a quarter of the Pythagorean comma; the other eight are pure.",
  },
  {
    id: "kellner",
    names: ["Kellner", "Kellner's Bach tuning"],
    narrowed: [{ cents: PYTHAGOREAN_COMMA / 5, fifths: ["C", "G", "D", "A", "B"] }],
    sentence:
      "The fifths C to G, G to D, D to A, A to E and B to F# are narrowed by a fifth of the Pythagorean comma; the other seven are pure.",
  },
  {
    id: "neidhardt i",
    names: ["Neidhardt I", "Neidhardt 1", "Neidhardt no. 1"],
    narrowed: [
      { cents: PYTHAGOREAN_COMMA / 6, fifths: ["C", "G", "D", "A"] },
      { cents: PYTHAGOREAN_COMMA / 12, fifths: ["E", "B", "G#", "Eb"] },
    ],
    sentence:
      "Neidhardt's first of 1724: the four fifths from C to E are narrowed by a sixth of the Pythagorean comma, those on E, B, G# and Eb by a twelfth; the other four are pure.",
  },
  {
    id: "neidhardt ii",
    names: ["Neidhardt II", "Neidhardt 2", "Neidhardt no. 2"],
    narrowed: [
      { cents: PYTHAGOREAN_COMMA / 6, fifths: ["C", "G", "D"] },
      { cents: PYTHAGOREAN_COMMA / 12, fifths: ["A", "B", "F#", "C#", "Bb", "F"] },
    ],
    sentence:
      "Neidhardt's second of 1724: the three fifths from C to A are narrowed by a sixth of the Pythagorean comma, those on A, B, F#, C#, Bb and F by a twelfth; the other three are pure.",
  },
  {
    id: "kirnberger ii",
    names: ["Kirnberger II", "Kirnberger 2", "Kirnberger no. 2"],
    narrowed: [
      { cents: SYNTONIC_COMMA / 2, fifths: ["D", "A"] },
      { cents: SCHISMA, fifths: ["F#"] },
    ],
    sentence:
      "The fifths D to A and A to E are narrowed by half the syntonic comma, which makes C to E pure, and F# to C# by the schisma; the other nine are pure.",
  },
  {
    id: "kirnberger iii",
    names: ["Kirnberger III", "Kirnberger 3", "Kirnberger no. 3"],
    narrowed: [
      { cents: SYNTONIC_COMMA / 4, fifths: ["C", "G", "D", "A"] },
      { cents: SCHISMA, fifths: ["F#"] },
    ],
    sentence:
      "The four fifths from C to E are narrowed by a quarter of the syntonic comma, which makes C to E pure, and F# to C# by the schisma; the other seven are pure.",
  },
  {
    id: "sixth-comma meantone",
    names: ["sixth-comma meantone", "1/6-comma meantone", "sixth-comma", "1/6-comma", "meantone 1/6"],
    narrowed: [{ cents: SYNTONIC_COMMA / 6, fifths: ALL_BUT_THE_LAST }],
    sentence: "The eleven fifths from Eb to G# are narrowed by a sixth of the syntonic comma.",
  },
  {
    id: "fifth-comma meantone",
    names: ["fifth-comma meantone", "1/5-comma meantone", "fifth-comma", "1/5-comma", "meantone 1/5"],
    narrowed: [{ cents: SYNTONIC_COMMA / 5, fifths: ALL_BUT_THE_LAST }],
    sentence: "The eleven fifths from Eb to G# are narrowed by a fifth of the syntonic comma.",
  },
  {
    id: "quarter-comma meantone",
    names: ["quarter-comma meantone", "1/4-comma meantone", "quarter-comma", "1/4-comma", "meantone 1/4"],
    narrowed: [{ cents: SYNTONIC_COMMA / 4, fifths: ALL_BUT_THE_LAST }],
    sentence:
      "The eleven fifths from Eb to G# are narrowed by a quarter of the syntonic comma, so that eight major thirds are pure.",
  },
  {
    id: "pythagorean",
    names: ["Pythagorean", "Pythagorean tuning"],
    narrowed: [],
    sentence: "The eleven fifths from Eb to G# are pure.",
  },
] as const satisfies readonly TemperamentKind[];

type IdByFifths = (typeof BY_FIFTHS)[number]["id"];

/** How the twelve keys of the octave stand to each other. Just intonation stands on a tonic. */
export type Temperament =
  | { readonly id: IdByFifths }
  | { readonly id: "just"; readonly tonic: NoteName }
  /** A journal's own: cents above C of the keys C to B, rising from 0. */
  | { readonly id: "declared"; readonly name: string; readonly cents: readonly number[] };

/** The pitch of A4, in hertz, and how the other keys stand to it. */
export interface Tuning {
  readonly a: number;
  readonly temperament: Temperament;
}

export const EQUAL: Temperament = { id: "equal" };

/** What is meant where nothing is said: A4 at 440 Hz (ISO 16), equal temperament. */
export const CONCERT_TUNING: Tuning = { a: 440, temperament: EQUAL };

export const TEMPERAMENTS: readonly TemperamentKind<IdByFifths>[] = BY_FIFTHS;

/** The twelve semitones above the tonic in just intonation (5-limit, A. Malcolm's monochord of 1721). */
const JUST_RATIOS = [1, 16 / 15, 9 / 8, 6 / 5, 5 / 4, 4 / 3, 45 / 32, 3 / 2, 8 / 5, 5 / 3, 16 / 9, 15 / 8];
/** The ratio of a pure interval of so many semitones, up or down: 3/2 for a fifth, 3 for a twelfth. */
export function pureRatio(semitones: number): number {
  return JUST_RATIOS[modulo(semitones, 12)]! * 2 ** Math.floor(semitones / 12);
}

/** Where these stand on the line of fifths, from the tonic: on C they are C Db D Eb E F F# G Ab A Bb B. */
const JUST_FIFTHS = [0, -5, 2, -3, 4, -1, 6, 1, -4, 3, -2, 5];
/** The tonics that are offered; any other will do. */
export const JUST_TONICS = ["C", "G", "D", "A", "E", "F", "Bb", "Eb"] as const;
const JUST_SENTENCE =
  "Each note makes a ratio of small whole numbers with the tonic: 16/15, 9/8, 6/5, 5/4, 4/3, 45/32, 3/2, 8/5, 5/3, 16/9, 15/8.";

function kindOf(id: IdByFifths): TemperamentKind {
  return BY_FIFTHS.find((kind) => kind.id === id)!;
}

/** `Vallotti`, `just on D`: the tonic as it is printed where names are English. A journal's own name is as typed. */
export function temperamentText(temperament: Temperament, printed: (name: NoteName) => string): string {
  if (temperament.id === "declared") return temperament.name;
  return temperament.id === "just" ? `just on ${printed(temperament.tonic)}` : kindOf(temperament.id).names[0];
}

/** What is tempered in it, in a sentence. */
export function temperamentSentence(temperament: Temperament): string {
  if (temperament.id === "declared") {
    return temperamentTexts.declared(temperament.cents.map((each) => Number(each.toFixed(1))));
  }
  return temperament.id === "just" ? JUST_SENTENCE : kindOf(temperament.id).sentence;
}

/** The names of the twelve keys, each a fifth above the one before; from the last a fifth leads back to the first. */
function keysByFifths(temperament: Temperament): readonly NoteName[] {
  const places =
    temperament.id === "just"
      ? JUST_FIFTHS.map((place) => place + fifthsOf(temperament.tonic)).sort((a, b) => a - b)
      : CIRCLE.map((_, i) => i + E_FLAT);
  return places.map(nameAtFifths);
}

/** By how many cents each key, C to B, departs from equal temperament; A is 0. */
export function centsFromEqual(temperament: Temperament): readonly number[] {
  const keys = departures(temperament);
  const a = keys[pitchClass({ letter: "A", alter: 0 })]!;
  return keys.map((cents) => cents - a);
}

function departures(temperament: Temperament): readonly number[] {
  if (temperament.id === "declared") return temperament.cents.map((cents, key) => cents - 100 * key);
  return temperament.id === "just" ? fromRatios(temperament.tonic) : fromFifths(kindOf(temperament.id));
}

function fromRatios(tonic: NoteName): number[] {
  return JUST_RATIOS.map((_, key) => {
    const above = modulo(key - pitchClass(tonic), 12);
    return centsOf(JUST_RATIOS[above]!) - 100 * above;
  });
}

function fromFifths({ narrowed }: TemperamentKind): number[] {
  const keys: number[] = [];
  let cents = 0;
  for (const [i, key] of CIRCLE.entries()) {
    keys[pitchClass(nameAtFifths(i + E_FLAT))] = cents;
    const by = narrowed.find(({ fifths }) => fifths.includes(key))?.cents ?? 0;
    cents += PURE.fifth - by - 700;
  }
  return keys;
}

/** Two keys, the lower one first, and by how many cents they are wider than pure; narrower is negative. */
export interface FromPure {
  readonly lower: NoteName;
  readonly upper: NoteName;
  readonly cents: number;
}

/** The twelve fifths, in the order of the circle. */
export function fifthsFromPure(temperament: Temperament): readonly FromPure[] {
  return onEachKey(temperament, 1, 700 - PURE.fifth);
}

/** The twelve major thirds, in the order of the circle; where a key is missing its neighbour sounds: G# to C. */
export function majorThirdsFromPure(temperament: Temperament): readonly FromPure[] {
  return onEachKey(temperament, 4, 400 - PURE.majorThird);
}

/** From each key to the one so many fifths on. `equal` is how far that is from pure in equal temperament, in cents. */
function onEachKey(temperament: Temperament, fifths: number, equal: number): FromPure[] {
  const cents = centsFromEqual(temperament);
  const keys = keysByFifths(temperament);
  return keys.map((lower, i) => {
    const upper = keys[(i + fifths) % keys.length]!;
    return { lower, upper, cents: equal + cents[pitchClass(upper)]! - cents[pitchClass(lower)]! };
  });
}

/** Far below what is heard: half a comma, added up in other ways, is half a comma. */
const ROUNDING = 1e-9;

/** Whether a fifth is a wolf: further from pure than half a syntonic comma, 10.75 cents. Common practice, no source. */
export function isWolf(cents: number): boolean {
  return Math.abs(cents) > SYNTONIC_COMMA / 2 + ROUNDING;
}

export function wolves(temperament: Temperament): readonly FromPure[] {
  return fifthsFromPure(temperament).filter(({ cents }) => isWolf(cents));
}

/** MIDI 1.0: A4. */
const A4 = 69;

/** Hertz of a note that sounds so many cents from its place in equal temperament. */
export function hertz(note: Note, cents: number, a: number): number {
  return hertzOfKey(midi(note), cents, a);
}

/** The same of a key by its MIDI number. */
export function hertzOfKey(key: number, cents: number, a: number): number {
  return a * 2 ** ((key - A4 + cents / 100) / 12);
}

/** Hertz of a sounding note. Whatever its name, it sounds the key that it lies on: D flat the C sharp key. */
export function frequencyOf(note: Note, { a, temperament }: Tuning): number {
  return hertz(note, centsFromEqual(temperament)[pitchClass(note)]!, a);
}
