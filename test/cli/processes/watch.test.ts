import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { bundleCommandLine } from "../bundle.ts";
import { removeBundle } from "./command-process.ts";

let bundle: string;
beforeAll(async () => {
  bundle = await bundleCommandLine();
});
afterAll(() => removeBundle(bundle));

/** A process that watches a folder, and what it has written by now. */
function watching(cwd: string) {
  const child = spawn(process.execPath, [bundle, "check", "--watch", "--today", "2026-03-10"], { cwd });
  const written = { stdout: "", stderr: "" };
  for (const name of ["stdout", "stderr"] as const)
    child[name].setEncoding("utf8").on("data", (text) => {
      written[name] += text;
    });
  const ended = new Promise<unknown>((resolve) => child.on("close", resolve));
  return { child, written, ended };
}

test("check --watch sees a change, and ends with status 0 on Ctrl+C", async () => {
  const cwd = temporaryFolder({ "a.practice": "2026-03-02 Mon\nD minor, slow\n" });
  const { child, written, ended } = watching(cwd);
  await vi.waitFor(() => expect(written.stderr).toBe("Watching for changes. Ctrl+C ends it.\n"), 20_000);
  writeFileSync(join(cwd, "a.practice"), "2026/03/02 Mon\n");
  await vi.waitFor(() => expect(written.stdout).toContain("--- a.practice changed ---\na.practice:1:1 error"), 20_000);
  child.kill("SIGINT");
  expect(await ended).toBe(0);
  expect(written.stdout).toMatch(/^1 file: nothing found\.\n\n--- a\.practice changed ---\n.*\n1 file: 1 error\.\n$/);
});

test("it ends when nobody reads any more", async () => {
  const cwd = temporaryFolder({ "a.practice": "2026-03-02 Mon\n" });
  const { child, written, ended } = watching(cwd);
  await vi.waitFor(() => expect(written.stderr).toContain("Watching"), 20_000);
  child.stdout.destroy();
  writeFileSync(join(cwd, "a.practice"), "2026-03-03 Tue\n");
  expect(await ended).toBe(0);
});

/** Processor time of a process in clock ticks, most often of 10 ms: user and system, fields 14 and 15 of proc(5). */
function ticksOf({ pid }: ChildProcess): number {
  const fields = readFileSync(`/proc/${pid}/stat`, "utf8")
    .replace(/^.*\) /s, "")
    .split(" ");
  return Number(fields[11]) + Number(fields[12]);
}

test.skipIf(!existsSync("/proc/self/stat"))("while nothing happens it does nothing", async () => {
  const { child, written, ended } = watching(temporaryFolder({ "a.practice": "2026-03-02 Mon\n" }));
  await vi.waitFor(() => expect(written.stderr).toContain("Watching"), 20_000);
  await pause(1000); // what V8 still optimises after a start
  const before = ticksOf(child);
  await pause(2000);
  expect(ticksOf(child) - before).toBeLessThanOrEqual(5);
  child.kill("SIGINT");
  await ended;
});
