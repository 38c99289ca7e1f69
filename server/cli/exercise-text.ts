import { collectionWords, relatedWords } from "../features/related-words.ts";
import { describeFifths, type KeySignature } from "../music/signature.ts";
import { printSteps } from "../music/steps.ts";
import type { ExerciseReport } from "./exercise-report.ts";
import { wrapped } from "./help.ts";
import { printable } from "./printable.ts";
import type { ExerciseRead } from "./read-exercise.ts";

const WIDTH = 80;
const COLUMN = 15;

/** The exercise for a person: a heading, and one row a fact. */
export function exerciseText(report: ExerciseReport, { input, instrument, pitch }: ExerciseRead): string {
  const heading = instrument ? `${report.subject}, ${instrument.id}` : report.subject;
  const sounds = report.sounding.some((note, i) => note !== report.notes[i]);
  const rows: (readonly [string, string])[] = [
    ["signature", signatureText(report)],
    ...relationRows(input.subject),
    ["steps", stepsText(report)],
    ["up", report.up.join(" ")],
    ["down", report.down.join(" ")],
    ["as played", report.notes.join(" ")],
    ["degrees", report.degrees.join(" ")],
    ...(sounds ? [["sounds as", report.sounding.join(" ")] as const] : []),
    ["range", report.range ? `${report.range.low} to ${report.range.high}` : "nothing left to play"],
    ...(instrument ? [["out of range", report.outOfRange.join(" ") || "none"] as const] : []),
    ["frequencies", frequenciesText(report, pitch)],
  ];
  return `${[printable(heading), ...rows.flatMap(row)].join("\n")}\n`;
}

/** Its relative and parallel keys; the collection of a symmetrical scale or chord. */
function relationRows(subject: ExerciseRead["input"]["subject"]): (readonly [string, string])[] {
  const [related, collection] = [relatedWords(subject), collectionWords(subject)];
  return [
    ...(related ? [["keys", related] as const] : []),
    ...(collection ? [["collection", collection.replace(/^collection: /, "")] as const] : []),
  ];
}

function signatureText({ signature, parallelSignature, parallel }: ExerciseReport): string {
  if (!signature) return "none: it belongs to no key";
  const own = signatureWords(signature);
  return parallelSignature
    ? `${own}; also written with ${signatureWords(parallelSignature)}, as ${parallel?.replace("natural minor", "minor")} is`
    : own;
}

function signatureWords({ fifths, accidentals }: KeySignature): string {
  return fifths === 0 ? describeFifths(0) : `${describeFifths(fifths)}: ${accidentals.join(" ")}`;
}

/** Tones and semitones where the scale has no others, and semitones as numbers for all. */
function stepsText({ steps }: ExerciseReport): string {
  const small = steps.every((step) => step <= 3);
  return small ? `${printSteps(steps, "TS")} (${steps.join(" ")} semitones)` : `${steps.join(" ")} semitones`;
}

/** Each note that sounds once, in the order of playing. */
function frequenciesText({ sounding, frequencies }: ExerciseReport, pitch: number): string {
  const each = new Map(sounding.map((note, i) => [note, `${note} ${frequencies[i]!.toFixed(1)}`]));
  return `${[...each.values()].join(", ")} Hz (A=${pitch}, equal temperament)`;
}

function row([name, text]: readonly [string, string]): string[] {
  return wrapped(text, WIDTH - COLUMN).map(
    (line, i) => (i === 0 ? `  ${name}`.padEnd(COLUMN) : " ".repeat(COLUMN)) + line,
  );
}
