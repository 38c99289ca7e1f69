import { expect, test } from "vitest";
import { readOptions, readSettings } from "../../server/host/settings.ts";

test.each([
  null,
  undefined,
  {},
  [],
  "both",
  7,
  { explain: null, timeZone: null },
  { explain: "everything", timeZone: 3 },
])("%j means the defaults", (sent) => {
  expect(readSettings(sent)).toEqual({ timeZone: "", explain: "both" });
});

test("what is set is kept", () => {
  expect(readSettings({ timeZone: " Europe/Oslo ", explain: "steps" })).toEqual({
    timeZone: "Europe/Oslo",
    explain: "steps",
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
