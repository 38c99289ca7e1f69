import { parentPort, workerData } from "node:worker_threads";
import { handsIn } from "./hands.ts";
import { life } from "./life.ts";

// Lives one journal after another, as the run beside it (run.mjs) hands them out.

const { folder } = workerData as { readonly folder: string };
const hands = handsIn(folder);
parentPort!.on("message", (asked: { readonly seed: number; readonly edits: number; readonly every: number }) =>
  parentPort!.postMessage({ seed: asked.seed, ...life({ ...asked, hands }) }),
);
