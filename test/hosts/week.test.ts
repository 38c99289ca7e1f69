import { describe } from "vitest";
import { IN_FULL } from "../support/random-runs.ts";
import { hear } from "./hear.ts";
import { plan } from "./plan.ts";
import { preview, previewInThemes } from "./preview.ts";
import { comesBack, previewPaths } from "./preview-paths.ts";
import { week } from "./week.ts";
import { describeWorkbench } from "./workbench.ts";

describeWorkbench("the sample's week", { sample: "samples/quickstart", open: "week.practice" }, (inWindow) => {
  week(inWindow);
  describe("what is heard beside a line", () => hear(inWindow));
  describe("a morning's plan", () => plan(inWindow));
  describe("the preview beside it", () => {
    preview(inWindow);
    previewPaths(inWindow);
    comesBack(inWindow);
    // The page alone is tried in all of them by page-access.test.ts.
    describe.skipIf(!IN_FULL)("in other themes", () => previewInThemes(inWindow));
  });
});
