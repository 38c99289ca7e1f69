import { notesHidden } from "../../journal/notes-hidden.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { stavesOfClaim } from "../explain/claimed-entry.ts";
import type { EntryAt } from "./entry.ts";
import { drawnStaves, fitsHover } from "./staff.ts";

/** Two staves with a word beneath each are no higher than this. */
const HIGHEST = 220;

/**
 * A list of notes that is not right, above the notes that it should be, as a picture in Markdown; undefined where it is
 * right, or where nobody draws.
 */
export function claimInMarkdown(at: EntryAt, notes: readonly ClaimedNote[]): string | undefined {
  const { entry, journal, uri, palette, staves: drawer } = at;
  const conventions = journal.conventions(uri);
  if (!drawer || !palette || notesHidden(entry, conventions)) return undefined;
  const staves = stavesOfClaim(entry, conventions, notes);
  if (!staves?.every((staff) => fitsHover(staff, drawer))) return undefined;
  return drawnStaves(staves, drawer, { palette, highest: HIGHEST });
}
