import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { COMMANDS } from "../../server/cli/commands.ts";
import { manPage } from "../../server/cli/man/man-page.ts";
import { ROOT, textOf } from "./source.ts";

const PAGE = "syntaxes/daystave.1";

/** `UPDATE=1 npx vitest run test/architecture` writes it anew. */
test("the manual page that is installed is what daystave man prints", () => {
  const fresh = manPage(COMMANDS);
  if (process.env["UPDATE"]) writeFileSync(join(ROOT, PAGE), fresh);
  else expect(textOf(PAGE)).toBe(fresh);
});
