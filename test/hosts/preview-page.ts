import type { FrameLocator, Locator } from "playwright-core";

/** The row of an exercise. */
export function exerciseIn(preview: FrameLocator, name: string): Locator {
  return preview.getByRole("article").filter({ has: lineButtonIn(preview, name) });
}

/** What leads from an exercise to its line. */
export function lineButtonIn(preview: FrameLocator, name: string): Locator {
  return preview.getByRole("button", { name: `${name}: go to its line`, exact: true });
}

/** The sentence above the figures that says what is wrong; empty while nothing is. */
export function complaintIn(preview: FrameLocator): Locator {
  return preview.getByRole("status");
}
