import type { ExportFormat } from "../../../shared/export.ts";
import { exerciseFile } from "../../features/scores/exercise-file.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { namesAsked } from "../names-asked.ts";
import { readExercise } from "../notes/read-exercise.ts";
import { printable } from "../printable.ts";
import { written } from "./file-asked.ts";

/** `daystave export --midi`, `--musicxml`: an exercise in a journal's words. Found is a claim that is not true. */
export function exportExercise({ positionals, flags, values }: Arguments, format: ExportFormat, io: Io): Status {
  const [line, ...more] = positionals;
  if (line === undefined || more.length > 0)
    return fail(io, `Name one exercise, in quotes: daystave export "D minor, thirds" --${format} FILE`);
  const names = namesAsked(values.get("names"));
  if (!names.ok) return fail(io, names.reason);
  const tempo = tempoAsked(values.get("tempo"));
  if (!tempo.ok) return fail(io, tempo.reason);
  const read = readExercise(line, { instrument: values.get("instrument"), names: names.names }, io);
  if (!read.ok) return fail(io, read.reasons.map(printable).join("\ndaystave: "));
  for (const remark of read.remarks) io.stderr.write(`daystave: ${printable(remark)}\n`);
  const { entry, conventions } = read;
  const file = exerciseFile({ entry, text: line, conventions, day: io.today, bpm: tempo.bpm }, format);
  if (!file.ok) return fail(io, file.reason);
  const status = written(values.get(format)!, file.bytes, { flags, isText: format === "musicxml" }, io);
  if (status !== STATUS.done) return status;
  if (file.withoutTempo && format === "midi" && !flags.has("quiet"))
    io.stderr.write("daystave: The line has no tempo, so the file has a note a second.\n");
  return read.untrue ? STATUS.found : STATUS.done;
}

type TempoAsked = { readonly ok: true; readonly bpm?: number } | { readonly ok: false; readonly reason: string };

/** As a metronome has them. */
const SLOWEST = 20;
const FASTEST = 400;

function tempoAsked(text: string | undefined): TempoAsked {
  if (text === undefined) return { ok: true };
  const bpm = /^\d{1,3}(\.\d+)?$/.test(text) ? Number(text) : Number.NaN;
  if (bpm >= SLOWEST && bpm <= FASTEST) return { ok: true, bpm };
  const reason = `“--tempo” takes beats a minute from ${SLOWEST} to ${FASTEST}, such as 60, not “${printable(text)}”.`;
  return { ok: false, reason };
}
