import { describe, expect, test } from "vitest";
import { takeOutPlanIn } from "../../../server/features/commands/take-out-plan.ts";
import { planMinutes, writePlan } from "../../../server/features/commands/write-plan.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { formatEdits } from "../../../server/features/layout/formatting.ts";
import { USUAL_PLAN } from "../../../server/plan/plan.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { type OtherFiles, run, TODAY } from "../marked-text.ts";

// Which lines a plan has is tested in test/plan; here, where it goes in a journal. Today is Monday, 2026-03-09; the
// journals are invented.

interface Wanted {
  readonly minutes?: number;
  readonly reasons?: boolean;
}

function write(marked: string, { minutes = 10, reasons = false }: Wanted = {}, others?: OtherFiles): string {
  return run(
    (journal, uri, at, { today }) => writePlan(journal, uri, at, { today, minutes, settings: USUAL_PLAN, reasons }),
    marked,
    others,
  );
}

function check(before: string, after: string, others?: OtherFiles): void {
  expect(write(before, {}, others)).toBe(after);
}

/** What a plan ends with. */
const END = "-- plan: ends here; what you write below counts as played.";

const TOP = { line: 0, character: 0 };

/** Enough to plan ten minutes from: what is set is played first. */
const SET = "set F major, slurred\nset D minor, slurred\n";

describe("where the journal does not have today", () => {
  test("a day line says how long the plan is; the cursor is at the end of the first line to be played", () => {
    check(
      `${SET}‸`,
      `${SET}
2026-03-09 Mon, 10 min, plan
groundwork, 10 min
  D minor, slurred, 5 min‸
  F major, slurred, 5 min
${END}
`,
    );
  });

  test("the day line is written as the one before it, without commas where that has none", () => {
    const planned = `groundwork, 10 min\n  D minor, slurred, 5 min‸\n  F major, slurred, 5 min\n${END}\n`;
    check(
      `${SET}2026-03-02 monday 50 min\n‸`,
      `${SET}2026-03-02 monday 50 min\n\n2026-03-09 monday 10 min plan\n${planned}`,
    );
    check(`${SET}2026-03-02, 50 min\n‸`, `${SET}2026-03-02, 50 min\n\n2026-03-09, 10 min, plan\n${planned}`);
  });

  test("in a file that has the newest day first it goes to the top", () => {
    check(
      `${SET}
2026-03-02

2026-03-01 Sun 5 min
‸`,
      `${SET}
2026-03-09 10 min plan
groundwork, 10 min
  D minor, slurred, 5 min‸
  F major, slurred, 5 min
${END}

2026-03-02

2026-03-01 Sun 5 min
`,
    );
  });

  test("line ends and the indentation below phases are those of the file", () => {
    check(
      `${SET.replaceAll("\n", "\r\n")}2026-03-02\r\ngroundwork\r\n\tF major, slow\r\n‸`,
      `${SET}2026-03-02
groundwork
\tF major, slow

2026-03-09, 10 min, plan
groundwork, 10 min
\tD minor, slurred, 5 min‸
\tF major, slurred, 5 min
${END}
`.replaceAll("\n", "\r\n"),
    );
  });

  test("it goes to the file that goes on", () => {
    check(
      `${SET}2026-02-02‸\n`,
      `march.practice\n2026-03-02\n\n2026-03-09, 10 min, plan\ngroundwork, 10 min\n  D minor, slurred, 5 min‸\n  F major, slurred, 5 min\n${END}\n`,
      {
        "march.practice": "2026-03-02\n",
      },
    );
  });
});

describe("where today has begun", () => {
  const planned = `groundwork, 10 min\n  D minor, slurred, 5 min‸\n  F major, slurred, 5 min\n${END}\n`;

  test("an empty day says by its own line that it is planned", () => {
    check(`${SET}2026-03-09 Mon‸\n`, `${SET}2026-03-09 Mon, 10 min, plan\n${planned}`);
    check(
      `${SET}2026-03-09 Mon\n‸\n\n2026-03-10, plan\n`,
      `${SET}2026-03-09 Mon, 10 min, plan\n${planned}\n2026-03-10, plan\n`,
    );
  });

  test("what it says of its time stays as it is", () => {
    check(`${SET}2026-03-09, 90 min‸\n`, `${SET}2026-03-09, 90 min\nplan\n${planned}`);
    check(`${SET}2026-03-09, plan‸\n`, `${SET}2026-03-09, plan\n${planned}`);
    check(`${SET}2026-03-09 -- a new reed‸\n`, `${SET}2026-03-09 -- a new reed\nplan\n${planned}`);
  });

  test("below what was played goes a line that says so", () => {
    check(
      `${SET}2026-03-09 Mon\n  C major, at 60 clean‸\n\n2026-03-10, plan\n`,
      `${SET}2026-03-09 Mon\n  C major, at 60 clean\nplan\n${planned}\n2026-03-10, plan\n`,
    );
  });

  test("where all of an earlier plan was played, more of it goes below", () => {
    check(
      `${SET}2026-03-09, plan\n  C major, at 60 clean‸\n`,
      `${SET}2026-03-09, plan\n  C major, at 60 clean\n${planned}`,
    );
  });

  test("below the end of an earlier plan the next one says that it begins", () => {
    const done = `${SET}2026-03-09, 10 min, plan\n  C major, at 60 clean\n${END}\n`;
    check(`${done}sight reading 10 min‸\n`, `${done}sight reading 10 min\nplan\n${planned}`);
  });

  test("planned lines that wait there are gone to, and nothing is written", () => {
    check(
      `${SET}‸2026-03-09, plan\n  C major, at 60 clean\n  F major, slow\n  D minor\n`,
      `${SET}2026-03-09, plan\n  C major, at 60 clean\n  F major, slow‸\n  D minor\n`,
    );
    check(`${SET}‸`, "march.practice\n2026-03-09\nplan\nF major, slow‸\n", {
      "march.practice": "2026-03-09\nplan\nF major, slow\n",
    });
  });

  test("from a line of the plan to the next that waits, and from the last to the first again", () => {
    const lines = (a: string, b: string, c: string) =>
      `${SET}2026-03-09, plan\n  F major, slow${a}\n  D minor${b}\n  G major claen${c}\n`;
    check(lines("‸", "", ""), lines("", "‸", ""));
    check(lines("", "‸", ""), lines("", "", "‸")); // a slip of the pen waits, and is passed by
    check(lines("", "", "‸"), lines("‸", "", ""));
    check(`${SET}2026-03-09, plan\n  F major, slow‸\n`, `${SET}2026-03-09, plan\n  F major, slow‸\n`);
  });
});

