import { expect, test } from "vitest";
import { type Around, daystave } from "../command-line.ts";

// Today is 2026-03-10; twelve weeks go back to 2025-12-17.

const JOURNAL = `instrument alto recorder
piece "Ground in G minor" as Ground: G minor, range G4 to F6, due 2026-05-09

2025-12-16
  A major, slow
2025-12-17
  E major, slow
2026-02-27
  G harmonic minor, thirds, slurred, 8ths at 60 clean
2026-03-03
  G harmonic minor, slurred, 8ths at 60 clean
  C minor arpeggio, 2 octaves, slow
2026-03-11
  B major, slow
`;

async function keys(argv: readonly string[], around: Around = { files: { "a.practice": JOURNAL } }) {
  return daystave(["keys", ...argv], around);
}

async function json(argv: readonly string[] = [], around?: Around) {
  return JSON.parse((await keys(["--json", ...argv], around)).stdout);
}

test("keys with their days, the ways they were played in, and what is wanted", async () => {
  const { status, stdout, stderr } = await keys([]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toBe(
    [
      "Keys from 17 December 2025 to 10 March:",
      "  G harmonic minor  2 days  last on 3 Mar",
      "  C minor arpeggio  1 day   last on 3 Mar",
      "  E major           1 day   last on 17 Dec 2025",
      "",
      "How scales and chords were played, with the number of days:",
      "  Patterns: straight 2, thirds 1",
      "  Articulation: slurred 2, tongued 2",
      "  Direction: up and down 3",
      "  Reach: one octave 3, two octaves 1",
      "",
      "Wanted for the current pieces:",
      "  D minor is next to the key of Ground: not played yet.",
      "  Ground goes up to F6; its scale went up to G5.",
      // Which one is hardest is tested in test/music/fingering.
      "  The hardest finger change of G minor, as far as Ground goes, is Eb5 to F5: not played in the last twelve weeks.",
      "",
      "Wanted, and played lately:",
      "  Ground is in G minor: last played on 3 March.",
      "  C minor is next to the key of Ground: last played on 3 March.",
      "",
    ].join("\n"),
  );
});

test("--since and --until choose other days, and what was wanted on the last of them", async () => {
  const spring = await json(["--since", "2025-12-01", "--until", "2026-03-01"]);
  expect(spring).toMatchObject({ since: "2025-12-01", until: "2026-03-01" });
  expect(spring.keys.map(({ tonic, days }: { tonic: string; days: number }) => `${tonic} ${days}`)).toEqual([
    "A 1",
    "E 1",
    "G 1",
  ]);
  expect(spring.wanted[0]).toMatchObject({ what: "key", last: "2026-02-27" });
});

test("days after today do not exist yet", async () => {
  const ahead = await json(["--until", "2026-12-31"]);
  expect(ahead).toMatchObject({ since: "2025-12-17", until: "2026-03-10" });
  expect(ahead.keys.map(({ tonic }: { tonic: string }) => tonic)).not.toContain("B");
  expect(await keys(["--since", "2026-03-11"])).toMatchObject({
    status: 2,
    stdout: "",
    stderr: "daystave: “--since 2026-03-11” is after today: put an earlier day.\n",
  });
});

test("days that are none, or in the wrong order, are refused", async () => {
  expect(await keys(["--since", "2026-02-30"])).toMatchObject({
    status: 2,
    stderr: "daystave: “--since” takes a date, year-month-day, such as 2026-03-02, not “2026-02-30”.\n",
  });
  expect((await keys(["--since", "2026-03-02", "--until", "2026-03-01"])).stderr).toContain("put the earlier day");
});

test("--json has every field", async () => {
  const report = await json();
  expect(report).toEqual({
    since: "2025-12-17",
    until: "2026-03-10",
    keys: [
      { kind: "harmonic minor", tonic: "G", fifths: -2, days: 2, last: "2026-03-03" },
      { kind: "minor arpeggio", tonic: "C", fifths: -3, days: 1, last: "2026-03-03" },
      { kind: "major", tonic: "E", fifths: 4, days: 1, last: "2025-12-17" },
    ],
    patterns: [
      { name: "straight", days: 2 },
      { name: "thirds", days: 1 },
    ],
    articulations: [
      { name: "slurred", days: 2 },
      { name: "tongued", days: 2 },
    ],
    directions: [{ name: "up and down", days: 3 }],
    reaches: [
      { name: "one octave", days: 3 },
      { name: "two octaves", days: 1 },
    ],
    wanted: report.wanted,
    skipped: [],
  });
  expect(report.wanted).toMatchObject([
    { piece: "Ground", what: "key", name: "G minor", played: true, last: "2026-03-03" },
    { piece: "Ground", what: "neighbour", name: "D minor", played: false, last: null },
    { piece: "Ground", what: "neighbour", name: "C minor", played: true, last: "2026-03-03" },
    { piece: "Ground", what: "range", name: "G4 to F6", played: false, last: null },
    { piece: "Ground", what: "fingerChange", name: expect.stringMatching(/^\w+ to \w+$/) },
  ]);
  for (const { why } of report.wanted) expect(why).toMatch(/^[A-Z].*\.$/);
});

test("what belongs to no key has no signature", async () => {
  const { keys: found } = await json([], { files: { "a.practice": "2026-03-02\n  C chromatic, slow\n" } });
  expect(found).toEqual([{ kind: "chromatic", tonic: "C", fifths: null, days: 1, last: "2026-03-02" }]);
});

test("a piece that was not practised yet wants its keys all the same", async () => {
  const { stdout } = await keys([], { files: { "a.practice": 'piece "Air": D minor\n' } });
  expect(stdout).toBe(
    [
      "Wanted for the current pieces:",
      "  Air is in D minor: not played yet.",
      "  A minor is next to the key of Air: not played yet.",
      "  G minor is next to the key of Air: not played yet.",
      "",
    ].join("\n"),
  );
});

test("nothing to show is said on standard error, and no failure", async () => {
  expect(await keys([], { files: {} })).toMatchObject({
    status: 0,
    stdout: "",
    stderr: "daystave: There is no .practice file here.\n",
  });
  const { status, stdout, stderr } = await keys([], { files: { "a.practice": "2026-03-02, rest\n" } });
  expect({ status, stdout }).toEqual({ status: 0, stdout: "" });
  expect(stderr).toContain("No scale or chord practised in these days, and no current piece with a key.");
});

test("several journals come one after another", async () => {
  const files = {
    "ann/journal.practice": "player Ann\n2026-03-02\n  C major, slow\n",
    "bo/journal.practice": "player Bo\n2026-03-02\n  F major, slow\n",
  };
  const { stdout } = await keys([], { files });
  expect(stdout.split("\n").filter((line) => /^(Ann|Bo)$|days? /.test(line.replace("number of days", "")))).toEqual([
    "Ann",
    "  C major  1 day   last on 2 Mar",
    "Bo",
    "  F major  1 day   last on 2 Mar",
  ]);
  expect(await json([], { files })).toMatchObject({
    journals: [
      { path: "ann", name: "Ann", keys: [{ tonic: "C" }] },
      { path: "bo", name: "Bo", keys: [{ tonic: "F" }] },
    ],
  });
});

test("names are in the journal's language", async () => {
  const files = { "a.practice": "names german\n2026-03-02\n  fis-Moll, slow\n" };
  expect((await keys([], { files })).stdout).toContain("  fis-Moll natürlich  1 day");
  expect((await json([], { files })).keys[0]).toMatchObject({ kind: "natural minor", tonic: "Fis" });
});
