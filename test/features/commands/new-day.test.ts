import fc from "fast-check";
import { expect, test } from "vitest";
import { newDay } from "../../../server/features/commands/new-day.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { isoDate } from "../../../server/journal/calendar.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { type OtherFiles, run, TODAY } from "../marked-text.ts";

// Invented journals; where a day belongs is the format's own decision. Today is 2026-03-09, a Monday by the table of
// ISO weeks in test/reference/iso-weeks.tsv, which test/journal holds the calendar against.

function check(before: string, after: string, others?: OtherFiles): void {
  expect(run((journal, uri) => newDay(journal, uri, { today: TODAY, phases: false }), before, others)).toBe(after);
}

function checkWithPhases(before: string, after: string, others?: OtherFiles): void {
  expect(run((journal, uri) => newDay(journal, uri, { today: TODAY, phases: true }), before, others)).toBe(after);
}

test("today goes to the end of a file, with room for the first line", () => {
  check("‸", "2026-03-09 Mon\n‸");
  check("player Noor‸\n", "player Noor\n\n2026-03-09 Mon\n‸");
  check("2026-03-02 Mon\nD minor, slow‸", "2026-03-02 Mon\nD minor, slow\n\n2026-03-09 Mon\n‸");
  check("2026-03-02 Mon\n‸D minor, slow\n\n\n\n", "2026-03-02 Mon\nD minor, slow\n\n2026-03-09 Mon\n‸");
  check("\uFEFF‸", "\uFEFF2026-03-09 Mon\n‸");
});

test("it is written as the day before it is", () => {
  check("2026-03-02, 50 min\n‸", "2026-03-02, 50 min\n\n2026-03-09\n‸");
  check("2026-03-02 Monday\n‸", "2026-03-02 Monday\n\n2026-03-09 Monday\n‸");
  check("2026-03-03, tue., 50 min\n‸", "2026-03-03, tue., 50 min\n\n2026-03-09, mon.\n‸");
  check("- 2026-03-03 Tues: rest\n‸", "- 2026-03-03 Tues: rest\n\n- 2026-03-09 Mon\n‸");
  check("2026-03-02\r\nD minor, slow\r\n‸", "2026-03-02\r\nD minor, slow\r\n\r\n2026-03-09\r\n‸");
});

test("days stand as far apart as the others of the file do", () => {
  check(
    "2026-03-02\nD minor, slow\n2026-03-03\nD minor, slow\n‸",
    "2026-03-02\nD minor, slow\n2026-03-03\nD minor, slow\n2026-03-09\n‸",
  );
  check("2026-03-02\n\n2026-03-03\n‸", "2026-03-02\n\n2026-03-03\n\n2026-03-09\n‸");
});

test("in a file that has the newest day first it goes to the top, below what is declared", () => {
  check(
    "player Noor\n\n2026-03-08 Sun\nD minor, slow\n\n2026-03-02 Mon‸\n",
    "player Noor\n\n2026-03-09 Mon\n‸\n\n2026-03-08 Sun\nD minor, slow\n\n2026-03-02 Mon\n",
  );
  check("2026-03-08\n2026-03-02‸\n", "2026-03-09\n‸\n2026-03-08\n2026-03-02\n");
  check("\uFEFF2026-03-08\n2026-03-02‸\n", "\uFEFF2026-03-09\n‸\n2026-03-08\n2026-03-02\n");
});

test("days that lie ahead stay behind it", () => {
  check(
    "2026-03-02 Mon\n\n2026-03-10 Tue, plan\nD minor, slow‸\n",
    "2026-03-02 Mon\n\n2026-03-09 Mon\n‸\n\n2026-03-10 Tue, plan\nD minor, slow\n",
  );
  check("2026-03-10 Tue, plan‸\n", "2026-03-09 Mon\n‸\n\n2026-03-10 Tue, plan\n");
  check("2026-03-10\n\n2026-03-08\n\n2026-03-02‸\n", "2026-03-10\n\n2026-03-09\n‸\n\n2026-03-08\n\n2026-03-02\n");
});

test("where today stands already the cursor goes to an empty line at its end", () => {
  check("2026-03-09 Mon\nD minor, slow\n\n2026-03-10, plan‸", "2026-03-09 Mon\nD minor, slow\n‸\n\n2026-03-10, plan");
  check("2026-03-09 Mon\nD minor\n\n\n2026-03-10, plan‸", "2026-03-09 Mon\nD minor\n‸\n\n2026-03-10, plan");
  check("‸2026-03-09\nD minor, slow -- the thumb", "2026-03-09\nD minor, slow -- the thumb\n‸");
  check("‸2026-03-09\n  D minor, slow\n    -- the thumb\n", "2026-03-09\n  D minor, slow\n    -- the thumb\n  ‸");
  check("‸2026-03-09\nscales\n\tD minor\npieces\n", "2026-03-09\nscales\n\tD minor\npieces\n\t‸");
  check("2026-03-02‸\n", "march.practice\n2026-03-09, 5 min\nD minor, slow\n‸", {
    "march.practice": "2026-03-09, 5 min\nD minor, slow\n",
  });
});

