import { type ChildProcess, type SpawnSyncReturns, spawn, spawnSync } from "node:child_process";
import { chmodSync, closeSync, copyFileSync, openSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { version } from "../../package.json";
import { type Files, temporaryFolder } from "../support/temporary-folder.ts";
import { bundleCommandLine } from "./bundle.ts";
import { INITIALIZED, speakProtocol } from "./protocol-process.ts";

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
    stderr: "daystave: b.practice was left out. It is a binary file: it contains a NUL character.\n",
  });
  expect(daystave(["--version"])).toMatchObject({ status: 0, stdout: `${version}\n`, stderr: "" });
  expect(daystave(["check", "gone"])).toMatchObject({ status: 2, stdout: "" });
});

test("the version needs nothing but the bundle's own file", () => {
  const alone = join(temporaryFolder(), "cli.js");
  copyFileSync(bundle, alone);
  expect(spawnSync(process.execPath, [alone, "-V"], { encoding: "utf8" })).toMatchObject({
    status: 0,
    stdout: `${version}\n`,
    stderr: "",
  });
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

test("a day goes to the end of a file, once", () => {
  const cwd = temporaryFolder({ "diary.practice": "2026-03-02 Mon\nD minor, slow" });
  for (let i = 0; i < 2; i++) {
    const output = openSync(join(cwd, "diary.practice"), "a");
    const { status } = spawnSync(process.execPath, [bundle, "day", "--today", "2026-03-10"], {
      cwd,
      stdio: ["ignore", output, "ignore"],
    });
    closeSync(output);
    expect(status).toBe(0);
  }
  expect(readFileSync(join(cwd, "diary.practice"), "utf8")).toBe("2026-03-02 Mon\nD minor, slow\n\n2026-03-10 Tue\n");
});

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
  const spoken = await speakProtocol(process.execPath, [bundle, "lsp", "--stdio"], temporaryFolder());
  expect(spoken).toEqual({ status: 0, answer: expect.stringMatching(INITIALIZED) });
});
