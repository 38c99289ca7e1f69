import fc from "fast-check";
import { expect, test } from "vitest";
import { completionsAt } from "../../../server/features/completion/completion.ts";
import { journalHistory } from "../../../server/history/journal-history.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { lines } from "../../properties/edits.ts";

// What is offered does not depend on the order in which a journal's files became known: in one editor they are opened one by
// one, in another they are all read first.

const TODAY = parseIsoDate("2026-03-09")!;
const ROOT = "file:///j";

const entry = fc.constantFrom(
  "D minor, thirds, slurred, 8ths at 60 clean",
  "D minor, thirds, slurred, quavers at 72",
  "D natural minor, thirds, tongued, 8ths at 66 clean 5 in a row",
  "G major, slur 2+2, 5 min",
  "G major, tongued legato, with drone g",
  "Ground, bars 1-8, at 60 clean",
  '"Another ground", from the top, on tenor recorder',
  "warm-up, 5 min",
);
const day = fc
  .tuple(fc.constantFrom("2026-03-01", "2026-03-02", "2026-03-05", "2025-11-30"), fc.array(entry, { maxLength: 4 }))
  .map(([date, entries]) => [date, ...entries].join("\n"));
const days = fc.array(day, { maxLength: 4 }).map((all) => all.join("\n"));
const text = fc.tuple(fc.oneof(fc.constant(""), lines), days).map((parts) => `${parts.join("\n")}\n`);

const typed = fc.constantFrom("", "D", "g", "D minor, ", "G major, thirds, ", '"', "Ground, ", "D minor, thirds, at ");

/** The journal of some files, each set after the other in an order of theirs. */
function journalOf(files: readonly (readonly [string, string])[]): Journal {
  return files.reduce(
    (journal, [name, content]) => journal.with(`${ROOT}/${name}`, createDocument(content)),
    new Journal(ROOT, new Map()),
  );
}

test("in whatever order the files became known, the same is offered in the same order", () => {
  fc.assert(
    fc.property(
      fc.tuple(text, text, text),
      typed,
      fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }),
      fc.boolean(),
      ([a, b, c], words, order, withHistory) => {
        const files = [
          ["journal.practice", `instrument alto recorder\npiece "Ground in G minor" as Ground: G minor\n${a}`],
          ["b.practice", b],
          ["c.practice", c],
          ["today.practice", `2026-03-09\n${words}`],
        ] as const;
        const offered = [files, order.map((at) => files[at]!)].map((all) => {
          const journal = journalOf(all);
          if (withHistory) journalHistory(journal);
          const end = { line: 1, character: words.length };
          return completionsAt(journal, `${ROOT}/today.practice`, end, TODAY);
        });
        expect(offered[1]).toEqual(offered[0]);
      },
    ),
    { seed: 81 },
  );
});
