import { describe, expect, test } from "vitest";
import { daysSheet } from "../../../server/features/sheet/days-sheet.ts";
import { planSheet } from "../../../server/features/sheet/plan-sheet.ts";
import type { Sheet } from "../../../server/features/sheet/sheet.ts";
import { sheetHtml } from "../../../server/features/sheet/sheet-html.ts";
import { todaySheet } from "../../../server/features/sheet/today-sheet.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import * as drawer from "../../../server/notation/drawing/draw-staff.ts";
import { dayPlan } from "../../../server/plan/day-plan.ts";
import { USUAL_PLAN } from "../../../server/plan/plan.ts";
import { Drawing, readSystem } from "../../notation/read-drawing.ts";
import { journalOf } from "../journal-text.ts";
import { TODAY } from "../marked-text.ts";

// Invented journals. Staves are read back from the drawing by the outlines of its signs.

const SHOWN = { name: "Noor", fingerings: false, hiddenNotes: false };
const day = (date: string) => parseIsoDate(date)!;

function ofDays(text: string, shown: Partial<typeof SHOWN> = {}): Sheet {
  const days = { since: day("2026-03-02"), until: day("2026-03-08"), title: "2026-W10 (2 to 8 March)" };
  return daysSheet(journalOf(text), days, { ...SHOWN, ...shown });
}

const items = ({ parts }: Sheet) =>
  parts.flatMap(({ heading, items: all }) => all.map(({ name, way }) => `${heading}: ${name} | ${way}`));

const WEEK = `instrument alto recorder
piece "Air" as Air: G minor
2026-02-27
  C major, at 60 clean
2026-03-02
  D minor, thirds, slurred, 8ths at 60 clean -- thumb a bit stiff
  Air, bars 1-8, at 50 tense
  sight-reading, 10 min
2026-03-04
  D minor, thirds, slurred, 8ths at 66 nearly, 72 broke down
  D minor, thirds, tongued, 8ths at 60
  G and C major, slow
2026-03-10
  E major, at 60
`;
/** The same without a word of the body. Today is the day after it. */
const HEALTHY = WEEK.replace(" -- thumb a bit stiff", "")
  .replace(" tense", "")
  .replace(/2026-03-10[\s\S]*/, "");

describe("of a week", () => {
  test("every exercise is there once, in the words of its latest line, then the pieces", () => {
    expect(items(ofDays(WEEK))).toEqual([
      "Scales and arpeggios: D natural minor, thirds | slurred, 8ths, at 66, 72",
      "Scales and arpeggios: D natural minor, thirds | tongued, 8ths, at 60",
      "Scales and arpeggios: G major | slow",
      "Scales and arpeggios: C major | slow",
      "Pieces: Air | bars 1-8, at 50",
    ]);
  });

  test("a line that only spells an exercise is the same as one that says how it is played", () => {
    const spelled = "2026-03-03\n  C# diminished seventh: C# E G Bb\n  C# diminished seventh, slurred, 8ths at 60\n";
    expect(items(ofDays(spelled))).toEqual(["Scales and arpeggios: C# diminished seventh | slurred, 8ths, at 60"]);
  });

  test("nothing is said of how it went, of remarks, or of the body", () => {
    const html = sheetHtml(ofDays(WEEK), drawer);
    for (const word of ["clean", "nearly", "broke", "tense", "thumb", "stiff", "sight-reading"])
      expect(html).not.toContain(word);
  });

  test("each staff has the notes of its exercise", () => {
    const [{ items: exercises }] = ofDays(WEEK).parts as [Sheet["parts"][number]];
    const html = sheetHtml(ofDays(WEEK), drawer);
    const drawings = html.match(/<svg .*?<\/svg>/gs)!;
    expect(drawings).toHaveLength(exercises.length);
    for (const [i, svg] of drawings.entries()) {
      const drawing = new Drawing(svg);
      const read = drawing.systems.flatMap((system) => readSystem(drawing, system).notes);
      expect(read.map(({ letter, octave }) => letter + octave)).toEqual(
        exercises[i]!.staff!.notes.map(({ note }) => note.letter + note.octave),
      );
    }
  });

  test("without a scale, an arpeggio or a piece a sentence says so", () => {
    const sheet = ofDays("2026-03-02\n  sight-reading, 10 min\n");
    expect(sheet).toMatchObject({ parts: [], sentences: ["No scale, arpeggio or piece is written in these days."] });
  });
});

