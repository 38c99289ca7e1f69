import { expect, test } from "vitest";
import { type Around, daystave } from "../command-line.ts";

// Today is 2026-03-10. The journals are invented.

const DIARY = `instrument alto recorder
piece "Ground in G minor" as Ground: G minor, 32 bars, goal quarter=84, due 2026-05-09

2026-03-05 Thu
  G harmonic minor, slurred, 8ths at 60 clean
2026-03-08 Sun
  Ground, bars 17-24, at 66 clean, 69 slips
`;

async function plan(argv: readonly string[], around: Around = { files: { "a.practice": DIARY } }) {
  return daystave(["plan", ...argv], around);
}

async function json(argv: readonly string[] = [], around?: Around) {
  return JSON.parse((await plan(["--json", ...argv], around)).stdout);
}

test("a day as it would look in the journal, with the reason for each line", async () => {
  const { status, stdout, stderr } = await plan(["--minutes", "20"]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toBe(
    [
      "2026-03-10 Tue, 20 min, plan",
      "warm-up, 5 min",
      "  long tones on G4 Bb4 D5, slow, 5 min",
      "    -- plan: Easy and low to begin with.",
      "groundwork, 5 min",
      "  G harmonic minor, slurred, 8ths at 58, 5 min",
      "    -- plan: Ground is in G minor: last played on 5 March.",
      "pieces, 10 min",
      "  Ground, bars 17-24, at 52, 60, 69, 66, 5 min",
      "    -- plan: Ground, bars 17-24: 69 was not reached on 8 March.",
      "    -- plan: Ground is for 9 May, in 60 days.",
      "  Ground, from the top, slow, 5 min",
      "    -- plan: Something whole to end with, slowly.",
      "-- plan: ends here; what you write below counts as played.",
      "",
    ].join("\n"),
  );
});

test("without reasons; care is left out by nothing", async () => {
  const sore = `${DIARY}2026-03-09 Mon\n  Ground, bars 1-8, slow, sore left thumb\n`;
  const plain = (await plan(["--no-reasons", "--minutes", "20"])).stdout;
  expect(plain.match(/-- plan:.*/g)).toEqual(["-- plan: ends here; what you write below counts as played."]);
  const { stdout } = await plan(["--no-reasons", "--minutes", "20"], { files: { "a.practice": sore } });
  expect(stdout).toContain("-- care: Yesterday you noted “sore left thumb”. If something hurts, stop and rest");
  expect(stdout).toContain("away, 15 min\n");
  expect(stdout).not.toMatch(/ at \d/);
});

test("the day written as the journal writes its days, and at its end where it stands there", async () => {
  const plain = "2026-03-08\nC major, slow\n";
  expect((await plan(["--minutes", "10"], { files: { "a.practice": plain } })).stdout).toMatch(
    /^2026-03-10, 10 min, plan\n/,
  );
  const there = `${plain}\n2026-03-10\nG major, slow\n`;
  const { stdout } = await plan(["--minutes", "10"], { files: { "a.practice": there } });
  expect(stdout).toMatch(/^plan\ngroundwork, 10 min\n/);
  expect(stdout).not.toContain("G major, slow");
});

test("another day, as if nothing came after it", async () => {
  const { stdout } = await plan(["--date", "2026-03-06", "--minutes", "20"]);
  expect(stdout).toMatch(/^2026-03-06 Fri, 20 min, plan\n/);
  expect(stdout).not.toContain("69");
});

test("as long as the last days, where no minutes are given", async () => {
  const days = ["02", "03", "04"].map((day, i) => `2026-03-${day}, ${30 + 5 * i} min\n  C major, slow\n`);
  expect(await json([], { files: { "a.practice": days.join("") } })).toMatchObject({ asked: 35, minutes: 30 });
  expect(await json([], { files: { "a.practice": days[0]! } })).toMatchObject({ asked: 20 });
});

test("for one instrument of several", async () => {
  const two = "instrument alto recorder\n\n2026-03-08\n  D minor, on cello, slurred, at 60 clean\n";
  const { stdout } = await plan(["--instrument", "cello", "--minutes", "20"], { files: { "a.practice": two } });
  expect(stdout).toContain("long tones on D2 F2 A2, on cello, slow");
  expect(stdout).toContain("D minor, on cello, slurred, at 58");
});

test("a sentence where there is nothing to play", async () => {
  expect(await plan(["--minutes", "4"])).toMatchObject({
    status: 0,
    stdout: "Under 5 minutes nothing needs a plan: play one thing slowly that goes well.\n",
  });
  const rest = `${DIARY}set F major, thirds by 2026-03-20\n2026-03-10 Tue, rest\n`;
  expect(await plan([], { files: { "a.practice": rest } })).toMatchObject({
    status: 0,
    stdout: "Today is a day of rest.\nSet: “F major, thirds”.\n",
  });
});

test("several journals one after another, each by itself", async () => {
  const files = {
    "ann/journal.practice": "player Ann\ninstrument cello\n",
    "bo/journal.practice": "player Bo\ninstrument soprano recorder\n",
  };
  const { stdout } = await plan(["--minutes", "5"], { files });
  expect(stdout).toMatch(/^Ann\n2026-03-10 Tue, 5 min, plan\n.*\nBo\n2026-03-10 Tue, 5 min, plan\n/s);
  const { journals } = await json(["--minutes", "5"], { files });
  expect(journals.map(({ name, minutes }: { name: string; minutes: number }) => [name, minutes])).toEqual([
    ["Ann", 5],
    ["Bo", 5],
  ]);
});

test("the same for a script, with what would be printed", async () => {
  const document = await json(["--minutes", "45"]);
  expect(document).toMatchObject({ date: "2026-03-10", asked: 45, minutes: 45, kind: "usual", notes: [], skipped: [] });
  expect(document.journalText).toBe((await plan(["--minutes", "45"])).stdout);
  expect(document.lines[0]).toEqual({
    text: "long tones on G4 Bb4 D5, slow, 5 min",
    phase: "warm-up",
    minutes: 5,
    rule: "warm-up",
    exercise: "long tones on G4 Bb4 D5",
    reasons: ["Easy and low to begin with."],
  });
});

test.each([
  [["--minutes", "601"], "“--minutes” takes whole minutes up to 600, such as 25, not “601”."],
  [["--minutes", "-5"], "“--minutes”"],
  [["--minutes", "half"], "“--minutes” takes whole minutes up to 600, such as 25, not “half”."],
  [["--date", "2026-02-30"], "“--date” takes a date, year-month-day, such as 2026-03-02, not “2026-02-30”."],
  [["--instrument", "celo"], "I do not know the instrument “celo”. Did you mean “cello”?"],
])("%s is an error", async (argv, reason) => {
  const { status, stdout, stderr } = await plan(argv);
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(stderr).toContain(reason);
});
