import { expect, test } from "vitest";
import type { Files } from "../support/temporary-folder.ts";
import { daystave } from "./command-line.ts";

const WEEK = "2026-03-02 Mon\n  D minor, 8ths at 60 clean\n";

/** The headings of `daystave history` over these journals. */
async function check(players: Files, headings: string[]) {
  const weeks = Object.keys(players).map((folder) => [`${folder}/week.practice`, WEEK] as const);
  const markers = Object.entries(players).map(([folder, text]) => [`${folder}/journal.practice`, text] as const);
  const { stdout } = await daystave(["history"], { files: Object.fromEntries([...weeks, ...markers]) });
  const lines = stdout.split("\n");
  expect(lines.filter((_, i) => lines[i + 1]?.startsWith("Exercise "))).toEqual(headings);
}

test("several journals are headed by who plays, sorted as people sort", () =>
  check({ x: "player émile", y: "player Zoë", z: "player Emma", a: "player Ada" }, ["Ada", "émile", "Emma", "Zoë"]));

test("by their folders where nobody is named, 2 before 10", () =>
  check({ "pupil 10": "", "pupil 2": "", "pupil 1": "player Ben" }, ["Ben", "pupil 2", "pupil 10"]));

test("with their folders where two have one name", () =>
  check({ "monday/ida": "player Ida", "friday/ida": "player Ida" }, ["Ida (friday/ida)", "Ida (monday/ida)"]));

test("in JSON each exercise names its journal's folder, in the same order", async () => {
  const files = {
    "b/journal.practice": "player Ann",
    "b/w.practice": WEEK,
    "a/journal.practice": "player Bo",
    "a/w.practice": WEEK,
  };
  const { stdout } = await daystave(["history", "--json"], { files });
  expect(JSON.parse(stdout).exercises.map(({ journal }: { journal: string }) => journal)).toEqual(["b", "a"]);
});
