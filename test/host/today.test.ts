import { Temporal } from "temporal-polyfill";
import { expect, test } from "vitest";
import { Today } from "../../server/host/today.ts";
import { isoDate } from "../../server/journal/calendar.ts";

const NEW_YEAR = Date.UTC(2026, 0, 1, 0, 30);

/** The day in a zone at a moment, with Temporal's answer as the truth. */
function check(zone: string, now: number) {
  const today = new Today(() => now);
  expect(today.knows(zone)).toBe(true);
  const truth = Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone).toPlainDate();
  expect(isoDate(today.dayIn(zone))).toBe(truth.toString());
}

test.each(["UTC", "Europe/Oslo", "America/Los_Angeles", "Pacific/Kiritimati", "Pacific/Apia", "Asia/Kathmandu"])(
  "%s has a day of its own",
  (zone) => {
    for (let hour = 0; hour < 48; hour++) check(zone, NEW_YEAR + hour * 3_600_000);
  },
);

test("around a change of clocks the day turns at the zone's own midnight", () => {
  for (let minute = 0; minute < 48 * 60; minute += 30)
    check("Europe/Oslo", Date.UTC(2026, 2, 28, 12) + minute * 60_000);
});

test("without a zone it is this machine's day", () => {
  const machine = Temporal.Instant.fromEpochMilliseconds(NEW_YEAR).toZonedDateTimeISO(Temporal.Now.timeZoneId());
  expect(isoDate(new Today(() => NEW_YEAR).dayIn(""))).toBe(machine.toPlainDate().toString());
});

test("a zone that does not exist is said to be none, and the machine's own serves", () => {
  const today = new Today(() => NEW_YEAR);
  expect([today.knows(""), today.knows("Mars/Olympus")]).toEqual([true, false]);
  expect(today.dayIn("Mars/Olympus")).toBe(today.dayIn(""));
});

test("a fixed day wins over clock and zone; what is no date fixes nothing", () => {
  const today = new Today(() => NEW_YEAR);
  today.fix("2031-05-06");
  expect(isoDate(today.dayIn("UTC"))).toBe("2031-05-06");
  today.fix("next week");
  expect(isoDate(today.dayIn("UTC"))).toBe("2026-01-01");
});

test("the day moves on with the clock, and the first look that finds another one says so, for its zone alone", () => {
  let now = Date.UTC(2026, 2, 2, 23, 59, 59);
  const turned: string[] = [];
  const today = new Today(
    () => now,
    (zone) => void turned.push(zone),
  );
  const look = () => ["UTC", "Europe/Oslo"].map((zone) => isoDate(today.dayIn(zone)));
  expect(look()).toEqual(["2026-03-02", "2026-03-03"]); // Oslo is an hour ahead in winter
  now += 1000;
  expect(look()).toEqual(["2026-03-03", "2026-03-03"]);
  expect(look()).toEqual(["2026-03-03", "2026-03-03"]);
  expect(turned).toEqual(["UTC"]);
});
