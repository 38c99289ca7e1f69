import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { takeOutPlanIn } from "../../../server/features/commands/take-out-plan.ts";
import { dayMinutes } from "../../../server/history/day-minutes.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { edited, journalOf, URI } from "../journal-text.ts";

// What was not played and never was is taken out when somebody asks for it, and what was played stays as it was
// written. Days and lines are invented.

const TODAY = parseIsoDate("2026-03-09")!;
const DAY = "2026-03-02 Mon";

/** The text after the action at the mark `‸`; undefined where none is offered. */
function takenOut(marked: string, only?: readonly string[]): string | undefined {
  const [before = ""] = marked.split("‸");
  const text = marked.replace("‸", "");
  const place = { line: before.split(/\r\n|\n/).length - 1, character: 0 };
  const actions = takeOutPlanIn(journalOf(text), URI, { start: place, end: place }, TODAY, only);
  expect(actions.length).toBeLessThan(2);
  return actions[0] && edited(text, actions[0].edits);
}

function check(marked: string, after: string | undefined): void {
  expect(takenOut(marked)).toBe(after);
}

describe("on the line of a day", () => {
  test("lines that were not played go, with the plan's own remarks below them; those that were stay", () => {
    check(
      `‸${DAY}, 10 min, plan
groundwork, 10 min
  D minor, slow, 5 min clean
    -- plan: Set for today.
  F major, slow, 5 min
    -- plan: Longest ago.
`,
      `${DAY}
groundwork
  D minor, slow, 5 min clean
    -- plan: Set for today.
`,
    );
  });

  test("a phase that nothing is left in goes, and with the plan what is said above it", () => {
    check(
      `‸${DAY}, 15 min, plan
-- care: A word of care.
warm-up, 5 min
  long tones, 5 min
break, 5 min
groundwork, 5 min
  D minor, slow, 5 min done

`,
      `${DAY}
groundwork, 5 min
  D minor, slow, 5 min done

`,
    );
  });

  test("nothing played leaves the day alone", () => {
    check(`‸${DAY}, 5 min, plan\nwarm-up, 5 min\n  long tones, 5 min`, DAY);
    check(`‸${DAY} 5 min plan\n  long tones, 5 min\n`, `${DAY}\n`);
    check(
      `‸${DAY}, plan, 5 min -- at Ann's\r\n  long tones, 5 min\r\n\r\n2026-03-03\r\n`,
      `${DAY} -- at Ann's\r\n\r\n2026-03-03\r\n`,
    );
  });

  test("a pause stays between two things that were played", () => {
    check(
      `‸${DAY}, plan\nD minor, 5 min done\nbreak, 5 min\nF major, 5 min done\nbreak, 5 min\nG major, 5 min\n`,
      `${DAY}\nD minor, 5 min done\nbreak, 5 min\nF major, 5 min done\n`,
    );
  });

  test("what the player wrote on a line keeps it, and so the word plan: it still counts for nothing", () => {
    check(
      `‸${DAY}, 20 min, plan\nD minor, 5 min -- too tired\nF major, 5 min\n`,
      `${DAY}, plan\nD minor, 5 min -- too tired\n`,
    );
    check(
      `‸${DAY}, 20 min, plan\nD minor, sore thumb\nF major, 5 min\n  -- plan: Set.\n  -- next week\nG major, 5 min\n  -- plan: Last played yesterday.\n`,
      `${DAY}, plan\nD minor, sore thumb\nF major, 5 min\n  -- plan: Set.\n  -- next week\n`,
    );
  });

  test("a line stays that one which was played goes on with", () => {
    check(
      `‸${DAY}, plan\nD minor, slow, 5 min\nsame, at 60 clean\nG major, 5 min\n`,
      `${DAY}, plan\nD minor, slow, 5 min\nsame, at 60 clean\n`,
    );
  });

  test("a plan that somebody wrote by hand stays as it is", () => {
    check(`‸${DAY}, plan\nD minor\nG major, thirds, at 60\n`, undefined);
    check(`‸${DAY}, plan\nsight reading, 10 min\nG major, 7 min\n`, undefined);
  });

  test("a phase that never had a line stays, and so does the plan", () => {
    check(`‸${DAY}, plan\nlesson, 30 min\npieces\n  D minor, 5 min\n`, `${DAY}, plan\nlesson, 30 min\n`);
  });
});

