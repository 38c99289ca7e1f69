import { expect, test } from "vitest";
import { practisedKeys } from "../../server/plan/keys-played.ts";
import { waysPlayed } from "../../server/plan/ways-played.ts";
import { day, journalOf } from "./written.ts";

const ALL = { today: day("2026-03-30"), instrument: null };

const TEXT = `instrument alto recorder
2026-03-02
  D minor, thirds, slurred, 8ths at 60 clean, 66 clean
  D minor, 2 octaves, double tongued, top down, slow
2026-03-03
  G major, slow
  C major > F major, slurred, five notes, slow
  Ground, bars 1-8, at 60 clean
2026-03-04, plan
  A major, fours, slow
`;

test("days of each pattern, articulation, direction and reach, most days first", () => {
  const ways = waysPlayed(journalOf(TEXT), ALL);
  const said = Object.entries(ways).map(([what, found]) => [
    what,
    found.map(({ name, days }: { name: string; days: number }) => `${name} ${days}`).join(", "),
  ]);
  expect(Object.fromEntries(said)).toEqual({
    patterns: "straight 2, thirds 1",
    articulations: "slurred 2, double tongued 1, tongued 1",
    directions: "up and down 2, top down 1",
    reaches: "one octave 2, 5 notes 1, two octaves 1",
  });
});

test("only the days asked about, and the instrument", () => {
  const later = waysPlayed(journalOf(TEXT), { ...ALL, since: day("2026-03-03") });
  expect(later.patterns).toEqual([{ name: "straight", days: 1 }]);
  expect(waysPlayed(journalOf(TEXT), { ...ALL, today: day("2026-03-01") }).patterns).toEqual([]);
  expect(waysPlayed(journalOf(TEXT), { ...ALL, instrument: "violin" }).patterns).toEqual([]);
});

test("an attempt's own way counts, not another's of its line", () => {
  const text = "2026-03-02\n  D minor, slurred, at 60 clean, tongued, 66 clean, staccato, 72\n";
  expect(waysPlayed(journalOf(text), ALL).articulations.map(({ name }) => name)).toEqual([
    "slurred",
    "staccato",
    "tongued",
  ]);
});

test("each kind and key once, with its days; what was planned is not there", () => {
  const keys = practisedKeys(journalOf(TEXT), ALL).map(({ key, days }) => `${key.name} ${days.size}`);
  expect([...keys].sort()).toEqual(["C major 1", "D natural minor 1", "F major 1", "G major 1"]);
});
