import { spawn, spawnSync } from "node:child_process";
import { existsSync, openSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { smallDisk } from "../../support/small-disk.ts";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { bundleCommandLine } from "../bundle.ts";
import { removeBundle, runBundle, runInto } from "./command-process.ts";

const WEEK = "2026-03-02 Mon\nD minor,thirds,8ths at 60 clean\nF# major: F# G# A# B C# D# F F#\n";
const FULL = "daystave: Standard output could not be written. The disk is full.\n";

/** Every command with something to print. */
const COMMANDS = [
  ["check"],
  ["check", "--json"],
  ["check", "--sarif"],
  ["check", "--explain-lines"],
  ["check", "--help"],
  ["notes", "D minor"],
  ["scales", "--notes", "D E F"],
  ["history"],
  ["history", "--json"],
  ["export", "--csv"],
  ["export", "--json"],
  ["format", "--check"],
  ["format", "--json"],
  ["day"],
  ["init", "new", "--json"],
  ["list", "codes"],
  ["explain", "scale-note"],
  ["completion", "bash"],
  ["man"],
  ["help"],
  ["--help"],
  ["--version"],
];

const NO_MOUNT = "mounting a disk takes rights that this process has not";

let bundle: string;
beforeAll(async () => {
  bundle = await bundleCommandLine();
});
afterAll(() => removeBundle(bundle));

describe.skipIf(!existsSync("/dev/full"))(
  "a device that is always full (/dev/full of Linux; skipped elsewhere)",
  () => {
    test.each(COMMANDS.map((argv) => [argv.join(" "), argv] as const))("daystave %s", (_, argv) => {
      const cwd = temporaryFolder({ "a.practice": WEEK });
      expect(runInto("/dev/full", bundle, argv, cwd)).toEqual({ status: 2, stderr: expect.stringContaining(FULL) });
    });

    test("nothing can be said on standard error either: the status says it", () => {
      const stdio = ["ignore", "ignore", openSync("/dev/full", "w")] as const;
      expect(spawnSync(process.execPath, [bundle, "check", "gone"], { stdio: [...stdio] }).status).toBe(2);
      expect(spawnSync(process.execPath, [bundle, "--version"], { stdio: [...stdio] }).status).toBe(0);
    });

    test("the language server says so and ends: nobody will get an answer", async () => {
      const server = spawn(process.execPath, [bundle, "lsp", "--stdio"], {
        stdio: ["pipe", openSync("/dev/full", "w"), "pipe"],
      });
      const body = JSON.stringify({
        jsonrpc: "2.0",
        id: 1,
        method: "initialize",
        params: { processId: null, rootUri: null, capabilities: {} },
      });
      server.stdin!.write(`Content-Length: ${body.length}\r\n\r\n${body}`);
      let stderr = "";
      server.stderr!.setEncoding("utf8").on("data", (text) => {
        stderr += text;
      });
      expect(await new Promise((resolve) => server.on("close", resolve))).toBe(2);
      expect(stderr).toBe(FULL);
    });
  },
);

describe("a disk of 16 KB (skipped where a test may not mount one)", () => {
  test("a report of which only a part fits is an error", ({ skip }) => {
    const disk = smallDisk(16);
    if (disk === undefined) return skip(NO_MOUNT);
    const cwd = temporaryFolder({ "a.practice": `2026-03-02\n${WEEK.repeat(300)}` });
    const output = join(disk, "report.json");
    expect(runInto(output, bundle, ["check", "--json"], cwd)).toEqual({ status: 2, stderr: FULL });
    expect(statSync(output).size).toBeLessThanOrEqual(16 * 1024);
  });

  test.for([
    ["format", ["format"]],
    ["check --fix", ["check", "--fix"]],
  ] as const)("daystave %s keeps the old text, names the file, leaves nothing", ([, argv], { skip }) => {
    const disk = smallDisk(16);
    if (disk === undefined) return skip(NO_MOUNT);
    const text = `2026/03/02 Mon\n${"D minor,thirds\n".repeat(600)}`;
    writeFileSync(join(disk, "a.practice"), text);
    const { status, stderr } = runBundle(bundle, argv, { cwd: disk });
    expect([status, stderr]).toEqual([2, "daystave: a.practice was not written. The disk is full.\n"]);
    expect(readFileSync(join(disk, "a.practice"), "utf8")).toBe(text);
    expect(readdirSync(disk)).toEqual(["a.practice"]);
  });
});

describe("standard input", () => {
  test("that is a folder is named so", () => {
    const stdio = [openSync(temporaryFolder(), "r"), "pipe", "pipe"] as const;
    const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, "format", "-"], {
      stdio: [...stdio],
      encoding: "utf8",
    });
    expect([status, stdout, stderr]).toEqual([2, "", "daystave: - was left out. It is a folder.\n"]);
  });

  test("that is closed is an empty text", () => {
    const closed = spawnSync("sh", ["-c", `"$0" "$1" check - <&-`, process.execPath, bundle], { encoding: "utf8" });
    expect([closed.status, closed.stdout]).toEqual([0, "1 file: nothing found.\n"]);
  });
});
