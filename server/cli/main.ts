import { fstatSync } from "node:fs";
import { join } from "node:path";
import { isatty } from "node:tty";
import { setFlagsFromString } from "node:v8";
import { fileId } from "../host/node/file-id.ts";
import { loadBundle, loadBundleIfThere } from "../host/node/load-bundle.ts";
import { reasonOf } from "../host/node/read-file.ts";
import { Today } from "../host/today.ts";
import type { StaffDrawer } from "../notation/staff-look.ts";
import { Channel } from "./channel.ts";
import { type InputRead, STATUS, type Status } from "./io.ts";
import { ProgressLine } from "./progress-line.ts";
import { question } from "./question.ts";
import { versionAsked } from "./version.ts";

const stdout = new Channel("stdout");
const stderr = new Channel("stderr");
const today = new Today(Date.now);
const progress = isatty(2) ? new ProgressLine(stderr, () => performance.now()) : undefined;

async function readInput(): Promise<InputRead> {
  const chunks: Buffer[] = [];
  try {
    if (fstatSync(0).isDirectory()) return { ok: false, reason: "It is a folder." }; // Node takes it for an empty text
    for await (const chunk of process.stdin) chunks.push(chunk as Buffer);
    return { ok: true, bytes: Buffer.concat(chunks) };
  } catch (error) {
    return { ok: false, reason: reasonOf(error) };
  }
}

/**
 * V8 lets the heap double and more between two full collections. With a sixth more, a check of 50 MB with a slip in
 * nearly every line keeps to 1 GB (Node 20).
 */
function collectOften(): void {
  setFlagsFromString("--heap-growing-percent=15");
}

/** Ctrl+C once; a second one ends the process as usual. */
function interrupted(): Promise<void> {
  const asked = new Promise<void>((resolve) => process.once("SIGINT", () => resolve()));
  return Promise.race([asked, stdout.closed]);
}

/** Ends the process once all is written; what was found counts for nothing where it could not be. */
async function end(status: Status): Promise<void> {
  progress?.clear();
  const failure = await stdout.end();
  if (failure !== undefined) stderr.write(`daystave: Standard output could not be written. ${failure}\n`);
  const unsaid = await stderr.end();
  // Node would wait for what V8 still optimises, which nobody will run.
  process.exit(failure === undefined && unsaid === undefined ? status : STATUS.failed);
}

/** The core is loaded only where it is needed: that takes longer than all else here. */
async function run(argv: readonly string[]): Promise<Status> {
  const version = versionAsked(argv[0]);
  if (version !== undefined) {
    stdout.write(version);
    return STATUS.done;
  }
  const core = loadBundle<typeof import("./program.ts")>("core.js");
  return core.run(argv, {
    stdout: progress?.before(stdout) ?? stdout,
    stderr: progress?.before(stderr) ?? stderr,
    progress: progress?.show,
    muchText: collectOften,
    stdin: readInput,
    ask: isatty(0) && isatty(2) ? question : undefined,
    cwd: process.cwd(),
    today: today.dayIn(""),
    todayNow: () => today.dayIn(""),
    interrupted,
    isTerminal: isatty(1),
    outputFile: () => fileId(1),
    columns: () => process.stdout.columns,
    env: process.env,
    staves: () => loadBundleIfThere<StaffDrawer>("notation.js"),
    pages: join(__dirname, "../../syntaxes"),
  });
}

run(process.argv.slice(2)).then(end, (error: unknown) => {
  const trace = error instanceof Error ? error.stack : String(error);
  stderr.write(`daystave: This is a fault in Daystave, not in your journal.\n${trace}\n`);
  return end(STATUS.failed);
});
