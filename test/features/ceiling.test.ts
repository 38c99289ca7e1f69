import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { repeatEntry } from "../../server/features/commands/repeat-entry.ts";
import { completionsAt } from "../../server/features/completion/completion.ts";
import { hoverAt } from "../../server/features/hover/hover.ts";
import { inlayHints } from "../../server/features/inlay/inlay-hints.ts";
import { ceilingOn } from "../../server/history/ceiling.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import { highestTempo, standingOf } from "../../server/history/start-tempo.ts";
import { type DayNumber, isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { METRONOME_STEPS } from "../../server/music/notes/note-value.ts";
import { FEW } from "../support/random-runs.ts";
import { journalOf, URI } from "./journal-text.ts";

// Whatever proposes a tempo asks one function how fast the day allows. Invented journals of one exercise, counted in
// quarters with one note to a beat, so that rates are tempos.

const TODAY = parseIsoDate("2026-04-06")!;

/** A day some days ago: its tempos with how they went, and what else is written of it. */
interface Day {
  readonly ago: number;
  readonly tempos: readonly string[];
  readonly said: string;
}

const tempo = fc
  .tuple(
    fc.constantFrom(...METRONOME_STEPS.slice(8, 30)),
    fc.constantFrom("clean", "clean 4 of 5", "clean 5 in a row", "slips"),
  )
  .map(([bpm, outcome]) => `${bpm} ${outcome}`);
const day: fc.Arbitrary<Day> = fc.record({
  ago: fc.integer({ min: 1, max: 25 }),
  tempos: fc.array(tempo, { minLength: 1, maxLength: 3 }),
  said: fc.constantFrom(
    ...Array.from({ length: 12 }, () => ""),
    ", sore left thumb",
    " -- my wrist hurts",
    " -- thumb better",
    " -- tired",
  ),
});
const days = fc.uniqueArray(day, { minLength: 2, maxLength: 14, selector: ({ ago }) => ago });

function textOf(all: readonly Day[], line: string): string {
  const before = [...all].sort((a, b) => b.ago - a.ago);
  const written = before.map(
    ({ ago, tempos, said }) => `${isoDate(TODAY - ago)}\n  D minor, at ${tempos.join(", ")}${said}\n`,
  );
  return `${written.join("")}${isoDate(TODAY)}\n  ${line}`;
}

/** What may be proposed at most; undefined without limit, 0 for nothing. */
function limitOf(journal: Journal, today: DayNumber): number | undefined {
  const ceiling = ceilingOn(journal, today);
  if (ceiling.kind === "without instrument") return 0;
  const [exercise] = journalHistory(journal).exercises.values();
  return highestTempo(ceiling, standingOf(exercise!.strands[0]!.records, today));
}

function proposed(all: readonly Day[]): { readonly limit: number | undefined; readonly tempos: readonly number[] } {
  const text = textOf(all, "D minor, at 40");
  const journal = journalOf(text);
  const line = text.split("\n").length - 1;
  const limit = limitOf(journal, TODAY);
  const hover = hoverAt(journal, URI, { line, character: 4 }, { today: TODAY, explain: "none" })!.markdown;
  const faster = repeatEntry(journal, URI, { line, character: 4 }, { today: TODAY, step: "faster" });
  const offered = ["", "D mi", "D minor, at ", "D minor at 40 clean, "].flatMap((typed) => {
    const typing = journalOf(textOf(all, typed));
    journalHistory(typing);
    const at = { line, character: 2 + typed.length };
    return completionsAt(typing, URI, at, TODAY).map(({ label }) => label);
  });
  const hinted = journalOf(textOf(all, "D minor"));
  const range = { start: { line, character: 0 }, end: { line, character: 0 } };
  const hints = inlayHints(hinted, URI, range, {
    today: TODAY,
    notesPerMinute: false,
    lastTempo: true,
    readsAll: true,
  });
  const last = hints.map(({ label }) => label.replace("last", "at"));
  const words = [
    ...last,
    /^Start at [\d.]+/m.exec(hover)?.[0] ?? "",
    faster.ok ? faster.edits[0]!.newText : "",
    ...offered,
  ];
  const tempos = words.flatMap((each) => /(?:\bat |^)(\d+(?:\.\d+)?)$/.exec(each.trim())?.[1] ?? []).map(Number);
  return { limit, tempos };
}

describe("how fast anything is proposed", () => {
  test("is never faster than the day allows, and nothing on a day without the instrument", () => {
    const kinds = { none: 0, limited: 0, free: 0 };
    fc.assert(
      fc.property(days, (all) => {
        const { limit, tempos } = proposed(all);
        if (limit === undefined) kinds.free++;
        else if (limit === 0) kinds.none++;
        else kinds.limited++;
        if (limit === 0) expect(tempos).toEqual([]);
        else if (limit !== undefined) expect(Math.max(0, ...tempos)).toBeLessThanOrEqual(Math.max(limit, 40));
      }),
      { seed: 41, numRuns: Math.max(FEW, 150) },
    );
    for (const [kind, count] of Object.entries(kinds)) expect(count, kind).toBeGreaterThan(5);
  });
});
