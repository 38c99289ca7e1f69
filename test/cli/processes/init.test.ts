import { spawn, spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { bundleCommandLine } from "../bundle.ts";
import { removeBundle, runBundle } from "./command-process.ts";

let bundle: string;
beforeAll(async () => {
  bundle = await bundleCommandLine();
});
afterAll(() => removeBundle(bundle));

/** `script` of util-linux runs a command on a terminal of its own. */
const SCRIPT = spawnSync("script", ["--version"], { encoding: "utf8" }).stdout?.includes("util-linux") ?? false;

describe.skipIf(!SCRIPT)("on a terminal (skipped where the program script is not on the machine)", () => {
  /** Types answers, each once its question is there. */
  async function asked(cwd: string, answers: readonly (readonly [question: string, answer: string])[]) {
    const command = `"${process.execPath}" "${bundle}" init`;
    const child = spawn("script", ["-qec", command, "/dev/null"], { cwd, env: { ...process.env, TERM: "dumb" } });
    let shown = "";
    child.stdout.setEncoding("utf8").on("data", (text) => {
      shown += text;
    });
    const ended = new Promise<unknown>((resolve) => child.on("close", resolve));
    for (const [question, answer] of answers) {
      await vi.waitFor(() => expect(shown).toContain(question), 20_000);
      child.stdin.write(answer);
    }
    return { status: await ended, shown };
  }

  test("two questions make a journal", async () => {
    const cwd = temporaryFolder();
    const { status } = await asked(cwd, [
      ["Which instrument", "tenor recorder\r"],
      ["What is your name", "Noor\r"],
    ]);
    expect(status).toBe(0);
    expect(readFileSync(join(cwd, "journal.practice"), "utf8")).toMatch(/\nplayer Noor\ninstrument tenor recorder\n$/);
  });

  test.each([
    ["Ctrl+C", "\u0003"],
    ["Ctrl+D", "\u0004"],
  ])("%s makes none", async (_, key) => {
    const cwd = temporaryFolder();
    const { status, shown } = await asked(cwd, [["Which instrument", key]]);
    expect(status).toBe(2);
    expect(shown).toContain("\ndaystave: Nothing was made.");
    expect(existsSync(join(cwd, "journal.practice"))).toBe(false);
  });
});

test("without a terminal nobody is asked", () => {
  const cwd = temporaryFolder();
  expect(runBundle(bundle, ["init"], { cwd, input: "oboe\nNoor\n" })).toMatchObject({
    status: 0,
    stdout: "",
    stderr: "journal.practice is made. To begin today: daystave day >> diary.practice\n",
  });
});
