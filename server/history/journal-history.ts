import { atOnce } from "../journal/at-once.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import { changedBlocks, type Document } from "../syntax/document/document.ts";
import { attemptsInSteps, recordsOfBlock } from "./attempts.ts";
import { HistoryIndex } from "./history-index.ts";
import type { AttemptRecord } from "./record.ts";
import type { Strand } from "./strands.ts";
import { type Week, weeksOf } from "./weeks.ts";

/** The state of a journal that an index was made for. */
interface Indexed {
  readonly files: ReadonlyMap<string, Document>;
  readonly conventions: ReadonlyMap<string, Conventions>;
  readonly index: HistoryIndex;
}

/**
 * The history of a journal as it stands. Of the last state that was asked for, only what changed since is looked at again:
 * the result is that of a fresh look (test/properties/history.test.ts).
 */
export function journalHistory(journal: Journal): HistoryIndex {
  return atOnce(historyInSteps(journal));
}

/** The same, a few days at each step, so that whoever waits meanwhile need not wait long. */
export function* historyInSteps(journal: Journal): Generator<void, HistoryIndex> {
  const before = journal.memo.latest<Indexed>(NAME, "");
  if (before && before.files === journal.files) return before.index;
  const conventions = conventionsOfFiles(journal);
  const index =
    before && sameConventions(before, conventions) // others make other records of every day
      ? updated(journal, before)
      : yield* HistoryIndex.inSteps(yield* attemptsInSteps(journal));
  journal.memo.setLatest<Indexed>(NAME, "", { files: journal.files, conventions, index });
  return index;
}

const NAME = "history";

/** Whether the history of this very state is at hand, so that asking for it costs nothing. */
export function hasHistory(journal: Journal): boolean {
  return journal.memo.latest<Indexed>(NAME, "")?.files === journal.files;
}

/**
 * The history that was made last, of whatever state, without any work; undefined where none was made. It may lack the
 * latest edits, which is good enough for suggestions.
 */
export function latestHistory(journal: Journal): HistoryIndex | undefined {
  return journal.memo.latest<Indexed>(NAME, "")?.index;
}

function conventionsOfFiles(journal: Journal): Indexed["conventions"] {
  return new Map([...journal.files.keys()].map((uri) => [uri, journal.conventions(uri)]));
}

/** Whether the same files stand there, read by the same conventions. */
function sameConventions({ conventions: before }: Indexed, now: Indexed["conventions"]): boolean {
  return before.size === now.size && [...now].every(([uri, conventions]) => before.get(uri) === conventions);
}

function updated(journal: Journal, before: Indexed): HistoryIndex {
  const gone: AttemptRecord[] = [];
  const come: AttemptRecord[] = [];
  for (const [uri, now] of journal.files) {
    const old = before.files.get(uri)!;
    if (old === now) continue;
    const { from, before: end, after } = changedBlocks(old, now);
    for (const block of old.blocks.slice(from, end)) gone.push(...recordsOfBlock(journal, uri, block));
    for (const block of now.blocks.slice(from, after)) come.push(...recordsOfBlock(journal, uri, block));
  }
  return before.index.changed(gone, come);
}

/** The weekly figures of a strand, worked out once. */
export function weeksOfStrand(journal: Journal, strand: Strand): readonly Week[] {
  return journal.memo.of(strand, "weeks", () => weeksOf(strand.records));
}
