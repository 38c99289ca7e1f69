// npm run edits [-- EDITS] [--every STEPS] [--seed N] [--workers N]: journals of several files in several hands, a million edits
// in all; after every so many steps what each tells is held against one of the same texts that nobody read before. Seeds count
// up from the first, one for each 5,000 edits. Ends with 1 at the first difference, and prints how to see it again.
import { mkdtempSync, rmSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { Worker } from "node:worker_threads";
import { build } from "esbuild";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    every: { type: "string", default: "60" },
    seed: { type: "string", default: "1" },
    workers: { type: "string", default: `${availableParallelism()}` },
  },
});
const LIFE = 5000;
const edits = number(positionals[0] ?? "1000000");
const every = number(values.every);
const first = number(values.seed);
const lives = Array.from({ length: Math.ceil(edits / LIFE) }, (_, i) => ({
  seed: first + i,
  edits: Math.min(LIFE, edits - i * LIFE),
  every,
}));

const folder = mkdtempSync(join(tmpdir(), "edits-"));
const began = performance.now();
const sum = { lives: 0, edits: 0, compared: 0 };
try {
  const outfile = join(folder, "worker.mjs");
  const entryPoints = [join(import.meta.dirname, "worker.ts")];
  await build({ entryPoints, outfile, bundle: true, platform: "node", format: "esm", logLevel: "error" });
  const waiting = [...lives];
  const workers = Math.min(number(values.workers), lives.length);
  await Promise.all(Array.from({ length: workers }, () => livesOf(outfile, waiting)));
  console.log(`${sum.edits} edits, compared ${sum.compared} times: always as fresh. ${minutes()}`);
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true });
}

/** Lets a worker live what is waiting, one after another. */
function livesOf(file, waiting) {
  const worker = new Worker(file, { workerData: { folder: join(import.meta.dirname, "../../reference") } });
  return new Promise((resolve, reject) => {
    const next = () => (waiting.length > 0 ? worker.postMessage(waiting.shift()) : resolve(worker.terminate()));
    worker.on("error", reject);
    worker.on("message", (report) => {
      if (report.failure) {
        waiting.length = 0;
        const again = `npm run edits -- ${LIFE} --every ${every} --seed ${report.seed}`;
        worker.terminate();
        return reject(new Error(`${report.failure}\nAgain: ${again}`));
      }
      sum.lives++;
      sum.edits += report.edits;
      sum.compared += report.compared;
      console.log(`${sum.lives} of ${lives.length}: seed ${report.seed}, ${report.edits} edits as fresh. ${minutes()}`);
      next();
    });
    next();
  });
}

function minutes() {
  return `${((performance.now() - began) / 60_000).toFixed(1)} min`;
}

/** Ends the process where it is none. */
function number(text) {
  const value = Number(text);
  if (Number.isInteger(value) && value > 0) return value;
  console.error(`not a positive number: ${text}`);
  process.exit(2);
}
