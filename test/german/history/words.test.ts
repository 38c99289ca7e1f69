import { describe, expect, test } from "vitest";
import { articulationWords } from "../../../server/history/articulation-words.ts";
import { rateAsWritten } from "../../../server/history/exercise-row.ts";
import { factsInWords } from "../../../server/history/facts-words.ts";
import { countOfMinutes, minutesInWords } from "../../../server/history/minute-words.ts";
import { movementInWords, placeInWords } from "../../../server/history/place-words.ts";
import { trendOf, type Verdict } from "../../../server/history/trend.ts";
import {
  bestWithNote,
  trendInBrief,
  trendInColumn,
  trendInWords,
  weekRows,
} from "../../../server/history/trend-words.ts";
import { weeksOf } from "../../../server/history/weeks.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf } from "../../features/journal-text.ts";
import { attempt, practised } from "../../history/attempt.ts";

// Note values and articulations: common German terms, from memory; the metronome's notches are `Metronomstufen`, as in the
// commands of the extension.

const TODAY = parseIsoDate("2026-03-18")!;
const WEEKS = weeksOf([attempt({ day: parseIsoDate("2026-01-05")!, rate: 80 })]);

/** A trend of this slope and interval, that ends at 80. */
function trend(verdict: Verdict, [low, slope, high]: readonly number[] = []) {
  return { slope: slope ?? null, low: low ?? null, high: high ?? null, level: 0.95, verdict, weeks: 5 } as const;
}

describe("a trend", () => {
  test.each([
    [trend("too early"), "noch zu früh für eine Aussage"],
    [trend("level", [0, 0, 0]), "keine deutliche Veränderung"],
    [trend("rising", [0.5, 0.5, 0.5]), "in vier Wochen etwa eine halbe Metronomstufe schneller"],
    [trend("rising", [1, 1, 1]), "in vier Wochen etwa eine Metronomstufe schneller"],
    [trend("rising", [1, 2, 3]), "in vier Wochen etwa 2 Metronomstufen schneller (1 bis 3)"],
    [trend("falling", [-3, -2, -1]), "in vier Wochen etwa 2 Metronomstufen langsamer (1 bis 3)"],
    [trend("rising", [0, 0.5, 1]), "in vier Wochen höchstens etwa eine Metronomstufe schneller"],
    [trend("rising", [0, 0.01, 0.02]), "in vier Wochen weniger als eine halbe Metronomstufe schneller"],
  ])("%#", (of, sentence) => {
    expect(trendInWords(of, WEEKS)).toBe(sentence);
  });

  test("since a break, in brief and in a column", () => {
    const since = parseIsoDate("2026-04-20")!;
    const back = { ...trend("level", [0, 0, 0]), since };
    expect(trendInWords(back, WEEKS)).toBe("keine deutliche Veränderung, seit dem Wiederbeginn am 20. April");
    expect(trendInBrief(back, WEEKS)).toBe("keine deutliche Veränderung seit 20. Apr.");
    expect(trendInColumn(trend("rising", [1, 1, 1]), WEEKS)).toBe("eine Metronomstufe schneller");
  });

  test("of weeks as they were practised", () => {
    const weeks = weeksOf(practised("2026-01-05 60\n2026-01-12 60\n2026-01-19 40"));
    expect(trendInWords(trendOf(weeks), weeks)).toBe("noch zu früh für eine Aussage");
    const [first, , last] = weekRows(weeks);
    expect([first!.reached, first!.note]).toEqual(["1 von 1", "geprüft"]);
    expect(bestWithNote(last!)).toMatch(/^40 \(langsam geübt\)$/);
  });
});

test("minutes, of which one and several; shared out they are about so many", () => {
  const minutes = (count: number, about = false) => countOfMinutes([{ minutes: count, about }]);
  expect([minutes(1), minutes(2), minutes(163, true)]).toEqual(["1 Minute", "2 Minuten", "etwa 165 Minuten"]);
  expect(minutesInWords(8, true)).toBe("etwa 8");
});

