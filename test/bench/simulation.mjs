// node test/bench/simulation.mjs [--runs N]: how often a trend says of invented players what is true of them. Reports, never
// fails. Of each row: verdicts in per cent of the runs; intervals that hold the true slope in per cent of those there are; and
// how many runs of players who gain 0, 1 and 2 % a week were turned to falling by one to three slow weeks more.
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { build } from "esbuild";
import { settingsOf } from "../../build.mjs";

const FOLDER = fileURLToPath(new URL("../../out/bench", import.meta.url));
const REPORT = {
  entry: "test/history/simulation/report.ts",
  file: "simulation.mjs",
  platform: "node",
  target: "node20",
  format: "esm",
};

const { runs } = parseArgs({ options: { runs: { type: "string", default: "1000" } } }).values;
const count = Math.max(1, Math.floor(Number(runs)) || 1000);

await build(settingsOf(REPORT, FOLDER));
const { rows } = await import(pathToFileURL(`${FOLDER}/${REPORT.file}`).href);
console.log(`${count} runs of each player; the players are invented.`);
for (const cells of rows(count)) console.log(cells.join("\t"));
