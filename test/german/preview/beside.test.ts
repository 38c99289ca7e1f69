import { describe, expect, test } from "vitest";
import { inlayHints } from "../../../server/features/inlay/inlay-hints.ts";
import { trendLenses } from "../../../server/features/lens/trend-lenses.ts";
import { weekSheet } from "../../../server/features/sheet/days-sheet.ts";
import { planSheet } from "../../../server/features/sheet/plan-sheet.ts";
import { sheetHtml } from "../../../server/features/sheet/sheet-html.ts";
import { soundAt } from "../../../server/features/sound/sound.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { USUAL_PLAN } from "../../../server/plan/plan.ts";
import { midiFile } from "../../../server/scores/midi-file.ts";
import { scoreTexts } from "../../../server/scores/score-texts.ts";
import { journalOf, URI } from "../../features/journal-text.ts";
import { englishLeft } from "../english-left.ts";
import { germanYear, LAST_DAY } from "../german-year.ts";

// What is shown beside the preview: lenses and hints in the text, sheets to print, what is heard, files for other programs.

const TODAY = parseIsoDate(LAST_DAY)!;
const YEAR = journalOf(germanYear());

test("the trend above an entry", () => {
  const titles = trendLenses(YEAR, URI, { today: TODAY, readsAll: true }).map(({ title }) => title);
  expect(titles).toContain("Trend: in vier Wochen eine Metronomstufe schneller");
  expect(titles.filter((title) => englishLeft(title, "").length > 0)).toEqual([]);
});

test("hints within a line", () => {
  const text =
    "names german\n2026-06-26\n  F-Dur, Achtel bei 60 sauber\n2026-06-28\n  F-Dur, Achtel\n  G-Dur, Achtel bei 60-66\n";
  const range = { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } };
  const asked = { today: TODAY, notesPerMinute: true, lastTempo: true, readsAll: true };
  expect(inlayHints(journalOf(text), URI, range, asked).map(({ label, tooltip }) => tooltip ?? label)).toEqual([
    "= 120 Töne in der Minute",
    "Erreicht am 26. Juni.",
    "= 120 bis 132 Töne in der Minute",
  ]);
});

describe("sheets to print", () => {
  const SHOWN = { fingerings: false, hiddenNotes: false, name: "Wiebke" };

  test("of a week, by its days", () => {
    const sheet = weekSheet(YEAR, TODAY, SHOWN);
    expect(sheet.title).toBe("Übungen, 2026-W26 (22. bis 28. Juni)");
    expect(sheet.parts.map(({ heading }) => heading)).toEqual(["Tonleitern und Arpeggien", "Stücke"]);
    const html = sheetHtml(sheet, undefined);
    expect(html).toContain('<html lang="de">');
    expect(html).toContain("<span>Tempo</span><span>wie es ging</span>");
  });

  test("of a plan, and of days with nothing to play", () => {
    const sheet = planSheet(YEAR, { day: TODAY, minutes: 60, settings: USUAL_PLAN }, SHOWN);
    expect(sheet.title).toBe("Plan für den 28. Juni 2026");
    expect(sheet.parts.map(({ heading }) => heading)).toEqual(
      expect.arrayContaining(["Einspielen, 5 min", "Pause, 5 min"]),
    );
    expect(weekSheet(journalOf(""), TODAY, SHOWN).sentences).toEqual([
      "An diesen Tagen stehen weder Tonleitern noch Arpeggien noch Stücke im Tagebuch.",
    ]);
  });

  test("notes that stay hidden", () => {
    const hidden = journalOf("names german\nhide notes\n2026-06-26\n  F-Dur, langsam\n");
    expect(weekSheet(hidden, TODAY, SHOWN).parts[0]!.items[0]!.instead).toBe(
      "Die Töne bleiben verborgen, wie das Tagebuch es will.",
    );
  });
});

describe("what is heard", () => {
  const journal = journalOf("names german\ninstrument Altblockflöte\n2026-06-28\n  F-Dur, Achtel bei 60\n");
  const heard = (text: string, of = journal) => soundAt(of, URI, 3, { text, today: TODAY });
  const labels = (text: string) => {
    const sound = heard(text);
    return sound.ok ? sound.passages.map(({ label }) => label) : sound.reason;
  };

  test("what sounds, one after the other", () => {
    expect(labels("click at 52, 60")).toEqual(["Tempo 52", "Tempo 60"]);
    expect(labels("drone on F")).toEqual(["Bordun"]);
    expect(labels("compare A against F")).toEqual(["wie gestimmt", "rein"]);
  });

  test.each([
    ["sing", /^Beginn mit dem, was klingen soll: click at 60/],
    ["click", /^Sag, in welchen Tempi/],
    ["click at 60, bars 1-2", /^Sag bei einem Klick/],
    ["click at 60 sauber", /^Von „sauber“ ist hier nichts zu hören/],
    ["drone", /^Sag, auf welchen Tönen/],
    ["compare A", /^Sag, welcher Ton gegen welchen/],
    ["play at 60, bars 99", /^Solche Takte hat die Übung nicht\.$/],
  ])("%s", (text, reason) => {
    expect(labels(text)).toMatch(reason);
  });

  test("a day without the instrument", () => {
    const sore = journalOf("names german\n2026-06-28\n  Daumen tut weh\n  F-Dur, Achtel bei 60\n");
    expect(heard("click at 60", sore)).toEqual({ ok: false, reason: expect.stringMatching(/^Heute klingt nichts: /) });
  });
});

test("an exercise that goes into no file", () => {
  const read = { title: "", way: "", value: { numerator: 1, denominator: 8 }, rhythm: undefined, held: [] };
  const high = { letter: "C", alter: 0, octave: 12 } as const;
  const score = { ...read, staff: { ok: false, reason: "" }, sounding: [high] } as unknown as Parameters<
    typeof midiFile
  >[0];
  expect(midiFile(score)).toEqual({ ok: false, reason: scoreTexts.beyondKeys });
  expect(scoreTexts.beyondKeys).toMatch(/^MIDI hat die Töne von/);
});
