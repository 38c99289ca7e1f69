import { fifthsOf, type NoteName, nameAtFifths, pitchClass, sameName } from "./note.ts";

/** A note that was given and a set has at the same pitch by another letter. */
export interface Respelled {
  readonly given: NoteName;
  readonly written: NoteName;
}

/** How notes that were given lie in a scale or a chord. */
export interface NoteFit {
  /** Given, and at no pitch of it. */
  readonly outside: readonly NoteName[];
  /** Its notes at pitches that were not given. */
  readonly notGiven: readonly NoteName[];
  readonly respelled: readonly Respelled[];
}

/** Each name once, in the order in which they first stand. */
export function distinctNames(names: readonly NoteName[]): NoteName[] {
  return names.filter((name, at) => names.findIndex((each) => sameName(each, name)) === at);
}

/** Each pitch once, by the name that stands first. */
function distinctPitches(names: readonly NoteName[]): NoteName[] {
  return names.filter((name, at) => names.findIndex((each) => pitchClass(each) === pitchClass(name)) === at);
}

/**
 * Holds notes against a set.
 *
 * @param given each name once
 * @param own the set's names; of two for one pitch the first is the one to show, and either is right
 * @param anyLetter whether any name of a pitch is right, as in a whole-tone scale
 */
export function fitOf(given: readonly NoteName[], own: readonly NoteName[], anyLetter = false): NoteFit {
  const pitches = new Set(given.map(pitchClass));
  const respelled = given.flatMap((name) => {
    const written = own.find((each) => pitchClass(each) === pitchClass(name));
    const isRight = anyLetter || own.some((each) => sameName(each, name));
    return written && !isRight ? [{ given: name, written }] : [];
  });
  return {
    outside: given.filter((name) => !own.some((each) => pitchClass(each) === pitchClass(name))),
    notGiven: distinctPitches(own).filter((name) => !pitches.has(pitchClass(name))),
    respelled,
  };
}

/** Every letter with up to two accidentals, double flats first: the places from Fbb to B## on the line of fifths. */
const FIRST_PLACE = -15;
const LAST_PLACE = 19;
const TONICS: readonly NoteName[] = Array.from({ length: LAST_PLACE - FIRST_PLACE + 1 }, (_, at) =>
  nameAtFifths(FIRST_PLACE + at),
);

/** Every name that a tonic of this pitch class may have. */
export function tonicsAt(pitch: number): readonly NoteName[] {
  return TONICS.filter((name) => pitchClass(name) === pitch);
}

/** A tonic or root, and how the given notes lie above it. */
export interface Spelled {
  readonly tonic: NoteName;
  readonly theoretical: boolean;
  readonly fit: NoteFit;
}

/**
 * Of several names of one tonic the one to take: where all given notes keep their letters; else one that is in use; the
 * one where most notes keep their letters; the one that was given; and the one of fewest accidentals.
 */
export function bestSpelled<S extends Spelled>(spelled: readonly S[], given: readonly NoteName[]): S | undefined {
  const faults = ({ tonic, theoretical, fit }: S): number[] => [
    Number(fit.respelled.length > 0),
    Number(theoretical),
    fit.respelled.length,
    Number(!given.some((name) => sameName(name, tonic))),
    Math.abs(fifthsOf(tonic)),
  ];
  return [...spelled].sort((one, other) => inOrder(faults(one), faults(other)))[0];
}

/** Compares rows of figures by the first that differs, for sorting. */
export function inOrder(one: readonly number[], other: readonly number[]): number {
  const at = one.findIndex((value, place) => value !== other[place]);
  return at < 0 ? 0 : one[at]! - other[at]!;
}
