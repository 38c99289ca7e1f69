import fc from "fast-check";
import { expect, test } from "vitest";
import { languageWords } from "../../server/journal/language.ts";
import { ENGLISH_NAMES } from "../../server/music/notes/note-names.ts";
import { cutLine } from "../../server/syntax/line/cut.ts";
import { readPart } from "../../server/syntax/line/part.ts";
import { PieceTable } from "../../server/syntax/line/pieces.ts";
import { NO_NAMES, Vocabulary } from "../../server/syntax/words/vocabulary.ts";

const word = fc.constantFrom(
  "at",
  "8ths",
  "16ths",
  "clean",
  "tense",
  "5 in a row",
  "4 of 5",
  "of",
  "to",
  "min",
  "bars",
  "page",
  "quarter=",
  "slurred",
  "up",
  "D",
  "minor",
  "focus",
  "ease",
  "Suite",
  "bpm",
  "in a row",
  "-",
  "zzz",
  "thirds",
  "x",
  "times",
  "Dm",
  "M",
  "hm",
  "nat/harm",
  "scales",
  "arp",
  "trill",
  "Cm7",
);
const number = fc.oneof(fc.integer({ min: 10, max: 999 }), fc.integer({ min: 0, max: 2000 })).map(String);
const part = fc
  .array(fc.oneof({ weight: 3, arbitrary: word }, { weight: 2, arbitrary: number }), { minLength: 1, maxLength: 5 })
  .map((words) => words.join(" "))
  .filter((text) => cutLine(text).cuts.length === 1); // a hyphen between spaces parts

const plain = new Vocabulary(languageWords(ENGLISH_NAMES), ENGLISH_NAMES);
const numbered = new Vocabulary(languageWords(ENGLISH_NAMES), ENGLISH_NAMES, {
  ...NO_NAMES,
  titles: [{ title: "Suite in D", short: "Suite 12" }],
});

test.each([
  ["the language's own words", plain],
  ["a short title with a number in it", numbered],
])("a part that is read in pieces is what reading it gives: %s", (_, vocabulary) => {
  fc.assert(
    fc.property(fc.array(part, { minLength: 2, maxLength: 40 }), (parts) => {
      const table = new PieceTable(vocabulary);
      for (const text of parts) expect(table.itemsIn(text, 0, text.length)).toEqual(readPart(text, vocabulary));
    }),
    { seed: 4 },
  );
});

test("the same shape with another number is told apart from the first", () => {
  const table = new PieceTable(plain);
  const tempos = ["8ths at 60 clean", "8ths at 63 clean", "8ths at 104 clean"].map((text) =>
    table.itemsIn(text, 0, text.length).map(({ start, end, meaning }) => [text.slice(start, end), meaning]),
  );
  expect(tempos.map((items) => items[1])).toEqual([
    ["at 60", { type: "tempo", bpm: 60 }],
    ["at 63", { type: "tempo", bpm: 63 }],
    ["at 104", { type: "tempo", bpm: 104 }],
  ]);
  expect(tempos.map((items) => items[2]![0])).toEqual(["clean", "clean", "clean"]);
});

test("the note lists of a long day are read once, however many notes they have", () => {
  const table = new PieceTable(plain);
  const lists = Array.from({ length: 600 }, (_, i) => `${"C D E F G A B ".repeat(i % 50 === 0 ? 250 : 5)}C${i}`);
  const first = lists.map((list) => table.of(list));
  expect(lists.filter((list, i) => table.of(list) !== first[i])).toEqual([]);
});
