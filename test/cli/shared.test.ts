import { expect, test } from "vitest";
import { temporaryFolder } from "../support/temporary-folder.ts";
import { daystave } from "./command-line.ts";

const FILES = {
  "journal.practice": 'shared\nplayer Noor\nnames german\npattern "zigzag": 1 3 2 4\n',
  "anna/journal.practice": "player Anna\n",
  "anna/week.practice": '2026-03-02\n  H-Moll, "zigzag", 8ths at 60 clean\n',
  "ben/journal.practice": "names english\n",
  "ben/week.practice": "2026-03-02\n  B minor, 8ths at 60 clean\n",
};

test("folders below stay journals of their own, and have what they do not declare", async () => {
  expect((await daystave(["check"], { files: FILES })).stdout).toBe("5 files: nothing found.\n");
  const { stdout } = await daystave(["history"], { files: FILES });
  expect(stdout).toMatch(/^Anna\nExercise.*\nh-Moll.*\n\nben\nExercise.*\nB natural minor/);
});

test("without `shared` nothing is lent", async () => {
  const files = { ...FILES, "journal.practice": FILES["journal.practice"].replace("shared\n", "") };
  expect((await daystave(["check"], { files })).stdout).not.toContain("nothing found");
});

test("exercises asked for in a pupil's folder, and text from elsewhere, have it as well", async () => {
  const cwd = temporaryFolder(FILES);
  expect((await daystave(["notes", "H-Moll"], { cwd: `${cwd}/anna` })).stdout).toMatch(/^h-Moll/);
  expect((await daystave(["scales", "--notes", "H Cis D"], { cwd: `${cwd}/anna` })).status).toBe(0);
  expect((await daystave(["check", "-"], { cwd: `${cwd}/anna`, stdin: "2026-03-02\n  H-Moll\n" })).status).toBe(0);
  expect(
    (await daystave(["check", "--json", "-"], { cwd: `${cwd}/ben`, stdin: "2026-03-02\n  H minor\n" })).stdout,
  ).toContain("unknown-key");
});

test("a journal that only lends to those below it is nobody's: no plan, report, aims or keys of its own", async () => {
  const said = async (...argv: readonly string[]) => (await daystave(argv, { files: FILES })).stdout;
  expect((await said("plan", "--minutes", "10")).match(/^(?:\.|Anna|Noor|ben)$/gm)).toEqual(["Anna", "ben"]);
  expect((await said("report", "--since", "2026-03-01")).match(/^# .*(?=, )/gm)).toEqual(["# Anna", "# ben"]);
  expect((await said("keys")).match(/^(?:\.|Anna|Noor|ben)$/gm)).toEqual(["Anna", "ben"]);
  for (const command of ["plan", "report", "aims", "keys"])
    expect(JSON.parse(await said(command, "--json")).journals.map(({ name }: { name: string }) => name)).toEqual([
      "Anna",
      "ben",
    ]);
});

test("where nothing else is there, it is planned for", async () => {
  const files = { "journal.practice": "shared\ninstrument cello\n" };
  expect((await daystave(["plan", "--minutes", "10"], { files })).stdout).toContain("2026-03-10 Tue, 10 min, plan\n");
});
