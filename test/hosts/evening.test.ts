import { describe } from "vitest";
import { desk } from "./desk.ts";
import { evening } from "./evening.ts";
import { describeWorkbench } from "./workbench.ts";

const BOOK = { sample: "test/hosts/journals/evening", open: "book.practice", asOpened: true };

describeWorkbench("an evening's book", BOOK, (inWindow) => {
  describe("at the desk", () => desk(inWindow));
  describe("typing an evening", () => evening(inWindow));
});
