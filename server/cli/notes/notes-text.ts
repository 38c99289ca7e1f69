import { collectionWords, relatedWords } from "../../features/explain/related-words.ts";
import { isoDate } from "../../journal/calendar.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import { isDrawn } from "../../music/patterns/pattern.ts";
import { describeFifths } from "../../music/scales/signature.ts";
import { printSteps } from "../../music/scales/steps.ts";
import { intonationOf } from "../../music/tuning/intonation.ts";
import { type FromPure, isWolf } from "../../music/tuning/temperament.ts";
import { printable } from "../printable.ts";
import { type Row, twoColumns } from "../two-columns.ts";
import { fingerRows } from "./finger-text.ts";
import type { NotesReport, SignatureReport } from "./notes-report.ts";
import type { ExerciseRead } from "./read-exercise.ts";

const COLUMN = 17;
/** Stands for a space at which no line ends; none of it is left in the text. */
const NO_BREAK = "\u00A0";

/** How an exercise is told. */
export interface Telling {
  readonly explain: "signature" | "steps" | "both";
  /** Names of notes are left out. */
  readonly hidden: boolean;
}

const HIDDEN = "hidden, as the journal or the line asks: --show-notes shows them";

/**
 * The exercise for a person: a heading, and one row a fact.
 *
 * @param width in columns of a terminal
 */
export function notesText(
  report: NotesReport,
  read: ExerciseRead,
  { explain, hidden }: Telling,
  width: number,
): string {
  const { instrument } = read;
  const heading = instrument ? `${report.subject}, ${instrument.id}` : report.subject;
  const sounds = report.sounding.some((note, i) => note !== report.notes[i]);
  const named = (rows: readonly Row[]): readonly Row[] => (hidden ? [] : rows);
  const rows: readonly Row[] = [
    ...(explain === "steps"
      ? []
      : [["signature", signatureText(report, hidden)] as const, ...relationRows(read, hidden)]),
    ...(explain === "signature" ? [] : [["steps", stepsText(report)] as const]),
    ...(hidden ? [["notes", HIDDEN] as const] : []),
    ...named([
      ["up", report.up.join(" ")],
      ["down", report.down.join(" ")],
      ["as played", report.notes.join(" ")],
    ]),
    ...orderRows(read.input),
    ["degrees", report.degrees.join(" ")],
    ...named([
      ...(sounds ? [["sounds as", report.sounding.join(" ")] as const] : []),
      ["range", report.range ? `${report.range.low} to ${report.range.high}` : "nothing left to play"],
      ...(instrument ? [["out of range", report.outOfRange.join(" ") || "none"] as const] : []),
      ...fingerRows(notesToPlay(read.input), report, read),
      ["frequencies", frequenciesText(report)],
      ...intonationRows(read),
    ]),
  ];
  const lines = twoColumns(rows.map(unbroken), { column: COLUMN, width }).map((line) => line.replaceAll(NO_BREAK, " "));
  return `${[printable(heading), ...lines].join("\n")}\n`;
}

/** As `Ø 123 45--`. */
const FINGERING = /[0Ø-] [\d/-]{3,} [\d/-]{4,}(?: bell)?/g;

/** No fingering goes on in another line. */
function unbroken([name, text]: Row): Row {
  return [name, text.replace(FINGERING, (fingering) => fingering.replaceAll(" ", NO_BREAK))];
}

/** Its relative and parallel keys; the collection of a symmetrical scale or chord. */
function relationRows({ input: { subject }, names }: ExerciseRead, hidden: boolean): readonly Row[] {
  const related = relatedWords(subject, names);
  const collection = hidden ? undefined : collectionWords(subject, names);
  return [
    ...(related ? [["keys", related] as const] : []),
    ...(collection ? [["collection", collection.replace(/^collection: /, "")] as const] : []),
  ];
}

/** Whose order leaps are played in. */
function orderRows({ pattern, day }: ExerciseRead["input"]): readonly Row[] {
  return isDrawn(pattern) && day !== undefined
    ? [["order", `drawn for ${isoDate(day)}: the same all day, another the next`]]
    : [];
}

function signatureText({ signature, parallelSignature, parallel }: NotesReport, hidden: boolean): string {
  if (!signature) return "none: it belongs to no key";
  const own = signatureWords(signature, hidden);
  return parallelSignature
    ? `${own}; also written with ${signatureWords(parallelSignature, hidden)}, as ${parallel?.replace("natural minor", "minor")} is`
    : own;
}

function signatureWords({ fifths, accidentals }: SignatureReport, hidden: boolean): string {
  return fifths === 0 || hidden ? describeFifths(fifths) : `${describeFifths(fifths)}: ${accidentals.join(" ")}`;
}

/** Tones and semitones where the scale has no others, and semitones as numbers for all. */
function stepsText({ steps, stepsInCents }: NotesReport): string {
  if (stepsInCents) return `${printSteps(stepsInCents, "cents")} cents`;
  const small = steps.every((step) => step <= 3);
  return small ? `${printSteps(steps, "TS")} (${steps.join(" ")} semitones)` : `${steps.join(" ")} semitones`;
}

/** Each note that sounds once, in the order of playing. */
function frequenciesText({ sounding, frequencies, pitch, temperament }: NotesReport): string {
  const each = new Map(sounding.map((note, i) => [note, `${note}${NO_BREAK}${frequencies[i]!.toFixed(1)}`]));
  const name = temperament === "equal" ? "equal temperament" : printable(temperament);
  return `${[...each.values()].join(", ")} Hz (A=${pitch}, ${name})`;
}

/** In equal temperament they are the same in every key, and nothing is said. */
function intonationRows({ input, tuning: { temperament }, names }: ExerciseRead): (readonly [string, string])[] {
  const intonation =
    temperament.id === "equal" ? undefined : intonationOf(input.subject, temperament, input.instrument?.sounding);
  if (!intonation) return [];
  const fifths = intonation.fifths.map((fifth) => fromPureText(fifth, names) + (isWolf(fifth.cents) ? " (wolf)" : ""));
  return [
    ["thirds", inCents(intonation.thirds.map((third) => fromPureText(third, names)))],
    ["fifths", inCents(fifths)],
  ];
}

function inCents(told: readonly string[]): string {
  return told.length > 0 ? `${told.join(", ")}, in cents from pure` : "none in it";
}

/** `A–C 9.8 narrow`. */
function fromPureText({ lower, upper, cents }: FromPure, names: NoteNames): string {
  const size = Math.abs(cents).toFixed(1);
  const far = size === "0.0" ? "pure" : `${size} ${cents < 0 ? "narrow" : "wide"}`;
  return `${names.name(lower)}–${names.name(upper)} ${far}`.replaceAll(" ", NO_BREAK);
}
