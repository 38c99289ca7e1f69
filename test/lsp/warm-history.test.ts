import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { WorkspaceChange } from "../../server/host/workspace.ts";
import { isoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import type { Session } from "../../server/lsp/session.ts";
import { warmHistory } from "../../server/lsp/warm-history.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// The days are read in slices, between which a timer runs out that the tests turn.

const ROOT = "file:///j";
/** Many more than one slice takes. */
const DAYS = 3000;

beforeEach(() => void vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] }));
afterEach(() => void vi.useRealTimers());

function journalOfDays(): Journal {
  const days = Array.from({ length: DAYS }, (_, i) => `${isoDate(16_000 + i)}\n  D minor, at ${60 + (i % 60)} clean\n`);
  return new Journal(ROOT, new Map([[`${ROOT}/a.practice`, createDocument(days.join(""))]]));
}

test("a change that comes while the days are read starts no second reading", async () => {
  const journal = journalOfDays();
  const listeners: ((change: WorkspaceChange) => void)[] = [];
  const learned: string[] = [];
  const session = {
    onChange: (listener: (change: WorkspaceChange) => void) => {
      listeners.push(listener);
      return { dispose: () => undefined };
    },
    workspace: { journal: () => journal },
    learned: (root: string) => learned.push(root),
  };
  warmHistory(session as unknown as Session);
  const change = () => {
    for (const listener of listeners) listener({ journals: new Set([ROOT]), cause: "edit" });
    vi.advanceTimersByTime(400); // all at once: what waits for a slice goes on only afterwards
  };
  change();
  change();
  expect(learned).toEqual([]); // the days are being read
  await vi.advanceTimersByTimeAsync(60_000);
  expect(learned).toEqual([ROOT]);
});