test("its first line is indented as the last days have theirs", () => {
  check("2026-03-05 Thu\n  D minor, slow\n‸", "2026-03-05 Thu\n  D minor, slow\n\n2026-03-09 Mon\n  ‸");
  check("2026-03-05\n\tD minor\n\n2026-03-09‸\n", "2026-03-05\n\tD minor\n\n2026-03-09\n\t‸");
  check("2026-03-05\npieces\n  D minor\n‸", "2026-03-05\npieces\n  D minor\n\n2026-03-09\n‸");
});

test("where each month has a file, today goes to the one that goes on from this", () => {
  const months = { "march.practice": "2026-03-02\n", "april.practice": "2026-04-01, plan\n" };
  check("2026-02-02\n‸", "march.practice\n2026-03-02\n\n2026-03-09\n‸", months);
  check("2026-03-03\n‸", "2026-03-03\n\n2026-03-09\n‸", { "piano.practice": "2026-02-01\n\n2026-03-08\n" });
});

test("from a marker without days it goes to the file of the latest day", () => {
  const marker = (journal: Parameters<typeof newDay>[0]) =>
    newDay(journal, "file:///journal/journal.practice", { today: TODAY, phases: false });
  const others = { "journal.practice": "player Noor\n", "february.practice": "2026-02-02\n" };
  expect(run(marker, "2026-03-02‸\n", others)).toBe("2026-03-02\n\n2026-03-09\n‸");
  expect(run(marker, "-- none‸\n", { "journal.practice": "player Noor\n" })).toBe(
    "journal.practice\nplayer Noor\n\n2026-03-09 Mon\n‸",
  );
});

const WEEK = `2026-03-02 Mon, 50 min
warm-up, 5 min
  long tones, slow
groundwork: 15 min -- at last
  D minor, slow
pieces, with Anna
  Ground, slow
`;

test("the phases of the last session come along with their minutes, and nothing else of it", () => {
  checkWithPhases(`${WEEK}‸`, `${WEEK}\n2026-03-09 Mon\nwarm-up, 5 min\n  ‸\ngroundwork, 15 min\npieces\n`);
  checkWithPhases(
    "2026-03-02\npieces, 5 min\nD minor, slow\n‸",
    "2026-03-02\npieces, 5 min\nD minor, slow\n\n2026-03-09\npieces, 5 min\n‸",
  );
});

test("the last session is the last that had phases: of the day, in any file, and not of a plan", () => {
  checkWithPhases(
    "2026-03-08, plan\npieces\n\n2026-03-07\nsession 10:00\nwarm-up\nsession 19:30\nfluency, 5 min\n\n2026-03-06\npieces\n‸",
    "2026-03-09\nfluency, 5 min\n  ‸\n\n2026-03-08, plan\npieces\n\n2026-03-07\nsession 10:00\nwarm-up\nsession 19:30\nfluency, 5 min\n\n2026-03-06\npieces\n",
  );
  checkWithPhases("‸", "2026-03-09 Mon\nfluency, 5 min\n  ‸", { "march.practice": "2026-03-02\nfluency, 5 min\n" });
  checkWithPhases(
    "2026-03-02\nD minor, slow\n‸",
    "No earlier day of this journal has phases, so there are none to take over. Daystave: New Day puts in the day alone.",
  );
});

test("a today that is empty gets them, one that is not is gone to", () => {
  checkWithPhases(
    `${WEEK}\n2026-03-09, 40 min\n\n\n‸`,
    `${WEEK}\n2026-03-09, 40 min\nwarm-up, 5 min\n  ‸\ngroundwork, 15 min\npieces\n`,
  );
  checkWithPhases(`${WEEK}\n2026-03-09\nC major, slow\n‸`, `${WEEK}\n2026-03-09\nC major, slow\n‸`);
});

test("whatever days a file in order has, the day that goes in is in order, and asked again it is found", () => {
  const days = fc.uniqueArray(fc.integer({ min: TODAY - 40, max: TODAY + 3 }), { maxLength: 8 });
  const eols = fc.constantFrom("\n", "\r\n", "\r");
  fc.assert(
    fc.property(days, fc.boolean(), fc.boolean(), eols, (dates, newestFirst, phases, eol) => {
      const inOrder = [...dates].sort((a, b) => (newestFirst ? b - a : a - b));
      const text = inOrder
        .map((day) => `${isoDate(day)}${day > TODAY ? ", plan" : ""}${eol}pieces, 5 min${eol}  D minor, slow${eol}`)
        .join(eol);
      const options = { today: TODAY, phases };
      const answer = newDay(journalOf(text), URI, options);
      expect(answer.ok).toBe(!phases || dates.includes(TODAY) || dates.some((day) => day < TODAY));
      if (!answer.ok) return;
      const after = journalOf(edited(text, answer.edits));
      expect(answer.edits).toHaveLength(1);
      expect(diagnosticsOf(after, URI, TODAY).map(({ code }) => code)).toEqual([]);
      expect(newDay(after, URI, { today: TODAY, phases: false })).toMatchObject({ ok: true, edits: [] });
    }),
    { seed: 20260309 },
  );
});
