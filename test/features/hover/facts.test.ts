import { describe, expect, test } from "vitest";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf, URI } from "../journal-text.ts";

const MONDAY = parseIsoDate("2026-01-05")!;
const SCALE = "F major, slurred, 8ths";
const dateOf = (week: number) => isoDate(MONDAY + 7 * week);

/** A week: what was said of one tempo, and nothing where it was not played. */
function days(tempos: readonly number[], said = (tempo: number) => `${tempo} clean 2 of 2`, what = SCALE): string {
  return tempos.map((tempo, week) => (tempo === 0 ? "" : `${dateOf(week)}\n  ${what} at ${said(tempo)}\n`)).join("");
}

/** The paragraphs of the hover on a line of the week after so many, without theory. */
function paragraphs(text: string, weeks: number, what = SCALE): readonly string[] {
  const whole = `${text}${dateOf(weeks)}, plan\n  ${what}\n`;
  const position = { line: whole.split("\n").length - 2, character: 4 };
  const today = MONDAY + 7 * weeks;
  return hoverAt(journalOf(whole), URI, position, { today, explain: "none" })!.markdown.split("\n\n");
}

const SETTLED = [76, 72, 76, 76, 72, 76, 72, 76, 76, 72, 76, 72];
const OFF = [0, 0, 0, 0];

describe("below the trend and the notes", () => {
  test("what has settled, and how often the fastest tempos were reached, a line each", () => {
    const [, last, start, trend, facts, table] = paragraphs(days(SETTLED), 12);
    expect(last).toBe("Mon 23 Mar: 72 clean 2 of 2");
    expect(start).toBe("Start at 60. Steady at 76.");
    expect(trend).toBe("No clear change.");
    expect(facts).toBe(
      "Settled at 76 since the week of 5 January (24 tries).  \n72: 10 of 10 tries reached, on 5 days; 76: 14 of 14, on 7 days.",
    );
    expect(table).toMatch(/^\| Week of \|/);
  });

  test("how two ways of playing compare", () => {
    const tongued = "F major, tongued, 8ths";
    const text =
      days([72, 72, 76, 76, 80, 80, 84, 84], (tempo) => `${tempo} clean`) +
      days([66, 69, 69, 72, 72, 76, 76, 80], (tempo) => `${tempo} clean`, tongued);
    const said = "Tongued was below slurred in 8 of 8 weeks, by about 7 %.";
    expect(paragraphs(text, 8)).toContain(said);
    expect(paragraphs(text, 8, tongued)).toContain(said);
    expect(paragraphs(text, 8, "F major, thirds, tongued")).not.toContain(said);
  });

  test("nothing where there is nothing to say", () => {
    const shown = paragraphs(
      days([72, 76], (tempo) => `${tempo} clean`),
      2,
    );
    expect(shown.map((each) => each.split(" ")[0])).toEqual(["**F", "Mon", "Start", "Too", "|"]);
  });
});

describe("after a break", () => {
  const once = (tempo: number) => `${tempo} clean, ${tempo + 4} slips`;
  const before = [76, 80, 76, 80];

  test("until four weeks have come it is said that it is not known yet what it cost; nothing has settled then", () => {
    const back = days([...SETTLED, ...OFF, 72, 72], (tempo) => `${tempo} clean 2 of 2`);
    const shown = paragraphs(back, 18).join("\n");
    expect(shown).toContain("Back since 27 April after 34 days; 2 of 4 tested weeks.");
    expect(shown).not.toContain("Settled");
  });

  test("where it cost something, the trend goes by what came after, and says so", () => {
    const shown = paragraphs(days([...before, ...OFF, 60, 63, 66, 69, 72, 76], once), 14).join("\n");
    expect(shown).toContain("Up about 4 notches in four weeks, since the return on 2 March.");
    expect(shown).not.toContain("Back since");
  });

  test("and so does where to start: the steady tempo of before is none", () => {
    const five = (tempo: number) => `${tempo} clean 5 of 5`;
    const start = (back: readonly number[]) => paragraphs(days([...before, ...OFF, ...back], five), 8 + back.length)[2];
    expect(start([69, 69, 69])).toBe("Start at 63. Steady at 80.");
    expect(start([69, 69, 69, 69])).toBe("Start at 54. Steady at 69.");
  });

  test("where it cost nothing, everything is looked at", () => {
    const shown = paragraphs(days([...before, ...OFF, ...before], once), 12).join("\n");
    expect(shown).toContain("No clear change.");
    expect(shown).not.toContain("since the return");
  });

  test("practice of something else on the instrument is no break", () => {
    const others = days([...before.map(() => 0), 60, 60, 60, 60], once, "G major, slow, 8ths");
    const text = days([...before, ...OFF, 60, 63, 66, 69], once) + others;
    expect(paragraphs(text, 12).join("\n")).not.toContain("since the return");
  });
});
