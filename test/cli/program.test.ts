import { describe, expect, test } from "vitest";
import { version } from "../../package.json";
import { COMMANDS } from "../../server/cli/commands.ts";
import { daystave } from "./command-line.ts";

/** A command line that cannot run: its status, what it says, and that it prints nothing else. */
async function check(argv: string[], says: string) {
  const { status, stdout, stderr } = await daystave(argv);
  expect(status).toBe(2);
  expect(stdout).toBe("");
  expect(stderr).toContain(says);
  expect(stderr).not.toMatch(/^\s+at /m);
}

describe("help", () => {
  test("the program's names every command and the exit statuses", async () => {
    const { status, stdout } = await daystave(["--help"]);
    expect(status).toBe(0);
    for (const { name, summary } of COMMANDS) {
      expect(stdout).toContain(`  ${name} `);
      expect(stdout).toContain(summary.split(" ").slice(0, 6).join(" "));
    }
    expect(stdout).toContain("Exit status: 0 done, 1 something was found, 2 it could not run.");
  });

  test("without a command it is shown as well, and nothing was done", async () => {
    const { status, stdout, stderr } = await daystave([]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain("Usage: daystave COMMAND");
  });

  test.each(COMMANDS)("of $name: usage, every option, an example", async (command) => {
    const { status, stdout } = await daystave([command.name, "--help"]);
    expect(status).toBe(0);
    expect(stdout).toContain(`Usage: daystave ${command.usage[0]}`);
    for (const option of Object.keys(command.options)) expect(stdout).toContain(`  --${option}`);
    for (const { line } of command.examples) expect(stdout).toContain(line);
    expect((await daystave(["help", command.name])).stdout).toBe(stdout);
    expect((await daystave([command.name, "-h"])).stdout).toBe(stdout);
  });

  test("fits into 80 columns", async () => {
    for (const argv of [["--help"], ...COMMANDS.map(({ name }) => [name, "--help"])]) {
      const { stdout } = await daystave(argv);
      const lines = stdout.split("\n").filter((line) => !/^Usage:|^ {7}daystave|^ {2}daystave/.test(line));
      expect(lines.filter((line) => line.length > 80)).toEqual([]);
    }
  });
});

test("the version is the package's", async () => {
  expect((await daystave(["--version"])).stdout).toBe(`${version}\n`);
});

describe("what is not known is told, with the nearest", () => {
  test("a command", () => check(["chekc"], "There is no command “chekc”. Did you mean “check”?"));
  test("a command that is like none", () =>
    check(["sing"], `There is no command “sing”. The commands are: ${COMMANDS.map(({ name }) => name).join(", ")}.`));
  test("an option", () => check(["check", "--jsn"], "“check” has no option “--jsn”. Did you mean “--json”?"));
  test("an option that is like none", () =>
    check(["notes", "--frobnicate"], "“notes” has no option “--frobnicate”. Its options: --instrument,"));
  test("an option of Object.prototype", () => check(["check", "--constructor"], "has no option “--constructor”."));
  test("an option before the command", () =>
    check(["--json", "check"], "Put the command first, then its options: daystave check --json, not “--json”."));
  test("nothing of it reaches the terminal raw", () => check(["\u001B[31mx"], "“\\u001B[31mx”"));
});

describe("values of options", () => {
  test("missing at the end", () => check(["check", "--today"], "“--today” needs a value: --today YYYY-MM-DD."));
  test("missing before another", () => check(["check", "--today", "--json"], "“--today” needs a value"));
  test("given to an option that takes none", () => check(["check", "--json=yes"], "“--json” takes no value."));
  test("a day that does not exist", () =>
    check(["check", "--today", "2026-02-30"], "“--today” takes a date, year-month-day, such as 2026-03-02, not"));
  test("arguments where none belong", () => check(["lsp", "--stdio", "x"], "“lsp” takes only options, not “x”."));
  test("words that should stand in quotes", () =>
    check(
      ["notes", "D", "minor"],
      '“notes” takes one argument, and 2 were given. Put words that belong together in quotes: daystave notes "D minor".',
    ));
});

test("the language server asks how to speak", () => check(["lsp"], "daystave lsp --stdio"));
