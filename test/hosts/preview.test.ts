import axe from "axe-core";
import type { FrameLocator, Locator } from "playwright-core";
import { expect } from "vitest";
import { exerciseIn } from "./preview-page.ts";
import { chooseTheme, previewHasFocus, textHasFocus } from "./window.ts";
import { describeWorkbench } from "./workbench.ts";

const QUICKSTART = { sample: "samples/quickstart", open: "week.practice" };
const THIRDS = "D melodic minor, thirds";

/** Rules: WCAG 2.1 levels A and AA, as axe-core checks them. The page must have been drawn. */
async function expectNoViolation(preview: FrameLocator): Promise<void> {
  const frame = await (await preview.locator("main").elementHandle())!.ownerFrame();
  await frame!.evaluate(axe.source); // by the browser's debugger, which no policy holds back
  const found = await frame!.evaluate("axe.run(document.querySelector('main'))");
  const { violations, passes } = found as axe.AxeResults;
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
  expect(passes.length).toBeGreaterThan(5);
}

/** The row of the thirds of the sample. */
function thirdsOf(preview: FrameLocator): Locator {
  return exerciseIn(preview, THIRDS);
}

describeWorkbench("the preview beside the sample", QUICKSTART, (inWindow) => {
  inWindow(
    "breaks no rule of accessibility that can be checked by machine",
    async ({ showPreview, page, goToEndOf }) => {
      const preview = await showPreview();
      await thirdsOf(preview)
        .getByRole("button", { name: /^Table/ })
        .click();
      await preview.getByRole("button", { name: "Show unused keys" }).click();
      await goToEndOf("thirds");
      await page.keyboard.press("Home");
      await preview.locator("[aria-current]").waitFor();
      await preview.getByText("Hardest steps of this line:").waitFor();
      await expectNoViolation(preview);
    },
  );

  inWindow(
    "tells the hardest steps of the line at the cursor, and has one put into the journal by itself",
    async (window) => {
      const { showPreview, page, editor, goToEndOf } = window;
      const preview = await showPreview();
      await goToEndOf("thirds");
      const steps = thirdsOf(preview).getByRole("button", { name: /practise it by itself$/ });
      await steps.nth(2).waitFor();
      expect(await steps.count()).toBe(3);
      const [, from, to] = /^(\S+) to (\S+):/.exec((await steps.nth(1).getAttribute("aria-label"))!)!;
      await steps.nth(1).focus();
      await previewHasFocus(window);
      await page.keyboard.press("Enter");
      const line = `notes ${from} ${to}, back and forth, slurred`;
      await editor.locator(".view-line", { hasText: line }).waitFor();
      await preview.getByText("Hardest steps of this line:").waitFor(); // of the line that was put in, where the cursor is now
      await textHasFocus(window);
      await page.keyboard.press("Control+z");
      await editor.locator(".view-line", { hasText: line }).waitFor({ state: "detached" });
    },
  );

  inWindow("lets no script run but its own, and loads nothing", async ({ showPreview }) => {
    const preview = await showPreview();
    const policy = await preview.locator("meta[http-equiv]").getAttribute("content");
    expect(policy).toMatch(/^default-src 'none'; style-src [^;]*; script-src 'nonce-[0-9a-f]{32}'$/);
    expect(policy).not.toContain("unsafe");
    const ran = await preview.locator("body").evaluate(async (body) => {
      const script = document.createElement("script");
      script.textContent = "document.body.dataset.ran = 'yes'";
      body.append(script);
      body.insertAdjacentHTML("beforeend", `<img src="x" onerror="document.body.dataset.ran = 'yes'">`);
      const refused = await fetch("/").then(
        () => "fetched",
        () => "refused",
      );
      return [body.dataset.ran ?? "nothing", refused];
    });
    expect(ran).toEqual(["nothing", "refused"]);
  });

  inWindow("takes what a journal says as text, whatever it says", async ({ showPreview, page, goToEndOf }) => {
    const preview = await showPreview();
    await thirdsOf(preview).waitFor();
    const before = await preview
      .locator("main")
      .evaluate((main) => main.querySelectorAll("b, script, a, style").length);
    await goToEndOf("thirds");
    await page.keyboard.insertText('\n  "<b>bold</b><script>x</script>", at 60 clean\n  ask: <b>why</b>');
    const row = preview.getByRole("heading", { name: /^<b>bold<\/b><script>x<\/script>/ });
    await row.waitFor();
    const title = preview.locator("svg title", { hasText: "<b>bold</b><script>x</script>" });
    expect(await title.count()).toBe(1);
    expect(await preview.locator("main").evaluate((main) => main.querySelectorAll("b, script, a, style").length)).toBe(
      before,
    );
  });

  inWindow("shows today's minutes as soon as they are written", async ({ showPreview, page, goToEndOf }) => {
    const preview = await showPreview();
    await preview.getByText(/^No minutes are written this week or last/).waitFor();
    const today = await page.evaluate(() => new Intl.DateTimeFormat("sv-SE").format(new Date())); // 2026-03-08
    await goToEndOf("thirds");
    await page.keyboard.press("Control+End");
    await page.keyboard.insertText(`\n${today}, 25 min\npieces, 20 min\n`);
    await preview.getByText("25 minutes on 1 day.", { exact: true }).waitFor();
    await preview.getByRole("img", { name: /minutes by day and phase/ }).waitFor();
  });

  // The window keeps the last theme that it was given: nothing comes behind these.
  for (const theme of ["Default Dark Modern", "Default High Contrast", "Default High Contrast Light"])
    inWindow(`can be read in the theme ${theme}`, async (window) => {
      await chooseTheme(window, theme.replace("Default ", ""));
      const preview = await window.showPreview();
      await thirdsOf(preview)
        .getByRole("button", { name: /^Table/ })
        .click();
      const kind = theme.includes("Contrast") ? "vscode-high-contrast" : "vscode-dark";
      await preview.locator(`body.${kind}[data-vscode-theme-id="${theme}"]`).waitFor();
      await expectNoViolation(preview);
    });
});
