import { expect, test } from "vitest";
import type { CancellationToken, SymbolInformation } from "vscode";
import { foundSymbolsAsText } from "../../client/symbols-as-text.ts";

test("a name that looks like an icon of the editor stays text, also among the symbols of all files", async () => {
  const found = [{ name: "Air $(trash)", containerName: "$(x).practice" }] as SymbolInformation[];
  const shown = await foundSymbolsAsText!("air", {} as CancellationToken, () => found);
  expect(shown).toEqual([{ name: "Air $\u2060(trash)", containerName: "$\u2060(x).practice" }]);
});
