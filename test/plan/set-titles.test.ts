import { expect, test } from "vitest";
import { planFor } from "./planned.ts";
import { day, journalOf } from "./written.ts";

/** The lines that a plan of 2026-03-10 takes from set work, and what it only repeats. The journals are invented. */
function planned(text: string): readonly (readonly string[])[] {
  const { lines, setInWords } = planFor(journalOf(`instrument soprano recorder\n${text}`), day("2026-03-10"), {
    minutes: 40,
  });
  return [lines.filter(({ rule }) => rule === "set").map((line) => line.text.replace(/, \d+ min$/, "")), setInWords];
}

test("work on a declared title without quotes is planned as it was written", () => {
  const set = (work: string) => planned(`piece "Greensleeves"\n2026-03-08\n${work}\n`);
  expect(set("for next week:\n  Greensleeves first line")).toEqual([["Greensleeves first line"], []]);
  expect(set("set Greensleeves, first line")).toEqual([["Greensleeves, first line"], []]);
  expect(set("homework: Greensleeves, bars 1-8, slow")).toEqual([["Greensleeves, bars 1-8, slow"], []]);
});

test("so is work on a title that was played before, but not one that nobody knows", () => {
  const set = (work: string) =>
    planned(`2026-03-07\n  Sleepy Frog, bars 1-4, 60 clean\n2026-03-08\nfor next week:\n  ${work}\n`);
  expect(set("Sleepy Frog second line")).toEqual([["Sleepy Frog second line"], []]);
  expect(set("clap with the cat")).toEqual([[], ["clap with the cat"]]);
});

test("words in quotes stay words, even where they begin with a title", () => {
  const text = 'piece "Greensleeves"\n2026-03-08\nset "Greensleeves with the cat"\n';
  expect(planned(text)).toEqual([[], ["Greensleeves with the cat"]]);
});
