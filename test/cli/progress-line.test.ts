import { expect, test } from "vitest";
import { ProgressLine } from "../../server/cli/progress-line.ts";
import { daystave } from "./command-line.ts";

/** What a terminal is sent while work goes on, each step at a time in milliseconds. */
function check(steps: readonly (readonly [ms: number, done: number])[], sent: string) {
  let now = 0;
  let written = "";
  const terminal = {
    write(text: string) {
      written += text;
    },
  };
  const line = new ProgressLine(terminal, () => now);
  for (const [ms, done] of steps) {
    now = ms;
    line.show("Reading", done, 900);
  }
  line.before(terminal).write("done\n");
  expect(written.replaceAll("\r", "<").replaceAll("\u001B[K", ">")).toBe(sent);
}

test("work that is done soon shows nothing", () =>
  check(
    [
      [100, 1],
      [699, 2],
    ],
    "done\n",
  ));

test("long work has one line, which is gone before anything else is written", () =>
  check(
    [
      [100, 1],
      [800, 2],
      [850, 3],
      [900, 4],
    ],
    "<Reading: 2 of 900><Reading: 4 of 900><>done\n",
  ));

test("without a terminal nothing of it is written", async () => {
  const files = { "a.practice": "2026-03-02 Mon\nD minor,thirds\n" };
  expect((await daystave(["format"], { files })).stderr).toBe("a.practice is in the usual layout now\n");
});
