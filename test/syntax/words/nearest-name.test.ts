import fc from "fast-check";
import { distance } from "fastest-levenshtein";
import { describe, expect, it } from "vitest";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { LanguageWords } from "../../../server/syntax/words/language-words.ts";
import { NameIndex } from "../../../server/syntax/words/nearest-name.ts";
import { NO_NAMES, Vocabulary } from "../../../server/syntax/words/vocabulary.ts";
import { MANY } from "../../support/random-runs.ts";

/** The same by going through all names, with the distances of `fastest-levenshtein` 1.0.16. */
function nearestOfAll(names: readonly string[], word: string, least: number) {
  const sorted = (text: string): string => [...text].sort().join("");
  const found = names.flatMap((name, index) => {
    const slips = distance(word, name) - (sorted(word) === sorted(name) ? 0.5 : 0) - (word[0] === name[0] ? 0.25 : 0);
    return slips < least && Math.abs(name.length - word.length) < least ? [{ index, slips }] : [];
  });
  return found.sort((a, b) => a.slips - b.slips || a.index - b.index)[0];
}

describe("the nearest name of a list", () => {
  it("is that of a look at every name", () => {
    const text = fc.oneof(
      fc.string({ unit: fc.constantFrom("a", "b", "c", "é"), maxLength: 9 }),
      fc.tuple(fc.constantFrom("ground ", "grounds in ", "the "), fc.nat(400)).map(([words, n]) => `${words}${n}`),
      fc.string({ unit: "grapheme", maxLength: 44 }),
    );
    fc.assert(
      fc.property(fc.array(text, { maxLength: 60 }), text, fc.constantFrom(2, 3, 4), (names, word, least) => {
        expect(new NameIndex(names).nearest(word, least)).toEqual(nearestOfAll(names, word, least));
      }),
      { seed: 41, numRuns: MANY },
    );
  });

  it("is found among names that differ from it by slips alone", () => {
    const name = fc.string({ unit: fc.constantFrom(..."abcdefgh "), minLength: 3, maxLength: 40 });
    const slip = fc.tuple(fc.nat(39), fc.constantFrom("", "x", "a", "bb"));
    fc.assert(
      fc.property(fc.array(name, { minLength: 1, maxLength: 30 }), fc.array(slip, { maxLength: 5 }), (names, slips) => {
        const slipped = slips.reduce((text, [at, put]) => text.slice(0, at) + put + text.slice(at + 1), names[0]!);
        expect(new NameIndex(names).nearest(slipped, 4)).toEqual(nearestOfAll(names, slipped, 4));
      }),
      { seed: 42, numRuns: MANY },
    );
  });
});

describe("the nearest known word", () => {
  const titles = ["Ground in G minor", "Evening by the lock", "Six Short Walks", "Slow air"];
  const vocabulary = new Vocabulary(new LanguageWords([]), ENGLISH_NAMES, {
    ...NO_NAMES,
    titles: titles.map((title) => ({ title })),
  });

  it("is the same however often one is sought, so by an index or without", () => {
    const words = ["arpeggio", "dim arpeggio", "lesson", "session", "easy", "east"];
    const word = fc.oneof(
      fc.constantFrom("d arpeggio", "sesson", "eas", "leson", "dimarpegio"),
      fc.string({ unit: fc.constantFrom(..."aeilnopsrgdmt "), minLength: 3, maxLength: 12 }),
    );
    fc.assert(
      fc.property(fc.array(word, { minLength: 4, maxLength: 12 }), word, (asked, last) => {
        const names = [...words];
        const often = new Vocabulary(new LanguageWords([]), ENGLISH_NAMES);
        for (const each of asked) often.nearest(each, names);
        expect(often.nearest(last, names)).toBe(
          new Vocabulary(new LanguageWords([]), ENGLISH_NAMES).nearest(last, names),
        );
      }),
      { seed: 43, numRuns: MANY },
    );
  });

  it.each([
    ["Ground in G minro", "Ground in G minor"],
    ["six  short walks", "Six Short Walks"],
    ["SLOW AIT", "Slow air"],
    ["Morning by the lake", undefined],
    ["Sl", undefined],
  ])("of “%s” is “%s”, by an index or without", (word, expected) => {
    for (let times = 0; times < 3; times++) {
      expect(vocabulary.nearest(word, vocabulary.titleNames)).toBe(expected);
      expect(vocabulary.nearest(word, [...titles])).toBe(expected);
    }
  });

  it("is of several lists the nearest, and then that of the first", () => {
    expect(vocabulary.nearest("lonb tones", ["long tone"], ["long tones"])).toBe("long tones");
    expect(vocabulary.nearest("walts", ["walks", "waltz"], ["walls"])).toBe("walks");
  });

  it("is found for twenty thousand words among as many names", () => {
    const names = Array.from({ length: 20_000 }, (_, i) => `Piece number ${i}`);
    for (const wrong of ["Piece numbr", "Piece nubmer", "Pice nunber"]) {
      const found = names.map((name) => vocabulary.nearest(name.replace("Piece number", wrong), names));
      expect(found).toEqual(names);
    }
  });
});
