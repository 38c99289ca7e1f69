import type { FrameLocator, Locator } from "playwright-core";
import { expect } from "vitest";
import { expectNoViolation } from "./accessible.ts";
import { exerciseIn, unfold } from "./preview-page.ts";
import { chooseTheme, focusInPreview, textHasFocus, type Window } from "./window.ts";
import type { InWindow } from "./workbench.ts";

const THIRDS = "D melodic minor, thirds";

/** Runs in the page: how far to the right anything reaches in a page of this width, but for what is scrolled by itself. */
function widest(main: HTMLElement, width: number): number {
  const body = main.ownerDocument.body;
  body.style.width = `${width}px`;
  const own = [...main.querySelectorAll("*")].filter((each) => !each.closest(".keys-room"));
  const right = Math.max(...own.map((each) => each.getBoundingClientRect().right));
  body.style.width = "";
  return right;
}

/** What can be heard, and the staff, of the exercise at the cursor. */
async function unfoldItsSound({ page, goToEndOf }: Window, preview: FrameLocator): Promise<void> {
  await goToEndOf("thirds");
  await page.keyboard.press("Home");
  for (const name of ["To hear", "On the staff"])
    await preview.getByRole("button", { name, exact: true, expanded: false }).click();
  await preview.getByRole("listbox", { name: /^Notes on the staff\. D melodic minor, thirds\./ }).waitFor();
  await preview
    .getByRole("button", { name: /^Hear: / })
    .first()
    .waitFor();
}

/** The row of the thirds of the sample. */
function thirdsOf(preview: FrameLocator): Locator {
  return exerciseIn(preview, THIRDS);
}

/** The preview beside the sample's week. */
export function preview(inWindow: InWindow): void {
  inWindow("breaks no rule of accessibility that can be checked by machine", async (window) => {
    const { showPreview, page, goToEndOf } = window;
    const preview = await showPreview();
    await unfold(preview, thirdsOf(preview));
    await preview.getByRole("button", { name: "Show the other keys" }).click();
    await goToEndOf("thirds");
    await page.keyboard.press("Home");
    await preview.locator(".row[aria-current]").waitFor();
    await preview.getByText("Hardest finger changes of this line:").waitFor();
    await unfoldItsSound(window, preview);
    await expectNoViolation(preview);
  });

  inWindow(
    "shows the hardest finger changes of the line at the cursor in its row, and has one put into the journal by itself",
    async (window) => {
      const { showPreview, page, editor, goToEndOf } = window;
      const preview = await showPreview();
      const opened = await unfold(preview, thirdsOf(preview));
      await goToEndOf("thirds");
      const steps = opened.getByRole("button", { name: /practise it by itself$/ });
      await steps.nth(2).waitFor();
      expect(await steps.count()).toBe(3);
      const [, from, to] = /^(\S+) to (\S+):/.exec((await steps.nth(1).getAttribute("aria-label"))!)!;
      await focusInPreview(window, steps.nth(1));
      await page.keyboard.press("Enter");
      const line = `notes ${from} ${to}, back and forth, slurred`;
      await editor.locator(".view-line", { hasText: line }).waitFor();
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
    const count = () => preview.locator("main").evaluate((main) => main.querySelectorAll("script, style, img").length);
    const before = await count();
    const today = await page.evaluate(() => new Intl.DateTimeFormat("sv-SE").format(new Date())); // 2026-03-08
    await goToEndOf("thirds");
    await page.keyboard.press("Control+End");
    await page.keyboard.insertText(`\n${today}\n  "<b>bold</b><script>x</script>", at 60 clean\n  ask: <b>why</b>`);
    await preview.locator("#pieces").getByText("<b>bold</b><script>x</script>").first().waitFor();
    await preview.locator("#lesson").getByText("<b>why</b>").first().waitFor();
    expect(await count()).toBe(before);
    expect(await preview.locator("b", { hasText: /^(?:bold|why)$/ }).count()).toBe(0);
  });

  inWindow("shows this week's minutes as soon as they are written", async ({ showPreview, page, goToEndOf }) => {
    const preview = await showPreview();
    await preview.getByText("This week: no minutes yet.").waitFor();
    const today = await page.evaluate(() => new Intl.DateTimeFormat("sv-SE").format(new Date())); // 2026-03-08
    await goToEndOf("thirds");
    await page.keyboard.press("Control+End");
    await page.keyboard.insertText(`\n${today}, 25 min\npieces, 20 min\n`);
    await preview.getByText("This week: 25 minutes.", { exact: true }).waitFor();
  });

  inWindow("is as wide as its column, however narrow", async ({ showPreview }) => {
    const preview = await showPreview();
    await unfold(preview, thirdsOf(preview));
    for (const width of [320, 480, 900]) {
      const wide = await preview.locator("main").evaluate(widest, width);
      expect(wide, `at ${width} px`).toBeLessThanOrEqual(width);
    }
  });
}

/** The window keeps the last theme that it was given: nothing comes behind these. */
export function previewInThemes(inWindow: InWindow): void {
  for (const theme of ["Default Dark Modern", "Default High Contrast", "Default High Contrast Light"])
    inWindow(`can be read in the theme ${theme}`, async (window) => {
      await chooseTheme(window, theme.replace("Default ", ""));
      const preview = await window.showPreview();
      await unfold(preview, thirdsOf(preview));
      const kind = theme.includes("Contrast") ? "vscode-high-contrast" : "vscode-dark";
      await preview.locator(`body.${kind}[data-vscode-theme-id="${theme}"]`).waitFor();
      await unfoldItsSound(window, preview);
      await expectNoViolation(preview);
    });
}
