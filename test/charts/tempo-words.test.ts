import { describe, expect, test } from "vitest";
import type { Look } from "../../server/charts/look.ts";
import { tempoChart } from "../../server/charts/tempo-chart.ts";
import type { TempoChart } from "../../server/charts/tempo-data.ts";
import { trendInWords } from "../../server/history/trend-words.ts";
import { ofClass, pictureOf, within } from "./svg-reader.ts";
import { aimAt, tempos, weekly } from "./tempo-sample.ts";

const LOOK: Look = { kind: "page", id: "key" };

/** The words of a chart, which the picture carries too. */
function check(data: TempoChart, expected: string): void {
  const drawing = tempoChart(data, LOOK);
  expect(drawing).toMatchObject({ ok: true, text: expected });
  const parts = within(pictureOf(drawing));
  expect(parts.find(({ name }) => name === "desc")?.text).toBe(expected);
  expect(parts.find(({ name }) => name === "title")?.text).toBe(data.title);
}

describe("a chart in words", () => {
  test("bests, attempts, trend, aim", () => {
    const data = tempos(weekly(60, 62, 64, 66), { aim: aimAt(96, "2026-04-30") });
    check(
      data,
      `Weekly best from 60 (week of 5 Jan) to 66 (week of 26 Jan). 4 attempts, all reached. Trend: ${trendInWords(data.trend!, data.weeks)}. Aim: 96 by 30 Apr.`,
    );
  });

  test("weeks of slow work, weeks without, a best that was higher before", () =>
    check(
      tempos("2026-01-05 80 84x\n2026-01-12 82\n2026-01-26 60\n2026-02-02 78"),
      "Weekly best from 80 (week of 5 Jan) to 78 (week of 2 Feb), highest 82 (week of 12 Jan). 1 week of slow work. 1 week without a tempo reached. 5 attempts, 4 reached. Trend: too early to say.",
    ));

  test("nothing reached", () =>
    check(tempos("2026-01-05 60x 66x"), "No tempo was reached. 2 attempts, none reached. Trend: too early to say."));

  test("tempos as the player counts them", () =>
    check(
      tempos("2026-01-05 144", { notation: { noteValue: { numerator: 1, denominator: 8 } } }),
      "Best reached 72 (week of 5 Jan). 1 attempt, reached. Trend: too early to say.",
    ));

  test("a week long ago has its year", () =>
    check(
      tempos("2025-01-06 60\n2026-01-05 66", { wide: 60 }),
      "Weekly best from 60 (week of 6 Jan 2025) to 66 (week of 5 Jan). 51 weeks without a tempo reached. 2 attempts, all reached. Trend: too early to say.",
    ));
});

test("a screen reader takes the picture as one image, with its name and its words", () => {
  const picture = pictureOf(tempoChart(tempos("2026-01-05 60"), LOOK));
  const ids = within(picture).flatMap(({ attributes }) => attributes["id"] ?? []);
  expect(picture.attributes["role"]).toBe("img");
  expect([picture.attributes["aria-labelledby"], picture.attributes["aria-describedby"]]).toEqual(ids);
  expect(ofClass(picture, "tempo-chart")).toHaveLength(1);
});
