import { expect, test } from "vitest";
import { hardestSteps } from "../../../server/music/fingering/finger-change.ts";
import { instrumentById } from "../../../server/music/instruments/instruments.ts";
import { midi, type Note, parseNote, printNote } from "../../../server/music/notes/note.ts";

// The forty hardest of all seconds within the range of an alto recorder, by the weights stated. The weights are judgement;
// beside each step stands who would agree that it is hard. D, R and B are charts of test/reference/recorder-fingerings.json.
// Looked at step by step: no plain step of one finger is among them, and what stands first would be called hard by most.
const TABLE = `
  E6 F#6   11  every chart: for F#6 the bell is closed, and R calls what goes without it insecure
  F6 F#6   10  the same
  G#5 A5    8  methods, from memory: the first pinched note, come to with fingers that go against the thumb; D gives it a lesson of its own
  G#4 Bb4   8  teachers, from memory: out of the double hole into the fork
  F#5 G#5   8  teachers, from memory: one finger up, four down, the thumb off throughout
  G#5 Bb5   8  as G#5 A5
  C#6 Eb6   8  charts, as they differ on Eb6; the breath for the third register is from memory
  Eb5 F5    7  teachers, from memory: fork to fork
  G5 A5     7  methods, from memory: over the thumb into the pinched notes
  A4 Bb4    6  every beginner's method, from memory: the first fork
  Bb4 B4    6  the same: two forks next to each other
  C5 C#5    6  teachers, from memory; charts differ on C#5
  D5 Eb5    6  teachers, from memory: into the fork of the left hand
  Bb5 B5    6  as Bb4 B4, an octave up
  F#4 G#4   6  teachers, from memory: the hardest low step, as two fingers aim at half holes at once
  B4 C#5    6  the count alone; charts differ on C#5
  C#5 Eb5   6  the count alone; charts differ on C#5
  B5 C#6    6  the count alone
  Eb6 F6    6  charts, as they differ on Eb6
  F6 G6     6  teachers, from memory: high, and a fork
  E5 F5     5  every method, from memory: the two fingers of the left hand that change places
  F5 F#5    5  methods, from memory: thumb against finger
  A5 Bb5    5  the count alone
  C6 C#6    5  the count alone
  Eb6 E6    5  charts, as they differ on Eb6
  A4 B4     5  teachers, from memory: into the fork
  E5 F#5    5  methods, from memory: thumb against finger
  G5 G#5    4  the count alone: four fingers that fall together are easier than many two that do not
  D6 Eb6    4  charts, as they differ on Eb6
  F#6 G6    4  every chart: the bell alone
  D6 E6     4  methods, from memory: the edge of the third register
  F4 F#4    3  teachers, from memory: the double hole of the little finger; many would place it higher
  F#4 G4    3  the same
  G4 G#4    3  the same, of the ring finger
  G#4 A4    3  the same
  Bb4 C5    3  the count alone
  B4 C5     2  the count alone
  C#5 D5    2  the count alone
  Eb5 E5    2  the count alone
  Bb5 C6    2  the count alone
`;

const NAMES = ["C", "C#", "D", "Eb", "E", "F", "F#", "G", "G#", "A", "Bb", "B"];
const ALTO = instrumentById("alto recorder")!;

function noteOn(key: number): Note {
  return { ...parseNote(NAMES[key % 12]!)!, octave: Math.floor(key / 12) - 1 };
}

test("the forty hardest seconds on an alto recorder", () => {
  const [low, high] = [midi(ALTO.low), midi(ALTO.high)];
  const seconds = [1, 2].flatMap((size) =>
    Array.from({ length: high - low - size + 1 }, (_, i) => [noteOn(low + i), noteOn(low + i + size)]),
  );
  expect(seconds).toHaveLength(51);
  const hardest = seconds
    .flatMap((notes) => hardestSteps({ notes }, ALTO, 1))
    .sort((a, b) => b.cost - a.cost)
    .slice(0, 40);
  const told = TABLE.trim()
    .split("\n")
    .map((row) => /^\s*(\S+ \S+)\s+(\d+)\s+(\S.*)$/.exec(row)!.slice(1));
  expect(hardest.map(({ from, to, cost }) => [`${printNote(from)} ${printNote(to)}`, String(cost)])).toEqual(
    told.map(([step, cost]) => [step, cost]),
  );
});

test("F#4 to G#4 is among the hardest of the low ones, F4 to C5", () => {
  const low = ["F4", "F#4", "G4", "G#4", "A4", "Bb4", "B4", "C5"].map((text) => parseNote(text) as Note);
  const steps = low.flatMap((from, i) => low.slice(i + 1, i + 3).map((to) => [from, to]));
  const costs = steps.flatMap((notes) => hardestSteps({ notes }, ALTO, 1).map(({ cost }) => cost));
  const [own] = hardestSteps({ notes: [low[1]!, low[3]!] }, ALTO, 1);
  expect(costs.filter((cost) => cost > own!.cost).length).toBeLessThanOrEqual(1);
});
