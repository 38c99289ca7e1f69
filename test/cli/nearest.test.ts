import { describe, expect, test } from "vitest";
import { nearest, notOneOf } from "../../server/cli/nearest.ts";

const COMMANDS = ["check", "notes", "scales", "history", "hook", "completion"];

describe("the word that was probably meant", () => {
  test.each([
    ["chekc", "check", "two letters in each other's place"],
    ["Histroy", "history", "whatever its case"],
    ["scale", "scales", "a letter too few"],
    ["hist", "history", "the beginning of one alone"],
    ["h", undefined, "the beginning of two"],
    ["wxyz", undefined, "nothing like any"],
    ["", undefined, "nothing at all"],
    ["x".repeat(41), undefined, "too long to be a slip"],
  ])("%j is %s: %s", (word, meant, _) => {
    expect(nearest(word, COMMANDS)).toBe(meant);
  });

  test("names with capitals are found, and shown as they are", () => {
    expect(nearest("d nminor", ["G major", "D minor"])).toBe("D minor");
  });

  test("a word of one letter is not a slip for any", () => {
    expect(nearest("x", ["g", "fix"])).toBe(undefined);
  });

  test("of two as near, the one with the same letters", () => {
    expect(nearest("abdc", ["abxx", "abcd"])).toBe("abcd");
  });
});

test("a word that is not one of the known ones is shown with them", () => {
  expect(notOneOf("list knids", "knids", ["kinds", "codes"])).toBe(
    "“list knids”: choose one of kinds, codes. Did you mean “kinds”?",
  );
});
