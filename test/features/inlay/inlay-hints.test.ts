import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inlayHints } from "../../../server/features/inlay/inlay-hints.ts";
import { journalHistory } from "../../../server/history/journal-history.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { anyText, journalOf, journalText, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-03-09")!;
const BOTH = { today: TODAY, notesPerMinute: true, lastTempo: true, readsAll: false };

function range(from: number, to: number) {
  return { start: { line: from, character: 0 }, end: { line: to, character: 0 } };
}

/** The lines of a text that have hints, with these in brackets where an editor shows them. */
function hinted(text: string, lines = range(0, 1000)): string[] {
  const journal = journalOf(text);
  journalHistory(journal);
  const shown = new Map<number, string>();
  const typed = text.split("\n");
  for (const { position, label } of [...inlayHints(journal, URI, lines, BOTH)].reverse()) {
    const { line, character } = position;
    const before = shown.get(line) ?? typed[line]!;
    shown.set(line, `${before.slice(0, character)}[${label}]${before.slice(character)}`);
  }
  return [...shown].sort(([a], [b]) => a - b).map(([, line]) => line.trim());
}

describe("behind a tempo, how many notes a minute it comes to", () => {
  // Eighths are two to a quarter, sixteenths four, triplets three (common practice): bpm times that.
  test("in the line's note value, in words behind the first", () => {
    expect(
      hinted(`2026-03-02
  D minor, thirds, 8ths at 60 clean, 66 clean, 16ths at 40
  D minor, triplets at 60-72 slips
  G major, 16ths at half=60, clean`),
    ).toEqual([
      "D minor, thirds, 8ths at 60[= 120 notes a minute] clean, 66[= 132] clean, 16ths at 40[= 160]",
      "D minor, triplets at 60-72[= 180 to 216 notes a minute] slips",
      "G major, 16ths at half=60[= 480 notes a minute], clean",
    ]);
  });

  test("in the journal's", () => {
    expect(hinted("note value 8ths\n2026-03-02\n  D minor, at 60")).toEqual(["D minor, at 60[= 120 notes a minute]"]);
  });

  test("of a line that goes on with the one above", () => {
    expect(hinted("2026-03-02\n  D minor, 8ths at 60 clean\n  same, 66")).toEqual([
      "D minor, 8ths at 60[= 120 notes a minute] clean",
      "same, 66[= 132 notes a minute]",
    ]);
  });

  test("nothing where it is the tempo itself, is not known, or counts beats", () => {
    expect(
      hinted(`note value quarters
piece "Solo": F major
2026-03-02
  D minor, at 60
  "Solo", bars 1-8, at 60
  D minor, 8ths, slow`),
    ).toEqual([]);
    expect(hinted("2026-03-02\n  D minor, at 60")).toEqual([]);
  });
});

