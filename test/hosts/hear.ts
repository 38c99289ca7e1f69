import { expect } from "vitest";
import { linesOf, todayOf } from "./typing.ts";
import type { InWindow } from "./workbench.ts";

/** What is heard beside a line of the sample's week. */
export function hear(inWindow: InWindow): void {
  inWindow("is played by keys, and its tempo written where the outcome follows", async (window) => {
    const { page, editor, showPreview } = window;
    const preview = await showPreview();
    await page.keyboard.press("Control+End");
    await page.keyboard.type(`${await todayOf(page)}\nD minor, thirds, 8ths at 200`);
    await page.keyboard.press("Escape");
    const toggle = preview.getByRole("button", { name: "To hear", exact: true });
    await toggle.focus();
    await toggle.press("Enter");
    await preview.getByRole("button", { name: "Hear: click at 200" }).waitFor();
    const field = preview.getByRole("textbox", { name: "a line to hear" });
    await field.fill("play through at 400");
    await field.press("Enter");
    const write = preview.getByRole("button", { name: "Write 400 into today’s line" });
    await write.waitFor({ timeout: 30_000 });
    await write.press("Enter");
    await expect.poll(async () => (await linesOf(editor)).at(-1)).toBe("D minor, thirds, 8ths at 200, 400");
    await page.keyboard.type("clean"); // the cursor stands behind it
    await expect.poll(async () => (await linesOf(editor)).at(-1)).toBe("D minor, thirds, 8ths at 200, 400 clean");
    for (let i = 0; i < 6; i++) await page.keyboard.press("Control+z");
  });
}
