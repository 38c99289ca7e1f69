import { expect, test } from "vitest";
import { readOptions, readSettings } from "../../server/host/settings.ts";

const PLAN = {
  minutes: null,
  shares: { pieces: 0.5, groundwork: 0.6 },
  longestLine: 15,
  playBeforePause: 30,
  unhurriedDays: "one in three",
  reasons: false,
};

const NOTHING_SHOWN = { lens: { trend: false }, hints: { notesPerMinute: false, lastTempo: false } };

test.each([
  null,
  undefined,
  {},
  [],
  "both",
  7,
  { explain: null, timeZone: null },
  { explain: "everything", timeZone: 3 },
  { plan: 45 },
  { lens: true, hints: ["lastTempo"] },
  { lens: { trend: "on" }, hints: { notesPerMinute: 1, lastTempo: null } },
  { plan: { minutes: "45", shares: 0.5, longestLine: 0, playBeforePause: 7, unhurriedDays: true, reasons: 1 } },
  { plan: { minutes: 4, shares: { pieces: 2, groundwork: "0.6" }, longestLine: 7.5, playBeforePause: null } },
])("%j means the defaults", (sent) => {
  expect(readSettings(sent)).toEqual({ timeZone: "", explain: "both", plan: PLAN, ...NOTHING_SHOWN });
});

test("what is set is kept", () => {
  const plan = {
    minutes: 45,
    shares: { pieces: 0, groundwork: 1 },
    longestLine: 10,
    playBeforePause: 20,
    unhurriedDays: "never",
    reasons: true,
  };
  const shown = { lens: { trend: true }, hints: { notesPerMinute: true, lastTempo: true } };
  expect(readSettings({ timeZone: " Europe/Oslo ", explain: "steps", plan, ...shown })).toEqual({
    timeZone: "Europe/Oslo",
    explain: "steps",
    plan,
    ...shown,
  });
});

test("options of another shape count as left out", () => {
  const nothing = { today: undefined, timeZone: undefined, canReadFiles: false, canShowPreview: false };
  expect(readOptions(null)).toEqual(nothing);
  expect(readOptions({ today: 20260302, timeZone: {}, canReadFiles: "yes", canShowPreview: 1 })).toEqual(nothing);
  const all = { today: "2026-03-02", timeZone: "UTC", canReadFiles: true, canShowPreview: true };
  expect(readOptions(all)).toEqual(all);
});
