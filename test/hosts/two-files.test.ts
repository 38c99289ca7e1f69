import { describe } from "vitest";
import { commands } from "./commands.ts";
import { filesForOthers } from "./export.ts";
import { renamedAndDeleted } from "./removed-files.ts";
import { followsTheme } from "./theme.ts";
import { walkthroughIsTaken } from "./walkthrough.ts";
import { chooseTheme } from "./window.ts";
import { describeWorkbench } from "./workbench.ts";

const TWO_FILES = { sample: "test/hosts/journals/two-files", open: "march.practice" };

describeWorkbench("a journal of two files", TWO_FILES, (inWindow) => {
  describe("commands", () => {
    commands(inWindow);
    walkthroughIsTaken(inWindow);
  });
  describe("export", () => filesForOthers(inWindow));
  inWindow("another theme is taken by preview and hover alike, chosen by keyboard", (window) =>
    followsTheme(window, () => chooseTheme(window, "Dark Modern")),
  );
  renamedAndDeleted(inWindow);
});