test("a tempo in its note value and beat", () => {
  const part = (numerator: number, denominator: number) => ({ numerator, denominator });
  expect(rateAsWritten(144, { unit: "notes" }, { noteValue: part(1, 8) })).toBe("Achtel bei 72");
  expect(rateAsWritten(480, { unit: "notes" }, { noteValue: part(1, 16), beat: part(1, 2) })).toBe(
    "Sechzehntel bei Halbe=60",
  );
  expect(rateAsWritten(84, { unit: "beats" }, { beat: part(3, 8) })).toBe("punktierte Viertel=84");
  expect(rateAsWritten(60, { unit: "notes" }, {})).toBe("bei 60");
});

test.each([
  ["bars 3", "Takt 3"],
  ["bars 17-32", "Takte 17–32"],
  ["bars 5-8, 17-20", "Takte 5–8, 17–20"],
  ["bars 17-end", "Takte 17 bis Ende"],
  ["page 4", "Seite 4"],
  ["lines 1-3", "Zeilen 1–3"],
  ["letter C to end", "Buchstaben C bis Ende"],
  ["upbeat to 17", "Auftakt zu 17"],
  ["from the top", "von Anfang an"],
  ["Reprise", "Reprise"],
])("the place %s is %s", (where, words) => {
  expect(placeInWords(where)).toBe(words);
});

test("movements by number", () => {
  expect([movementInWords("mvt 2"), movementInWords("mvt II")]).toEqual(["2. Satz", "Satz II"]);
});

test.each([
  ["alto recorder", "gestoßen", "gestoßen", "gebunden"],
  ["violin", "einzeln gestrichen", "getrennt", "gebunden"],
  ["piano", null, "nicht legato", "legato"],
])("articulations on the %s", (instrument, alone, apart, joined) => {
  const words = articulationWords(journalOf(""), { instrument, uri: "file:///journal/week.practice" });
  expect([words.alone("single"), words.beside("single"), words.beside("slurred")]).toEqual([alone, apart, joined]);
});

describe("what is known beside a trend", () => {
  const none = { returned: null, settled: null, steady: null, shares: [] };
  const articulation = articulationWords(journalOf(""), { instrument: null, uri: "" });
  const said = (
    facts: Partial<Parameters<typeof factsInWords>[0]>,
    comparisons: Parameters<typeof factsInWords>[1] = [],
  ) => factsInWords({ ...none, ...facts }, comparisons, {}, TODAY, articulation);

  test("a return, and where it has settled", () => {
    const returned = {
      since: parseIsoDate("2026-03-02")!,
      days: 40,
      testedWeeks: 2,
      before: 80,
      after: null,
      fresh: false,
    };
    expect(said({ returned })).toEqual(["Wieder dabei seit dem 2. März, nach 40 Tagen; 2 von 4 geprüften Wochen."]);
    const settled = { index: 2923, since: "2026-W02", best: 72, testedWeeks: 12, tries: 40 };
    expect(said({ settled })).toEqual(["Gefestigt bei 72 seit der Woche vom 5. Januar (40 Versuche)."]);
  });

  test("how often tempos were reached, on one day and on several", () => {
    const shares = [
      { rate: 66, reached: 6, tries: 6, days: 1, low: 0.6, high: 1 },
      { rate: 72, reached: 5, tries: 7, days: 3, low: 0.3, high: 0.9 },
    ];
    expect(said({ shares })).toEqual(["66: in 6 von 6 Versuchen erreicht, an 1 Tag; 72: in 5 von 7, an 3 Tagen."]);
  });

  test("how two ways of playing compare", () => {
    const compared = (of: string, other: string) =>
      said({}, [{ of, with: other, lower: 8, weeks: 8, ratio: 0.93 } as Parameters<typeof factsInWords>[1][number]]);
    expect(compared("tongued", "slurred")).toEqual(["Gestoßen lag in 8 von 8 Wochen unter gebunden, um etwa 7 %."]);
    expect(compared("by heart", "with the music")).toEqual([
      "Auswendig lag in 8 von 8 Wochen unter mit Noten, um etwa 7 %.",
    ]);
  });
});
