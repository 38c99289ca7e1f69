import { listTexts } from "../../checks/list-texts.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { numberTexts } from "../../music/notes/number-texts.ts";
import type { WhatToPlay } from "../../music/patterns/notes-to-play.ts";
import { intonationOf } from "../../music/tuning/intonation.ts";
import { readTemperament } from "../../music/tuning/read-temperament.ts";
import {
  CONCERT_TUNING,
  centsOf,
  type FromPure,
  isWolf,
  type Temperament,
  type Tuning,
  temperamentSentence,
  temperamentText,
  wolves,
} from "../../music/tuning/temperament.ts";
import { escapedExtract } from "./markdown.ts";
import { theorySentenceTexts } from "./theory-sentence-texts.ts";
import { tuningTexts } from "./tuning-texts.ts";

/**
 * How far the thirds and fifths of a scale or chord stand from pure, in one line of Markdown; nothing in equal
 * temperament, declared or not, where it would be the same line for every key.
 */
export function tuningOf(
  { subject, instrument }: WhatToPlay,
  { tuning, names }: Pick<Conventions, "tuning" | "names">,
): readonly string[] {
  if (!tuning || tuning.temperament.id === "equal") return [];
  const intonation = intonationOf(subject, tuning.temperament, instrument?.sounding);
  if (!intonation) return [];
  const thirds = spread(intonation.thirds, names);
  const fifths = spread(intonation.fifths, names, isWolf);
  const told = [...(thirds ? [tuningTexts.thirds(thirds)] : []), ...(fifths ? [tuningTexts.fifths(fifths)] : [])];
  return told.length > 0 ? [tuningTexts.line(tuningText(tuning, names), told)] : [];
}

/** The most characters of a name that a journal gives its temperament. */
const LONGEST_NAME = 60;

/** `A=415, Vallotti`. */
function tuningText({ a, temperament }: Tuning, names: NoteNames): string {
  return tuningTexts.name(a, temperamentName(temperament, names));
}

function temperamentName(temperament: Temperament, names: NoteNames): string {
  if (temperament.id === "equal") return tuningTexts.equal;
  if (temperament.id === "just") return tuningTexts.justOn(names.name(temperament.tonic));
  return escapedExtract(temperamentText(temperament, names.name), LONGEST_NAME);
}

/** `5.9 to 13.7, worst B–D (narrow)`; undefined where there is no such interval. */
function spread(
  intervals: readonly FromPure[],
  names: NoteNames,
  isWolf = (_cents: number): boolean => false,
): string | undefined {
  if (intervals.length === 0) return undefined;
  const sizes = intervals.map(({ cents }) => Math.abs(cents));
  const [least, most] = [distance(Math.min(...sizes)), distance(Math.max(...sizes))];
  const worst = intervals.filter(({ cents }) => distance(cents) === most);
  if (most === "0") return tuningTexts.pure;
  const ways = [wayOf(worst), ...(isWolf(worst[0]!.cents) ? [tuningTexts.wolf] : [])].filter(Boolean);
  if (least === most) return tuningTexts.alike(intervals.length > 1, most, ways);
  return tuningTexts.spread(least, most, intervalText(worst[0]!, names), worst.length - 1, ways);
}

/** Cents to one decimal, which is finer than anybody plays. */
function distance(cents: number): string {
  const size = Math.abs(cents).toFixed(1);
  return size === "0.0" ? "0" : numberTexts.decimal(size);
}

function intervalText({ lower, upper }: FromPure, names: NoteNames): string {
  return `${names.name(lower)}–${names.name(upper)}`;
}

/** The way in which all of them depart; empty where they differ. */
function wayOf(intervals: readonly FromPure[]): string {
  if (intervals.every(({ cents }) => cents > 0)) return tuningTexts.wide;
  return intervals.every(({ cents }) => cents < 0) ? tuningTexts.narrow : "";
}

/** A declared tuning: how its A lies to 440 Hz, what its temperament is, and its wolves. */
export function explainTuning(tuning: Tuning, names: NoteNames): string {
  const apart = Math.round(centsOf(tuning.a / CONCERT_TUNING.a));
  const pitch = tuningTexts.pitch(tuningText(tuning, names), tuning.a, apart, CONCERT_TUNING.a);
  return `${pitch} ${explainTemperament(tuning.temperament, names)}`;
}

function explainTemperament(temperament: Temperament, names: NoteNames): string {
  return `${theorySentenceTexts.of(temperamentSentence(temperament))} ${wolvesIn(temperament, names)}`;
}

/** The same by a name as it is completed; undefined for what is none. */
export function explainTemperamentNamed(name: string, names: NoteNames): string | undefined {
  const read = readTemperament(name);
  return read.ok ? explainTemperament(read.temperament, names) : undefined;
}

function wolvesIn(temperament: Temperament, names: NoteNames): string {
  const found = wolves(temperament).map((fifth) => {
    return tuningTexts.wolfFifth(intervalText(fifth, names), distance(fifth.cents), wayOf([fifth]));
  });
  if (found.length === 0) return tuningTexts.noWolf;
  return tuningTexts.wolves(found.length, listTexts.and(found));
}
