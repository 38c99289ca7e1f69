import { declaredLines } from "./declared-lines.ts";
import { type Journal, MARKER } from "./journal.ts";
import { isShared } from "./lending.ts";

/**
 * The files of a journal whose words of the body a teacher may see. `share body` above the days of its
 * `journal.practice` says so for all of them, above those of another file for that file. A `journal.practice` with
 * `shared` says it for nobody: it is there for others, and not by their hand.
 */
export function filesSharingBody(journal: Journal): ReadonlySet<string> {
  const saying = declaredLines(journal)
    .filter(({ declared, block }) => declared.type === "share body" && !block.day)
    .map(({ uri }) => uri)
    .filter((uri) => !isShared(journal.files.get(uri)!));
  return new Set(saying.some((uri) => uri.endsWith(`/${MARKER}`)) ? journal.addresses : saying);
}
