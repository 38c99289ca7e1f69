import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Io } from "../../server/cli/io.ts";
import { run } from "../../server/cli/program.ts";
import { fileId } from "../../server/host/node/file-id.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { ROOT } from "../architecture/source.ts";
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
  /** The file of the current folder that standard output goes to, as after `>>`; what is written is kept apart. */
  readonly into?: string;
  /** What somebody at the terminal answers, question by question; they go away where an answer is undefined. */
  readonly answers?: readonly (string | undefined)[];
  /** Settles when somebody presses Ctrl+C; nobody does where it is left out. */
  readonly interrupted?: Promise<void>;
}

export interface Outcome {
  readonly status: number;
  /** Bytes that are no text are a character each. */
  readonly stdout: string;
  readonly stderr: string;
  /** A file of the current folder, as it is afterwards. */
  readonly file: (name: string) => string;
}

const TODAY = parseIsoDate("2026-03-10")!;

/** Runs `daystave` in this process. */
export async function daystave(argv: readonly string[], around: Around = {}): Promise<Outcome> {
  const io = recordingIo(around);
  const status = await run(argv, io);
  return { status, stdout: io.written.stdout, stderr: io.written.stderr, file: (name) => fileIn(io.cwd, name) };
}

/** An `Io` that keeps what is written. */
export function recordingIo(around: Around): Io & { readonly written: { stdout: string; stderr: string } } {
  const { files, cwd, stdin = "", isTerminal = false, columns, env = {} } = around;
  const { into, answers, interrupted = new Promise<void>(() => {}) } = around;
  const folder = cwd ?? temporaryFolder(files);
  const written = { stdout: "", stderr: "" };
  const output = (name: "stdout" | "stderr") => ({
    write: (content: string | Uint8Array) => {
      written[name] += typeof content === "string" ? content : Buffer.from(content).toString("latin1");
    },
  });
  return {
    written,
    stdout: output("stdout"),
    stderr: output("stderr"),
    stdin: async () => ({ ok: true, bytes: typeof stdin === "string" ? new TextEncoder().encode(stdin) : stdin }),
    ...(answers && { ask: asking(answers, output("stderr")) }),
    cwd: folder,
    today: TODAY,
    todayNow: () => TODAY,
    interrupted: () => interrupted,
    isTerminal,
    outputFile: () => (into === undefined ? undefined : fileId(join(folder, into))),
    columns: () => columns,
    env,
    pages: join(ROOT, "syntaxes"),
  };
}

function asking(answers: readonly (string | undefined)[], stderr: Io["stderr"]): NonNullable<Io["ask"]> {
  const left = [...answers];
  return async (question) => {
    const answer = left.shift();
    stderr.write(`${question}${answer ?? ""}\n`);
    return answer;
  };
}

function fileIn(folder: string, name: string): string {
  return readFileSync(join(folder, name), "utf8");
}
