import { describe, expect, test } from "vitest";
import { writeTempo } from "../../../server/features/commands/write-tempo.ts";
import { run, TODAY } from "../marked-text.ts";

// A tempo that was just played goes where its outcome is to follow. Today is Monday, 2026-03-09; the journals are invented.

function check(before: string, after: string, bpm = 66): void {
  expect(run((journal, uri, at) => writeTempo(journal, uri, at, { today: TODAY, bpm }), before)).toBe(after);
}

describe("on a line of today", () => {
  const today = (before: string, after: string, bpm?: number) =>
    check(`2026-03-09\n  ${before}`, `2026-03-09\n  ${after}`, bpm);

  test("it goes to the end, and the cursor behind it", () => {
    today("‸D minor, thirds", "D minor, thirds, at 66 ‸");
    today("‸D minor, thirds, at 60 clean", "D minor, thirds, at 60 clean, 66 ‸");
    today("‸D minor thirds at 60 clean", "D minor thirds at 60 clean 66 ‸");
    today("‸D minor", "D minor, at 66 ‸");
    today("‸D minor, at 60 -- stiff", "D minor, at 60, 66 ‸-- stiff");
  });

  test("where the line has it and nothing was said of it, there", () => {
    today("‸D minor, at 60, 66, 72, 10 min", "D minor, at 60, 66 ‸, 72, 10 min");
    today("‸D minor, at 66", "D minor, at 66 ‸");
    today("‸D minor, at 66 clean, 66", "D minor, at 66 clean, 66 ‸");
    today("‸D minor, at 66 clean", "D minor, at 66 clean, 66 ‸");
  });
});

describe("an entry of an earlier day goes on today", () => {
  test("with what it is and how it is played, and without how it went", () => {
    check(
      "2026-03-08\n  ‸D minor, thirds, slurred, 8ths at 60 clean, 63 slips\n",
      "2026-03-08\n  D minor, thirds, slurred, 8ths at 60 clean, 63 slips\n\n2026-03-09\n  D minor, thirds, slurred, 8ths at 66 ‸\n",
    );
    check(
      "2026-03-08 Sun\n  ‸D minor, thirds, slow\n\n2026-03-09 Mon\n  F major\n",
      "2026-03-08 Sun\n  D minor, thirds, slow\n\n2026-03-09 Mon\n  F major\n  D minor, thirds, slow, at 66 ‸\n",
    );
  });
});

test("where no entry stands a sentence says so", () => {
  check(
    "2026-03-09\n‸\n",
    "There is no entry on this line. Put the cursor on one below a day, such as D minor, thirds, 8ths at 60 clean, and try again.",
  );
});
