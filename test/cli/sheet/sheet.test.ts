import { describe, expect, test } from "vitest";
import { run } from "../../../server/cli/program.ts";
import * as drawer from "../../../server/notation/drawing/draw-staff.ts";
import { daystave, recordingIo } from "../command-line.ts";

// What a sheet says, test/features/sheet holds; how it looks on paper, test/hosts/sheet-page.test.ts.

const FILES = {
  "journal.practice": "player Noor\ninstrument alto recorder\n",
  "week.practice": "2026-03-02\n  D minor, thirds, 8ths at 60 clean\n2026-03-09\n  F major, slow\n",
};

/** With what draws staves. */
async function drawn(argv: readonly string[]): Promise<string> {
  const io = recordingIo({ files: FILES });
  expect(await run(["sheet", ...argv], { ...io, staves: () => drawer })).toBe(0);
  return io.written.stdout;
}

const titleOf = (html: string) => /<title>(.*?)<\/title>/.exec(html)![1];

test("without an option it is today's plan", async () => {
  expect(titleOf(await drawn([]))).toBe("Noor: Plan for 10 March 2026");
  expect(titleOf(await drawn(["--date", "2026-03-12", "--minutes", "20"]))).toBe("Noor: Plan for 12 March 2026");
});

test("of a day that is planned in the journal it is what is there, unless a plan is asked for", async () => {
  const files = { ...FILES, "plan.practice": "2026-03-10, plan\n  E major, 8ths at 50, 5 min\n" };
  expect((await daystave(["sheet"], { files })).stdout).toContain("<h3>E major</h3>");
  expect((await daystave(["sheet", "--minutes", "20"], { files })).stdout).not.toContain("<h3>E major</h3>");
});

test("of a week, or of other days", async () => {
  const week = await drawn(["--week", "2026-W10"]);
  expect(titleOf(week)).toBe("Noor: Exercises, 2026-W10 (2 to 8 March)");
  expect(week).toContain("D natural minor, thirds");
  expect(week).not.toContain("F major");
  expect(titleOf(await drawn(["--since", "2026-03-01"]))).toBe("Noor: Exercises, 1 to 10 March 2026");
});

test("with recorder fingerings where they are asked for", async () => {
  const [plain, fingered] = [await drawn(["--week", "2026-W10"]), await drawn(["--week", "2026-W10", "--fingerings"])];
  expect(fingered.length).toBeGreaterThan(1.5 * plain.length);
});

test("where staves cannot be drawn there are words", async () => {
  const { status, stdout } = await daystave(["sheet", "--week", "2026-W10"], { files: FILES });
  expect(status).toBe(0);
  expect(stdout).toContain("Treble clef, 1 flat, 8ths.");
});

describe("what it cannot make", () => {
  test.each([
    [["--week", "2026-W10", "--minutes", "20"], "“--minutes” is for a plan, and “--week” for days that were played"],
    [["--week", "2026-W99"], "“--week” takes an ISO week"],
    [["--minutes", "ten"], "“--minutes” takes whole minutes"],
    [["--date", "soon"], "“--date” takes a date"],
    [["--instrument", "kazoo"], "kazoo"],
    [["gone"], "gone: "],
  ])("%j", async (argv, says) => {
    const { status, stdout, stderr } = await daystave(["sheet", ...argv], { files: FILES });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(says);
  });

  test("of several journals", async () => {
    const files = { "a/journal.practice": "player A\n", "b/journal.practice": "player B\n" };
    const { status, stderr } = await daystave(["sheet"], { files });
    expect([status, stderr]).toEqual([2, "daystave: Name one journal: a sheet is for one player.\n"]);
  });

  test("without any journal it is a first plan, and that is said", async () => {
    const { status, stderr } = await daystave(["sheet"], { files: {} });
    expect([status, stderr]).toEqual([0, "daystave: There is no .practice file here.\n"]);
  });
});
