import { expect, test } from "vitest";
import { completionsAt } from "../../server/features/completion/completion.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { hoverAt } from "../../server/features/hover/hover.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { edited, journalOf, URI } from "./journal-text.ts";

// `share body`, a journal's own consent, as an editor shows it.

const TODAY = parseIsoDate("2026-03-09")!;

test("is offered above the days, and explained", () => {
  const found = completionsAt(journalOf("player Noor\nsha"), URI, { line: 1, character: 3 }, TODAY);
  expect(found.map(({ label }) => label)).toEqual(expect.arrayContaining(["share body", "shared"]));
  const hover = hoverAt(journalOf("share body\n"), URI, { line: 0, character: 2 }, { today: TODAY });
  expect(hover!.markdown).toContain(
    "is shown to a teacher who reads it with `daystave pupils`. Without this line it is not.",
  );
});

test("is sound above the days; below one it is offered to be moved there", () => {
  expect(diagnosticsOf(journalOf("share body\n\n2026-03-02\n  C major\n"), URI, TODAY)).toEqual([]);
  const text = "player Noor\n\n2026-03-02\n  C major\nshare body\n";
  const [found, ...others] = diagnosticsOf(journalOf(text), URI, TODAY);
  expect([found!.code, others]).toEqual(["bad-declaration", []]);
  expect(found!.message).toBe("`share body` applies to the whole journal: move it above the first day.");
  expect(edited(text, found!.fixes[0]!.edits)).toBe("player Noor\nshare body\n\n2026-03-02\n  C major\n");
});

test("said twice, the second is one too many", () => {
  const codes = diagnosticsOf(journalOf("share body\nShare body\n"), URI, TODAY).map(({ code }) => code);
  expect(codes).toEqual(["duplicate-declaration"]);
});
