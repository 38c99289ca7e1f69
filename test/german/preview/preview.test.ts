import { describe, expect, test } from "vitest";
import type { Preview } from "../../../server/features/preview/preview.ts";
import type { PreviewSpan } from "../../../shared/preview.ts";
import { exercisesOf, filesOfYear, journalOfFiles, previewOf, seen } from "../../features/preview/preview-asked.ts";
import { englishLeft } from "../english-left.ts";
import { germanYear, LAST_DAY } from "../german-year.ts";
import { textsOf } from "../texts-of.ts";

// Words of music and of practice: from memory, as German textbooks and teachers have them.

const YEAR = germanYear();
const asked = { today: LAST_DAY };
const shown = previewOf(YEAR, asked);

/** The preview without what a plan would write into the journal. */
function read({ today, choice: _, ...others }: Preview): unknown {
  const stretches = today.plan?.stretches.map(({ lines, ...stretch }) => ({
    ...stretch,
    said: lines.map(({ reasons, minutes }) => ({ reasons, minutes })),
  }));
  return { ...others, today: { ...today, plan: { ...today.plan, stretches } } };
}

describe("half a year in German", () => {
  test("its head", () => {
    expect(shown.dates).toBe("5. Januar bis 28. Juni 2026");
    expect(shown.week).toBe("Diese Woche: 75 Minuten.");
    expect(shown.instrumentNames).toEqual(["Altblockflöte"]);
  });

  test("the present day, and the plan's phases", () => {
    expect(shown.today.date).toBe("Sonntag 28. Juni");
    expect([...new Set(shown.today.plan!.stretches.map(({ phase }) => phase))]).toEqual([
      "Einspielen",
      "Stücke",
      "Grundlagen",
      "Geläufigkeit",
    ]);
  });

  test("each exercise, with how it is played and which way it goes", () => {
    expect(shown.exercises!.note).toBe("in den letzten vier Wochen gespielt, das Neueste zuerst");
    expect(exercisesOf(shown).map(({ shows }) => `${shows!.name} | ${shows!.way} | ${shows!.trend}`)).toEqual([
      "F-Dur | gestoßen, eine Oktave, Achtel | keine deutliche Veränderung",
      "g-Moll harmonisch | gestoßen, eine Oktave, Achtel | noch zu früh für eine Aussage",
      "d-Moll melodisch, Terzen | gestoßen, eine Oktave, Achtel | in vier Wochen eine Metronomstufe schneller",
    ]);
    expect(shown.exercises!.plain.map(seen)).toEqual(["lange Töne | 25 Tage | 125 Minuten | Mo 22. Juni"]);
  });

  test("the aims, with a forecast or why there is none", () => {
    expect(shown.aims.map(({ below }) => below)).toEqual([
      "In 63 Tagen. Bisher am schnellsten: Achtel bei 78, in der Woche vom 22. Juni. Wenn es weitergeht wie in den letzten 25 geprüften Wochen, in 17 bis 19 Wochen; sicher ist das nicht.",
      "So noch nicht gespielt.",
      "War für den 20. Juni. Noch nicht gespielt.",
    ]);
    expect(shown.aims.map(({ day }) => day)).toEqual(["bis So 30. Aug.", "ohne Datum", "20. Juni"]);
  });

  test("the pieces, the keys and the lesson", () => {
    const counted = YEAR.replace("g-Moll, goal", "g-Moll, 48 bars, goal");
    const [piece] = previewOf(counted, asked).pieces!.inHand;
    expect([piece!.facts, piece!.due]).toEqual(["g-Moll, 48 Takte", "für Sa 4. Juli (in 6 Tagen)"]);
    expect(piece!.chart.table.headings).toEqual(["Stelle", "zuletzt", "am schnellsten", "geübt"]);
    expect(piece!.chart.table.rows[0]!.cells[0]).toBe("Takte 33–40");
    expect(shown.keys!.rows.map(({ kind }) => kind)).toEqual(["Dur", "harmonisches Moll", "melodisches Moll"]);
    expect(shown.keys!.columns.map(({ name }) => name).slice(5, 9)).toEqual([
      "2 b",
      "1 b",
      "keine Vorzeichen",
      "1 Kreuz",
    ]);
    expect(shown.keys!.wanted[0]).toBe("Reigen steht wahrscheinlich in G dorisch: noch nicht gespielt.");
    expect(shown.lesson!.note).toBe("seit Do 28. Mai");
  });

  test("one that is unfolded: its weeks as a table, and what else is known", () => {
    const key = exercisesOf(shown).find(({ shows }) => shows!.name.startsWith("d-Moll"))!.key;
    const { table } = previewOf(YEAR, { ...asked, open: key }).exercises!.opened!.chart;
    expect(table.headings).toEqual(["Woche vom", "am schnellsten", "üblich", "erreicht", "Minuten"]);
    expect(table.foot).toMatch(/^Steigung 1,00 in der Woche \(1,00 bis 1,00\), 25 geprüfte Wochen\./);
    expect(table.foot).toContain("Gestoßen lag in 25 von 25 Wochen unter gebunden, um etwa 8 %.");
    expect(table.foot).toContain("Außerdem gebunden, eine Oktave, Achtel: 84, zuletzt am 22. Juni.");
  });
});

