import type { Disposable } from "vscode-languageserver";
import type { WorkspaceChange } from "../host/workspace.ts";
import type { ChangeEvent } from "./session.ts";

/**
 * Calls back once for all changes, when none has come for a while.
 *
 * @param quiet in milliseconds
 */
export function debounced(
  changes: ChangeEvent,
  quiet: number,
  callback: (change: WorkspaceChange) => void,
): Disposable {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let journals = new Set<string>();
  let cause: WorkspaceChange["cause"] = "edit";
  const end = () => {
    const change = { journals, cause };
    journals = new Set();
    cause = "edit";
    callback(change);
  };
  const listening = changes((change) => {
    for (const journal of change.journals) journals.add(journal);
    if (change.cause === "files") cause = "files";
    clearTimeout(timer);
    timer = setTimeout(end, quiet);
  });
  return {
    dispose() {
      clearTimeout(timer);
      listening.dispose();
    },
  };
}