describe("what is said beside the lines", () => {
  const sore = `${SET}2026-03-08\n  C major, at 60 clean, sore left thumb\n‸`;

  test("care is always written, reasons only where they are wanted", () => {
    const care = "-- care: Yesterday you noted “sore left thumb”. If something hurts, stop and rest";
    expect(write(sore)).toContain(`plan\n${care}`);
    expect(write(sore).match(/-- plan:.*/g)).toEqual([END]);
    expect(write(sore, { reasons: true })).toContain(`plan\n${care}`);
    expect(write(`${SET}‸`, { reasons: true })).toContain("  D minor, slurred, 5 min‸\n    -- plan: Set");
  });

  test("why the time is shorter is said once, where it is not written", () => {
    const back = `${SET}2026-01-02\n  C major, at 60 clean\n`;
    const answer = (reasons: boolean) =>
      writePlan(journalOf(back), URI, TOP, { today: TODAY, minutes: 40, settings: USUAL_PLAN, reasons });
    expect(answer(false)).toMatchObject({
      note: "One of the first days back after 9 weeks away: 20 minutes instead of 40, and nothing fast.",
    });
    expect(answer(true)).not.toHaveProperty("note");
  });
});

describe("where there is nothing to plan", () => {
  test("the sentence says so, and nothing is written", () => {
    expect(write(`${SET}2026-03-09, rest‸\n`)).toBe("Today is a day of rest.");
    expect(write(`${SET}‸`, { minutes: 3 })).toBe(
      "Under 5 minutes nothing needs a plan: play one thing slowly that goes well.",
    );
  });

  test("no minutes are asked for", () => {
    const minutes = (text: string) =>
      planMinutes(journalOf(SET + text), URI, { today: TODAY, settings: USUAL_PLAN, reasons: false });
    expect(minutes("2026-03-09, rest\n")).toBeNull();
    expect(minutes("2026-03-09, plan\n  C major\n")).toBeNull();
    expect(minutes("")).toBe(20); // plan.md 3: with fewer than three practised days
  });
});

test("what is written is read as planned, has no fault, and can be taken out as a whole the next day", () => {
  const text = `instrument alto recorder\n${SET}2026-03-08 Sun\nF major, tongued, 8ths at 80 clean 5 in a row\n`;
  const journal = journalOf(text);
  for (const minutes of [5, 10, 20, 45, 90]) {
    for (const reasons of [false, true]) {
      const answer = writePlan(journal, URI, TOP, { today: TODAY, minutes, settings: USUAL_PLAN, reasons });
      if (!answer.ok) throw new Error(answer.reason);
      expect(answer.edits).toHaveLength(1);
      const after = journalOf(edited(text, answer.edits));
      expect(diagnosticsOf(after, URI, TODAY)).toEqual([]);
      const lines = edited(text, answer.edits).split("\n");
      const moved = formatEdits(after, URI).map(({ range }) => lines[range.start.line]);
      expect(moved.filter((line) => line !== "break, 5 min")).toEqual([]); // which stands in its phase for the layout
      const { entries } = after.model(after.files.get(URI)!.blocks.at(-1)!);
      expect(entries.every(({ planned }) => planned)).toBe(true);
      expect(entries.length).toBeGreaterThan(0);
      const day = after.files.get(URI)!.starts.at(-1)!;
      const [taken] = takeOutPlanIn(after, URI, { start: { line: day, character: 0 }, end: TOP }, TODAY + 1);
      expect(edited(lines.join("\n"), taken!.edits).trimEnd()).toBe(`${text}\n2026-03-09 Mon`);
    }
  }
});
