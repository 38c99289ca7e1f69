import { Journal } from "../journal/journal.ts";
import type { ScaleKind } from "../music/kind.ts";
import type { Arguments } from "./arguments.ts";
import { fail, type Io, STATUS, type Status } from "./io.ts";
import { readMarker } from "./journals.ts";
import { notesGiven } from "./notes-given.ts";
import { jsonText } from "./printable.ts";
import { scalesReport } from "./scales-report.ts";
import { scalesText } from "./scales-text.ts";

/** `daystave scales`: which scales have the notes given. That none has is an answer, too. */
export async function scales({ flags, values }: Arguments, io: Io): Promise<Status> {
  const typed = values.get("notes");
  if (typed === undefined)
    return fail(
      io,
      'The notes are missing: daystave scales --notes "D E F G A Bb C#"\nMore is told by: daystave scales --help',
    );
  const given = notesGiven(typed);
  if (!given.ok) return fail(io, given.reason);
  const report = scalesReport(given.notes, declaredKinds(io.cwd));
  io.stdout.write(flags.has("json") ? jsonText(report) : scalesText(report, flags.has("all")));
  return STATUS.done;
}

/** The scales of the nearest `journal.practice` at or above a folder. */
function declaredKinds(folder: string): readonly ScaleKind[] {
  const marker = readMarker(folder);
  if (!marker) return [];
  const journal = new Journal(marker.uri, new Map([[marker.uri, marker.document]]));
  return [...journal.conventions(marker.uri).kinds.values()];
}
