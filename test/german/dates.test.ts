import { expect, test } from "vitest";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { dateInWords, dayBack, daysInWords, longDate, weekdayDate } from "../../server/journal/date-words.ts";

// Short weekdays and months: Duden, as DIN 1355-1 had them; the comma that some write behind a weekday is left out.

const day = (iso: string) => parseIsoDate(iso)!;

test("dates are said in German where German is spoken", () => {
  const read = day("2026-11-22");
  expect(dateInWords(day("2026-03-16"), read)).toBe("16. März");
  expect(dateInWords(day("2025-03-16"), read)).toBe("16. März 2025");
  expect(weekdayDate(day("2026-10-26"), read)).toBe("Mo 26. Okt.");
  expect(longDate(read)).toBe("Sonntag 22. November");
  expect(daysInWords(day("2026-03-09"), day("2026-03-15"))).toBe("9. bis 15. März");
  expect(dayBack(read, read)).toBe("heute");
});
