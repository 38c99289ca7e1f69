import { writeSync } from "node:fs";
import { reasonOf } from "./read-file.ts";

const STANDARD_ERROR = 2;

/**
 * Ends the process once an answer cannot be written: whoever waits for it would wait for ever. Quietly where the client
 * has gone, else with a sentence on standard error and status 2.
 */
export function endWhenAnswersFail(): void {
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(1);
    try {
      writeSync(STANDARD_ERROR, `daystave: Standard output could not be written. ${reasonOf(error)}\n`);
    } finally {
      process.exit(2);
    }
  });
}
