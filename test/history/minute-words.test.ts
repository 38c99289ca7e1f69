import { expect, test } from "vitest";
import { countOfMinutes, minutesInWords } from "../../server/history/minute-words.ts";

test("minutes that were written are as they were written", () => {
  expect([0, 1, 8, 12, 162].map((minutes) => minutesInWords(minutes, false))).toEqual(["0", "1", "8", "12", "162"]);
});

// Common practice, no source: a share of a share is not known to the minute.
test("minutes that were shared out are told to the nearest five from ten on", () => {
  const shown = [0.2, 7.5, 9.4, 9.6, 12.4, 12.5, 23, 162].map((minutes) => minutesInWords(minutes, true));
  const about = [8, 9, 10, 10, 15, 25, 160].map((minutes) => `about ${minutes}`);
  expect(shown).toEqual(["0", ...about]);
});

test("all of some minutes, of which one share makes the whole about so many", () => {
  const written = { minutes: 100, about: false };
  expect(countOfMinutes([written, { minutes: 62, about: true }])).toBe("about 160 minutes");
  expect(countOfMinutes([written, written])).toBe("200 minutes");
  expect(countOfMinutes([{ minutes: 1, about: false }])).toBe("1 minute");
  expect(countOfMinutes([{ minutes: 0, about: false }])).toBeUndefined();
  expect(countOfMinutes([])).toBeUndefined();
});
