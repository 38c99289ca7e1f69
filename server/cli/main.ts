import { isatty } from "node:tty";
import { loadBundle } from "../host/node/load-bundle.ts";
import { Today } from "../host/today.ts";
import { type Output, STATUS } from "./io.ts";

const { run } = loadBundle<typeof import("./program.ts")>("core.js");

/**
 * Writes until whoever reads has gone; what comes after that is dropped, and the exit status stays what it is. The
 * stream is opened when something is written: that takes Node some milliseconds, and most runs use only one of the two.
 */
function outputTo(name: "stdout" | "stderr"): Output {
  let open: boolean | undefined;
  return {
    write(text) {
      if (open === undefined) {
        open = true;
        process[name].on("error", (error: NodeJS.ErrnoException) => {
          if (error.code !== "EPIPE") throw error;
          open = false;
        });
      }
      if (open) process[name].write(text);
    },
  };
}

async function readAll(stream: NodeJS.ReadStream): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

run(process.argv.slice(2), {
  stdout: outputTo("stdout"),
  stderr: outputTo("stderr"),
  stdin: () => readAll(process.stdin),
  cwd: process.cwd(),
  today: new Today(Date.now).dayIn(""),
  isTerminal: isatty(1),
  columns: () => process.stdout.columns,
  env: process.env,
}).then(
  (status) => {
    process.exitCode = status;
    // Node would wait for what V8 still optimises, which nobody will run.
    process.stdout.write("", () => process.exit());
  },
  (error: unknown) => {
    const trace = error instanceof Error ? error.stack : String(error);
    process.stderr.write(`daystave: This is a mistake in Daystave, not in your journal.\n${trace}\n`);
    process.exitCode = STATUS.failed;
  },
);
