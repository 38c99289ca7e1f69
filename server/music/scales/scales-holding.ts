import type { Degree } from "../notes/degree.ts";
import { modulo, type NoteName, pitchClass } from "../notes/note.ts";
import {
  bestSpelled,
  distinctNames,
  fitOf,
  inOrder,
  type NoteFit,
  type Respelled,
  tonicsAt,
} from "../notes/note-set.ts";
import type { ScaleKind } from "./kind.ts";
import { KINDS } from "./kinds.ts";
import { allowsRespelling, scaleNames } from "./scale.ts";
import { isTheoretical } from "./signature.ts";

/** A scale that holds all notes that were given. */
export interface ScaleReading {
  readonly tonic: NoteName;
  readonly kind: ScaleKind;
  /** Other kinds with the same notes on this tonic: ionian beside major. */
  readonly alsoCalled: readonly ScaleKind[];
  /** Its notes that were not given, from the tonic upward; of the melodic minor, which of both forms are needed. */
  readonly notGiven: readonly NoteName[];
  /** Right pitches by other letters. */
  readonly respelled: readonly Respelled[];
  /** Whether its key would need more than seven accidentals. */
  readonly theoretical: boolean;
}

/** A scale that would hold them all but for one. */
export interface NearMiss extends ScaleReading {
  readonly differs: {
    readonly given: NoteName;
    /** What the scale has there; null where all its notes were given, and this one besides. */
    readonly instead: NoteName | null;
  };
}

/** Kinds with the same degrees: the first is the one to name. */
interface Alike {
  readonly kind: ScaleKind;
  readonly others: readonly ScaleKind[];
}

const CHROMATIC = 12;
const EVERY_PITCH: readonly number[] = Array.from({ length: CHROMATIC }, (_, pitch) => pitch);

/**
 * The scales in which all the notes are found, whatever their order and octave; nearest first: fewest further notes,
 * then those on the first note and on the last, then those that keep the letters, then by the order of `kinds`, which
 * has the usual ones first. A chromatic scale is named where all twelve pitches are given, and from the first note
 * only: it holds everything, so that to name it for less would say nothing.
 *
 * @param kinds what to look among; scales in cents beside the twelve keys are passed over, as no names are theirs
 */
export function scalesHolding(
  notes: readonly NoteName[],
  kinds: readonly ScaleKind[] = KINDS,
): readonly ScaleReading[] {
  const given = distinctNames(notes);
  if (given.length === 0) return [];
  return candidates(given, kinds, 0).map(readingOf).sort(byNearness(notes, kinds));
}

/**
 * The scales that have all but one of the notes, in the same order. Meant for where no scale has them all; there must
 * be three others at least, or anything would do.
 */
export function nearMisses(notes: readonly NoteName[], kinds: readonly ScaleKind[] = KINDS): readonly NearMiss[] {
  const given = distinctNames(notes);
  if (new Set(given.map(pitchClass)).size < 4) return [];
  return candidates(given, kinds, 1)
    .map(missOf)
    .filter(({ differs, notGiven }) => differs.instead !== null || notGiven.length === 0)
    .sort(byNearness(notes, kinds));
}

interface Candidate extends Alike {
  readonly tonic: NoteName;
  readonly theoretical: boolean;
  readonly fit: NoteFit;
}

/** Every kind on every tonic where so many of the given names lie outside; each on the best name of its tonic. */
function candidates(given: readonly NoteName[], kinds: readonly ScaleKind[], outside: number): Candidate[] {
  const pitches = given.map(pitchClass);
  const hasAll = new Set(pitches).size === CHROMATIC;
  return alikeKinds(kinds).flatMap((alike) => {
    const isChromatic = alike.kind.degrees.length === CHROMATIC;
    if (isChromatic && !hasAll) return [];
    const own = pitchesOf(alike.kind);
    const tonics = isChromatic ? [pitches[0]!] : EVERY_PITCH;
    return tonics
      .filter((tonic) => pitches.filter((pitch) => !own.has(modulo(pitch - tonic, 12))).length === outside)
      .flatMap((tonic) => candidateOn(tonic, alike, given) ?? []);
  });
}

