import { describe, expect, test } from "vitest";
import { declaredLines, ofType } from "../../server/journal/declared-lines.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { progressInWords } from "../../server/plan/aim-words.ts";
import { type AimsAsked, aimProgress, isNotInSight, nearestAimFirst, reachedOn } from "../../server/plan/aims.ts";
import { day, journalOf, journalOfFiles, weekly } from "./written.ts";

/** What is said of each aim of a journal, on 2026-05-08 unless said. */
function said(text: string | Journal, today = "2026-05-08", asked: Partial<AimsAsked> = {}): string[] {
  const journal = typeof text === "string" ? journalOf(text) : text;
  const on = day(today);
  return nearestAimFirst(ofType(declaredLines(journal), "aim"), on).map((aim) =>
    progressInWords(journal, aimProgress(journal, aim, { today: on, ...asked }), { today: on, forecast: true }).join(
      " ",
    ),
  );
}

/** What is said of the only aim. */
function check(aim: string, days: string, expected: string, today?: string): void {
  expect(said(`aim ${aim}\n\n${days}`, today)).toEqual([expected]);
}

const TEN = weekly([60, 60, 63, 63, 66, 66, 69, 69, 72, 72]);
const AIM = "D minor, thirds, slurred, 8ths at 84";

describe("an aim that names no span", () => {
  const played = (span: string, tempo: number) => `2026-05-04\n  E harmonic minor, ${span}slurred, ${tempo} clean\n`;
  const aim = "E harmonic minor, slurred, at 84";

  test("takes more than an octave, by itself or beside one", () => {
    check(
      aim,
      played("2 octaves, ", 66),
      "Best yet: at 66, in the week of 4 May. Too early for a forecast: 1 of 6 tested weeks.",
    );
    check(aim, played("2 octaves, ", 84), "Reached on 4 May.");
    check(aim, `${played("", 60)}  E harmonic minor, 2 octaves, slurred, 88 clean\n`, "Reached on 4 May.");
  });

  test("takes neither a part of it nor another way", () => {
    check(aim, played("five notes, ", 84), "Not played in this way yet.");
    check(aim, "2026-05-04\n  E harmonic minor, 2 octaves, tongued, 84 clean\n", "Not played in this way yet.");
  });

  test("but one that names it takes that alone", () => {
    check("E harmonic minor, 1 octave, slurred, at 84", played("2 octaves, ", 84), "Not played in this way yet.");
  });
});

test("the best yet, and a forecast with what it rests on", () => {
  check(
    AIM,
    TEN,
    "Best yet: 8ths at 72, in the week of 27 April. If it goes on as in the last 10 tested weeks, in 7 to 12 weeks; it need not.",
  );
});

describe("reached", () => {
  test("on the first day on which one attempt has all that the aim says", () => {
    check("D minor, thirds, slurred, 8ths at 66", TEN, "Reached on 30 March.");
    check("D minor, thirds, slurred, 16ths at 33", TEN, "Reached on 30 March.");
    check("D minor, thirds, slurred, 8ths at 72", TEN, "Reached today.", "2026-04-27");
    check("D minor, thirds, slurred, 8ths at 72", TEN, "Reached yesterday.", "2026-04-28");
  });

  test("with as many tries as it says, and not fewer of them", () => {
    const days = (said: string) => `2026-05-04\n  D minor, at 72 clean ${said}\n`;
    check("D minor, at 72 5 in a row", days("5 in a row"), "Reached on 4 May.");
    check("D minor, at 72 5 in a row", days("6 in a row"), "Reached on 4 May.");
    check("D minor, at 72 5 in a row", days("3 in a row"), "at 72 reached, but not 5 in a row yet; 3 at most.");
    check("D minor, at 72 5 in a row", days("7 of 9"), "at 72 reached, but not 5 in a row yet.");
    check("D minor, at 72 4 of 5", days("8 of 10"), "Reached on 4 May.");
    check("D minor, at 72 4 of 5", days("3 of 5"), "at 72 reached, but not in 4 of 5 tries yet.");
  });

  test("in one attempt, not in two of a line", () => {
    check(
      "D minor, at 72 3 in a row",
      "2026-05-04\n  D minor, at 66 clean 3 in a row, 72 clean\n",
      "at 72 reached, but not 3 in a row yet.",
    );
  });

  test("with every other term", () => {
    check(
      "D minor, by heart, at 72",
      "2026-05-04\n  D minor, at 72 clean\n",
      "at 72 reached, but not yet with all that the aim asks.",
    );
    check("D minor, by heart, at 72", "2026-05-04\n  D minor, by heart, at 76 clean\n", "Reached on 4 May.");
  });

  test("of several tempos on a line by its own alone", () => {
    check(
      "D minor, at 72",
      "2026-05-04\n  D minor, at 66 clean, 72 uneven\n",
      "Best yet: at 66, in the week of 4 May. Too early for a forecast: 1 of 6 tested weeks.",
    );
  });
});

