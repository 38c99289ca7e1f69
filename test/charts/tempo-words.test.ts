import { describe, expect, test } from "vitest";
import type { Look } from "../../server/charts/look.ts";
import { tempoChart } from "../../server/charts/tempo-chart.ts";
import type { TempoChart } from "../../server/charts/tempo-data.ts";
import { trendInWords } from "../../server/history/trend-words.ts";
import { ofClass, pictureOf, within } from "./svg-reader.ts";
import { aimAt, tempos, weekly } from "./tempo-sample.ts";

const LOOK: Look = { kind: "classes", width: 320, height: 92, id: "key" };

/** The words of a chart, which the picture carries too. */
function check(data: TempoChart, expected: string): void {
  const drawing = tempoChart(data, LOOK);
  expect(drawing).toMatchObject({ ok: true, text: expected });
  const parts = within(pictureOf(drawing));
  expect(parts.find(({ name }) => name === "desc")?.text).toBe(expected);
  expect(parts.find(({ name }) => name === "title")?.text).toBe(data.title);
}

describe("a chart in words", () => {
  test("span, bests, attempts, trend, aim", () => {
    const data = tempos(weekly(60, 62, 64, 66), { aim: aimAt(96, "2026-04-30") });
    check(
      data,
      `Weeks 2026-W02 to 2026-W05. Weekly best from at 60 (2026-W02) to 66 (2026-W05). 4 attempts, all reached. Trend: ${trendInWords(data.trend, data.weeks)}. Aim: at 96 by 2026-04-30.`,
    );
  });

  test("weeks worked below best, weeks without, a best that was higher before", () =>
    check(
      tempos("2026-01-05 80 84x\n2026-01-12 82\n2026-01-26 60\n2026-02-02 78"),
      "Weeks 2026-W02 to 2026-W06. Weekly best from at 80 (2026-W02) to 78 (2026-W06), highest 82 (2026-W03). 1 week worked below best. 1 week without a tempo reached. 5 attempts, 4 reached. Trend: too early to say: three tested weeks, it takes four.",
    ));

  test("nothing reached", () =>
    check(
      tempos("2026-01-05 60x 66x"),
      "Week 2026-W02. No tempo was reached. 2 attempts, none reached. Trend: too early to say: no tested week yet, it takes four.",
    ));

  test("tempos as the player counts them", () =>
    check(
      tempos("2026-01-05 144", { axis: "8ths at", notation: { noteValue: { numerator: 1, denominator: 8 } } }),
      "Week 2026-W02. Best reached 8ths at 72 (2026-W02). 1 attempt, reached. Trend: too early to say: one tested week, it takes four.",
    ));

  test("a title's beat", () =>
    check(
      tempos("2026-01-05 84", { axis: "quarter=" }),
      "Week 2026-W02. Best reached quarter=84 (2026-W02). 1 attempt, reached. Trend: too early to say: one tested week, it takes four.",
    ));
});

test("a screen reader takes the picture as one image, with its name and its words", () => {
  const picture = pictureOf(tempoChart(tempos("2026-01-05 60"), LOOK));
  const ids = within(picture).flatMap(({ attributes }) => attributes["id"] ?? []);
  expect(picture.attributes["role"]).toBe("img");
  expect([picture.attributes["aria-labelledby"], picture.attributes["aria-describedby"]]).toEqual(ids);
  expect(ofClass(picture, "tempo-chart")).toHaveLength(1);
});
