import { spawn } from "node:child_process";

export interface Spoken {
  /** All that was on standard output. */
  readonly answer: string;
  readonly status: number | null;
}

/** Starts a language server on standard input and output, asks it to initialize and to shut down, and ends it. */
export async function speakProtocol(command: string, argv: readonly string[], cwd: string): Promise<Spoken> {
  const child = spawn(command, argv, { cwd });
  const say = (message: object) => {
    const body = JSON.stringify({ jsonrpc: "2.0", ...message });
    child.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  };
  let answer = "";
  const answered = new Promise<void>((resolve) => {
    child.stdout.setEncoding("utf8").on("data", (text) => {
      answer += text;
      if (answer.includes('"id":2')) resolve();
    });
    child.on("close", () => resolve());
  });
  say({ id: 1, method: "initialize", params: { processId: null, rootUri: null, capabilities: {} } });
  say({ id: 2, method: "shutdown" });
  await answered;
  const closed = new Promise<number | null>((resolve) => {
    if (child.exitCode === null) child.on("close", resolve);
    else resolve(child.exitCode);
  });
  if (child.exitCode === null) say({ method: "exit" });
  return { status: await closed, answer };
}

/** What a server answers to `initialize`, before anything else. */
export const INITIALIZED = /^Content-Length: \d+\r\n\r\n\{"jsonrpc":"2.0","id":1,"result":\{"capabilities":\{/;
