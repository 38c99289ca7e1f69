import type { Arguments } from "./arguments.ts";
import { type ExerciseReport, exerciseReport } from "./exercise-report.ts";
import { exerciseText } from "./exercise-text.ts";
import { fail, type Io, STATUS, type Status } from "./io.ts";
import { jsonText, printable } from "./printable.ts";
import { readExercise } from "./read-exercise.ts";

/** `daystave notes`: found is a claim on the line that is not true. */
export async function notes({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const [line] = positionals;
  if (line === undefined)
    return fail(
      io,
      'An exercise is missing: daystave notes "D minor melodic, thirds"\nMore is told by: daystave notes --help',
    );
  const names = values.get("names");
  if (names !== undefined && names.toLowerCase() !== "english")
    return fail(
      io,
      `Names of notes are read and shown in English only for now; “${printable(names)}” is not known here.`,
    );
  const read = readExercise(line, { instrument: values.get("instrument"), pitch: values.get("pitch") }, io);
  if (!read.ok) return fail(io, read.reasons.map(printable).join("\ndaystave: "));
  for (const remark of read.remarks) io.stderr.write(`daystave: ${printable(remark)}\n`);
  const report: ExerciseReport = exerciseReport(read);
  io.stdout.write(flags.has("json") ? jsonText(report) : exerciseText(report, read));
  return read.untrue ? STATUS.found : STATUS.done;
}
