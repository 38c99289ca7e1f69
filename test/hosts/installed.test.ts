import { describe, expect } from "vitest";
import { inGerman } from "./german.ts";
import { followsAnEdit } from "./preview-paths.ts";
import { completes, hoverShowsWeeks } from "./week.ts";
import { describeNodeHost } from "./workbench.ts";

// The package as a person installs it: what an editor lets it do, it reads from the manifest inside.
describeNodeHost(
  "the installed package",
  { sample: "samples/quickstart", open: "week.practice", packaged: true, untrusted: true, inFull: true },
  (inWindow, host) => {
    inWindow(
      "checks and explains in a folder that is not trusted, and leaves it so",
      async ({ page, editor, hoverOnStartOf, showPreview }) => {
        const restricted = page.locator(".statusbar-item", { hasText: "Restricted Mode" });
        await restricted.waitFor();
        await editor.locator(".squiggly-error").first().waitFor();
        const hover = await hoverOnStartOf("D melodic minor, thirds");
        await hover.getByText("Start at ").first().waitFor();
        await page.keyboard.press("Escape");
        const preview = await showPreview();
        await preview
          .getByRole("row", { name: /D melodic minor, thirds/ })
          .first()
          .waitFor();
        expect(await restricted.isVisible()).toBe(true);
      },
    );

    inWindow("goes on in it once it is trusted", async ({ page, editor, runCommand }) => {
      await runCommand("Workspaces: Manage Workspace Trust");
      await page.locator(".workspace-trust-editor").getByRole("button", { name: "Trust", exact: true }).click();
      await page.locator(".statusbar-item", { hasText: "Restricted Mode" }).waitFor({ state: "detached" });
      await runCommand("View: Close Editor");
      await editor.locator(".squiggly-error").first().waitFor();
    });

    inWindow("has the walkthrough's sample with it", async ({ page, runCommand }) => {
      await runCommand("Daystave: Open the Sample Journal");
      await page.locator('.tab.active[data-resource-name="Untitled-1"]').waitFor();
      await page.locator(".editor-instance .view-line", { hasText: "player Ottilie" }).first().waitFor();
    });

    completes(inWindow);
    hoverShowsWeeks(inWindow);
    followsAnEdit(inWindow);

    describe("in a German editor", () => inGerman(inWindow, host)); // which the window stays
  },
);