describe("a journal that is young, at rest or in pain", () => {
  const sentences = (text: string) => previewOf(text, asked).today.sentences;

  test("what to begin with, and the first evening", () => {
    expect(sentences("")).toEqual([
      "Schreib eine Zeile ins Tagebuch, etwa `D minor, slurred, 8ths at 60 clean`, und sie erscheint hier.",
      "Nenn ein Stück, ein Ziel oder ein Instrument, dann hat der Plan einen Anhaltspunkt.",
    ]);
    expect(sentences("2026-06-28\n  F-Dur, bei 60 sauber\n")).toEqual([
      "Hier sind deine ersten Zeilen. Nach einigen Wochen können sie zeigen, wohin ein Tempo geht.",
    ]);
  });

  test("a day of rest, and one after pain", () => {
    expect(sentences(`${YEAR}2026-06-28, rest\n`)).toEqual(["Heute ist ein Ruhetag."]);
    const { today } = previewOf(`${YEAR}2026-06-27\n  Daumen tut weh\n`, asked);
    expect(today.sentences[0]).toMatch(/^Gestern hast du „Daumen tut weh“ notiert\. Wenn etwas wehtut, hör auf/);
    expect(today.plan!.offer).toBe("Plan für einen kurzen Tag zeigen");
  });

  test("one minute, and several", () => {
    expect(previewOf("2026-06-28, 1 min\n", asked).week).toBe("Diese Woche: 1 Minute.");
    expect(previewOf("2026-06-28, 2 min\n", asked).week).toBe("Diese Woche: 2 Minuten.");
    expect(previewOf("", asked).week).toBe("Diese Woche: noch keine Minuten.");
  });
});

describe("no English is left", () => {
  test.each<PreviewSpan>([4, 12, 26, 52, "all"])("over a journal in German, of %s weeks", (span) => {
    const choice = { span, instrument: null };
    const figures = previewOf(YEAR, { ...asked, choice });
    const all = [undefined, ...exercisesOf(figures).map(({ key }) => key)].flatMap((open) =>
      textsOf(read(previewOf(YEAR, { ...asked, choice, ...(open ? { open } : {}) }))),
    );
    expect(all.length).toBeGreaterThan(100);
    expect(all.filter((text) => englishLeft(text, "As").length > 0)).toEqual([]);
  });

  test("over the sample of a year, but for what is written there", () => {
    const files = filesOfYear();
    const written = Object.values(files).join("\n");
    const journal = journalOfFiles(files);
    const all = textsOf(read(previewOf(journal, { today: "2026-11-22", choice: { span: "all", instrument: null } })));
    expect(all.length).toBeGreaterThan(300);
    expect(all.filter((text) => !written.includes(text) && englishLeft(text, written).length > 0)).toEqual([]);
  });
});
