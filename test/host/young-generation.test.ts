import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { SMALL_YOUNG_GENERATION, YOUNG_GENERATION_STAYS } from "../../shared/young-generation.ts";

// What V8 does with the flags is seen from outside: the size of its space for new objects, after very many of them.
const FILLS = `
  const kept = [];
  for (let i = 0; i < 3e6; i++) kept[i % 2e5] = { i, text: "a" + i };
  const { space_size } = require("v8").getHeapSpaceStatistics().find(({ space_name }) => space_name === "new_space");
  console.log(space_size / 2 ** 20);
`;

/** Its size in MiB. */
function youngGeneration({ flags = [] as readonly string[], opening = "" }): number {
  const { stdout } = spawnSync(process.execPath, [...flags, "-e", opening + FILLS], { encoding: "utf8" });
  return Number.parseFloat(stdout);
}

test("the heap for new objects grows by itself", () => {
  expect(youngGeneration({})).toBeGreaterThan(8);
});

test("it stays small where that is said when the process starts, or while it runs", () => {
  expect(youngGeneration({ flags: [SMALL_YOUNG_GENERATION] })).toBeLessThanOrEqual(2);
  const opening = `require("v8").setFlagsFromString("${YOUNG_GENERATION_STAYS}");`;
  expect(youngGeneration({ opening })).toBeLessThanOrEqual(2);
});