/** Semitones above the tonic, of both forms. */
function pitchesOf({ degrees, falling = [] }: ScaleKind): ReadonlySet<number> {
  return new Set([...degrees, ...falling].map(({ semitones }) => semitones));
}

function candidateOn(pitch: number, alike: Alike, given: readonly NoteName[]): Candidate | undefined {
  const spelled = tonicsAt(pitch).map((tonic) => ({
    ...alike,
    tonic,
    theoretical: isTheoretical(tonic, alike.kind),
    fit: smallestFit(given, tonic, alike.kind),
  }));
  return bestSpelled(spelled, given);
}

/** In the rising form, or where that does not hold them all in both forms together. */
function smallestFit(given: readonly NoteName[], tonic: NoteName, kind: ScaleKind): NoteFit {
  const up = scaleNames(tonic, kind, "up");
  const both = kind.falling ? [...up, ...scaleNames(tonic, kind, "down")] : up;
  const anyLetter = allowsRespelling(kind);
  const whole = fitOf(given, both, anyLetter);
  const rising = fitOf(given, up, anyLetter);
  // Of two names for one pitch either is right, also where the rising form is enough.
  return rising.outside.length > whole.outside.length ? whole : { ...rising, respelled: whole.respelled };
}

function alikeKinds(kinds: readonly ScaleKind[]): Alike[] {
  const byDegrees = new Map<string, ScaleKind[]>();
  for (const kind of kinds) {
    if (kind.degrees.some(isBesideKeys)) continue;
    const key = JSON.stringify([kind.degrees.map(placeOf), kind.falling?.map(placeOf)]);
    byDegrees.set(key, [...(byDegrees.get(key) ?? []), kind]);
  }
  return [...byDegrees.values()].map(([kind, ...others]) => ({ kind: kind!, others }));
}

function placeOf({ step, semitones }: Degree): readonly [number, number] {
  return [step, semitones];
}

function isBesideKeys({ cents, semitones }: Degree): boolean {
  return cents !== undefined && cents !== 100 * semitones;
}

function readingOf({ tonic, kind, others, theoretical, fit }: Candidate): ScaleReading {
  return { tonic, kind, alsoCalled: others, notGiven: fit.notGiven, respelled: fit.respelled, theoretical };
}

function missOf(candidate: Candidate): NearMiss {
  const reading = readingOf(candidate);
  const given = candidate.fit.outside[0]!;
  const instead = standInFor(given, reading.notGiven);
  const notGiven = reading.notGiven.filter((name) => name !== instead);
  return { ...reading, notGiven, differs: { given, instead: instead ?? null } };
}

/** The note of the scale that takes the place: the same letter, else a semitone beside. */
function standInFor(given: NoteName, notGiven: readonly NoteName[]): NoteName | undefined {
  const beside = (name: NoteName): boolean => [1, 11].includes(modulo(pitchClass(name) - pitchClass(given), 12));
  return notGiven.find(({ letter }) => letter === given.letter) ?? notGiven.find(beside);
}

/** For sorting: fewest further notes, the first note, the last, the same letters, the order of the kinds, the tonic. */
function byNearness(notes: readonly NoteName[], kinds: readonly ScaleKind[]) {
  const [first, last] = [notes[0]!, notes.at(-1)!];
  const tonicRank = (tonic: NoteName): number =>
    pitchClass(tonic) === pitchClass(first) ? 0 : pitchClass(tonic) === pitchClass(last) ? 1 : 2;
  const ranks = (reading: ScaleReading): number[] => [
    reading.notGiven.length,
    tonicRank(reading.tonic),
    reading.respelled.length,
    kinds.indexOf(reading.kind),
    modulo(pitchClass(reading.tonic) - pitchClass(first), 12),
  ];
  return (one: ScaleReading, other: ScaleReading): number => inOrder(ranks(one), ranks(other));
}

/** Whether the notes are those of the scale, each by its own letter, and no other. */
export function isExactly({ notGiven, respelled }: ScaleReading): boolean {
  return notGiven.length === 0 && respelled.length === 0;
}
