import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { CODES } from "../../server/checks/codes.ts";
import { explanationsIn } from "./explanations.ts";
import { ROOT, textOf } from "./source.ts";

const KEPT = "server/cli/explain/explanations.json";

/** `UPDATE=1 npx vitest run test/architecture` writes them anew. */
test("what daystave explain says is what the format reference says", () => {
  const fresh = `${JSON.stringify(explanationsIn(textOf("syntaxes/FORMAT.md")), undefined, 2)}\n`;
  if (process.env["UPDATE"]) writeFileSync(join(ROOT, KEPT), fresh);
  else expect(textOf(KEPT)).toBe(fresh);
});

test("every code has a section", () => {
  expect(Object.keys(explanationsIn(textOf("syntaxes/FORMAT.md"))).sort()).toEqual(Object.keys(CODES).sort());
});

test("a section is read without the signs of Markdown", () => {
  const section = [
    "\n## Diagnostics\n",
    "### `bad-date`\n",
    "Error.\n",
    "```practice\n2026/03/02\n```\n",
    "**Why.** It is **not** in the\nform of [a day](#days).\n",
    "**What to do.** Write `2026-03-02`.\n",
    "More of it.\n",
  ].join("\n");
  expect(explanationsIn(section)).toEqual({
    "bad-date": {
      example: "2026/03/02\n",
      why: "It is not in the form of a day.",
      whatToDo: "Write `2026-03-02`.",
      further: "More of it.",
    },
  });
});
