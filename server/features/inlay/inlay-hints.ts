import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { blockIndexAt, type Position } from "../../syntax/document/document.ts";
import type { Range } from "../types.ts";
import type { HintOnLine } from "./hint-on-line.ts";
import { lastReached } from "./last-reached.ts";
import { notesAMinute } from "./notes-a-minute.ts";

export interface InlayHint extends Omit<HintOnLine, "at"> {
  readonly position: Position;
}

/** Which hints are wanted. */
export interface HintsAsked {
  readonly today: DayNumber;
  readonly notesPerMinute: boolean;
  readonly lastTempo: boolean;
  /** Reads all days where the history is not at hand, as nobody asks again. */
  readonly readsAll: boolean;
}

/**
 * The hints on the entries of some lines, in the order of the text: how many notes a minute a tempo comes to, and on
 * those of today that have no tempo yet the one that was reached last. Only the days that the range touches are read.
 */
export function inlayHints(journal: Journal, uri: string, range: Range, asked: HintsAsked): readonly InlayHint[] {
  const document = journal.files.get(uri);
  const { today, notesPerMinute, lastTempo, readsAll } = asked;
  if (!document || !(notesPerMinute || lastTempo)) return [];
  const from = Math.max(0, range.start.line);
  const to = Math.min(document.lineCount - 1, range.end.line);
  const hints: InlayHint[] = [];
  for (let i = blockIndexAt(document, from); i < document.blocks.length && document.starts[i]! <= to; i++) {
    const block = document.blocks[i]!;
    if (!block.day) continue;
    const { day, entries } = journal.modelAtHand(block);
    for (const entry of entries) {
      const line = document.starts[i]! + entry.place.line;
      if (line < from || line > to) continue;
      const at = { journal, uri, line, entry, today };
      const text = block.lines[entry.place.line]!;
      const own = [
        ...(lastTempo && day?.date === today ? lastReached(at, readsAll) : []),
        ...(notesPerMinute ? notesAMinute(entry, journal.conventions(uri)) : []),
      ];
      for (const { at: character, ...hint } of inOrder(own, text))
        hints.push({ position: { line, character }, ...hint });
    }
  }
  return hints;
}

/** None within a word. */
function inOrder(hints: readonly HintOnLine[], text: string): readonly HintOnLine[] {
  return hints.filter(({ at }) => !isWithinWord(text, at)).sort((a, b) => a.at - b.at);
}

const SIGN = /[\p{L}\p{N}\p{M}#♯♭_]/u;

function isWithinWord(text: string, at: number): boolean {
  return SIGN.test(text.slice(Math.max(0, at - 1), at)) && SIGN.test(text.slice(at, at + 1));
}
