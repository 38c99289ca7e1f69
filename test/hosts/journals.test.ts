import { expect } from "vitest";
import { describeWorkbench } from "./workbench.ts";

const JOURNALS = "test/hosts/journals";

describeWorkbench("a journal without a tempo", { sample: `${JOURNALS}/empty`, open: "week.practice" }, (inWindow) => {
  inWindow("says in the preview what to write", async ({ showPreview }) => {
    const preview = await showPreview();
    await preview.getByText("No exercise with a tempo yet. Write a line such as").waitFor();
    expect(await preview.getByRole("table").count()).toBe(0);
  });
});

describeWorkbench(
  "a journal that holds markup",
  { sample: `${JOURNALS}/hostile`, open: "week.practice" },
  (inWindow) => {
    inWindow("stays text in preview and hover", async ({ page, hoverOnStartOf, showPreview }) => {
      const preview = await showPreview();
      await preview.getByRole("heading", { name: "Ground <img src=x onerror=document.title='ran'>" }).waitFor();
      await preview.getByRole("heading", { name: "[Air](command:workbench.action.closeAllEditors)" }).waitFor();
      expect(await preview.locator("main img, main a, main b").count()).toBe(0);

      for (const title of ["Ground, bars", "Air, bars"]) {
        const hover = await hoverOnStartOf(title);
        const foreign =
          "img:not([src^='data:image/svg+xml,']), script, b, a[href^='command:'], a[data-href^='command:']";
        expect(await hover.locator(foreign).count()).toBe(0);
        await page.keyboard.press("Escape");
      }
      expect(await page.title()).not.toBe("ran");
    });
  },
);

// An origin of its own, as the editor's own service gives it: a preview that leaned on sharing the editor's would fail here.
describeWorkbench(
  "the preview on an origin of its own",
  { open: "week.practice", webview: "subdomain" },
  (inWindow) => {
    inWindow("draws its figures", async ({ showPreview, page }) => {
      const preview = await showPreview();
      await preview.getByRole("table").first().waitFor();
      const origin = await preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.location.origin);
      expect(origin).not.toBe(new URL(page.url()).origin);
    });
  },
);
