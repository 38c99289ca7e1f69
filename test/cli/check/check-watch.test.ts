import { mkdirSync, rmSync, type watch, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { checkWatching } from "../../../server/cli/check/check-watch.ts";
import { PracticeWatch } from "../../../server/host/node/watch-practice.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave, recordingIo } from "../command-line.ts";

const DAY = "2026-03-02 Mon\nD minor, slow\n";
const WRONG = "2026-03-02 Mon\nG major: G A B C D E F G\n";

/** Watches a folder while something is done in it step by step, each once the step before was seen. */
async function watching(steps: readonly ((cwd: string) => void)[], files: Readonly<Record<string, string>>) {
  const cwd = temporaryFolder(files);
  let end = () => {};
  const interrupted = new Promise<void>((resolve) => {
    end = resolve;
  });
  const io = recordingIo({ cwd, interrupted });
  const watched = checkWatching([], new Set(), io);
  for (const [i, step] of steps.entries()) {
    await vi.waitFor(() => expect(io.written.stdout.match(/^\d+ files?:|^No files:/gm)).toHaveLength(i + 1), 10_000);
    step(cwd);
  }
  await vi.waitFor(
    () => expect(io.written.stdout.match(/^\d+ files?:|^No files:/gm)).toHaveLength(steps.length + 1),
    10_000,
  );
  end();
  return { status: await watched, ...io.written };
}

describe("check --watch", () => {
  test("checks, and again after each change, which is named; what is above stays", async () => {
    const { status, stdout, stderr } = await watching(
      [
        (cwd) => writeFileSync(join(cwd, "a.practice"), WRONG),
        (cwd) => {
          mkdirSync(join(cwd, "sub"));
          writeFileSync(join(cwd, "sub/b.practice"), "2026-03-03 Tue\n");
        },
        (cwd) => writeFileSync(join(cwd, "sub/b.practice"), "2026-03-04 Wed\nD minor\n"),
        (cwd) => rmSync(join(cwd, "a.practice")),
      ],
      { "a.practice": DAY },
    );
    const found = "a.practice:2:22 error scale-note";
    expect(stdout.replace(/(?<=scale-note) .*/g, "")).toBe(
      [
        "1 file: nothing found.",
        "",
        "--- a.practice changed ---",
        found,
        "1 file: 1 error.",
        "",
        "--- sub/b.practice is new ---",
        found,
        "2 files: 1 error.",
        "",
        "--- sub/b.practice changed ---",
        found,
        "2 files: 1 error.",
        "",
        "--- a.practice is gone ---",
        "1 file: nothing found.",
        "",
      ].join("\n"),
    );
    expect([status, stderr]).toEqual([0, "Watching for changes. Ctrl+C ends it.\n"]);
  });

  test("a folder that is not there is an error at once", async () => {
    expect(await daystave(["check", "--watch", "gone"])).toMatchObject({
      status: 2,
      stdout: "",
      stderr: "daystave: gone: There is no such file or folder.\n",
    });
  });

  test.each([
    ["--json", "Choose one: “--watch” goes on and on, “--json” is done once."],
    ["--fix", "“--fix” is done once."],
    ["-", "“--watch” looks at files, and cannot watch standard input."],
  ])("%s does not go with it", async (other, says) => {
    const { status, stderr } = await daystave(["check", "--watch", other]);
    expect(status).toBe(2);
    expect(stderr).toContain(says);
  });
});

describe("what is watched", () => {
  test("other files are none of ours", async () => {
    const cwd = temporaryFolder({ "a.practice": DAY });
    const looked = new PracticeWatch([cwd]);
    writeFileSync(join(cwd, "notes.txt"), "x");
    writeFileSync(join(cwd, "b.practice"), DAY);
    expect(await looked.next()).toEqual([{ path: join(cwd, "b.practice"), what: "new" }]);
    looked.close();
  });

  test("where the system does not say what changes, it is looked for", async () => {
    const refusing = (() => {
      throw Object.assign(new Error("too many"), { code: "ENOSPC" });
    }) as unknown as typeof watch;
    const cwd = temporaryFolder({ "a.practice": DAY });
    const looked = new PracticeWatch([cwd], refusing, 20);
    writeFileSync(join(cwd, "a.practice"), WRONG);
    expect(await looked.next()).toEqual([{ path: join(cwd, "a.practice"), what: "changed" }]);
    looked.close();
    expect(await looked.next()).toBe(undefined);
  });
});
