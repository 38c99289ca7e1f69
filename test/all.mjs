// `npm test`, also on a fresh clone: installs if needed, then format and lint, types, build and every test; stops at the first
// failure. Where CI is set, nothing may be left out but the desktop editor, which a build server has not.
import { execFile } from "node:child_process";
import { installIfNeeded, ROOT } from "../client/workbench/install.mjs";
import { missesOf, showMisses, testsOf } from "./run-vitest.mjs";

const MAY_BE_LEFT_OUT = /on the desktop \(/;

installIfNeeded();
await sideBySide(
  ["node_modules/@biomejs/biome/bin/biome", "check", "."],
  ["node_modules/typescript/bin/tsc", "--noEmit", "-p", "."],
  ["build.mjs"],
);

const tests = testsOf();
const misses = missesOf(tests);
const passed = tests.filter(({ status }) => status === "passed").length - misses.length;
const leftOut = tests.filter(({ status }) => status !== "passed");
console.log(
  `${passed} tests passed, ${misses.length} known misses are as recorded, ${leftOut.length} tests were skipped.`,
);
if (process.env.DAYSTAVE_SIMULATION) showMisses(misses);
else console.log("test/history/simulation/misses.ts has the misses; npm run simulation lists them.");
for (const [block, count] of countedByBlock(leftOut)) console.log(`Skipped: ${count} of ${block}`);
if (process.env.CI && leftOut.some(({ fullName }) => !MAY_BE_LEFT_OUT.test(fullName))) {
  console.error("Under CI no test may be skipped but that of the desktop editor.");
  process.exit(1);
}

/** How many tests there are of each block, by its name. */
function countedByBlock(tests) {
  const counts = new Map();
  for (const { ancestorTitles } of tests) {
    const block = ancestorTitles.slice(0, 2).join(": ");
    counts.set(block, (counts.get(block) ?? 0) + 1);
  }
  return counts;
}

/** Runs programs of the checkout, all at once, and shows what each printed. Ends the process when one failed. */
async function sideBySide(...programs) {
  const ended = programs.map(
    (argv) =>
      new Promise((resolve) =>
        execFile(process.execPath, argv, { cwd: ROOT, maxBuffer: 1e9 }, (error, stdout, stderr) => {
          process.stdout.write(stdout + stderr);
          if (error) console.error(`"node ${argv.join(" ")}" failed.`);
          resolve(!error);
        }),
      ),
  );
  if ((await Promise.all(ended)).includes(false)) process.exit(1);
}
