import { CODES, type Code } from "../../checks/codes.ts";
import { diagnosticsOf } from "../../features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../features/types.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay, isPlayable } from "../../journal/entry-exercise.ts";
import { Journal } from "../../journal/journal.ts";
import type { Entry, Subject } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { WhatToPlay } from "../../music/patterns/notes-to-play.ts";
import { CONCERT_TUNING, type Tuning } from "../../music/tuning/temperament.ts";
import { createDocument, type Document } from "../../syntax/document/document.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { instrumentAsked } from "../instrument-asked.ts";
import type { Io } from "../io.ts";
import { readMarker } from "../journals.ts";
import { declaring } from "../names-asked.ts";
import { offer } from "../nearest.ts";

/** What goes before the journal's declarations. */
export interface ExerciseOptions {
  readonly instrument?: string;
  /** `A=415` or `A=415, Vallotti`, as in the declaration. */
  readonly pitch?: string;
  /** How the line names notes, and the answer does. */
  readonly names?: NoteNames;
}

/** An exercise as the words of the line and the journal around make it. */
export interface ExerciseRead {
  readonly ok: true;
  /** With the instrument that plays it. */
  readonly entry: Entry;
  /** The journal's, with that instrument as its own. */
  readonly conventions: Conventions;
  readonly subject: Extract<Subject, { readonly type: "scale" | "chord" }>;
  readonly input: WhatToPlay;
  readonly instrument?: Instrument;
  readonly tuning: Tuning;
  readonly names: NoteNames;
  /** The line or the journal wants no names of notes unasked. */
  readonly hidden: boolean;
  /** What the player should know besides: a claim that is not true. */
  readonly remarks: readonly string[];
  /** Something that the line claims is not true, or probably not meant. */
  readonly untrue: boolean;
}

export type ReadExercise = ExerciseRead | { readonly ok: false; readonly reasons: readonly string[] };

const LINE_URI = "argument:/exercise";

/** What a line claims may be wrong, and the exercise is still clear. */
const CLAIM_CODES: readonly Code[] = [
  "scale-note",
  "missing-note",
  "extra-note",
  "arpeggio-note",
  "pattern-notes",
  "key-signature",
  "step-formula",
];

/** Words that cannot be read in a diary are kept there; an exercise that is to be written out must be read whole. */
const UNREAD_CODES: readonly Code[] = [
  "unknown-term",
  "unknown-pattern",
  "unknown-key",
  "ambiguous-subject",
  "no-subject",
  "unclosed-quote",
  "repeated-term",
];

/** The answer itself says it. */
const ANSWERED: readonly Code[] = ["out-of-range"];

/**
 * Reads a line as an entry of today, in the light of the nearest `journal.practice` at or above the current folder.
 * What cannot be read is told in the words of `check`.
 */
export function readExercise(line: string, options: ExerciseOptions, io: Io): ReadExercise {
  if (/[\r\n]/.test(line)) return { ok: false, reasons: ["One exercise at a time: the line has a line break in it."] };
  const marker = readMarker(io.cwd);
  const document = createDocument(`${isoDate(io.today)}\n${line}`);
  const files = new Map<string, Document>([[LINE_URI, document]]);
  if (marker) files.set(marker.uri, marker.document);
  if (options.names) files.set(...declaring(options.names));
  const journal = new Journal(LINE_URI, files).withLent(marker?.lent ?? []);
  const declared = journal.conventions(LINE_URI);
  const instrument = instrumentNamed(options.instrument, journal.vocabulary);
  if (!instrument.ok) return instrument;
  const tuning = tuningAsked(options.pitch, declared);
  if (!tuning.ok) return tuning;
  const findings = diagnosticsOf(journal, LINE_URI, io.today).filter(({ range }) => range.start.line === 1);
  const entry = journal.model(document.blocks[0]!).entries.find(({ place }) => place.line === 1);
  const exercise = exerciseOf(entry, findings, instrument.id, declared, io.today);
  if (!exercise.ok) return exercise;
  const doubts = findings.filter(isDoubt).map(({ message }) => message);
  return {
    ...exercise,
    tuning: tuning.tuning,
    names: journal.names,
    hidden: notesHidden(entry!, declared),
    remarks: doubts,
    untrue: doubts.length > 0,
  };
}