describe("hidden notes", () => {
  const HIDDEN = "hide notes\n2026-03-02\n  D minor, thirds\n";

  test("stay hidden, in the drawing and in its words", () => {
    const html = sheetHtml(ofDays(HIDDEN), drawer);
    expect(html).toContain("Its notes are hidden, as the journal asks.");
    expect(html).not.toContain("<svg");
  });

  test("unless somebody asks for them", () => {
    expect(sheetHtml(ofDays(HIDDEN, { hiddenNotes: true }), drawer)).toContain("<svg");
  });
});

test("a scale without a staff has a sentence in its place", () => {
  const text = 'scale "thirteen": cents 0 150 300 450 600 750 900 1050\n2026-03-02\n  D "thirteen", slow\n';
  expect(ofDays(text).parts[0]!.items[0]).toMatchObject({ instead: expect.stringContaining("no staff") });
});

describe("a plan", () => {
  const asked = { day: TODAY, settings: USUAL_PLAN };

  test("has the lines of the plan, with their minutes, in its phases", () => {
    const journal = journalOf(HEALTHY);
    const plan = dayPlan(journal, asked);
    const sheet = planSheet(journal, asked, SHOWN);
    expect(plan.lines.length).toBeGreaterThan(1);
    expect(sheet.parts.flatMap((part) => part.items)).toHaveLength(plan.lines.length);
    expect(sheet.title).toBe("Plan for 9 March 2026");
    for (const [i, { way }] of sheet.parts.flatMap((part) => part.items).entries())
      expect(way).toMatch(new RegExp(`${plan.lines[i]!.minutes} min$`));
    expect(sheet.parts.flatMap((part) => part.items).some(({ staff }) => staff)).toBe(true);
    expect(sheet.sentences.slice(0, plan.care.length)).toEqual(plan.care);
  });

  test("after pain says first what a plan says, and draws nothing beyond it", () => {
    const journal = journalOf(`${HEALTHY}2026-03-09\n  sore left wrist\n`);
    const sheet = planSheet(journal, asked, SHOWN);
    expect(sheet.sentences[0]).toMatch(/wrist/);
    expect(sheet.sentences).toEqual(expect.arrayContaining([...dayPlan(journal, asked).care]));
    expect(sheet.parts.flatMap((part) => part.items).filter(({ staff }) => staff)).toEqual([]);
  });

  test("that waits in the journal is taken from there, but for days that want care", () => {
    const planned = "2026-03-09, plan\n  E major, thirds, 8ths at 50, 5 min\n";
    const healthy = todaySheet(journalOf(HEALTHY + planned), asked, SHOWN);
    expect(items(healthy)).toEqual(["Scales and arpeggios: E major, thirds | 8ths, at 50"]);
    const sore = `${HEALTHY}2026-03-08\n  sore left wrist\n${planned}`;
    expect(todaySheet(journalOf(sore), asked, SHOWN)).toEqual(planSheet(journalOf(sore), asked, SHOWN));
    expect(sheetHtml(todaySheet(journalOf(sore), asked, SHOWN), drawer)).not.toContain("E major");
    expect(todaySheet(journalOf(HEALTHY), asked, SHOWN).title).toBe("Plan for 9 March 2026");
  });
});

describe("the page", () => {
  test("is one file that fetches nothing and runs nothing; a journal's words are text in it", () => {
    const title = '<script>alert(1)</script> & "co"';
    const html = sheetHtml(
      ofDays(`piece "${title.replaceAll('"', "”")}"\n2026-03-02\n  "${title.replaceAll('"', "”")}", at 50\n`),
      drawer,
    );
    expect(html).not.toContain("<script");
    expect(html).toContain("&lt;script&gt;alert(1)&lt;/script&gt; &amp;");
    expect(html).not.toMatch(/@import|@font-face|url\(|\ssrc=|\shref="http|\son[a-z]+=/i);
    expect(sheetHtml({ ...ofDays(""), name: "</style><b>" }, drawer)).not.toContain("</style><b>");
  });

  test("has ids that no two staves share, and words for each drawing", () => {
    const html = sheetHtml(ofDays(WEEK), drawer);
    const ids = [...html.matchAll(/\sid="([^"]+)"/g)].map((match) => match[1]!);
    expect(ids.length).toBeGreaterThan(10);
    expect(new Set(ids).size).toBe(ids.length);
    expect(html).toContain("Treble clef, 1 flat, slurred, 8ths. D F E G");
  });

  test("has the notes in words where nobody draws", () => {
    expect(sheetHtml(ofDays(WEEK), undefined)).toContain("<p>Treble clef, 1 flat, slurred, 8ths. D F E G");
  });
});