describe("without a forecast", () => {
  test("an aim without a tempo was done or was not", () => {
    check("D minor, by heart", "2026-05-04\n  D minor, slow, by heart\n", "Last done on 4 May.");
    check("D minor, by heart", TEN, "Not done yet.");
  });

  test("a piece was done when all of it was", () => {
    const ground = (aim: string, line: string) =>
      said(`piece "Ground in G" as Ground: G minor\naim Ground, ${aim}\n\n2026-05-04\n  Ground, ${line}\n`)[0];
    expect(ground("by heart", "by heart")).toBe("Last done on 4 May.");
    expect(ground("by heart", "from the top, by heart")).toBe("Last done on 4 May.");
    expect(ground("by heart", "bars 1-8, by heart")).toBe("Not done yet.");
    expect(ground("bars 1-8, by heart", "bars 1-8, by heart")).toBe("Last done on 4 May.");
    expect(ground("at 72", "from the top, at 72 clean")).toBe("Reached on 4 May.");
    expect(ground("at 72", "bars 1-8, at 72 clean")).toBe("Not played in this way yet.");
  });

  test("nothing was played, or not in this way, or no tempo was reached", () => {
    check(AIM, "", "Not played yet.");
    check(AIM, "2026-05-04\n  D minor, thirds, tongued, 8ths at 60 clean\n", "Not played in this way yet.");
    check(AIM, "2026-05-04\n  D minor, thirds, slurred, 8ths at 60 uneven\n", "No tempo reached yet.");
  });

  test("an attempt of which nothing was said was neither reached nor failed", () => {
    check(AIM, "2026-05-04\n  D minor, thirds, slurred, 8ths at 90\n", "No tempo reached yet.");
  });

  test("it was long ago", () => {
    check(
      AIM,
      TEN,
      "Best yet: 8ths at 72, in the week of 27 April. No forecast: not tested since the week of 4 May.",
      "2026-06-12",
    );
  });

  test("something hurts, or one is back after a break", () => {
    const best = "Best yet: 8ths at 72, in the week of 27 April.";
    check(
      AIM,
      `${TEN}\n2026-05-07\n  D minor, thirds, slurred, slow, sore left thumb\n`,
      `${best} No forecast for now: something hurt yesterday.`,
    );
    check(AIM, TEN, `${best} No forecast in the first days after a break.`, "2026-05-27");
  });
});

describe("what counts", () => {
  test("nothing after the day that is asked about, nor what was only planned", () => {
    check(AIM, `${TEN}\n2026-05-09\n  D minor, thirds, slurred, 8ths at 84 clean\n`, said(`aim ${AIM}\n\n${TEN}`)[0]!);
    check(AIM, "2026-05-04, plan\n  D minor, thirds, slurred, 8ths at 84\n", "Not played yet.");
  });

  test("after a costly break what came since", () => {
    const before = weekly([70, 70, 70, 70], "2026-01-05");
    const text = `aim ${AIM}\n\n${before}\n${TEN}`;
    expect(said(text)[0]).toContain("in the last 10 tested weeks, in 7 to 12 weeks");
  });

  test("of several subjects each by itself; the aim is reached when all are", () => {
    const days = "2026-05-04\n  C major, F major, at 60 clean\n2026-05-06\n  F major, at 72 clean\n";
    check(
      "C major, F major, at 72",
      days,
      "C major: Best yet: at 60, in the week of 4 May. Too early for a forecast: 1 of 6 tested weeks. F major: Reached on 6 May.",
    );
    const reached = (text: string) => {
      const journal = journalOf(`aim C major, F major, at 60\n\n${text}`);
      const [aim] = ofType(declaredLines(journal), "aim");
      return reachedOn(aimProgress(journal, aim!, { today: day("2026-05-08") }));
    };
    expect(reached(days)).toBe(day("2026-05-04"));
    expect(reached("2026-05-06\n  F major, at 72 clean\n")).toBeUndefined();
  });
});

describe("not in sight", () => {
  const notInSight = (by: string, days: string) => {
    const journal = journalOf(`aim ${AIM}${by}\n\n${days}`);
    const [aim] = ofType(declaredLines(journal), "aim");
    const today = day("2026-05-08");
    return aimProgress(journal, aim!, { today }).map((one) => isNotInSight(one, aim!.declared.by, today));
  };

  test("is what the latest week of the forecast comes too late for", () => {
    expect(notInSight(" by 2026-08-02", TEN)).toEqual([false]); // the twelfth week from now ends that day
    expect(notInSight(" by 2026-07-26", TEN)).toEqual([true]);
  });

  test("and what was not played yet; not what was reached, nor what has no day ahead", () => {
    expect(notInSight(" by 2026-08-02", "")).toEqual([true]);
    expect(notInSight(" by 2026-08-02", "2026-05-04\n  D minor, thirds, slurred, 8ths at 84 clean\n")).toEqual([false]);
    expect(notInSight("", "")).toEqual([false]);
    expect(notInSight(" by 2026-05-01", TEN)).toEqual([false]);
  });
});

test("the order of the files changes nothing", () => {
  const files = {
    "journal.practice": `aim ${AIM}\naim E major, at 60 by 2026-06-01\naim C major, F major, at 90\n`,
    "2026-03.practice": TEN,
    "2026-05.practice": "2026-05-06\n  C major, F major, at 72 clean, E major at 66 clean\n",
  };
  const inOrder = said(journalOfFiles(files));
  expect(inOrder).toHaveLength(3);
  expect(said(journalOfFiles(Object.fromEntries(Object.entries(files).reverse())))).toEqual(inOrder);
});
