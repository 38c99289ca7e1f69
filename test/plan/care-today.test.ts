import { expect, test } from "vitest";
import { careToday } from "../../server/plan/care-today.ts";
import { dayPlan } from "../../server/plan/day-plan.ts";
import { USUAL_PLAN } from "../../server/plan/plan.ts";
import { planLines } from "../../server/plan/plan-text.ts";
import { day, journalOf } from "./written.ts";

// Journals are invented. That ringing ears want quiet, that pain wants rest, and that a doctor is asked where it stays: what
// teachers and doctors for musicians commonly advise; common practice, no source.

const TODAY = "2026-03-18";

function care(text: string): string | undefined {
  return careToday(journalOf(text), day(TODAY));
}

function planned(text: string): string {
  const plan = dayPlan(journalOf(text), { day: day(TODAY), minutes: 30, settings: USUAL_PLAN });
  const lines = planLines(plan, { reasons: false, indent: "  " });
  return lines.filter((line) => !line.startsWith("-- plan: ends here")).join("\n");
}

const EARS = "Ringing or dull hearing after playing: keep quiet today too. If it is still there, see a doctor.";

test.each([
  ["english", "my ears are ringing"],
  ["english", "hearing a bit muffled -- after band"],
  ["german", "Ohren klingeln"],
  ["german", "Tinnitus nach der Probe"],
  ["french", "les oreilles sifflent"],
  ["dutch", "oren suizen"],
  ["italian", "fischio alle orecchie"],
  ["spanish", "zumbido en los oídos"],
])("ears that ring, in %s: quiet, and nothing to play (%s)", (names, words) => {
  const text = `names ${names}\ninstrument alto recorder\n\n2026-03-17\n  C major, slurred, 8ths at 60\n  ${words}\n`;
  expect(care(text)).toMatch(new RegExp(`^(?:In a remark y|Y)esterday you noted “[^”]+”\\. ${EARS}$`));
  expect(planned(text)).toContain("-- care: ");
  expect(planned(text)).not.toMatch(/warm-up|groundwork| at \d|sung/);
});

test("a thumb that is sore: without the instrument, in the mind and sung", () => {
  const text = 'piece "Ground" as Ground: G minor, 32 bars\n\n2026-03-17\n  Ground, bars 1-8, at 60, sore left thumb\n';
  expect(planned(text).split("\n").slice(1)).toEqual([
    "away, 15 min",
    "  Ground, bars 9-16, mental, 10 min",
    "  Ground, bars 9-16, sung, 5 min",
  ]);
});

test.each(["sore lip", "lip gone", "jaw locks", "throat hurts", "neck stiff", "chest pain", "pain"])(
  "%s: nothing is sung",
  (words) => {
    const text = `piece "Ground" as Ground: G minor, 32 bars\n\n2026-03-17\n  Ground, bars 1-8, at 60\n  ${words}\n`;
    expect(planned(text)).toContain("  Ground, bars 9-16, mental, 15 min");
    expect(planned(text)).not.toContain("sung");
  },
);

test("a long sitting without a pause, of today or yesterday", () => {
  expect(care("2026-03-17, 90 min\n  C major, slow\n")).toBe(
    "90 minutes yesterday: were there pauses? Short sittings with pauses are what teachers advise.",
  );
  expect(care("2026-03-17, 90 min\n  C major, slow\nbreak, 5 min\n")).toBeUndefined();
  expect(care("2026-03-16, 90 min\n  C major, slow\n")).toBeUndefined();
  expect(care("2026-03-17\ntogether, 90 min\n  C major, slow\n")).toBeUndefined();
});

test("a week far fuller than those before it", () => {
  const weeks = ["02-09", "02-16", "02-23", "03-02", "03-09"].map(
    (date, i) => `2026-${date}, ${20 + 10 * i} min\n C major, slow\n`,
  );
  const now = (minutes: number) =>
    `${weeks.join("")}2026-03-16, 60 min\n C major, slow\n2026-03-18, ${minutes - 60} min\n C major, slow\n`;
  expect(care(now(95))).toBe(
    "This week has 95 minutes; your weeks before had 20 to 60. More pauses than usual, please.",
  );
  expect(care(now(89))).toBeUndefined(); // not 30 above the fullest
  expect(
    care(`${weeks.slice(0, 3).join("")}2026-03-16, 55 min\n C major\n2026-03-18, 55 min\n C major\n`),
  ).toBeUndefined();
});

test("one sentence at a time, and pain before all else", () => {
  expect(care("2026-03-17, 90 min\n  C major, slow, sore left thumb\n")).toMatch(
    /^Yesterday you noted “sore left thumb”/,
  );
  expect(care("2026-03-12\n  C major, slow, sore left thumb\n2026-03-17, 20 min\n  C major\n")).toMatch(/^On 12 March/);
  expect(care("2026-03-10\n  C major, slow, sore left thumb\n2026-03-17, 20 min\n  C major\n")).toBeUndefined();
});

test.each([
  "right thumb hurts",
  "my right wrist is sore",
  "pain in the right thumb",
  "good session but my right thumb hurts",
  "C major, slow, right thumb sore",
  "right ear ringing",
  "hand cramped",
  "hoarse by the end",
  "lost my voice",
])("a side of the body, or a good word before it, takes nothing back: %s", (words) => {
  expect(planned(`2026-03-17\n  G major, slow\n  ${words}\n`)).toContain("-- care: ");
});

test.each(["thumb better", "thumb stiff but fine", "wrist pain gone", "no pain", "right hand alone, good"])(
  "nothing hurts: %s",
  (words) => {
    expect(planned(`2026-03-17\n  G major, slow\n  ${words}\n`)).not.toContain("-- care: ");
  },
);

test("ears that ring: nothing that sounds, and some days later softly, whatever bars it was", () => {
  const ground = 'piece "Ground" as Ground: G minor, 16 bars\n\n';
  const rang = `${ground}2026-03-17\n  Ground, bars 1-8, at 60 clean\n  ears ringing\n`;
  expect(planned(rang)).toContain("  Ground, bars 1-8, mental, 15 min");
  expect(planned(rang.replace(ground, "").replace("Ground, bars 1-8", "C major"))).not.toMatch(/listening|mental|sung/);
  const later = planned(rang.replace("03-17", "03-15"));
  expect(later).toContain("If you play: 15 minutes instead of 30, softly, with pauses, away from loud players");
  expect(later).toContain("  Ground, from the top, slow");
});
