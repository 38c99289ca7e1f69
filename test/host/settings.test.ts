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
  { plan: { minutes: "45", shares: 0.5, longestLine: 0, playBeforePause: 7, unhurriedDays: true, reasons: 1 } },
  { plan: { minutes: 4, shares: { pieces: 2, groundwork: "0.6" }, longestLine: 7.5, playBeforePause: null } },
])("%j means the defaults", (sent) => {
  expect(readSettings(sent)).toEqual({ timeZone: "", explain: "both", plan: PLAN });
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
  expect(readSettings({ timeZone: " Europe/Oslo ", explain: "steps", plan })).toEqual({
    timeZone: "Europe/Oslo",
    explain: "steps",
    plan,
  });
});

test("options of another shape count as left out", () => {
  expect(readOptions(null)).toEqual({ today: undefined, timeZone: undefined, canReadFiles: false });
  expect(readOptions({ today: 20260302, timeZone: {}, canReadFiles: "yes" })).toEqual({
    today: undefined,
    timeZone: undefined,
    canReadFiles: false,
  });
  expect(readOptions({ today: "2026-03-02", timeZone: "UTC", canReadFiles: true })).toEqual({
    today: "2026-03-02",
    timeZone: "UTC",
    canReadFiles: true,
  });
});
