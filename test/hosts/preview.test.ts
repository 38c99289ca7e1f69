import { readFileSync } from "node:fs";
import axe from "axe-core";
import type { FrameLocator, Locator } from "playwright-core";
import { expect } from "vitest";
import { withPage } from "./preview-page.ts";
import { describeWorkbench } from "./workbench.ts";

const QUICKSTART = { open: "week.practice" };

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
  return preview
    .getByRole("article")
    .filter({ has: preview.getByRole("heading", { name: /^D melodic minor, thirds/ }) });
}

describeWorkbench("the preview beside the sample", QUICKSTART, (inWindow) => {
  inWindow(
    "has its sections in their order, and a chart with a name and a text for each exercise",
    async ({ showPreview }) => {
      const preview = await showPreview();
      await thirdsOf(preview).waitFor();
      const sections = ["This week", "What is moving", "The pieces", "Where I have been", "What next"];
      const headings = await preview.getByRole("heading", { level: 2 }).allTextContents();
      expect(headings.filter((heading) => heading !== "For the lesson")).toEqual(sections);
      const chart = thirdsOf(preview).getByRole("img");
      expect(await chart.locator("title").textContent()).toBe("D melodic minor, thirds");
      expect(await chart.locator("desc").textContent()).toMatch(/^Weeks 2026-W\d\d to /);
    },
  );

  inWindow(
    "shows the figures of a chart as a table, and keeps it open over an edit",
    async ({ showPreview, page, goToEndOf }) => {
      const preview = await showPreview();
      await thirdsOf(preview)
        .getByRole("button", { name: /^Table/ })
        .click();
      const table = thirdsOf(preview).getByRole("table");
      expect(await table.getByRole("columnheader").allTextContents()).toEqual([
        "Week",
        "Best, 8ths at",
        "Attempts",
        "Minutes",
      ]);
      expect(await table.getByRole("rowheader").last().textContent()).toBe("2026-W10");
      await goToEndOf("thirds");
      await page.keyboard.type(", 90 clean");
      await table.getByRole("cell", { name: "90", exact: true }).waitFor();
    },
  );

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
      await expectNoViolation(preview);
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
    await page.keyboard.insertText('\n  "<b>bold</b><script>x</script>", at 60 clean\n  -- ? <b>why</b>');
    const row = preview.getByRole("heading", { name: /^<b>bold<\/b><script>x<\/script>/ });
    await row.waitFor();
    const title = preview.locator("svg title", { hasText: "<b>bold</b><script>x</script>" });
    expect(await title.count()).toBe(1);
    expect(await preview.locator("main").evaluate((main) => main.querySelectorAll("b, script, a, style").length)).toBe(
      before,
    );
  });

  inWindow(
    "follows an edit: the row that changed and no other, and keeps its place",
    async ({ showPreview, page, goToEndOf }) => {
      const preview = await showPreview();
      await thirdsOf(preview).waitFor();
      await goToEndOf("thirds");
      await preview.locator("[aria-current]").waitFor();
      const best = await thirdsOf(preview).textContent();
      await preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.scrollTo(0, 120));
      await preview.locator("main").evaluate((main) => {
        for (const article of main.querySelectorAll("article, .week, .been"))
          (article as HTMLElement).dataset["seen"] = "before";
      });
      await page.keyboard.type(", 90 clean");
      await expect.poll(() => thirdsOf(preview).textContent(), { timeout: 10_000 }).not.toBe(best);
      const changed = preview.locator("article:not([data-seen])");
      expect(await changed.locator("h4").allTextContents()).toEqual([
        await thirdsOf(preview).locator("h4").textContent(),
      ]);
      expect(await preview.locator(".week[data-seen], .been[data-seen]").count()).toBe(2);
      expect(await preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.scrollY)).toBe(120);
    },
  );

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

  inWindow(
    "marks the exercise at the cursor, and brings it into sight where it is not",
    async ({ showPreview, page, goToEndOf }) => {
      const preview = await showPreview();
      await thirdsOf(preview).waitFor();
      await goToEndOf("thirds");
      const marked = preview.locator("[aria-current]");
      await marked.waitFor();
      expect(await marked.locator("h4").textContent()).toMatch(/^D melodic minor, thirds/);
      await expect.poll(() => marked.evaluate(isInSight)).toBe(true);
      await page.keyboard.press("Control+Home");
      await marked.waitFor({ state: "detached" });
    },
  );

  inWindow("leads from an exercise to where it was last practised, by keyboard too", async ({ showPreview, page }) => {
    const lines = readFileSync("samples/quickstart/week.practice", "utf8").split("\n");
    const last = lines.findLastIndex((line) => /^ +D melodic minor, thirds.* clean/.test(line)); // what is planned was not practised
    const preview = await showPreview();
    await preview.getByRole("button", { name: /^D melodic minor, thirds: go to its line/ }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: `Ln ${last + 1}, Col 1` }).waitFor();
  });

  for (const theme of ["Default Dark Modern", "Default High Contrast", "Default High Contrast Light"])
    inWindow(`can be read in the theme ${theme}`, async ({ showPreview, page, editor }) => {
      const defaults = '"workbench.startupEditor": "none"';
      await withPage(page, (text) => text.replace(defaults, `${defaults}, "workbench.colorTheme": "${theme}"`));
      await page.reload();
      await editor.locator(".view-line").first().waitFor();
      const preview = await showPreview();
      await thirdsOf(preview)
        .getByRole("button", { name: /^Table/ })
        .click();
      const classes = await preview.locator("body").getAttribute("class");
      expect(classes).toContain(theme.includes("Contrast") ? "vscode-high-contrast" : "vscode-dark");
      await expectNoViolation(preview);
    });

  inWindow(
    "comes back when the window is loaded again, with the span that was chosen",
    async ({ showPreview, page, preview }) => {
      // The served page opens its editors afresh on every visit; here it is to remember them, as a person's own window does.
      await withPage(page, (text) => text.replace("force: true", "force: false"));
      await (await showPreview()).getByLabel("Span").selectOption("4");
      await preview()
        .getByText(/in these 4 weeks/)
        .first()
        .waitFor();
      await expect
        .poll(() => page.evaluate(windowRemembers, "editors.webviewInput.*daystave.preview.*span\\W+4"), {
          timeout: 20_000,
        })
        .toBe(true);
      await page.reload();
      await preview()
        .getByText(/in these 4 weeks/)
        .first()
        .waitFor();
      expect(await preview().getByLabel("Span").inputValue()).toBe("4");
    },
  );
});

/** Runs in the page: whether some of an element is in the part of the page that is seen. */
function isInSight(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > 0 && top < window.innerHeight;
}

/** Runs in the page: whether the workbench has written down, as it does every few seconds, something of this pattern. */
async function windowRemembers(pattern: string): Promise<boolean> {
  const settled = <Value>(request: IDBRequest<Value>) =>
    new Promise<Value>((done, fail) => {
      request.onsuccess = () => done(request.result);
      request.onerror = () => fail(request.error);
    });
  for (const { name } of await indexedDB.databases()) {
    if (!name?.startsWith("vscode-web-state-db-")) continue;
    const database = await settled(indexedDB.open(name));
    const tables = [...database.objectStoreNames];
    const values = tables.map((table) => settled(database.transaction(table).objectStore(table).getAll()));
    const held = new RegExp(pattern).test(JSON.stringify(await Promise.all(values)));
    database.close();
    if (held) return true;
  }
  return false;
}