type Exercise =
  | Pick<ExerciseRead, "ok" | "entry" | "conventions" | "subject" | "input" | "instrument">
  | { readonly ok: false; readonly reasons: readonly string[] };

function exerciseOf(
  entry: Entry | undefined,
  findings: readonly Diagnostic[],
  chosen: string | undefined,
  declared: Conventions,
  today: DayNumber,
): Exercise {
  const unread = findings.filter(
    ({ code, severity }) =>
      UNREAD_CODES.includes(code as Code) || (severity === "error" && !CLAIM_CODES.includes(code as Code)),
  );
  if (unread.length > 0) return { ok: false, reasons: unread.map(({ message }) => message) };
  const subject = entry?.subject;
  if (!isPlayable(subject)) return { ok: false, reasons: [withoutNotes(subject)] };
  const id = chosen ?? entry!.instrument ?? declared.instrument;
  const conventions = { ...declared, instrument: id };
  const conditions = entry!.attempts[0]?.conditions;
  const played = { ...entry!, instrument: id };
  const input = exerciseToPlay(played, conditions, conventions, today);
  if (!input)
    return { ok: false, reasons: ["The journal declares this scale or pattern, but its declaration cannot be read."] };
  return { ok: true, entry: played, conventions, subject, input, instrument: instrumentOf(id, conventions) };
}

function withoutNotes(subject: Subject | undefined): string {
  const example = 'Name a scale or an arpeggio, as "D minor, thirds" or "G minor arpeggio, 2 octaves".';
  if (subject === undefined) return `I do not know this exercise. ${example}`;
  if (subject.type === "title") return `The notes of a piece or study are not known here. ${example}`;
  return `Only scales, arpeggios and chords can be written out. ${example}`;
}

function isDoubt({ code, severity }: Diagnostic): boolean {
  const known = code as Code;
  return (severity === "error" || severity === "warning") && known in CODES && !ANSWERED.includes(known);
}

type Named = { readonly ok: true; readonly id?: string } | { readonly ok: false; readonly reasons: readonly string[] };

function instrumentNamed(name: string | undefined, vocabulary: Vocabulary): Named {
  if (name === undefined) return { ok: true };
  const asked = instrumentAsked(name, vocabulary);
  return asked.ok ? asked : { ok: false, reasons: [asked.reason] };
}

/** The tuning of `--pitch`, else that of the nearest `journal.practice`. */
export function readTuning(pitch: string | undefined, { cwd }: Pick<Io, "cwd">): ReadTuning {
  const marker = readMarker(cwd);
  const files = new Map(marker ? [[marker.uri, marker.document]] : []);
  const journal = new Journal(LINE_URI, files).withLent(marker?.lent ?? []);
  return tuningAsked(pitch, journal.conventions(LINE_URI));
}

export type ReadTuning =
  | { readonly ok: true; readonly tuning: Tuning }
  | { readonly ok: false; readonly reasons: readonly string[] };

/** The option is read as the declaration is, and stands in its place: without a temperament it means the equal one. */
function pitchOption(text: string): ReadTuning {
  const document = createDocument(`pitch ${text.replace(/[\r\n]+/g, " ")}`);
  const journal = new Journal(LINE_URI, new Map([[LINE_URI, document]]));
  const [declaration] = journal.model(document.blocks[0]!).declarations.map((each) => each.declaration);
  const declared = declaration?.declared;
  const [fault] = declaration?.faults ?? [];
  if (declared?.type === "pitch" && !fault)
    return { ok: true, tuning: { a: declared.a, temperament: declared.temperament } };
  const because = `“--pitch ${text}”: ${fault?.because ?? "it cannot be read"}.`;
  return { ok: false, reasons: [because + offer(fault?.offers?.join("” or “"))] };
}

function tuningAsked(pitch: string | undefined, { tuning = CONCERT_TUNING }: Conventions): ReadTuning {
  return pitch === undefined ? { ok: true, tuning } : pitchOption(pitch);
}
