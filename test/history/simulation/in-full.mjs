// npm run simulation: the tests of this folder on 1,000 courses of each player (2,000 of some) in place of 200, and those of
// plans on six in place of one, in some minutes; then the misses that are known, each beside the share that is recorded.
import { missesOf, testsOf } from "../../run-vitest.mjs";

process.env.DAYSTAVE_SIMULATION = "in full";
const misses = missesOf(testsOf("test/history/simulation", "test/plan/simulation"));

const perCent = (share) => `${(100 * share).toFixed(1)} %`.padStart(7);
for (const [at, { claim, player, recorded, measured }] of misses.entries()) {
  if (claim !== misses[at - 1]?.claim) console.log(`\nMissed: ${claim}\n  now     recorded`);
  console.log(`  ${perCent(measured)} ${perCent(recorded)}  ${player}`);
}
