import { expect } from "vitest";
import { describeNodeHost } from "./workbench.ts";

describeNodeHost(
  "the installed package",
  { sample: "samples/quickstart", open: "week.practice", packaged: true },
  (inWindow) => {
    inWindow("checks, explains and shows the preview", async ({ editor, hoverOnStartOf, showPreview, page }) => {
      await editor.locator(".squiggly-error").first().waitFor();
      const hover = await hoverOnStartOf("D melodic minor, thirds");
      expect(await hover.locator('img[src^="data:image/svg+xml"]').count()).toBe(1);
      await page.keyboard.press("Escape");
      const preview = await showPreview();
      await preview.getByRole("heading", { name: "D melodic minor, thirds" }).first().waitFor();
    });
  },
);
