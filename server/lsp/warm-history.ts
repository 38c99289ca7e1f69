import type { Disposable } from "vscode-languageserver";
import { usageInSteps } from "../features/completion/usage.ts";
import { leapsInSteps } from "../features/diagnostics/history-findings.ts";
import { hasHistory, historyInSteps, practisedDaysInSteps } from "../features/diagnostics/history-reading.ts";
import { Slices } from "../host/time-slices.ts";
import { debounced } from "./debounce.ts";
import type { Session } from "./session.ts";

/** Long enough that what the player sees first comes first, in milliseconds. */
const QUIET = 400;

/**
 * Brings the history of each journal up to date while nobody types, in slices between which other messages are
 * answered: then what only the history tells can be told, and neither a hover nor the first offers need wait. One
 * journal at a time, and each by one reader alone: two in turn would do the same twice, and let a key wait for both.
 */
export function warmHistory(session: Session): Disposable {
  const waiting = new Set<string>();
  let isWarming = false;
  return debounced(session.onChange, QUIET, async ({ journals }) => {
    for (const root of journals) waiting.add(root);
    if (isWarming) return;
    isWarming = true;
    try {
      for (const root of waiting) {
        waiting.delete(root);
        await warm(session, root);
      }
    } finally {
      isWarming = false;
    }
  });
}

async function warm(session: Session, root: string): Promise<void> {
  const slices = new Slices();
  for (;;) {
    const journal = session.workspace.journal(root);
    if (!journal || hasHistory(journal)) return;
    for (const _ of historyInSteps(journal)) {
      await slices.pause();
      // An edit came between: what was read of other days is kept.
      if (session.workspace.journal(root) !== journal) break;
    }
    if (!hasHistory(journal)) continue;
    for (const _ of leapsInSteps(journal)) await slices.pause();
    for (const _ of practisedDaysInSteps(journal)) await slices.pause();
    session.learned(root);
    for (const _ of usageInSteps(journal)) await slices.pause();
    return;
  }
}
