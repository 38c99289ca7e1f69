import { describe, expect, test } from "vitest";
import { soundAt } from "../../../server/features/sound/sound.ts";
import { journalOf, URI } from "../journal-text.ts";
import { TODAY } from "../marked-text.ts";

// Nothing sounds faster than the day allows (plan.md, 4.1), and nothing at all on a day without the instrument. Today is
// Monday, 2026-03-09; the journals are invented.

const STEADY = ["2026-02-20", "2026-02-22", "2026-02-24"]
  .map((date) => `${date}\n  D minor, slurred, 8ths at 80 clean 5 in a row\n`)
  .join("");

/** Beside the last line: the tempos that sound, what is said, or why nothing does. */
function heard(text: string, asked: string) {
  const journal = journalOf(`instrument alto recorder\n\n${text}`);
  const sound = soundAt(journal, URI, journal.files.get(URI)!.lineCount - 1, { text: asked, today: TODAY });
  return sound.ok ? [sound.passages.map(({ bpm }) => bpm), sound.notes] : sound.reason;
}

describe("after pain", () => {
  const sore = (date: string) => `${STEADY}${date}\n  wrist hurts\n2026-03-09\n  D minor, slurred, 8ths`;
  const silent = /^Nothing sounds today/;

  test.each(["click at 40", "drone on D", "play at 40", "compare F against D"])(
    "today or yesterday: no %s",
    (asked) => {
      expect(heard(sore("2026-03-08"), asked)).toMatch(silent);
      expect(heard(`${STEADY}2026-03-09\n  wrist hurts\n  D minor, slurred, 8ths`, asked)).toMatch(silent);
    },
  );

  test("in the days after it no faster than four fifths of what is steady", () => {
    const limit = 63; // the notch at or below 0.8 x 80
    expect(heard(sore("2026-03-05"), "click at 60, 72")).toEqual([
      [60, limit],
      [`Nothing sounds faster than ${limit} today.`],
    ]);
    expect(heard(sore("2026-03-05"), "play at 100")).toEqual([[limit], [`Nothing sounds faster than ${limit} today.`]]);
  });
});

test("on any other day as fast as one likes", () => {
  expect(heard(`${STEADY}2026-03-09\n  D minor, slurred, 8ths at 80`, "click at 132, 208")).toEqual([[132, 208], []]);
});

describe("where no exercise stands", () => {
  test("a click and named notes sound all the same", () => {
    expect(heard("", "click at 60")).toEqual([[60], []]);
    expect(heard("", "drone on D")).toEqual([[undefined], []]);
  });

  test("what needs one says so", () => {
    expect(heard("2026-03-09\n  scales went well", "play at 60")).toMatch(/^Only a scale or an arpeggio can be played/);
    expect(heard("2026-03-09\n  scales went well", "drone on the fifth")).toMatch(/^Name the notes/);
  });

  test("degrees of a piece are those of its key", () => {
    expect(heard('piece "Ground": G minor\n2026-03-09\n  Ground, bars 1-8', "drone on the fifth")).toEqual([
      [undefined],
      [],
    ]);
  });
});
