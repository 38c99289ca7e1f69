// `npm test`, also on a fresh clone: installs if needed, then format and lint, types, build and every test; stops at the first failure.
import { readFileSync, rmSync } from "node:fs";
import { installIfNeeded, must, ROOT } from "../client/workbench/install.mjs";

const REPORT = "out/vitest.json";

installIfNeeded();
const tool = (path, ...args) => must(process.execPath, [`node_modules/${path}`, ...args]);
tool("@biomejs/biome/bin/biome", "check", ".");
tool("typescript/bin/tsc", "--noEmit", "-p", ".");
must(process.execPath, ["build.mjs"]);
rmSync(ROOT + REPORT, { force: true });
tool("vitest/vitest.mjs", "run", "--reporter=default", "--reporter=json", `--outputFile.json=${REPORT}`);

const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(ROOT + REPORT, "utf8"));
console.log(`vitest: ${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
