import { ALL, GAINS, nameOf, type Ways } from "./models.ts";
import { type Outcome, outcomeOf, turnedToFalling } from "./runs.ts";

const HEADINGS = [
  "",
  ...GAINS.map((gain) => (gain === 0 ? "level: rising" : `${signed(gain)} %: ${gain > 0 ? "rising" : "falling"}`)),
  "level: falling",
  ...GAINS.map((gain) => `${signed(gain)} %: covered`),
  "turned",
];

/** The table of all players: a row for each of their ways, in per cent of so many runs. */
export function* rows(runs: number): Generator<readonly string[]> {
  yield HEADINGS;
  for (const each of ALL) yield rowOf(each, runs);
}

function rowOf(each: Ways, runs: number): string[] {
  const outcomes = GAINS.map((gain) => outcomeOf({ ...each, gain }, runs));
  const found = outcomes.map(({ verdicts }, i) => (GAINS[i]! < 0 ? verdicts.falling : verdicts.rising));
  const turned = [0, 1, 2].map((gain) => turnedToFalling({ ...each, gain }, runs)).reduce((sum, count) => sum + count);
  return [
    nameOf(each),
    ...found.map((count) => perCent(count, runs)),
    perCent(outcomes[0]!.verdicts.falling, runs),
    ...outcomes.map((outcome) => coverage(outcome)),
    `${turned} of ${3 * runs}`,
  ];
}

function coverage({ covering, intervals }: Outcome): string {
  return intervals === 0 ? "-" : perCent(covering, intervals);
}

function perCent(count: number, of: number): string {
  return ((100 * count) / of).toFixed(1);
}

function signed(gain: number): string {
  return gain > 0 ? `+${gain}` : String(gain).replace("-", "−");
}
