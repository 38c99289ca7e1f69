import { expect } from "vitest";
import manifest from "../../package.json";
import scales from "../reference/scales.json";
import type { InWindow } from "./workbench.ts";

const [walkthrough] = manifest.contributes.walkthroughs;

// LilyPond 2.24.1; its octaves are of no matter here. See the file's own provenance.
const F_MAJOR = scales.major.find(({ tonic }) => tonic === "F")!.scales.major.up.map((note) => note.replace(/\d$/, ""));

export function walkthroughIsTaken(inWindow: InWindow): void {
  inWindow("the walkthrough leads from an empty journal to its preview", async ({ page, runCommand, preview }) => {
    await runCommand("Welcome: Open Walkthrough...");
    await page.locator(".quick-input-list .monaco-list-row", { hasText: walkthrough!.title }).click();
    const steps = page.locator(".gettingStartedContainer .getting-started-step");
    const take = async (title: string, button: string) => {
      const step = steps.filter({ hasText: title });
      if ((await step.getAttribute("aria-expanded")) !== "true") await step.click();
      await step.getByRole("button", { name: button, exact: true }).click();
    };
    await steps.first().waitFor();
    expect(await steps.count()).toBe(walkthrough!.steps.length);

    await take("Begin a journal", "New Journal");
    await page.getByRole("tab", { name: "Untitled-1" }).waitFor();

    await take("Write down a day", "New Day");
    const journal = page.locator(".editor-instance .view-line");
    await journal.filter({ hasText: /^\d{4}-\d\d-\d\d\s\w{3}$/ }).waitFor();

    await journal.last().click();
    await page.getByRole("button", { name: "Ln 2, Col 1" }).waitFor();
    await page.keyboard.type("F major");
    await take("Let your scales be read", "Write Out the Notes");
    await journal.filter({ hasText: `F major: ${F_MAJOR.join(" ")}` }).waitFor();

    await take("See what moved", "Show Preview");
    await preview().getByRole("heading", { level: 1 }).waitFor();
  });
}
