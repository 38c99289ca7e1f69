import { expect, test } from "vitest";
import { whereToday } from "../../../server/features/commands/where-today.ts";
import { journalOf, URI } from "../journal-text.ts";
import { TODAY } from "../marked-text.ts";

/** A text with the mark `‸` where the file opens; without one it opens at the top. */
function check(marked: string): void {
  const lines = marked.split("‸")[0]!.split(/\r\n|\r|\n/);
  const place = whereToday(journalOf(marked.replace("‸", "")), URI, TODAY);
  expect(place).toEqual(marked.includes("‸") ? { line: lines.length - 1, character: lines.at(-1)!.length } : undefined);
}

test("a file opens at the end of today, on an empty line if there is one", () => {
  check("2026-03-08\nC major\n\n2026-03-09\nD minor -- the thumb\n‸");
  check("2026-03-09\n  D minor\n  ‸");
  check("2026-03-09\nD minor‸");
  check("2026-03-09\nD minor\n‸\n\n2026-03-10, plan\nC major\n\n");
  check("2026-03-09\nD minor‸\n\n2026-03-08\nC major\n");
  check("2026-03-09\nD minor\r\n‸\r\n\r\n2026-03-08\r\nC major\r\n");
});

test("without today at its end", () => {
  check("2026-03-07\nC major\n\n2026-03-08\nC major\n‸");
  check("player Noor\n\n2026-03-08\nC major, slow‸");
});

test("where that is the top it stays there: with the newest day first, and where there are no days", () => {
  check("2026-03-08\nC major\n\n2026-03-07\nC major\n");
  check("instrument alto recorder\nplayer Noor\n");
  check("");
});
