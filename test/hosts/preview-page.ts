import type { FrameLocator, Locator } from "playwright-core";

/** The row of an exercise. */
export function exerciseIn(preview: FrameLocator, name: string): Locator {
  const row = preview.getByRole("button", { name: lineLabel(name) });
  return preview.locator("#exercises").getByRole("row").filter({ has: row });
}

/** What leads from an exercise to its line. */
export function lineButtonIn(preview: FrameLocator, name: string): Locator {
  return preview.locator("#exercises").getByRole("button", { name: lineLabel(name) });
}

function lineLabel(name: string): RegExp {
  return new RegExp(`^${name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}, [^,]*: go to its line$`);
}

/** A number of a row: the latest tempo that was reached, or the fastest. */
export function tempoIn(row: Locator, tempo: number): Locator {
  return row.locator(".row-number", { hasText: new RegExp(`^${tempo}$`) }).first();
}

/** Unfolds a row, and gives what it shows. */
export async function unfold(preview: FrameLocator, row: Locator): Promise<Locator> {
  await row.locator(".row-toggle").click();
  const opened = preview.locator(".opened");
  await opened.getByRole("table").waitFor();
  return opened;
}

/** The sentence above the figures that says what is wrong; empty while nothing is. */
export function complaintIn(preview: FrameLocator): Locator {
  return preview.getByRole("status");
}
