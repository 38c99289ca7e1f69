import { describe, expect, test } from "vitest";
import { COMMANDS } from "../../../server/cli/commands.ts";
import { SHELLS } from "../../../server/cli/completion/shells.ts";
import { daystave } from "../command-line.ts";

describe.each(SHELLS)("the script for %s", (shell) => {
  test("names every command, every option and every value that is listed", async () => {
    const { status, stdout } = await daystave(["completion", shell]);
    expect(status).toBe(0);
    for (const { name, options, offers } of COMMANDS) {
      expect(stdout).toContain(name);
      for (const [long, option] of Object.entries(options)) {
        expect(stdout).toContain(long);
        for (const word of Array.isArray(option.offers) ? option.offers : []) expect(stdout).toContain(word);
      }
      for (const word of Array.isArray(offers) ? offers : []) expect(stdout).toContain(word);
    }
  });
});

describe("what cannot be", () => {
  test.each([
    [[], "Say for which shell: daystave completion bash|zsh|fish"],
    [["bsh"], "“completion bsh”: choose one of bash, zsh, fish. Did you mean “bash”?"],
    [["bash", "zsh"], "“completion” takes one argument, and 2 were given."],
  ])("%j", async (argv, says) => {
    const { status, stdout, stderr } = await daystave(["completion", ...argv]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
  });
});
