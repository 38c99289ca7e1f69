// npm run simulation: the tests of this folder on 1,000 courses of each player (2,000 of some) in place of 100, and those of
// plans on six in place of one; then the misses that are known, each beside the share that is recorded. `.ci/run` has them
// in full as well.
import { missesOf, showMisses, testsOf } from "../../run-vitest.mjs";

process.env.DAYSTAVE_SIMULATION = "in full";
showMisses(missesOf(testsOf("test/history/simulation", "test/plan/simulation")));
