import { expect } from "vitest";
import { describeNodeHost } from "./workbench.ts";

// The package as a person installs it: what an editor lets it do, it reads from the manifest inside.
describeNodeHost(
  "a folder that is not trusted",
  { sample: "samples/quickstart", open: "week.practice", packaged: true, untrusted: true },
  (inWindow) => {
    inWindow("is checked and explained, and stays untrusted", async ({ page, editor, hoverOnStartOf, showPreview }) => {
      const restricted = page.locator(".statusbar-item", { hasText: "Restricted Mode" });
      await restricted.waitFor();
      await editor.locator(".squiggly-error").first().waitFor();
      const hover = await hoverOnStartOf("D melodic minor, thirds");
      await hover.getByText("Last time").first().waitFor();
      await page.keyboard.press("Escape");
      const preview = await showPreview();
      await preview.getByRole("heading", { name: "D melodic minor, thirds" }).first().waitFor();
      expect(await restricted.isVisible()).toBe(true);
    });
  },
);
