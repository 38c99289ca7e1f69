// `npm test`, also on a fresh clone: installs if needed, then format and lint, types, build and every test; stops at the first
// failure. Where CI is set, nothing may be left out but the desktop editor, which a build server has not.
import { installIfNeeded, must } from "../client/workbench/install.mjs";
import { missesOf, testsOf } from "./run-vitest.mjs";

const MAY_BE_LEFT_OUT = /on the desktop \(/;

installIfNeeded();
const tool = (path, ...args) => must(process.execPath, [`node_modules/${path}`, ...args]);
tool("@biomejs/biome/bin/biome", "check", ".");
tool("typescript/bin/tsc", "--noEmit", "-p", ".");
must(process.execPath, ["build.mjs"]);

const tests = testsOf();
const misses = missesOf(tests).length;
const passed = tests.filter(({ status }) => status === "passed").length - misses;
const leftOut = tests.filter(({ status }) => status !== "passed").map(({ fullName }) => fullName);
console.log(`${passed} tests passed, ${misses} known misses are as recorded, ${leftOut.length} tests were skipped.`);
if (misses > 0) console.log("test/history/simulation/misses.ts has the misses; npm run simulation lists them.");
for (const name of leftOut) console.log(`Skipped: ${name}`);
if (process.env.CI && leftOut.some((name) => !MAY_BE_LEFT_OUT.test(name))) {
  console.error("Under CI no test may be skipped but that of the desktop editor.");
  process.exit(1);
}
