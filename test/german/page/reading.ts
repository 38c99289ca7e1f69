import type { Page } from "playwright-core";

/** Folds out whatever is folded, and shows all rows of the tables. */
export async function foldAllOut(page: Page): Promise<void> {
  const folded = page.locator("main .fold[aria-expanded=false]:visible").or(page.getByText(/^Alle \d+ /));
  while ((await folded.count()) > 0) await folded.first().click();
}

/** Everything on the page that is seen, read out or shown at the pointer, but for what is written into a journal. */
export async function textsOfPage(page: Page): Promise<readonly string[]> {
  return page.evaluate(collect);
}

/** Runs in the page. */
function collect(): string[] {
  const WRITTEN = ".to-hear, .stretches .line-text";
  const ATTRIBUTES = ["aria-label", "aria-description", "title", "alt"];
  const found: string[] = [];
  const walker = document.createTreeWalker(document.querySelector("main")!, NodeFilter.SHOW_ALL);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const at = node instanceof Element ? node : node.parentElement!;
    if (at.closest(WRITTEN)) continue;
    if (node instanceof Text) found.push(node.data);
    else if (node instanceof Element)
      for (const name of ATTRIBUTES) if (node.hasAttribute(name)) found.push(node.getAttribute(name)!);
  }
  return [...new Set(found.map((text) => text.trim()).filter((text) => text !== ""))];
}
