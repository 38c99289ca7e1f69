import { readFileSync } from "node:fs";
import axe from "axe-core";
import { expect } from "vitest";
import { describeWorkbench } from "./workbench.ts";

const QUICKSTART = { open: "week.practice" };

describeWorkbench("the preview beside the sample", QUICKSTART, (inWindow) => {
  inWindow("shows a heading, a trend and a table for each exercise", async ({ showPreview }) => {
    const preview = await showPreview();
    const thirds = preview.locator("section", { has: preview.getByRole("heading", { name: /D .*melodic.*thirds/ }) });
    await thirds.first().waitFor();
    expect(await thirds.first().getByRole("columnheader").allTextContents()).toEqual([
      "Week",
      "Best",
      "Attempts",
      "Minutes",
    ]);
    expect(await thirds.first().getByRole("rowheader").last().textContent()).toBe("2026-W10");
    const sections = await preview.locator("section").count();
    expect(await preview.getByRole("table").count()).toBe(sections);
    expect(await preview.locator("table caption").count()).toBe(sections);
  });

  // Rules: WCAG 2.1 levels A and AA, as axe-core checks them.
  inWindow("breaks no rule of accessibility that can be checked by machine", async ({ showPreview }) => {
    const preview = await showPreview();
    await preview.getByRole("table").first().waitFor();
    const frame = await (await preview.locator("main").elementHandle())!.ownerFrame();
    await frame!.evaluate(axe.source); // by the browser's debugger, which no policy holds back
    const found = await frame!.evaluate("axe.run(document.querySelector('main'))");
    const { violations, passes } = found as axe.AxeResults;
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
    expect(passes.length).toBeGreaterThan(5);
  });

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

  inWindow("follows an edit and keeps its place", async ({ showPreview, page, goToEndOf }) => {
    const preview = await showPreview();
    await preview.getByRole("table").first().waitFor();
    const before = await preview.locator("main").textContent();
    await preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.scrollTo(0, 120));
    await goToEndOf("thirds");
    await page.keyboard.type(", 90 clean");
    await expect.poll(() => preview.locator("main").textContent(), { timeout: 10_000 }).not.toBe(before);
    expect(await preview.locator("html").evaluate((html) => html.ownerDocument.defaultView!.scrollY)).toBe(120);
  });

  inWindow("leads from an exercise to where it was last practised", async ({ showPreview, page }) => {
    const lines = readFileSync("samples/quickstart/week.practice", "utf8").split("\n");
    const last = lines.findLastIndex((line) => /^ +D melodic minor, thirds.* clean/.test(line)); // what is planned was not practised
    const preview = await showPreview();
    await preview.getByRole("button", { name: /Go to its line: D .*melodic.*thirds/ }).click();
    await page.getByRole("button", { name: `Ln ${last + 1}, Col 1` }).waitFor();
  });

  inWindow("comes back when the window is loaded again", async ({ showPreview, page, preview }) => {
    // The served page opens its editors afresh on every visit; here it is to remember them, as a person's own window does.
    await page.route(page.url(), async (route) => {
      const answer = await route.fetch();
      await route.fulfill({ response: answer, body: (await answer.text()).replace("force: true", "force: false") });
    });
    await (await showPreview()).getByRole("table").first().waitFor();
    await expect
      .poll(() => page.evaluate(windowRemembers, "editors.webviewInput.*daystave.preview.*scroll"), { timeout: 20_000 })
      .toBe(true);
    await page.reload();
    await preview().getByRole("table").first().waitFor();
  });
});

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
