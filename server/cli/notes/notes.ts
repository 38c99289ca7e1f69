import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { namesAsked } from "../names-asked.ts";
import { notOneOf } from "../nearest.ts";
import { jsonText, printable } from "../printable.ts";
import { textWidth } from "../wrapped.ts";
import { type NotesReport, notesReport } from "./notes-report.ts";
import { notesText } from "./notes-text.ts";
import { readExercise } from "./read-exercise.ts";

/** `daystave notes`: found is a claim on the line that is not true. */
export async function notes({ positionals, flags, values }: Arguments, io: Io): Promise<Status> {
  const [line] = positionals;
  if (line === undefined)
    return fail(io, 'Name an exercise: daystave notes "D minor melodic, thirds"\nFor more: daystave notes --help');
  const asked = namesAsked(values.get("names"));
  if (!asked.ok) return fail(io, asked.reason);
  const explain = explainAsked(values.get("explain"));
  if (!explain.ok) return fail(io, explain.reason);
  const options = { instrument: values.get("instrument"), pitch: values.get("pitch"), names: asked.names };
  const read = readExercise(line, options, io);
  if (!read.ok) return fail(io, read.reasons.map(printable).join("\ndaystave: "));
  for (const remark of read.remarks) io.stderr.write(`daystave: ${printable(remark)}\n`);
  const report: NotesReport = notesReport(read);
  const telling = { explain: explain.explain, hidden: read.hidden && !flags.has("show-notes") };
  io.stdout.write(flags.has("json") ? jsonText(report) : notesText(report, read, telling, textWidth(io)));
  return read.untrue ? STATUS.found : STATUS.done;
}

const EXPLAIN = ["signature", "steps", "both"] as const;

type ExplainAsked =
  | { readonly ok: true; readonly explain: (typeof EXPLAIN)[number] }
  | { readonly ok: false; readonly reason: string };

/** Whether the key signature, the steps or both are told. */
function explainAsked(value = "both"): ExplainAsked {
  const found = EXPLAIN.find((each) => each === value.toLowerCase());
  if (found) return { ok: true, explain: found };
  return { ok: false, reason: notOneOf(`--explain ${value}`, value, EXPLAIN) };
}
