import { expect } from "vitest";
import { describeWorkbench } from "./workbench.ts";

// An origin of its own, as the editor's own service gives it: a preview that leaned on sharing the editor's would fail here.
describeWorkbench(
  "the preview on an origin of its own",
  { sample: "samples/quickstart", open: "week.practice", webview: "subdomain", inFull: true },
  (inWindow) => {
    inWindow("draws its figures", async ({ showPreview, page }) => {
      const preview = await showPreview();
      await preview.getByRole("table").first().waitFor();
      const origin = await preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.location.origin);
      expect(origin).not.toBe(new URL(page.url()).origin);
    });
  },
);
