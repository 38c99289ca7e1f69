// Runs vitest and tells what its report holds: what was left out, and what is known not to be as it should.
import { readFileSync, rmSync } from "node:fs";
import { must, ROOT } from "../client/workbench/install.mjs";

const REPORT = "out/vitest.json";

/** Every test of a run that passed, as vitest's report in JSON has it. Ends the process when one fails. */
export function testsOf(...args) {
  rmSync(ROOT + REPORT, { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${REPORT}`];
  must(process.execPath, ["node_modules/vitest/vitest.mjs", "run", ...reporters, ...args]);
  const { testResults } = JSON.parse(readFileSync(ROOT + REPORT, "utf8"));
  return testResults.flatMap(({ assertionResults }) => assertionResults);
}

/** The known misses among tests: a share as measured, beside the one that is recorded. */
export function missesOf(tests) {
  return tests.flatMap(({ ancestorTitles, title, meta: { miss } = {} }) =>
    miss ? [{ claim: ancestorTitles.at(-1), player: title.replace(/^known miss: /, ""), ...miss }] : [],
  );
}

/** Shows each known miss beside the share that is recorded. */
export function showMisses(misses) {
  const perCent = (share) => `${(100 * share).toFixed(1)} %`.padStart(7);
  for (const [at, { claim, player, recorded, measured }] of misses.entries()) {
    if (claim !== misses[at - 1]?.claim) console.log(`\nMissed: ${claim}\n  now     recorded`);
    console.log(`  ${perCent(measured)} ${perCent(recorded)}  ${player}`);
  }
}
