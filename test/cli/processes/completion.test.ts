import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { CODES } from "../../../server/checks/codes.ts";
import { COMMANDS } from "../../../server/cli/commands.ts";
import { SHELLS } from "../../../server/cli/completion/shells.ts";
import { folderWith, inBash, inFish, inZsh, isThere } from "./shells.ts";

const NAMES = [...COMMANDS.map(({ name }) => name), "help"];

describe.each(SHELLS)("the script for %s", (shell) => {
  test.skipIf(!isThere(shell))("is sound in its grammar (where the shell is on the machine)", async () => {
    const { script } = await folderWith(shell);
    const { status, stderr } = spawnSync(shell, ["-n", script], { encoding: "utf8" });
    expect([status, stderr]).toEqual([0, ""]);
  });
});

describe.skipIf(!isThere("bash"))("in bash itself (skipped where it is not on the machine)", () => {
  test.each([
    [["daystave", "ch"], ["check"]],
    [["daystave", ""], NAMES],
    [["daystave", "--v"], ["--version"]],
    [["daystave", "help", "his"], ["history"]],
    [
      ["daystave", "check", "--st"],
      ["--staged", "--stdin-path"],
    ],
    [["daystave", "list", "k"], ["kinds"]],
    [["daystave", "explain", "scale-"], Object.keys(CODES).filter((code) => code.startsWith("scale-"))],
    [["daystave", "notes", "--names", "g"], ["german"]],
    [["daystave", "notes", "--names", "=", "g"], ["german"]],
    [
      ["daystave", "notes", "--names", "="],
      ["english", "german", "dutch", "french", "italian", "spanish"],
    ],
    [["daystave", "notes", "--instrument", "treble"], ["treble\\ viol"]],
    [["daystave", "notes", "--instrument", "treble\\ v"], ["treble\\ viol"]],
    [["daystave", "notes", "--instrument", '"treble v'], ["treble viol"]],
    [["daystave", "notes", "--instrument", "oboe\\ d"], ["oboe\\ d\\'amore"]],
    [["daystave", "check", "--today", ""], []],
    [["daystave", "check", "we"], ["week.practice"]],
    [["daystave", "check", "no"], []],
    [["daystave", "check", "my\\ f"], ["my folder"]],
    [["daystave", "check", "my\\ folder/"], ["my folder/a b.practice"]],
    [["daystave", "check", "--stdin-path", "sub/"], ["sub/deep.practice"]],
    [
      ["daystave", "init", ""],
      ["my folder", "sub"],
    ],
    [["daystave", "lsp", ""], []],
    [["daystave", "unknown", ""], []],
  ])("%j offers %j", async (words, offered) => {
    const found = inBash(words, await folderWith("bash"));
    expect([...found.offered].sort()).toEqual([...offered].sort());
    expect(found.stderr).toBe("");
  });
});

describe.skipIf(!isThere("fish"))("in fish itself (skipped where it is not on the machine)", () => {
  test.each([
    ["daystave ch", ["check"]],
    ["daystave ", NAMES],
    ["daystave help his", ["history"]],
    ["daystave check --st", ["--staged", "--stdin-path"]],
    ["daystave list k", ["kinds"]],
    ["daystave notes --names g", ["german"]],
    ["daystave notes --names=g", ["--names=german"]],
    ["daystave notes --instrument 'oboe d", ["oboe d'amore"]],
    ["daystave check we", ["week.practice"]],
    ["daystave check ", ["my folder/", "sub/", "week.practice"]],
    ["daystave init ", ["my folder/", "sub/"]],
  ])("%s offers %j", async (line, offered) => {
    const found = inFish(line, await folderWith("fish"));
    expect([...found.offered].sort()).toEqual([...offered].sort());
    expect(found.stderr).toBe("");
  });
});

describe.skipIf(!isThere("zsh"))("in zsh itself (skipped where it is not on the machine)", () => {
  test.each([
    ["daystave ch", "daystave check "],
    ["daystave help his", "daystave help history "],
    ["daystave check --stag", "daystave check --staged "],
    ["daystave notes --names=g", "daystave notes --names=german "],
    ["daystave notes --instrument treble", "daystave notes --instrument treble\\ viol "],
    ["daystave notes --instrument oboe\\ d", "daystave notes --instrument oboe\\ d\\'amore "],
    ["daystave explain scale-n", "daystave explain scale-note "],
    ["daystave check we", "daystave check week.practice "],
    ["daystave check my", "daystave check my\\ folder/"],
  ])("%s becomes %s", async (line, completed) => {
    expect(inZsh(line, await folderWith("zsh"))).toBe(completed);
  });
});
