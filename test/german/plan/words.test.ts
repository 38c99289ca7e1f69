import { describe, expect, test } from "vitest";
import { declaredLines, ofType } from "../../../server/journal/declared-lines.ts";
import { forecastInWords, progressInWords } from "../../../server/plan/aim-words.ts";
import { aimProgress } from "../../../server/plan/aims.ts";
import { needsInWords } from "../../../server/plan/key-words.ts";
import { keysWanted } from "../../../server/plan/keys-wanted.ts";
import { setNow } from "../../../server/plan/lesson.ts";
import { setWorkWithDay } from "../../../server/plan/set-work-words.ts";
import { day, journalOf, weekly } from "../../plan/written.ts";

const TODAY = day("2026-05-08");

describe("an aim", () => {
  /** What is said of the only aim. */
  function said(aim: string, days: string): string {
    const journal = journalOf(`names german\naim ${aim}\n\n${days}`);
    const [declared] = ofType(declaredLines(journal), "aim");
    const progress = aimProgress(journal, declared!, { today: TODAY });
    return progressInWords(journal, progress, { today: TODAY, forecast: true }).join(" ");
  }

  const F = "F-Dur, Achtel bei";
  test.each([
    [`${F} 84`, "", "Noch nicht gespielt."],
    [`${F} 84`, `2026-05-04\n  ${F} 84 sauber\n`, "Erreicht am 4. Mai."],
    [`${F} 84`, `2026-05-07\n  ${F} 84 sauber\n`, "Erreicht gestern."],
    [`${F} 84`, `2026-05-04\n  ${F} 72 ungleichmäßig\n`, "Noch kein Tempo erreicht."],
    ["F-Dur, gebunden", "", "Noch nicht geschafft."],
    [
      `${F} 84 sauber 5 in a row`,
      `2026-05-04\n  ${F} 84 sauber 2 in a row\n`,
      "Achtel bei 84 erreicht, aber noch nicht 5-mal in Folge; höchstens 2-mal.",
    ],
    [
      `${F} 84`,
      `2026-05-04\n  ${F} 66 sauber\n`,
      "Bisher am schnellsten: Achtel bei 66, in der Woche vom 4. Mai. Für eine Vorhersage noch zu früh: 1 von 6 geprüften Wochen.",
    ],
    [
      "F-Dur, G-Dur, Achtel bei 84",
      `2026-05-04\n  ${F} 84 sauber\n`,
      "F-Dur: Erreicht am 4. Mai. G-Dur: Noch nicht gespielt.",
    ],
  ])("%s, %j", (aim, days, expected) => {
    expect(said(aim, days)).toBe(expected);
  });

  test.each([
    [
      { type: "range", earliest: 1, latest: 1 },
      "Wenn es weitergeht wie in den letzten 8 geprüften Wochen, in etwa 1 Woche; sicher ist das nicht.",
    ],
    [
      { type: "range", earliest: 3, latest: 5 },
      "Wenn es weitergeht wie in den letzten 8 geprüften Wochen, in 3 bis 5 Wochen; sicher ist das nicht.",
    ],
    [
      { type: "range", earliest: 2, latest: null },
      "Wenn es weitergeht wie in den letzten 8 geprüften Wochen, in 2 Wochen oder mehr; sicher ist das nicht.",
    ],
    [{ type: "over a year" }, "Wenn es weitergeht wie in den letzten 8 geprüften Wochen, über ein Jahr."],
    [{ type: "no clear change" }, "Keine Vorhersage: keine deutliche Veränderung in 8 geprüften Wochen."],
    [{ type: "falling" }, "Keine Vorhersage: langsamer in den letzten 8 geprüften Wochen."],
    [{ type: "something hurt", on: day("2026-05-06") }, "Vorerst keine Vorhersage: am 6. Mai hat etwas wehgetan."],
    [{ type: "back after a break" }, "Keine Vorhersage in den ersten Tagen nach einer Unterbrechung."],
  ] as const)("its forecast: %j", (forecast, expected) => {
    expect(forecastInWords({ ...forecast, testedWeeks: 8 }, { today: TODAY })).toBe(expected);
  });

  test("one that was reached by half a year of weeks", () => {
    expect(
      said(
        "d-Moll, Terzen, gebunden, Achtel bei 84",
        weekly([60, 60, 63, 63, 66, 66, 69, 69], "2026-03-16", "d-Moll, Terzen, gebunden, Achtel bei").replaceAll(
          "clean",
          "sauber",
        ),
      ),
    ).toMatch(/^Bisher am schnellsten: Achtel bei 69, in der Woche vom 27\. April\. Wenn es weitergeht/);
  });
});

describe("what the pieces want", () => {
  function wanted(text: string): readonly string[] {
    const journal = journalOf(`names german\n${text}`);
    return needsInWords(journal, keysWanted(journal, declaredLines(journal), TODAY), TODAY).map(
      ({ sentence }) => sentence,
    );
  }

  test("their keys, and those beside", () => {
    expect(wanted('piece "Abendlied": g-Moll\n2026-05-04\n  g-Moll, langsam\n')).toEqual([
      "Abendlied steht in g-Moll: zuletzt gespielt am 4. Mai.",
      "d-Moll ist eine Nachbartonart von Abendlied: noch nicht gespielt.",
      "c-Moll ist eine Nachbartonart von Abendlied: noch nicht gespielt.",
    ]);
    expect(wanted('piece "Abendlied": g-Moll\npiece "Reigen": g-Moll\n')[0]).toBe(
      "Abendlied und Reigen stehen in g-Moll: noch nicht gespielt.",
    );
  });

  test("how far they go, and the hardest finger change", () => {
    const piece = 'instrument Altblockflöte\npiece "Abendlied": F-Dur, range F4 to F6\n';
    expect(wanted(piece).slice(-2)).toEqual([
      "Abendlied reicht von F4 bis F6: Die Tonleiter dazu wurde in den letzten 14 Tagen nicht gespielt.",
      expect.stringMatching(
        /^Der schwerste Griffwechsel von F-Dur, so weit Abendlied reicht, ist \S+ zu \S+: in den letzten zwölf Wochen nicht gespielt\.$/,
      ),
    ]);
    expect(wanted(`${piece}2026-05-04\n  F-Dur, langsam\n`).at(-2)).toBe(
      "Abendlied reicht hinauf bis F6; die Tonleiter dazu ging bis F5.",
    );
  });
});

test("work that is set: when it was played, for how many days, for which day", () => {
  const played = ["04", "05", "06", "07", "08"].map((date) => `2026-05-${date}\n  F-Dur, langsam\n`).join("");
  const said = (set: string, days = played) => {
    const journal = journalOf(`names german\n2026-05-03\nlesson\nset ${set}\n${days}`);
    return setNow(journal, ofType(declaredLines(journal), "set"), TODAY).map((each) => setWorkWithDay(each, TODAY));
  };
  expect(said("F-Dur 4 days", "2026-05-04\n  F-Dur, langsam\n2026-05-06\n  F-Dur, langsam\n")).toEqual([
    "gespielt Mo 4., Mi 6.; aufgegeben für vier Tage",
  ]);
  expect(said("F-Dur 1 day", "")).toEqual(["aufgegeben für einen Tag"]);
  expect(said("F-Dur by 2026-05-12", "")).toEqual(["für Di 12. Mai"]);
});
