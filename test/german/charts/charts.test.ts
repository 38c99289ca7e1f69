import { describe, expect, test } from "vitest";
import type { PieceStrip } from "../../../server/charts/piece-data.ts";
import { pieceStrip } from "../../../server/charts/piece-strip.ts";
import type { Drawing } from "../../../server/charts/svg.ts";
import { tempoChart } from "../../../server/charts/tempo-chart.ts";
import type { TempoChart } from "../../../server/charts/tempo-data.ts";
import { weekBars } from "../../../server/charts/week-bars.ts";
import { aimAt, tempos, weekly } from "../../charts/tempo-sample.ts";
import { englishLeft } from "../english-left.ts";
import { inChart } from "../texts-of.ts";

/** What a chart says of itself, or why there is none. */
function said(drawing: Drawing): string {
  if (!drawing.ok) return drawing.reason;
  const texts = inChart(drawing.svg);
  expect(texts.length).toBeGreaterThan(0);
  expect(texts.filter((text) => englishLeft(text, "").length > 0)).toEqual([]);
  return drawing.text;
}

describe("tempos", () => {
  const chart = (data: TempoChart) =>
    said(tempoChart({ ...data, title: "d-Moll, Terzen", axis: "Tempo" }, { kind: "page", id: "d" }));

  test("one week, and several", () => {
    expect(chart(tempos(weekly(60)))).toBe(
      "Am schnellsten erreicht: 60 (Woche vom 5. Jan.). 1 Versuch, erreicht. Trend: noch zu früh für eine Aussage.",
    );
    expect(chart(tempos(weekly(60, 66, 0, 64)))).toBe(
      "Bestes jeder Woche von 60 (Woche vom 5. Jan.) bis 64 (Woche vom 26. Jan.), am höchsten 66 (Woche vom 12. Jan.). 1 Woche ohne erreichtes Tempo. 3 Versuche, alle erreicht. Trend: noch zu früh für eine Aussage.",
    );
  });

  test("none reached, and an aim", () => {
    const aimed = chart({ ...tempos("2026-01-05 60x 66x"), aim: aimAt(72, "2026-02-02") });
    expect(aimed).toMatch(/^Kein Tempo erreicht\. 2 Versuche, keiner erreicht\. .*Ziel: 72 bis 2\. Feb\.$/);
  });

  test("nothing to draw", () => {
    const drawing = (wide: number) => said(tempoChart(tempos("2026-01-05 -", { wide }), { kind: "page", id: "d" }));
    expect(drawing(1)).toMatch(/^Diese Woche gibt es kein Tempo\./);
    expect(drawing(4)).toMatch(/^In diesen 4 Wochen gibt es kein Tempo\./);
  });
});

describe("the bars of a piece", () => {
  const strip = (different: Partial<PieceStrip>) =>
    said(pieceStrip({ title: "Abendlied", bars: 80, wanted: 60, worked: [], ...different }, "abendlied"));
  const worked = (from: number, to: number, daysAgo: number, reached: number | null) => ({
    from,
    to,
    daysAgo,
    reached,
  });

  test("one bar, and several; how lately each was worked", () => {
    expect(strip({ bars: 1, wanted: undefined })).toBe("1 Takt. Noch keiner geübt.");
    expect(
      strip({ worked: [worked(1, 1, 0, 50), worked(5, 8, 20, null), worked(9, 12, 60, 40), worked(13, 14, 90, 40)] }),
    ).toBe(
      "80 Takte, angestrebt 60. Takt 1: 50, in den letzten 7 Tagen geübt; Takte 5–8: kein Tempo erreicht, in den letzten 4 Wochen geübt; Takte 9–12: 40, in den letzten 12 Wochen geübt; Takte 13–14: 40, vor längerer Zeit geübt.",
    );
  });

  test("more stretches than are named, and none to draw", () => {
    const many = Array.from({ length: 10 }, (_, i) => worked(1 + 4 * i, 2 + 4 * i, 0, 40 + i));
    expect(strip({ worked: many })).toMatch(/; und 2 weitere\.$/);
    expect(strip({ bars: 0 })).toMatch(/^Wie viele Takte es sind, ist nicht bekannt\./);
    expect(strip({ bars: 20_000 })).toMatch(/^Takt 20000 liegt weiter, als der Streifen reicht/);
  });
});

describe("minutes by week", () => {
  const bars = (...weeks: readonly Readonly<Record<string, number>>[]) =>
    said(
      weekBars(
        {
          title: "Minuten in der Woche",
          span: { first: 2923, last: 2922 + weeks.length },
          weeks: weeks.map((minutes) => new Map(Object.entries(minutes))),
        },
        "weeks",
      ),
    );

  test("the phases with most, the others, and what is not divided", () => {
    expect(bars({ Stücke: 60, Etüden: 10, "": 5 }, { Technik: 40, Einspielen: 15, Tonleitern: 20 })).toBe(
      "150 Minuten in 2 von 2 Wochen, die meisten in der Woche vom 5. Jan.: 75. Stücke 60, Technik 40, Tonleitern 20, andere 25, nicht aufgeteilt 5.",
    );
    expect(bars({})).toMatch(/^In diesen Wochen stehen keine Minuten\./);
  });
});
