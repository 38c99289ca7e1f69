import { test } from "vitest";
import { JOURNALS, textsOf, journalOf, meaningOf, declaredIn, findingsOf, type Name } from "./journals.ts";
test("dump", () => {
  for (const name of Object.keys(JOURNALS) as Name[]) {
    const j = journalOf(textsOf(name));
    console.log(meaningOf(j).join("\n"));
    console.log(JSON.stringify(declaredIn(j), null, 0));
    console.log(findingsOf(j).join("\n"));
  }
});
