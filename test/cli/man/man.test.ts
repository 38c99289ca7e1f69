import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../../server/cli/commands.ts";
import { roff, synopsis } from "../../../server/cli/man/roff.ts";
import { daystave } from "../command-line.ts";

async function page(): Promise<string> {
  const { status, stdout } = await daystave(["man"]);
  expect(status).toBe(0);
  return stdout;
}

// Escapes as groff_char(7), requests as groff(7) and man(7) have them.
describe("text in the language of the page", () => {
  test.each([
    ["--json", "\\-\\-json"],
    ["a\\b", "a\\eb"],
    ["“all” day’s", "\\(lqall\\(rq day\\(cqs"],
    [".practice files", "\\&.practice files"],
    ["'tis", "\\&'tis"],
    ["Zoë 𝄫", "Zo\\[u00EB] \\[u1D12B]"],
    ["[PATH…]", "[PATH...]"],
  ])("%s is %s", (text, written) => {
    expect(roff(text)).toBe(written);
  });

  test("a command line has its options bold, and what you put in cursive", () => {
    expect(synopsis("check [PATH…] [--json | -q]")).toBe("check [\\fIPATH\\fR...] [\\fB\\-\\-json\\fR | \\fB\\-q\\fR]");
  });
});

test("it has the sections of a manual page, and every command", async () => {
  const text = await page();
  expect([...text.matchAll(/^\.SH (.*)$/gm)].map((match) => match[1])).toEqual([
    "NAME",
    "SYNOPSIS",
    "DESCRIPTION",
    "OPTIONS",
    "COMMANDS",
    "EXIT STATUS",
    "ENVIRONMENT",
    "FILES",
  ]);
  expect([...text.matchAll(/^\.SS (.*)$/gm)].map((match) => match[1])).toEqual(COMMANDS.map(({ name }) => name));
});

test("it is plain ASCII, and no line of it is a request by chance", async () => {
  const lines = (await page()).split("\n");
  expect(lines.filter((line) => /[^ -~]/.test(line))).toEqual([]);
  const requests = new Set(lines.flatMap((line) => /^[.'][^ ]*/.exec(line)?.[0] ?? []));
  expect([...requests].sort()).toEqual([".PP", ".RE", ".RS", ".SH", ".SS", ".TH", ".TP", '.\\"', ".fi", ".nf"]);
});

const GROFF = spawnSync("groff", ["--version"]).status === 0;

describe.skipIf(!GROFF)("as groff shows it (skipped where that is not on the machine)", () => {
  /** The page in one line, without emphasis, with all warnings. */
  async function shown() {
    const argv = ["-man", "-Tutf8", "-ww", "-P-c", "-rHY=0"];
    const { status, stdout, stderr } = spawnSync("groff", argv, { input: await page(), encoding: "utf8" });
    const plain = stdout
      .replace(/.\u0008/gu, "")
      .replace(/[\u2010‐]\s*\n\s*/g, "")
      .replace(/\s+/g, " ");
    return { status, stderr, plain };
  }

  test("there is nothing to warn of", async () => {
    const { status, stderr } = await shown();
    expect([status, stderr]).toEqual([0, ""]);
  });

  test("it says what the help says: every usage, every option, every example", async () => {
    const { plain } = await shown();
    const spaced = (text: string) => text.replaceAll("…", "...").replace(/\s+/g, " ");
    for (const { usage, about, options, examples } of COMMANDS) {
      for (const line of usage) expect(plain).toContain(`daystave ${spaced(line)}`);
      for (const paragraph of about) expect(plain).toContain(spaced(paragraph));
      for (const [name, { help }] of Object.entries(options)) {
        expect(plain).toContain(`--${name}`);
        if (!["help", "version"].includes(name)) expect(plain).toContain(spaced(help.slice(1)));
      }
      for (const { line } of examples) expect(plain).toContain(spaced(line));
    }
  });
});