describe("what a player adds to a plan that Daystave wrote", () => {
  const written = (added: string, end = "-- plan: ends here; what you write below counts as played.\n") =>
    `‸${DAY}, 25 min, plan\nwarm-up, 5 min\n  long tones, 5 min\ngroundwork, 5 min\n  D minor, slow, 5 min\n${end}${added}`;
  const ADDED = [
    "sight reading 10 min",
    "sight reading, 10 min",
    "VIBRATO 5 MIN",
    "vibrato, 5 min",
    "played through the sonata 10 min",
    "played scales with Anna, 20 min",
    "A minor slow",
    "also G major, slurred, 8ths at 72, 10 min",
    "Tonleitern langsam 10 min",
    "auch Vibrato, 5 min",
    "VOM BLATT 10 MIN",
    "a long evening, tired but glad",
  ];

  test.each(ADDED)("stays below the end of the plan: %s", (added) => {
    check(written(`${added}\n`), `${DAY}\n${added}\n`);
  });

  test.each(ADDED)("stays where the end was deleted, or the line stands above it: %s", (added) => {
    expect(takenOut(written(`${added}\n`, ""))).toContain(`${added}\n`);
    expect(takenOut(written("", `  ${added}\n-- plan: ends here\n`))).toContain(`  ${added}\n`);
  });

  test("a line in the form of the plan stays above the end too, where the others have reasons", () => {
    const text = (end: string) =>
      `‸${DAY}, 10 min, plan\ngroundwork, 10 min\n  D minor, slow, 5 min\n    -- plan: Set.\n  G major, thirds, 10 min\n${end}`;
    check(text("-- plan: ends here\n"), `${DAY}, plan\ngroundwork\n  G major, thirds, 10 min\n-- plan: ends here\n`);
  });

  test("the end stays where what was played below it would fall to a phase of the plan", () => {
    const done = `${DAY}, 5 min, plan\ngroundwork, 5 min\n  D minor, 5 min clean\n  F major, 5 min\n`;
    check(
      `‸${done}-- plan: ends here\nsight reading 10 min\n`,
      `${DAY}\ngroundwork, 5 min\n  D minor, 5 min clean\n-- plan: ends here\nsight reading 10 min\n`,
    );
    check(`‸${done}-- plan: ends here\n`, `${DAY}, 5 min\ngroundwork, 5 min\n  D minor, 5 min clean\n`);
  });
});

describe("amounts of time", () => {
  test("those that are what was played stay", () => {
    check(
      `‸${DAY}, 7 min, plan\npieces, 7 min\n  D minor, 7 min done\ngroundwork, 5 min\n  G major, 5 min\n`,
      `${DAY}, 7 min\npieces, 7 min\n  D minor, 7 min done\n`,
    );
  });

  test("the time of a day is the same before and after, and never more where a line does not say its own", () => {
    const line = fc.constantFrom(
      "D minor, 5 min clean",
      "F major, 5 min",
      "G major",
      "C major, slow, 5 min",
      "D major, thirds, 10 min",
      "A minor, 7 min done",
      "E major",
      "B major clean",
    );
    const phase = fc.constantFrom("", "pieces, 10 min", "groundwork, 5 min", "scales", "fluency, 15 min, plan", "plan");
    const part = fc.tuple(phase, fc.array(line, { maxLength: 3 })).map(([name, lines]) => [name, ...lines]);
    const heading = fc.constantFrom(
      DAY,
      `${DAY}, 20 min`,
      `${DAY}, plan`,
      `${DAY}, 20 min, plan`,
      `${DAY}, 5 min, plan`,
    );
    let offered = 0;
    fc.assert(
      fc.property(heading, fc.array(part, { maxLength: 4 }), (day, parts) => {
        const lines = [day, ...parts.flat().filter((each) => each !== "")];
        const after = takenOut(`‸${lines.join("\n")}\n`);
        if (after === undefined) return;
        offered++;
        const before = minutesOf(`${lines.join("\n")}\n`);
        if (lines.includes("B major clean")) expect(minutesOf(after)).toBeLessThanOrEqual(before);
        else expect(minutesOf(after)).toBe(before);
        expect(takenOut(`‸${after}`)).toBeUndefined();
        for (const kept of after.split("\n").slice(1)) expect(lines.join("\n")).toContain(kept.replace(/,.*/, ""));
      }),
      { seed: 20260302, numRuns: 300 },
    );
    expect(offered).toBeGreaterThan(100);
  });

  function minutesOf(text: string): number {
    const journal = journalOf(text);
    const block = journal.files.get(URI)!.blocks.find(({ day }) => day)!;
    return Math.round(dayMinutes(journal.model(block)).phases.reduce((sum, { minutes }) => sum + minutes, 0));
  }
});

describe("on a line that says `plan`", () => {
  const text = (mark: string, plan: string) => `${DAY}, 30 min\nD minor, at 60 clean\n${mark}${plan}\nF major, 5 min\n`;

  test("it goes with what stood below it; what was played before keeps its time", () => {
    check(text("‸", "plan"), `${DAY}, 30 min\nD minor, at 60 clean\n`);
    check(
      `${DAY}, 30 min\nD minor, at 60 clean\n‸pieces, 5 min, plan\nF major, 5 min\n`,
      `${DAY}, 30 min\nD minor, at 60 clean\n`,
    );
    check(
      `${DAY}\n‸pieces, 10 min, plan\nF major, 5 min done\nG major, 5 min\n`,
      `${DAY}\npieces\nF major, 5 min done\n`,
    );
  });

  test("other lines offer nothing", () => {
    check(`${DAY}, plan\n‸D minor, 5 min\n`, undefined);
    check(`${DAY}, plan\nD minor, 5 min\n\n‸2026-03-03 Tue\n`, undefined);
    check(`‸player Noor\n\n${DAY}, plan\nD minor, 5 min\n`, undefined);
  });
});

test("it is for days that are over, and where something was not played", () => {
  check("‸2026-03-09, plan\nD minor, 5 min\n", undefined);
  check("‸2026-03-10, plan\nD minor, 5 min\n", undefined);
  check("‸2026-02-30, plan\nD minor, 5 min\n", undefined);
  check(`‸${DAY}, plan\nD minor, 5 min done\n`, undefined);
  check(`‸${DAY}\nD minor, slow\n`, undefined);
});

test("it is a change that one asks for, never a fix", () => {
  const text = `‸${DAY}, plan\nD minor, 5 min\n`;
  expect(takenOut(text, ["refactor"])).toBe(`${DAY}\n`);
  expect(takenOut(text, ["quickfix"])).toBeUndefined();
  expect(takenOut(text, ["source.fixAll"])).toBeUndefined();
});
