import { areInCents } from "../../music/notes/degree.ts";
import { printName, transposed } from "../../music/notes/note.ts";
import { degreesOf } from "../../music/scales/scale.ts";
import { type Tuning, temperamentText } from "../../music/tuning/temperament.ts";
import {
  keysInCents,
  keysInHertz,
  type ScaleOnKeys,
  scaleInCents,
  scaleInHertz,
} from "../../scores/keyboard-tuning.ts";
import { bulkTuningDump, octaveTuning } from "../../scores/midi-tuning.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, type Status } from "../io.ts";
import { type ExerciseRead, readExercise, readTuning } from "../notes/read-exercise.ts";
import { printable } from "../printable.ts";
import { written } from "./file-asked.ts";

/** `daystave export --mts`: the pitch and temperament of the journal, or a scale in cents, for a MIDI instrument. */
export function exportTuning({ positionals, flags, values }: Arguments, io: Io): Status {
  const [line, ...more] = positionals;
  if (more.length > 0) return fail(io, 'Name one scale, in quotes: daystave export "D thirteen" --mts FILE');
  const asked = tuningAsked(line, values, io);
  if (!asked.ok) return fail(io, asked.reasons.map(printable).join("\ndaystave: "));
  const { tuning, scale, name } = asked;
  const file = values.get("mts")!;
  if (!flags.has("octave")) {
    const hertz = scale ? scaleInHertz(scale, tuning) : keysInHertz(tuning);
    return written(file, bulkTuningDump(name, hertz), { flags, isText: false }, io);
  }
  const cents = scale ? scaleInCents(scale, tuning) : keysInCents(tuning);
  if (!cents) return fail(io, NOT_IN_AN_OCTAVE);
  const octave = octaveTuning(cents);
  return octave.ok ? written(file, octave.content, { flags, isText: false }, io) : fail(io, octave.reason);
}

const NOT_IN_AN_OCTAVE =
  "This scale has two notes on one key, so an octave tuning cannot hold it. A whole tuning, without “--octave”, can.";

type TuningAsked =
  | { readonly ok: true; readonly tuning: Tuning; readonly scale?: ScaleOnKeys; readonly name: string }
  | { readonly ok: false; readonly reasons: readonly string[] };

function tuningAsked(line: string | undefined, values: Arguments["values"], io: Io): TuningAsked {
  const pitch = values.get("pitch");
  if (line === undefined) {
    const read = readTuning(pitch, io);
    return read.ok ? { ...read, name: nameOf(read.tuning) } : read;
  }
  const read = readExercise(line, { instrument: values.get("instrument"), pitch }, io);
  if (!read.ok) return read;
  const scale = scaleOf(read);
  return scale ? { ok: true, tuning: read.tuning, ...scale } : { ok: false, reasons: [KEEPS_TO_KEYS] };
}

const KEEPS_TO_KEYS =
  "Only a scale that is declared in cents has a tuning of its own. For the journal’s pitch and temperament, leave the scale out.";

/** `Vallotti 415`: the temperament comes first, as the name is short. */
function nameOf({ a, temperament }: Tuning): string {
  return `${temperamentText(temperament, printName)} ${a}`;
}

function scaleOf({
  input,
  instrument,
}: ExerciseRead): { readonly scale: ScaleOnKeys; readonly name: string } | undefined {
  const { subject } = input;
  if (subject.type !== "scale" || !areInCents(subject.kind.degrees)) return undefined;
  const tonic = instrument ? transposed(subject.tonic, instrument.sounding) : subject.tonic;
  const scale = { tonic, degrees: degreesOf(subject.kind, "up") };
  return { scale, name: `${printName(tonic)} ${subject.kind.names[0]}` };
}
