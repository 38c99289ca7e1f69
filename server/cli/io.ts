import type { DayNumber } from "../journal/calendar.ts";
import type { StaffDrawer } from "../notation/staff-look.ts";

export interface Output {
  write(content: string | Uint8Array): void;
}

/** How far some work is: what is done, how much of it by now, and of how much where that is known. */
export type Progress = (doing: string, done: number, of?: number) => void;

/** What is on standard input, or why it cannot be read. */
export type InputRead =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly reason: string };

/** All that a command touches besides the file system. Given by `main.ts`, or by a test. */
export interface Io {
  readonly stdout: Output;
  readonly stderr: Output;
  /** Everything on standard input. */
  readonly stdin: () => Promise<InputRead>;
  /** Asks whoever sits there; undefined where nobody does. The answer is undefined where they would not say. */
  readonly ask?: (question: string) => Promise<string | undefined>;
  /** An absolute path. */
  readonly cwd: string;
  readonly today: DayNumber;
  /** The same as time goes on, for what runs past midnight. */
  readonly todayNow: () => DayNumber;
  /** Settles when somebody ends what would go on, by Ctrl+C or by reading no further. */
  readonly interrupted: () => Promise<void>;
  /** Whether standard output is a terminal. */
  readonly isTerminal: boolean;
  /** Which file standard output goes to, as `fileId` has it; undefined where it is not a file. */
  readonly outputFile?: () => string | undefined;
  /** How many columns the terminal has; undefined where it does not say. */
  readonly columns?: () => number | undefined;
  /** Says how far long work is, where somebody watches. */
  readonly progress?: Progress;
  /** Told once so much text was read that what is made of it should be cleared away more often than is usual. */
  readonly muchText?: () => void;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** What draws staves, loaded when it is asked for; undefined where there is none. */
  readonly staves?: () => StaffDrawer | undefined;
  /** The folder with the pages of the package, `syntaxes`; undefined where there is none. */
  readonly pages?: string;
}

/** The exit status of a command. */
export const STATUS = { done: 0, found: 1, failed: 2 } as const;
export type Status = (typeof STATUS)[keyof typeof STATUS];

/** Says on standard error why nothing was done. Returns the status for that. */
export function fail(io: Io, reason: string): Status {
  io.stderr.write(`daystave: ${reason}\n`);
  return STATUS.failed;
}
