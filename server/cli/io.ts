import type { DayNumber } from "../journal/calendar.ts";

export interface Output {
  write(text: string): void;
}

/** All that a command touches besides the file system. Given by `main.ts`, or by a test. */
export interface Io {
  readonly stdout: Output;
  readonly stderr: Output;
  /** Everything on standard input. */
  readonly stdin: () => Promise<Uint8Array>;
  /** An absolute path. */
  readonly cwd: string;
  readonly today: DayNumber;
  /** Whether standard output is a terminal. */
  readonly isTerminal: boolean;
  /** How many columns the terminal has; undefined where it does not say. */
  readonly columns?: () => number | undefined;
  readonly env: Readonly<Record<string, string | undefined>>;
}

/** The exit status of a command. */
export const STATUS = { done: 0, found: 1, failed: 2 } as const;
export type Status = (typeof STATUS)[keyof typeof STATUS];

/** Says on standard error why nothing was done. Returns the status for that. */
export function fail(io: Io, reason: string): Status {
  io.stderr.write(`daystave: ${reason}\n`);
  return STATUS.failed;
}