describe("on a line of today without a tempo, what was reached last", () => {
  const BEFORE = `2026-03-02
  D melodic minor, thirds, slurred, 8ths at 60 clean, 72 clean, 76 slips
  D melodic minor, thirds, tongued, 8ths at 54 clean
2026-03-05
  D melodic minor, thirds, slurred, 8ths at 80 slips
`;
  const last = (line: string, before = BEFORE) => hinted(`${before}2026-03-09\n  ${line}`).at(-1);

  test("the best of the last day on which one was", () => {
    expect(last("D melodic minor, thirds, slurred, 8ths")).toBe("D melodic minor[last 72], thirds, slurred, 8ths");
    expect(last("D melodic minor, thirds, tongued, 8ths")).toBe("D melodic minor[last 54], thirds, tongued, 8ths");
  });

  test("with its note value where the line has none; in the way that was played last where it says none", () => {
    expect(last("D melodic minor, thirds")).toBe("D melodic minor[last 8ths at 54], thirds");
    const later = `${BEFORE}2026-03-06\n  D melodic minor, thirds, slurred, 8ths at 63 clean\n`;
    expect(last("D melodic minor, thirds", later)).toBe("D melodic minor[last 8ths at 63], thirds");
    expect(last("D melodic minor, thirds, 16ths, slurred")).toBe("D melodic minor[last 36], thirds, 16ths, slurred");
  });

  test("of a piece only at the same place", () => {
    const before = '2026-03-02\n  "Solo", bars 1-8, at half=60 clean\n  "Duet", at 90 clean\n';
    expect(last('"Solo", bars 1-8', before)).toBe('"Solo"[last 120], bars 1-8');
    expect(last('"Solo", bars 9-16', before)).toBe(undefined);
    expect(last('"Duet"', before)).toBe('"Duet"[last 90]');
    const compound = 'piece "Jig": G major, goal quarter.=100\n2026-03-02\n  "Jig", at quarter.=80 clean\n';
    expect(last('"Jig"', compound)).toBe('"Jig"[last dotted quarter=80]');
  });

  test("not in another way than the line says, on another pattern, or once a tempo or an outcome is there", () => {
    const none = (line: string) => expect(last(line, BEFORE.replaceAll("8ths ", ""))).toBe(undefined);
    none("D melodic minor, thirds, staccato slurred, dotted");
    none("D melodic minor, fourths");
    none("D melodic minor, thirds, slurred, at 50");
    none("D melodic minor, thirds, slurred, clean");
    none("D melodic minor, thirds, slow");
    none("long tones on F4");
  });

  test("not on a day that is over", () => {
    expect(hinted(`${BEFORE}2026-03-08\n  D melodic minor, thirds, slurred`).at(-1)).not.toContain("last");
  });

  test("after a pain nothing, and nothing above what the days after it allow", () => {
    const hurt = (day: string) => `${BEFORE}${day}\n  left wrist sore\n`;
    expect(last("D melodic minor, thirds, slurred, 8ths", hurt("2026-03-08"))).not.toContain("last");
    expect(last("D melodic minor, thirds, slurred, 8ths", hurt("2026-03-06"))).not.toContain("last");
  });

  test("nothing while the history is not at hand", () => {
    const text = `${BEFORE.replaceAll("8ths ", "")}2026-03-09\n  D melodic minor, thirds, slurred`;
    expect(inlayHints(journalOf(text), URI, range(0, 9), BOTH)).toEqual([]);
    expect(hinted(text)).toHaveLength(1);
    expect(inlayHints(journalOf(text), URI, range(0, 9), { ...BOTH, readsAll: true })).toHaveLength(1);
  });
});

test("only those that are wanted", () => {
  const text = "2026-03-08\n  D minor, 8ths at 60 clean\n2026-03-09\n  D minor, 8ths";
  const labels = (wanted: object) =>
    inlayHints(journalOf(text), URI, range(0, 9), { ...BOTH, readsAll: true, ...wanted }).map(({ label }) => label);
  expect(labels({})).toEqual(["= 120 notes a minute", "last 60"]);
  expect(labels({ notesPerMinute: false })).toEqual(["last 60"]);
  expect(labels({ lastTempo: false })).toEqual(["= 120 notes a minute"]);
  expect(labels({ notesPerMinute: false, lastTempo: false })).toEqual([]);
});

test("only the lines that are asked for", () => {
  const text = "2026-03-02\n  D minor, 8ths at 60\n  D minor, 8ths at 66\n2026-03-03\n  D minor, 8ths at 72";
  expect(hinted(text, range(2, 3))).toEqual(["D minor, 8ths at 66[= 132 notes a minute]"]);
  expect(hinted(text, range(40, 50))).toEqual([]);
  expect(inlayHints(journalOf(text), "file:///other.practice", range(0, 9), BOTH)).toEqual([]);
});

test("hints stand in the lines asked for, in order, and never within a word", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), fc.nat(14), fc.nat(14), (text, a, b) => {
      const today = text.replaceAll("2026-03-02", "2026-03-09");
      const journal = journalOf(today);
      journalHistory(journal);
      const lines = journal.files.get(URI)!.blocks.flatMap((block) => block.lines);
      const [from, to] = [Math.min(a, b), Math.max(a, b)];
      let before = [-1, -1];
      for (const { position, label } of inlayHints(journal, URI, range(from, to), BOTH)) {
        const { line, character } = position;
        expect(line >= from && line <= to).toBe(true);
        expect(line > before[0]! || character >= before[1]!).toBe(true);
        expect(lines[line]!.slice(character - 1, character + 1)).not.toMatch(/^[\p{L}\p{N}]{2}$/u);
        expect(label).not.toBe("");
        before = [line, character];
      }
    }),
    { seed: 1 },
  );
});
