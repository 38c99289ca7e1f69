import { expect } from "vitest";
import { describeNodeHost } from "./workbench.ts";

describeNodeHost("the preview from files on disk", "samples/quickstart", "week.practice", (inWindow) => {
  inWindow("shows the figures of the whole journal", async ({ showPreview }) => {
    const preview = await showPreview();
    await preview.getByRole("heading", { name: /melodic.*thirds/ }).waitFor();
    expect(await preview.getByRole("rowheader").first().textContent()).toBe("2026-W05");
  });
});
