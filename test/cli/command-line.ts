import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Io } from "../../server/cli/io.ts";
import { run } from "../../server/cli/program.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { type Files, temporaryFolder } from "../support/temporary-folder.ts";

/** What a command found around it. Today is 2026-03-10. */
export interface Around {
  /** The current folder's files. */
  readonly files?: Files;
  /** The current folder, where the files are there already. */
  readonly cwd?: string;
  readonly stdin?: string | Uint8Array;
  readonly isTerminal?: boolean;
  /** Of the terminal. */
  readonly columns?: number;
  readonly env?: Readonly<Record<string, string>>;
}

export interface Outcome {
  readonly status: number;
  readonly stdout: string;
  readonly stderr: string;
  /** A file of the current folder, as it is afterwards. */
  readonly file: (name: string) => string;
}

/** Runs `daystave` in this process. */
export async function daystave(argv: readonly string[], around: Around = {}): Promise<Outcome> {
  const io = recordingIo(around);
  const status = await run(argv, io);
  return { status, stdout: io.written.stdout, stderr: io.written.stderr, file: (name) => fileIn(io.cwd, name) };
}

/** An `Io` that keeps what is written. */
export function recordingIo({ files, cwd, stdin = "", isTerminal = false, columns, env = {} }: Around): Io & {
  readonly written: { stdout: string; stderr: string };
} {
  const written = { stdout: "", stderr: "" };
  const output = (name: "stdout" | "stderr") => ({
    write: (text: string) => {
      written[name] += text;
    },
  });
  return {
    written,
    stdout: output("stdout"),
    stderr: output("stderr"),
    stdin: async () => (typeof stdin === "string" ? new TextEncoder().encode(stdin) : stdin),
    cwd: cwd ?? temporaryFolder(files),
    today: parseIsoDate("2026-03-10")!,
    isTerminal,
    columns: () => columns,
    env,
  };
}

function fileIn(folder: string, name: string): string {
  return readFileSync(join(folder, name), "utf8");
}
