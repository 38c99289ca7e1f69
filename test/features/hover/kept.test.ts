import { expect, test } from "vitest";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-04-06")!;

/** What the hover at the mark `‸` stands on, and what it says; undefined where there is none. */
function hover(marked: string, head = ""): readonly [string, string] | undefined {
  const text = `${head}2026-04-01\n${marked.replace("‸", "")}`;
  const line = text.split("\n").length - 1;
  const found = hoverAt(journalOf(text), URI, { line, character: marked.indexOf("‸") }, { today: TODAY });
  return (
    found && [marked.replace("‸", "").slice(found.range.start.character, found.range.end.character), found.markdown]
  );
}

const TO_COUNT =
  "To have it counted, declare it as an articulation, a pattern, a focus or an outcome. A quick fix here does that, or makes it a remark.";

test("words that nothing came of were kept, and not counted", () => {
  expect(hover("D minor, swo‸opy, at 60 clean")).toEqual(["swoopy", `Kept as written, not counted. ${TO_COUNT}`]);
  expect(hover("D minor, at 60 clean, in the swo‸opy *way*")?.[1]).toBe(`Kept as written, not counted. ${TO_COUNT}`);
});

test("the near word is named", () =>
  expect(hover("D minor, thr‸dis")?.[1]).toBe(`Kept as written, not counted. Did you mean thirds? ${TO_COUNT}`));

test("right behind a tempo they may say how it went", () =>
  expect(hover("D minor, at 60 purple r‸ain")).toEqual([
    "purple rain",
    'Kept as written: it does not say whether the tempo was reached. To have it counted, declare it: `outcome "…": reached`, `nearly` or `not`. A quick fix here does that.',
  ]));

test("numbers, notes, quotes and kinds say what they lack", () => {
  expect(hover("D minor, ‸4, slow")?.[1]).toBe(
    "Kept as written, not counted. What is 4? Write `at 4` for a tempo, `4 min` for time, `bars 4` for a place.",
  );
  expect(hover("D minor, ‸3-8, slow")?.[1]).toBe(
    "Kept as written, not counted. What is 3-8? Write `at 3-8` for a tempo, `bars 3-8` for a place.",
  );
  expect(hover("D minor, D‸, slow")?.[1]).toContain("Notes go after a colon, after the subject");
  expect(hover('D minor, "zi‸g", slow')?.[1]).toContain("No pattern has this name");
  expect(hover('D minor, "zi‸g, slow')?.[1]).toContain("The closing quote is missing.");
  expect(hover("D mj‸or, slow")?.[1]).toBe("Kept as written, not counted. Did you mean D major?");
});

test("what is declared, or was understood, is not kept", () => {
  expect(hover("D minor, swo‸opy", 'articulation "swoopy"\n')?.[1]).toBe(
    "An articulation that this journal declares: swoopy.",
  );
  expect(hover('D minor, "zi‸g", slow', 'pattern "zig": 1 3\n')?.[1]).toContain("a pattern of this journal");
  expect(hover("D minor, slu‸rred")?.[1]).not.toContain("Kept");
});

test("nothing for a dash, for prose and for what is underlined", () => {
  expect(hover("D minor ‸- thirds")).toBeUndefined();
  expect(hover("swoopy words o‸f a diary")).toBeUndefined();
  expect(hover("H min‸or")).toBeUndefined();
});

test("what hurts counts, wherever it is said", () => {
  const told = (words: string) => [
    words,
    `Something hurts: ${words}. Rest it, and tell your teacher; see a doctor if it lasts or comes back.`,
  ];
  expect(hover("th‸umb sore after thirds")).toEqual(told("thumb sore after thirds"));
  expect(hover("D minor 72 clean, th‸umb sore")).toEqual(told("thumb sore"));
  expect(hover("my thumb was so‸re again today")).toEqual(told("my thumb was sore again today"));
  expect(hover("my thumb was fi‸ne today")).toBeUndefined();
});
