import { Today } from "../host/today.ts";
import { STATUS } from "./io.ts";
import { run } from "./program.ts";

/** Writes until whoever reads has gone; what comes after that is dropped, and the exit status stays what it is. */
function outputTo(stream: NodeJS.WriteStream): { write(text: string): void } {
  let open = true;
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
    open = false;
  });
  return { write: (text) => void (open && stream.write(text)) };
}

async function readAll(stream: NodeJS.ReadStream): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

run(process.argv.slice(2), {
  stdout: outputTo(process.stdout),
  stderr: outputTo(process.stderr),
  stdin: () => readAll(process.stdin),
  cwd: process.cwd(),
  today: new Today(Date.now).day,
  isTerminal: process.stdout.isTTY === true,
  env: process.env,
}).then(
  (status) => {
    process.exitCode = status;
  },
  (error: unknown) => {
    const trace = error instanceof Error ? error.stack : String(error);
    process.stderr.write(`daystave: This is a mistake in Daystave, not in your journal.\n${trace}\n`);
    process.exitCode = STATUS.failed;
  },
);
