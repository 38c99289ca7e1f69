import { expect, test } from "vitest";
import { lastTime } from "../../../server/features/commands/last-time.ts";
import { type OtherFiles, run, TODAY } from "../marked-text.ts";

// Invented journals; what makes an exercise is the format's own decision (syntaxes/FORMAT.md, history).

function check(before: string, after: string, others?: OtherFiles): void {
  expect(run((journal, uri, position) => lastTime(journal, uri, position, { today: TODAY }), before, others)).toBe(
    after,
  );
}

/** The cursor stays where it is in the text, and a sentence says why. */
function checkRefused(marked: string, reason: RegExp, others?: OtherFiles): void {
  expect(run((journal, uri, position) => lastTime(journal, uri, position, { today: TODAY }), marked, others)).toMatch(
    reason,
  );
}

test("goes to the line where the exercise was last played before this one", () => {
  check(
    "2026-03-02\n  D minor, thirds, at 60 clean\n  D minor, at 60\n\n2026-03-09\nD minor, thirds, at 63‸ clean\n",
    "2026-03-02\n  ‸D minor, thirds, at 60 clean\n  D minor, at 60\n\n2026-03-09\nD minor, thirds, at 63 clean\n",
  );
  check(
    "2026-03-02\nD minor, at 60\n\n2026-03-03\nD minor, slow\n\n2026-03-04\nD minor, at 60‸\n\n2026-03-05\nD minor, at 63",
    "2026-03-02\nD minor, at 60\n\n2026-03-03\n‸D minor, slow\n\n2026-03-04\nD minor, at 60\n\n2026-03-05\nD minor, at 63",
  );
});

test("however it is written: by time, not by place in the file", () => {
  check(
    "2026-03-09\nD minor melodic, slurred, 8ths at 60‸\n\n2026-03-02\nd melodic minor, t-k, at 60\n",
    "2026-03-09\nD minor melodic, slurred, 8ths at 60\n\n2026-03-02\n‸d melodic minor, t-k, at 60\n",
  );
});

test("earlier on the same day counts, and several tempos of the line itself do not", () => {
  check(
    "2026-03-09\nD minor, at 60, 63\nC major, slow\nD minor, at 63, 66‸",
    "2026-03-09\n‸D minor, at 60, 63\nC major, slow\nD minor, at 63, 66",
  );
});

test("of several on the line, the one at the cursor, or else the first", () => {
  const days = "2026-03-02\n  C major, slow\n  G major, slow\n";
  const went = (to: string) => `${days.replace(to, `‸${to}`)}2026-03-09\n  C major, G major, at 60\n`;
  check(`${days}2026-03-09\n  C major, G‸ major, at 60\n`, went("G major"));
  check(`${days}2026-03-09\n  C‸ major, G major, at 60\n`, went("C major"));
  check(`${days}2026-03-09\n  C major, G major, at 60‸\n`, went("C major"));
});

test("in another file", () => {
  check("2026-03-02\n‸D minor, at 60\n", "february.practice\n-- old\n2026-02-02\n\t‸D minor, at 54 slips\n", {
    "february.practice": "-- old\n2026-02-02\n\tD minor, at 54 slips\n",
  });
});

test("a line of a plan, which is no attempt itself, is asked about by its day", () => {
  check(
    "2026-03-10, plan\nD minor, at 66‸\n\n2026-03-09\nD minor, at 63\n\n2026-03-11\nD minor, at 69\n",
    "2026-03-10, plan\nD minor, at 66\n\n2026-03-09\n‸D minor, at 63\n\n2026-03-11\nD minor, at 69\n",
  );
});

test("a piece is one exercise, at whatever place; with another instrument it is another", () => {
  check(
    '2026-03-02\n"Ground", bars 1-8, slow\n"Ground", slow, on tenor recorder\n\n2026-03-09\n"Ground", bars 17-32, slow‸',
    '2026-03-02\n‸"Ground", bars 1-8, slow\n"Ground", slow, on tenor recorder\n\n2026-03-09\n"Ground", bars 17-32, slow',
  );
});

test("where there is no last time, a sentence says so", () => {
  checkRefused(
    "2026-03-02\nD minor, slow‸\n\n2026-03-09\nD minor, slow\n",
    /^This exercise has not been played before this line/,
  );
  checkRefused("2026-03-09\ntuning, 5 min‸", /counts only as time/);
  checkRefused("2026-03-09\nd, slow‸", /counts only as time/);
  checkRefused("2026-03-09‸\n", /^There is no entry on this line/);
  checkRefused("D minor, at 60‸\n2026-03-09\n", /^There is no entry on this line/);
});
