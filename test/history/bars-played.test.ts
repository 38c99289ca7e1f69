import { expect, test } from "vitest";
import { barsOfPlace } from "../../server/history/bars-played.ts";

function check(where: string | null, expected: string, bars?: number): void {
  const found = barsOfPlace(where, bars).map(({ from, to }) => `${from}–${to}`);
  expect(found.join(" ")).toBe(expected);
}

test("bars, one stretch or several", () => {
  check("bars 17-32", "17–32");
  check("bars 5-8, 17-20", "5–8 17–20");
  check("bars 12", "12–12");
  check("bars 12a-14", "12–14");
  check("bars 20-8", "");
});

test("an upbeat stands in the bar before", () => check("upbeat to 17", "16–17"));

test("no place is the whole piece, where it is known how long that is", () => {
  check(null, "1–96", 96);
  check("from the top", "1–96", 96);
  check(null, "");
});

test("letters, pages and lines name no bars", () => {
  check("letter b", "", 96);
  check("page 4, bars 3-4", "3–4", 96);
  check("lines 3-5", "", 96);
});
