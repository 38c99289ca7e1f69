import { expect, test } from "vitest";
import type { LexiconLanguage } from "../../../server/syntax/lexicon/language.ts";
import { phraseKey } from "../../../server/syntax/words/fold.ts";
import { wordClasses } from "../../../server/syntax/words/word-classes.ts";
import { rowsOf } from "../line/print.ts";

// What words say of the kind of their line. Common practice, no source; Dutch, Italian and Spanish from memory.

const LANGUAGES: readonly LexiconLanguage[] = ["english", "german", "french", "dutch", "italian", "spanish"];

/** Rows of a language and a word, and the classes it has: `class: meaning`, or `-` for none. */
function check(rows: string): void {
  for (const [typed, expected] of rowsOf(rows)) {
    const [language, ...words] = typed.split(" ");
    const found = wordClasses(language as LexiconLanguage).get(phraseKey(words.join(" "))) ?? [];
    const text = found.map((one) => `${one.class}: ${one.meaning}`).sort();
    expect([typed, text.join(", ") || "-"]).toEqual([typed, expected]);
  }
}

test("words tell the kinds of lines, each in its own language", () => {
  check(`
    english she          => sentence-sign: pronoun
    english should       => intention: intention, sentence-sign: verb
    english was          => sentence-sign: verb, verb-behind: verb
    german was           => sentence-sign: conjunction
    english again        => filler: filler, same-as-above: again, title-end: end of a title
    english scales       => heading: scales
    english mon          => heading: sitting
    english day off      => rest: rest
    english flu          => rest: ill
    english throbbing    => body-trouble: hurts
    english stiff        => body-trouble: sore
    english cold         => body-trouble: cold, rest: ill
    english tired        => beside-total: beside a total, body-trouble: tired
    english fugue        => title-kind: kind of piece
    english all majors   => scope: all majors
    english cycle of 4ths => scope: circle of fourths
    english tierces      => -
    german geübt         => beside-total: beside a total, practice-verb: practice
    french pas touché    => rest: rest
    dutch huiswerk       => set-work: set work
    italian tonalita     => -
    italian tutte le tonalita => scope: all keys
    spanish muñeca       => body-part: arm or leg
  `);
});

test("hyphens, spaces and the sign of the apostrophe make no difference, nor do accents that are left out", () => {
  check(`
    english warm-up  => heading: warm-up
    english warmup   => heading: warm-up
    english can’t    => sentence-sign: verb
    german ubezeit   => beside-total: beside a total, total: total
    french repos     => rest: rest
    french etude     => heading: studies, title-kind: kind of piece, title-number: number of a title
  `);
});

test("every language has words of every class that bears on counting", () => {
  const needed = ["sentence-sign", "intention", "filler", "heading", "rest", "body-part", "body-trouble", "total"];
  for (const language of LANGUAGES) {
    const classes = new Set([...wordClasses(language).values()].flat().map((one) => one.class as string));
    expect([language, needed.filter((name) => !classes.has(name))]).toEqual([language, []]);
  }
});
