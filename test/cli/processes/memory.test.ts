import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { faultyText } from "../../support/faulty-text.ts";
import { IN_FULL } from "../../support/random-runs.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { bundleCommandLine } from "../bundle.ts";
import { removeBundle } from "./command-process.ts";

/** Megabytes of text, and MiB of memory for the program alone and for each of those: with 50 of text 1,000. */
const TEXT = 6;
const PROGRAM = 100;
const EACH = 18;

const PROBE = join(process.cwd(), "test/bench/process-probe.js");

let cli: string;
beforeAll(async () => {
  cli = await bundleCommandLine();
});
afterAll(() => removeBundle(cli));

test.skipIf(!IN_FULL).each([
  [["check"], 1],
  [["history"], 0],
])(
  "%j of a large faulty journal takes no more than its share of a gigabyte",
  (command, status) => {
    const cwd = temporaryFolder({ "journal.practice": faultyText(TEXT * 1e6) });
    const used = join(cwd, "used.json");
    const argv = ["--require", PROBE, cli, ...command, join(cwd, "journal.practice")];
    const env = { ...process.env, DAYSTAVE_BENCH_USED: used };
    const ended = spawnSync(process.execPath, argv, { cwd, env, encoding: "utf8", maxBuffer: 1e9 });
    expect(ended.status).toBe(status);
    const { memory } = JSON.parse(readFileSync(used, "utf8")) as { readonly memory: number };
    expect(memory).toBeGreaterThan(PROGRAM / 2);
    expect(memory).toBeLessThanOrEqual(PROGRAM + EACH * TEXT);
  },
  300_000,
);
