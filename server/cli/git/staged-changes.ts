import { decodeText } from "../../host/file-reader.ts";
import { fieldsOf, git } from "./git.ts";

/** A journal file that a commit of the index would add, change or take away. A rename is one of each. */
export interface StagedChange {
  /** From the top of the repository, with `/`. */
  readonly path: string;
  readonly isDeleted: boolean;
  /** Its text in the last commit; undefined where it was not there, or was no text. */
  readonly before: string | undefined;
}

export type StagedChanges =
  | { readonly ok: true; readonly changes: readonly StagedChange[] }
  | { readonly ok: false; readonly reason: string };

/** Links and modules hold no text of their own. */
const FILE_MODES = ["100644", "100755"];
const NO_OBJECT = /^0+$/;

/** What the index has other than the last commit. */
export function stagedChanges(top: string): StagedChanges {
  const raw = git(top, ["diff", "--cached", "--raw", "-z", "--no-renames", "--no-abbrev", "--no-relative"]);
  if (!raw.ok) return raw;
  const fields = fieldsOf(raw.text);
  const changed: { path: string; isDeleted: boolean; old: string }[] = [];
  for (let i = 0; i + 1 < fields.length; i += 2) {
    const [oldMode = "", newMode = "", old = ""] = fields[i]!.slice(1).split(" ");
    const path = fields[i + 1]!;
    if (!isJournalPath(path) || ![oldMode, newMode].some((mode) => FILE_MODES.includes(mode))) continue;
    changed.push({ path, isDeleted: !FILE_MODES.includes(newMode), old: FILE_MODES.includes(oldMode) ? old : "0" });
  }
  const texts = textsOf(
    top,
    changed.map(({ old }) => old).filter((id) => !NO_OBJECT.test(id)),
  );
  if (!texts.ok) return texts;
  const changes = changed.map(({ old, ...change }) => ({ ...change, before: texts.byId.get(old) }));
  return { ok: true, changes };
}

/** The journal files in the index that a walk of the folder would find, from the top of the repository. */
export function stagedPaths(
  top: string,
): { readonly ok: true; readonly paths: readonly string[] } | { readonly ok: false; readonly reason: string } {
  const listed = git(top, ["ls-files", "--stage", "-z", "--", "*.practice"]);
  if (!listed.ok) return listed;
  const paths = fieldsOf(listed.text).flatMap((line) => {
    const tab = line.indexOf("\t");
    const path = line.slice(tab + 1);
    return FILE_MODES.includes(line.slice(0, 6)) && isJournalPath(path) ? [path] : [];
  });
  return { ok: true, paths: [...new Set(paths)] };
}

/** As `readTree` has it. */
function isJournalPath(path: string): boolean {
  const folders = path.split("/").slice(0, -1);
  return path.endsWith(".practice") && !folders.some((name) => name.startsWith(".") || name === "node_modules");
}

/** Texts by their ids. `git cat-file --batch` gives of each a line with its size, the bytes, and a line end. */
function textsOf(
  top: string,
  ids: readonly string[],
): { readonly ok: true; readonly byId: ReadonlyMap<string, string> } | { readonly ok: false; readonly reason: string } {
  const byId = new Map<string, string>();
  if (ids.length === 0) return { ok: true, byId };
  const batch = git(top, ["cat-file", "--batch"], `${ids.join("\n")}\n`);
  if (!batch.ok) return batch;
  const { bytes } = batch;
  for (let at = 0; at < bytes.length; ) {
    const end = bytes.indexOf(0x0a, at);
    const [id = "", type, size] = bytes.toString("latin1", at, end).split(" ");
    at = end + 1;
    if (type !== "blob") continue;
    const read = decodeText(bytes.subarray(at, at + Number(size)));
    if (read.ok) byId.set(id, read.text);
    at += Number(size) + 1;
  }
  return { ok: true, byId };
}
