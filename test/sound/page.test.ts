import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readSoundLine } from "../../server/sound/sound-line.ts";
import { journalOf } from "../features/journal-text.ts";

/** What stands in the first column of the page's table, or in code elsewhere in it. */
const LINES = [...readFileSync("syntaxes/SOUND.md", "utf8").matchAll(/`((?:click|drone|play|compare) [^`]+)`/g)].map(
  ([, line]) => line!,
);

test("every line that the page shows can be heard", () => {
  expect(LINES.length).toBeGreaterThan(8);
  const journal = journalOf("");
  expect(LINES.filter((line) => !readSoundLine(line, journal).ok)).toEqual([]);
});
