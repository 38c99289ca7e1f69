import type { CancellationToken } from "vscode-languageserver";
import { Slices } from "../host/time-slices.ts";

/**
 * Does work in slices between which other messages are answered. Undefined where it was cancelled, or is over before
 * its end.
 */
export async function inSlices<T>(
  steps: Generator<void, T>,
  token: Pick<CancellationToken, "isCancellationRequested">,
  isOver: () => boolean = () => false,
): Promise<T | undefined> {
  const slices = new Slices();
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    await slices.pause();
    if (token.isCancellationRequested || isOver()) return undefined;
  }
}
