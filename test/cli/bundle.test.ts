import { type ChildProcess, type SpawnSyncReturns, spawn, spawnSync } from "node:child_process";
import { chmodSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { version } from "../../package.json";
import { type Files, temporaryFolder } from "../support/temporary-folder.ts";
import { bundleCommandLine } from "./bundle.ts";

let bundle: string;
beforeAll(async () => {
  bundle = await bundleCommandLine();
  chmodSync(bundle, 0o755);
});
afterAll(() => rmSync(bundle));

/** Runs the bundle as a process of its own. */
function daystave(argv: string[], files: Files = {}, input = ""): SpawnSyncReturns<string> {
  return spawnSync(process.execPath, [bundle, ...argv], { cwd: temporaryFolder(files), input, encoding: "utf8" });
}

const WRONG = "2026-03-02 Mon\n  F# major: F# G# A# B C# D# F F#\n";

test("exit status, standard output and standard error", () => {
  const files = { "a.practice": WRONG, "b.practice": new Uint8Array([0]) };
  expect(daystave(["check", "--today", "2026-03-10"], files)).toMatchObject({
    status: 1,
    stdout:
      "a.practice:2:30 warning scale-spelling F# major has E#, not F: its seventh degree takes the letter E.\n1 file: 1 warning.\n",
    stderr: "daystave: b.practice was left out. It is a binary file: it holds a NUL character.\n",
  });
  expect(daystave(["--version"])).toMatchObject({ status: 0, stdout: `${version}\n`, stderr: "" });
  expect(daystave(["check", "gone"])).toMatchObject({ status: 2, stdout: "" });
});

test("today is this computer's day unless said", () => {
  const tomorrow = new Date(Date.now() + 2 * 86_400_000).toISOString().slice(0, 10);
  expect(daystave(["check", "-"], {}, `${tomorrow}\n  D minor\n`).stdout).toContain("future-day");
});

test.each(["Pacific/Kiritimati", "Pacific/Pago_Pago", "America/St_Johns"])(
  "in %s the history is that of the days as they are written",
  (zone) => {
    const text =
      "2025-12-28\n  D minor, at 60 clean\n2025-12-29\n  D minor, at 63 clean\n2026-03-29\n  D minor, at 66 clean\n";
    const cwd = temporaryFolder({ "a.practice": text });
    const run = (environment: NodeJS.ProcessEnv) =>
      spawnSync(process.execPath, [bundle, "history", "--json"], {
        cwd,
        env: { ...process.env, ...environment },
        encoding: "utf8",
      }).stdout;
    const there = run({ TZ: zone });
    expect(there).toBe(run({ TZ: "UTC" }));
    const { weeks, lastPractised } = JSON.parse(there).exercises[0];
    expect([weeks[0].week, weeks[1].week, weeks.at(-1).week, lastPractised]).toEqual([
      "2025-W52",
      "2026-W01",
      "2026-W13",
      "2026-03-29",
    ]);
  },
);

test("standard input", () => {
  expect(daystave(["check", "-"], {}, WRONG).stdout).toContain("-:2:30 warning scale-spelling");
});

/** Its exit status, and what it said on standard error. */
async function endOf(child: ChildProcess): Promise<[unknown, string]> {
  let stderr = "";
  child.stderr!.setEncoding("utf8").on("data", (text) => {
    stderr += text;
  });
  return [await new Promise((resolve) => child.on("close", resolve)), stderr];
}

test("a closed pipe ends it quietly, with the status of what was found", async () => {
  const days = Array.from({ length: 900 }, () => "  D major, 3 sharps\n").join("");
  const cwd = temporaryFolder({ "a.practice": `2026-03-02\n${days}` });
  const child = spawn(process.execPath, [bundle, "check", "--json"], { cwd, stdio: ["ignore", "pipe", "pipe"] });
  child.stdout.destroy();
  expect(await endOf(child)).toEqual([1, ""]);
});

test("a pipe that is closed while much is written to it ends it, too", async () => {
  const names = Array.from({ length: 30 }, (_, i) => `  "Walk ${i + 1}", at 60 clean\n`).join("");
  const cwd = temporaryFolder({ "a.practice": `2006-01-02\n${names}2026-03-02\n${names}` });
  const child = spawn(process.execPath, [bundle, "history", "--json", "--blank-weeks"], {
    cwd,
    stdio: ["ignore", "pipe", "pipe"],
  });
  let read = 0;
  child.stdout.on("data", (bytes: Buffer) => {
    read += bytes.length;
    child.stdout.destroy();
  });
  expect(await endOf(child)).toEqual([0, ""]);
  expect(read).toBeLessThan(1e6); // of some 6 MB
});

test("lsp --stdio speaks the Language Server Protocol until it is told to stop", async () => {
  const child = spawn(process.execPath, [bundle, "lsp", "--stdio"], { cwd: temporaryFolder() });
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
  });
  say({ id: 1, method: "initialize", params: { processId: null, rootUri: null, capabilities: {} } });
  say({ id: 2, method: "shutdown" });
  await answered;
  say({ method: "exit" });
  expect(await new Promise((resolve) => child.on("close", resolve))).toBe(0);
  expect(answer).toMatch(/^Content-Length: \d+\r\n\r\n\{"jsonrpc":"2.0","id":1,"result":\{"capabilities":\{/);
});

/** What syntaxes/COMMAND-LINE.md tells to put into `.git/hooks/pre-commit`. */
const HOOK = `#!/bin/sh
# Refuses a commit whose practice journal has an error or a warning. What is checked is what is staged.
staged=$(mktemp -d) || exit 1
trap 'rm -rf "$staged"' EXIT
git ls-files -z -- '*.practice' | git checkout-index -z --stdin --prefix="$staged/" || exit 1
git diff --cached --name-only -z --diff-filter=d -- '*.practice' | (cd "$staged" && xargs -0 -r daystave check --)
`;

describe("the git hook", () => {
  /** Commits in a new repository with the hook, and with `daystave` on the path. */
  function commit(files: Files, afterStaging: Readonly<Record<string, string>> = {}): SpawnSyncReturns<string> {
    const repository = temporaryFolder(files);
    const bin = temporaryFolder();
    symlinkSync(bundle, join(bin, "daystave"));
    const env = {
      PATH: `${bin}:${join(process.execPath, "..")}:${process.env["PATH"]}`,
      HOME: bin,
      GIT_CONFIG_NOSYSTEM: "1",
      GIT_AUTHOR_NAME: "Noor",
      GIT_AUTHOR_EMAIL: "noor@example.org",
      GIT_COMMITTER_NAME: "Noor",
      GIT_COMMITTER_EMAIL: "noor@example.org",
    };
    const git = (...argv: string[]) => spawnSync("git", argv, { cwd: repository, env, encoding: "utf8" });
    git("init", "--quiet");
    writeFileSync(join(repository, ".git/hooks/pre-commit"), HOOK, { mode: 0o755 });
    git("add", "--all");
    for (const [name, text] of Object.entries(afterStaging)) writeFileSync(join(repository, name), text);
    return git("commit", "--quiet", "--message", "Practice");
  }

  test("lets a sound journal through", () => {
    expect(commit({ "a.practice": "2026-03-02 Mon\n  D minor, slurred\n" })).toMatchObject({ status: 0 });
  });

  test("lets advice through, and a commit without a journal", () => {
    expect(commit({ "a.practice": "2026-03-02\n  Sound freer today.\n" }).status).toBe(0);
    expect(commit({ "notes.txt": "H major\n" }).status).toBe(0);
  });

  test("stops a wrong note, and says where", () => {
    const { status, stdout, stderr } = commit({ "spring/a week.practice": WRONG });
    expect(status).toBe(1);
    expect(stdout + stderr).toContain("spring/a week.practice:2:30 warning scale-spelling");
  });

  test("checks what is staged, not what stands in the folder", () => {
    const right = "2026-03-02 Mon\n  D minor, slurred\n";
    expect(commit({ "a.practice": WRONG }, { "a.practice": right }).status).toBe(1);
    expect(commit({ "a.practice": right }, { "a.practice": WRONG }).status).toBe(0);
  });

  test("knows the names that the journal declares", () => {
    const files = {
      "journal.practice": 'pattern "zigzag": 1 3 2 4\n',
      "x/a.practice": '2026-03-02\n  D minor, "zigzag"\n',
    };
    expect(commit(files)).toMatchObject({ status: 0 });
  });
});
