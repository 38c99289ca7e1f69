import { type ChildProcess, spawn } from "node:child_process";
import { appendFileSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { IN_FULL } from "../../support/random-runs.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { bundleCommandLine } from "../bundle.ts";
import { removeBundle, runBundle } from "./command-process.ts";

const FILES = 900;
/** Of each command. */
const KILLS = IN_FULL ? 6 : 3;

/** Numbers from 0 to 1, the same in every run (Park and Miller, Communications of the ACM 31, 1988). */
function* randomNumbers(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 48_271) % 2_147_483_647;
    yield state / 2_147_483_647;
  }
}

/** Each file has a day of its own, written so that either command finds something to do. Invented. */
function before(i: number): string {
  const day = new Date(Date.UTC(2023, 0, 1 + i)).toISOString().slice(0, 10).replaceAll("-", "/");
  return `${day}\n${"D minor,thirds,8ths at 60 clean\n".repeat(5)}`;
}

const RUNS = [["format"], ["check --fix"]] as const;

let bundle: string;
beforeAll(async () => {
  bundle = await bundleCommandLine();
});
afterAll(() => removeBundle(bundle));

function start(line: string, cwd: string): ChildProcess {
  return spawn(process.execPath, [bundle, ...line.split(" ")], { cwd, stdio: ["ignore", "ignore", "pipe"] });
}

function ended(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => child.on("close", () => resolve()));
}

function journal(): { readonly cwd: string; readonly names: readonly string[] } {
  const names = Array.from({ length: FILES }, (_, i) => `${i}.practice`);
  return { cwd: temporaryFolder(Object.fromEntries(names.map((name, i) => [name, before(i)]))), names };
}

test.each(RUNS)(
  "%s, killed at any moment, leaves each file as it was or as it was to be",
  { timeout: 300_000 },
  async (line) => {
    const { cwd, names } = journal();
    const whole = journal();
    runBundle(bundle, line.split(" "), { cwd: whole.cwd });
    const random = randomNumbers(7);
    const tally = { before: 0, after: 0, other: 0, leftBehind: 0, runsThatWrote: 0 };
    let written = 0;
    for (let kill = 0; kill < KILLS; kill++) {
      const child = start(line, cwd);
      const end = ended(child);
      // From its first word on it writes: most kills are to hit that.
      await Promise.race([end, new Promise((resolve) => child.stderr!.once("data", resolve))]);
      await new Promise((resolve) => setTimeout(resolve, random.next().value * 400));
      child.kill("SIGKILL");
      await end;
      const state = { before: 0, after: 0, other: 0 };
      for (const [i, name] of names.entries()) {
        const text = readFileSync(join(cwd, name), "utf8");
        if (text === before(i)) state.before++;
        else if (text === readFileSync(join(whole.cwd, name), "utf8")) state.after++;
        else state.other++;
      }
      tally.leftBehind += readdirSync(cwd).filter((name) => name.endsWith(".new")).length;
      if (state.after > written) tally.runsThatWrote++;
      written = state.after;
      Object.assign(tally, state);
      if (state.before === 0) break;
    }
    console.log(`${line}: ${JSON.stringify(tally)}`);
    expect(tally.other).toBe(0);
    expect(tally.before + tally.after).toBe(FILES);
    expect(tally.runsThatWrote).toBeGreaterThan(1);
    runBundle(bundle, line.split(" "), { cwd });
    expect(readdirSync(cwd).sort()).toEqual([...names].sort());
    for (const name of names)
      expect(readFileSync(join(cwd, name), "utf8")).toBe(readFileSync(join(whole.cwd, name), "utf8"));
  },
);

test.each(RUNS)(
  "%s, while somebody adds to the files, loses nothing that was added",
  { timeout: 120_000 },
  async (line) => {
    const { cwd, names } = journal();
    const random = randomNumbers(11);
    const child = start(line, cwd);
    child.stderr!.resume();
    const end = ended(child);
    let running = true;
    end.then(() => {
      running = false;
    });
    const added = new Map<string, string[]>();
    for (let i = 0; running; i++) {
      const name = names[Math.floor(random.next().value * FILES)]!;
      const remark = `> added ${i}\n`;
      appendFileSync(join(cwd, name), remark);
      added.set(name, [...(added.get(name) ?? []), remark]);
      await new Promise((resolve) => setTimeout(resolve, 1));
    }
    expect(added.size).toBeGreaterThan(100);
    for (const [name, remarks] of added) {
      const text = readFileSync(join(cwd, name), "utf8");
      for (const remark of remarks) expect(text).toContain(remark.trim());
    }
  },
);
