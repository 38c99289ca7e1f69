import { Journal } from "../../journal/journal.ts";
import { ENGLISH_NAMES, type NoteNames } from "../../music/notes/note-names.ts";
import type { ScaleKind } from "../../music/scales/kind.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readMarker } from "../journals.ts";
import { declaring, namesAsked } from "../names-asked.ts";
import { jsonText } from "../printable.ts";
import { textWidth } from "../wrapped.ts";
import { notesGiven } from "./notes-given.ts";
import { scalesReport } from "./scales-report.ts";
import { scalesText } from "./scales-text.ts";

/** `daystave scales`: which scales have the notes given. That none has is an answer, too. */
export async function scales({ flags, values }: Arguments, io: Io): Promise<Status> {
  const typed = values.get("notes");
  if (typed === undefined)
    return fail(io, 'Give the notes: daystave scales --notes "D E F G A Bb C#"\nFor more: daystave scales --help');
  const asked = namesAsked(values.get("names"));
  if (!asked.ok) return fail(io, asked.reason);
  const { kinds, names } = declaredAround(io.cwd, asked.names);
  const given = notesGiven(typed, names);
  if (!given.ok) return fail(io, given.reason);
  const report = scalesReport(given.notes, kinds, names);
  io.stdout.write(
    flags.has("json") ? jsonText(report) : scalesText(report, { all: flags.has("all"), width: textWidth(io) }),
  );
  return STATUS.done;
}

/**
 * The scales of the nearest `journal.practice` at or above a folder, and its names of notes unless others are asked
 * for.
 */
function declaredAround(
  folder: string,
  asked: NoteNames | undefined,
): { readonly kinds: readonly ScaleKind[]; readonly names: NoteNames } {
  const marker = readMarker(folder);
  if (!marker) return { kinds: [], names: asked ?? ENGLISH_NAMES };
  const files = new Map([[marker.uri, marker.document]]);
  if (asked) files.set(...declaring(asked));
  const journal = new Journal(marker.uri, files).withLent(marker.lent);
  return { kinds: [...journal.conventions(marker.uri).kinds.values()], names: journal.names };
}
