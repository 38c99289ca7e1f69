import { expect, test } from "vitest";
import { formOfRemark } from "../../server/journal/plan-form.ts";

test.each([
  ["plan: ends here; what you write below counts as played.", "end"],
  ["plan: endet hier; was du darunter schreibst, zählt als gespielt.", "end"],
  ["Plan: Ends here", "end"],
  ["plan: ends hereafter", undefined],
  ["plan: endet hierbei", undefined],
  ["ends here", undefined],
])("%s", (remark, form) => {
  expect(formOfRemark(remark)).toBe(form);
});
