import { listed } from "../../checks/listed.ts";
import type { Conventions } from "../../journal/conventions.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
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
  const told = [...(thirds ? [`thirds ${thirds}`] : []), ...(fifths ? [`fifths ${fifths}`] : [])];
  return told.length > 0 ? [`Tuning (${tuningText(tuning, names)}), cents from pure: ${told.join("; ")}`] : [];
}

/** The most characters of a name that a journal gives its temperament. */
const LONGEST_NAME = 60;

/** `A=415, Vallotti`. */
function tuningText({ a, temperament }: Tuning, names: NoteNames): string {
  const name = escapedExtract(temperamentText(temperament, names.name), LONGEST_NAME);
  return `A=${a}, ${temperament.id === "equal" ? "equal temperament" : name}`;
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
  if (most === "0") return "pure";
  const way = [wayOf(worst), ...(isWolf(worst[0]!.cents) ? ["a wolf"] : [])].filter(Boolean).join(", ");
  if (least === most) return `${intervals.length > 1 ? "all " : ""}${most}${way && ` ${way}`}`;
  const others = worst.length > 1 ? ` and ${worst.length - 1} more` : "";
  return `${least} to ${most}, worst ${intervalText(worst[0]!, names)}${others}${way && ` (${way})`}`;
}

/** Cents to one decimal, which is finer than anybody plays. */
function distance(cents: number): string {
  const size = Math.abs(cents).toFixed(1);
  return size === "0.0" ? "0" : size;
}

function intervalText({ lower, upper }: FromPure, names: NoteNames): string {
  return `${names.name(lower)}–${names.name(upper)}`;
}

/** The way in which all of them depart; empty where they differ. */
function wayOf(intervals: readonly FromPure[]): string {
  if (intervals.every(({ cents }) => cents > 0)) return "wide";
  return intervals.every(({ cents }) => cents < 0) ? "narrow" : "";
}

/** A declared tuning: how its A lies to 440 Hz, what its temperament is, and its wolves. */
export function explainTuning(tuning: Tuning, names: NoteNames): string {
  const apart = Math.round(centsOf(tuning.a / CONCERT_TUNING.a));
  const way = apart < 0 ? "below" : "above";
  const place = apart === 0 ? "" : `, ${Math.abs(apart)} cents ${way} ${CONCERT_TUNING.a} Hz`;
  return `**${tuningText(tuning, names)}**: A4 at ${tuning.a} Hz${place}. ${explainTemperament(tuning.temperament, names)}`;
}

function explainTemperament(temperament: Temperament, names: NoteNames): string {
  return `${temperamentSentence(temperament)} ${wolvesIn(temperament, names)}`;
}

/** The same by a name as it is completed; undefined for what is none. */
export function explainTemperamentNamed(name: string, names: NoteNames): string | undefined {
  const read = readTemperament(name);
  return read.ok ? explainTemperament(read.temperament, names) : undefined;
}

function wolvesIn(temperament: Temperament, names: NoteNames): string {
  const found = wolves(temperament).map((fifth) => {
    return `${intervalText(fifth, names)} (${distance(fifth.cents)} cents ${wayOf([fifth])})`;
  });
  if (found.length === 0) return "No fifth is a wolf.";
  return `${found.length === 1 ? "Its wolf is" : "Its wolves are"} ${listed(found)}.`;
}
