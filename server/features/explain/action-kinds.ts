import type { CodeAction } from "../types.ts";

/**
 * Whether a kind of action, or one that it stands below, is asked for; where nothing is in particular, every kind is.
 */
export function isAsked(kind: CodeAction["kind"], only: readonly string[] | undefined): boolean {
  return !only || only.some((each) => each === "" || kind === each || kind.startsWith(`${each}.`));
}
