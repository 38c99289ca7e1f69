import { expect, test } from "vitest";
import { BLOCKS_AROUND, highlightsAt } from "../../../server/features/navigation/highlights.ts";
import { isoDate } from "../../../server/journal/calendar.ts";
import { titleIndex } from "../../../server/journal/titles/journal-titles.ts";
import { URI } from "../journal-text.ts";
import { bracketed, FIRST_DAY, marked } from "./marked.ts";

// Invented journals. `declares` is what the protocol calls a write.

function highlighted(text: string, isRead = true): string {
  const { journal, position, texts } = marked(text);
  if (isRead) titleIndex(journal);
  return highlightsAt(journal, URI, position)
    .map(({ range, declares }) => `${declares ? "! " : ""}${bracketed(texts.get(URI)!, range)}`)
    .join("\n");
}

test("all that names the thing, and what declares or teaches it", () => {
  expect(
    highlighted('piece "Courante in F" as Courante: F major\n\n2026-03-02\nCour‸ante, slow\n"Courante in F", at 60\n'),
  ).toBe(
    '! piece "[Courante in F]" as Courante: F major\n! piece "Courante in F" as [Courante]: F major\n[Courante], slow\n"[Courante in F]", at 60',
  );
  expect(highlighted("2026-03-02\nThe Sleepy Frog, at 60\n\n2026-03-03\nFrog‸ 2 times good\n")).toBe(
    "! [The Sleepy Frog], at 60\n[Frog] 2 times good",
  );
});

test("an exercise, and on a tempo the tempos played alike", () => {
  const days =
    "2026-03-02\nD minor, thirds, at 60\nsame, 66\nD minor, at 60\n\n2026-03-03\nd minor, thi‸rds, slurred, at 66\n";
  expect(highlighted(days)).toBe("[D minor], thirds, at 60\n[same], 66\n[d minor], thirds, slurred, at 66");
  expect(highlighted("2026-03-02\nD minor, at 6‸0\nD minor, at 66, slurred at 72\n")).toBe(
    "D minor, [at 60]\nD minor, [at 66], slurred at 72",
  );
});

test("before the days were read for their titles nothing waits for that", () => {
  expect(highlighted("2026-03-02\nThe Sleepy Frog, at 60\nThe Sleepy Frog‸, at 66\n", false)).toBe(
    "[The Sleepy Frog], at 60\n[The Sleepy Frog], at 66",
  );
});

test("of a long file only the days around", () => {
  const days = Array.from({ length: 200 }, (_, i) => `${isoDate(FIRST_DAY + i)}\nCurtsey, at ${60 + i}\n`);
  const text = `${days.slice(0, 100).join("")}${isoDate(FIRST_DAY + 100)}\nCurt‸sey, at 160\n${days.slice(101).join("")}`;
  const found = highlighted(text).split("\n");
  expect(found).toHaveLength(2 * BLOCKS_AROUND + 1);
  expect(found[BLOCKS_AROUND]).toBe("[Curtsey], at 160");
});
