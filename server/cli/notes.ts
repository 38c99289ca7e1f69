import type { Arguments } from "./arguments.ts";
import { type ExerciseReport, exerciseReport } from "./exercise-report.ts";
import { exerciseText } from "./exercise-text.ts";
import { fail, type Io, STATUS, type Status } from "./io.ts";
import { namesAsked } from "./names-asked.ts";
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
  const asked = namesAsked(values.get("names"));
  if (!asked.ok) return fail(io, asked.reason);
  const options = { instrument: values.get("instrument"), pitch: values.get("pitch"), names: asked.names };
  const read = readExercise(line, options, io);
  if (!read.ok) return fail(io, read.reasons.map(printable).join("\ndaystave: "));
  for (const remark of read.remarks) io.stderr.write(`daystave: ${printable(remark)}\n`);
  const report: ExerciseReport = exerciseReport(read);
  io.stdout.write(flags.has("json") ? jsonText(report) : exerciseText(report, read));
  return read.untrue ? STATUS.found : STATUS.done;
}
