import { existsSync, readdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { temporaryFolder } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

const HEAD = "-- What holds for the whole journal. Days go into other files beside this one, such as diary.practice.\n";
const INSTRUMENT = "Which instrument do you play, as “alto recorder”? (Enter: say it later) ";
const PLAYER = "What is your name? (Enter: say it later) ";

describe("by options", () => {
  test("who plays, on what, and how notes are called; nothing is found in it", async () => {
    const cwd = temporaryFolder();
    const argv = ["init", "--player", "Noor", "--instrument", "treble recorder", "--names", "German"];
    const { status, stdout, stderr, file } = await daystave(argv, { cwd, answers: [] });
    expect([status, stdout, stderr]).toEqual([
      0,
      "",
      "journal.practice is made. To begin today: daystave day >> diary.practice\n",
    ]);
    expect(file("journal.practice")).toBe(`${HEAD}player Noor\ninstrument treble recorder\nnames german\n`);
    expect((await daystave(["check"], { cwd })).stdout).toBe("1 file: nothing found.\n");
    expect((await daystave(["notes", "h-Moll"], { cwd })).stdout).toMatch(/^h-Moll natürlich, alto recorder/);
  });

  test("a folder that is not there is made, and nothing else is left in it", async () => {
    const cwd = temporaryFolder();
    const { stdout, stderr } = await daystave(["init", "a/b", "--player", "Noor", "--json"], { cwd });
    expect(stderr).toBe(
      `${join("a", "b", "journal.practice")} is made. To begin today in that folder: daystave day >> diary.practice\n`,
    );
    expect(JSON.parse(stdout)).toEqual({ path: join("a", "b", "journal.practice"), text: `${HEAD}player Noor\n` });
    expect(readdirSync(join(cwd, "a/b"))).toEqual(["journal.practice"]);
  });

  test("without any, and nobody to ask, the file says nothing yet", async () => {
    const { status, stderr, file } = await daystave(["init", "-q"]);
    expect([status, stderr, file("journal.practice")]).toEqual([0, "", HEAD]);
  });
});

describe("by two questions, on a terminal", () => {
  test("the instrument and the name", async () => {
    const { status, stderr, file } = await daystave(["init"], { answers: [" alto  recorder ", "Noor"] });
    expect(status).toBe(0);
    expect(stderr).toBe(
      `${INSTRUMENT} alto  recorder \n${PLAYER}Noor\njournal.practice is made. To begin today: daystave day >> diary.practice\n`,
    );
    expect(file("journal.practice")).toBe(`${HEAD}player Noor\ninstrument alto recorder\n`);
  });

  test("an instrument that is not known is asked for again, with the nearest", async () => {
    const { stderr, file } = await daystave(["init"], { answers: ["alto recoder", "alto recorder", ""] });
    expect(stderr).toContain("I do not know the instrument “alto recoder”. Did you mean “alto recorder”?\n");
    expect(file("journal.practice")).toBe(`${HEAD}instrument alto recorder\n`);
  });

  test("after three times it is left out", async () => {
    const { status, file } = await daystave(["init"], { answers: ["x1", "x2", "x3", "Noor"] });
    expect([status, file("journal.practice")]).toEqual([0, `${HEAD}player Noor\n`]);
  });

  test.each([[[undefined]], [["oboe", undefined]]])("whoever goes away has nothing made: %j", async (answers) => {
    const cwd = temporaryFolder();
    const { status, stderr } = await daystave(["init", "a"], { cwd, answers });
    expect(status).toBe(2);
    expect(stderr).toContain("daystave: Nothing was made.\n");
    expect(readdirSync(cwd)).toEqual([]);
  });
});

describe("what cannot be", () => {
  test("a journal.practice that is there stays as it is, also one that leads nowhere", async () => {
    const cwd = temporaryFolder({ "journal.practice": "player Anna\n" });
    const again = await daystave(["init", "--player", "Noor"], { cwd, answers: [] });
    expect(again).toMatchObject({
      status: 2,
      stdout: "",
      stderr: "daystave: journal.practice is there already, and stays as it is.\n",
    });
    expect(readFileSync(join(cwd, "journal.practice"), "utf8")).toBe("player Anna\n");
    const other = temporaryFolder();
    symlinkSync(join(other, "gone"), join(other, "journal.practice"));
    expect((await daystave(["init"], { cwd: other })).status).toBe(2);
    expect(existsSync(join(other, "gone"))).toBe(false);
  });

  test.each([
    [["--instrument", "alto recoder"], "I do not know the instrument “alto recoder”. Did you mean “alto recorder”?"],
    [["--instrument", "contrabass"], "Which instrument is “contrabass”: contrabass recorder or double bass?"],
    [["--names", "germn"], "Did you mean “german”?"],
    [["--player", "Noor\nnames german"], "“--player Noor\\u000Anames german”: this cannot be read as a name."],
    [["a.txt"], "a.txt is a file, not a folder."],
    [["a.txt/b"], `${join("a.txt", "b", "journal.practice")} was not made. A part of its path is not a folder.`],
    [["a", "b"], "“init” takes one argument, and 2 were given."],
    [["--instument", "oboe"], "“init” has no option “--instument”. Did you mean “--instrument”?"],
  ])("%j", async (argv, says) => {
    const cwd = temporaryFolder({ "a.txt": "" });
    const { status, stderr } = await daystave(["init", ...argv], { cwd });
    expect(status).toBe(2);
    expect(stderr).toContain(says);
    expect(readdirSync(cwd)).toEqual(["a.txt"]);
  });
});
