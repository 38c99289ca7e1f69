import type { FrameLocator, Locator, Page } from "playwright-core";

/** The row of an exercise. */
export function exerciseIn(preview: FrameLocator, name: string): Locator {
  return preview.getByRole("article").filter({ has: lineButtonIn(preview, name) });
}

/** What leads from an exercise to its line. */
export function lineButtonIn(preview: FrameLocator, name: string): Locator {
  return preview.getByRole("button", { name: `${name}: go to its line`, exact: true });
}

/** From the next load on the window starts from another page than the one that is served. */
export async function withPage(page: Page, change: (text: string) => string): Promise<void> {
  await page.route(page.url(), async (route) => {
    const answer = await route.fetch();
    const before = await answer.text();
    const body = change(before);
    if (body === before) throw new Error("The served page has changed: nothing of it was replaced.");
    await route.fulfill({ response: answer, body });
  });
}

/** The sentence above the figures that says what is wrong; empty while nothing is. */
export function complaintIn(preview: FrameLocator): Locator {
  return preview.getByRole("status");
}
