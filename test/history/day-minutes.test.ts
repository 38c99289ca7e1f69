import { expect, test } from "vitest";
import { dayMinutes } from "../../server/history/day-minutes.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

/** The minutes of one day, phase by phase; `about` where they were shared out. */
function check(day: string, expected: string): void {
  const document = createDocument(day);
  const journal = new Journal("file:///j", new Map([["file:///j/a.practice", document]]));
  const { phases, about } = dayMinutes(journal.model(document.blocks[0]!));
  const told = phases.map(({ phase, minutes }) => `${phase || "–"} ${Math.round(minutes * 100) / 100}`).join(", ");
  expect(about ? `about ${told}` : told).toBe(expected);
}

test("a phase counts as it is written, whatever its entries take", () => {
  check(
    "2026-03-02, 50 min\nwarm-up, 5 min\n  C major, slow\npieces, 45 min\n  D minor, slow, 10 min",
    "warm-up 5, pieces 45",
  );
});

test("what is written for the day alone goes to the phases that do not say their minutes", () => {
  check("2026-03-02, 50 min\nwarm-up, 20 min\npieces\n  D minor, slow", "warm-up 20, pieces 30");
  check(
    "2026-03-02, 60 min\nwarm-up\n  C major, slow\npieces\n  D minor, slow\n  G major, slow",
    "about warm-up 20, pieces 40",
  );
});

test("entries count where neither phase nor day says any", () => {
  check("2026-03-02\nwarm-up\n  C major, slow, 5 min\n  D minor, slow\nC major, slow, 7 min", "warm-up 12");
});

test("what no entry takes stands under no phase", () => {
  check("2026-03-02, 50 min", "– 50");
  check("2026-03-02, 50 min\nwarm-up, 20 min", "warm-up 20, – 30");
  check("2026-03-02, 30 min\nwarm-up, 40 min", "warm-up 40");
});

test("a phase that stands twice counts once, with all its minutes; each sitting has its own", () => {
  check("2026-03-02\nsession 9:00, 30 min\npieces, 20 min\nsession 19:00, 15 min\npieces, 15 min", "pieces 35, – 10");
});

test("a plan counts as far as it was done", () => {
  check("2026-03-02 plan, 50 min\nwarm-up, 5 min\n  C major, slow", "");
  check(
    "2026-03-02\npieces plan, 20 min\n  C major, at 60\n  D minor, at 60 clean, 8 min\nwarm-up, 5 min",
    "pieces 8, warm-up 5",
  );
});

test("the minutes of a planned heading are those of its lines: nobody else takes them", () => {
  const away = "2026-03-02, 15 min, plan\naway, 15 min\n  listening, 15 min\n";
  check(`${away}  played scales with anna 20 min\n  G major slurred 8ths at 72 slips`, "");
  check(`${away}  played scales with anna, 20 min\n  G major slurred 8ths at 72 slips, 10 min`, "away 10");
  check(`${away}-- plan: ends here\nG major slurred 8ths at 72 slips\nsight reading 10 min`, "– 10");
  check("2026-03-02, 15 min, plan\npieces, 15 min\n  D minor clean\n  G minor clean", "pieces 15");
  check("2026-03-02, 15 min, plan\nD minor, 5 min, clean\nG minor\n-- plan: ends here\n40 min", "– 40");
});

test("below lines that end in their minutes, as a written plan has them, a line that does not was played", () => {
  const plan = "2026-03-02, 5 min, plan\nwarm-up, 5 min\n  long tones, 5 min\n";
  check(`${plan}sight reading 10 min`, "warm-up 10");
  check(`${plan}VIBRATO 5 MIN\nG major, 7 min`, "warm-up 12");
  check(`${plan}sight reading, 10 min`, "");
  check(`${plan}also sight reading, 10 min`, "warm-up 10");
  check("2026-03-02, plan\nD minor, 5 min\nG major, 7 min", "");
  check("2026-03-02, plan\nwarm-up, 5 min\n  long tones\n  G major, 7 min", "");
});

test("the minutes of a day line that says `lesson` are those of the lesson", () => {
  check("2026-03-02 Mon, lesson, 30 min\n  C major, slow", "lesson 30");
  check("2026-03-02 lesson 50 min\npieces, 20 min", "pieces 20, lesson 30");
});

test("a total below counts where the day line has no amount", () => {
  check("2026-03-02\nC major, slow\n40 min", "– 40");
  check("2026-03-02\nwarm-up\n  C major, slow\npieces, 25 min\n40 min in all", "warm-up 15, pieces 25");
  check("2026-03-02\nC major, slow, 10 min\nD minor, slow\ntotal 40 min", "– 40");
  check("2026-03-02, 50 min\nC major, slow\n40 min", "– 50");
});

test("totals add only under separate sessions; of several in one sitting the greatest takes in the others", () => {
  check("2026-03-02\nC major, slow\n20 min\nD minor, slow\n45 min altogether", "– 45");
  check("2026-03-02\nsession 9:00\nC major, slow\n20 min\nsession 19:00\nD minor, slow\n25 min", "– 45");
  check("2026-03-02\nC major, slow\n20 min\nsession 19:00, 30 min\nD minor, slow\n25 min", "– 50");
});

test("a total smaller than what its entries state gives way to them; one of a plan or of set work says nothing", () => {
  check("2026-03-02\nC major, slow, 30 min\n20 min", "– 30");
  check("2026-03-02\nplan\nC major, slow\n20 min", "");
  check("2026-03-02\nhomework\nC major, slow\n20 min", "");
});
