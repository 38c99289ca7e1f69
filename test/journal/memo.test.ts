import { expect, test } from "vitest";
import { Memo } from "../../server/journal/memo.ts";

test("what is derived from an object is made anew where something that bears on it is another", () => {
  const memo = new Memo();
  const [day, other, conventions] = [{}, {}, {}];
  let made = 0;
  const ask = (object: object, name: string, ...inputs: unknown[]): number =>
    memo.from(object, name, inputs, () => ++made);
  expect(ask(day, "minutes", conventions, "a")).toBe(1);
  expect(ask(day, "minutes", conventions, "a")).toBe(1);
  expect(ask(other, "minutes", conventions, "a")).toBe(2);
  expect(ask(day, "attempts", conventions, "a")).toBe(3);
  expect(ask(day, "minutes", conventions, "b")).toBe(4);
  expect(ask(day, "minutes", {}, "b")).toBe(5);
  expect(ask(day, "minutes")).toBe(6);
  expect(ask(day, "minutes")).toBe(6);
});

test("that nothing comes of an object is remembered too", () => {
  const memo = new Memo();
  const day = {};
  expect(memo.from(day, "date", [], () => undefined)).toBeUndefined();
  expect(memo.from(day, "date", [], () => expect.unreachable())).toBeUndefined();
});
