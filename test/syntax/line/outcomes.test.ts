import { expect, test } from "vitest";
import { languageWords } from "../../../server/journal/language.ts";
import { NOTE_NAMES } from "../../../server/music/notes/note-names.ts";
import { PieceTable } from "../../../server/syntax/line/pieces.ts";
import { outcomePhrase } from "../../../server/syntax/words/outcome-words.ts";
import { NO_NAMES, Vocabulary } from "../../../server/syntax/words/vocabulary.ts";
import { itemsOf, rowsOf } from "./print.ts";

// How it went. The English, German and French words are those of the reference lexicon of practice words, the others from
// memory; which phrase says what: common practice, no source.

function vocabularyOf(id: string): Vocabulary {
  const names = NOTE_NAMES.find((each) => each.id === id)!;
  const outcomes = [{ words: "in the zone", says: "reached" } as const, { words: "steady", says: "nearly" } as const];
  return new Vocabulary(languageWords(names), names, { ...NO_NAMES, outcomes });
}

const ENGLISH = vocabularyOf("english");
const table = new PieceTable(ENGLISH);

/** Rows of a phrase and what it says of its tempo; `-` for nothing. */
function checkPhrases(rows: string, vocabulary = ENGLISH): void {
  for (const [typed, says] of rowsOf(rows))
    expect([typed, outcomePhrase(typed, vocabulary) ?? "-"]).toEqual([typed, says]);
}

/** Rows of a stretch of words and the items in it. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows))
    expect([typed, itemsOf(table.itemsIn(typed, 0, typed.length)).join(" | ")]).toEqual([typed, meaning]);
}

test("a phrase says something as a whole, without intensifiers and the signs of a sentence", () => {
  checkPhrases(`
    clean               => reached
    Good!               => reached
    very good           => reached
    yes at last         => reached
    now solid           => reached
    (fine)              => reached
    not bad             => reached
    no mistakes         => reached
    ✓                   => reached
    ✓✓                  => reached
    :)                  => reached
    +                   => reached
    nearly there        => nearly
    so-so               => nearly
    ok-ish              => nearly
    mostly ok           => nearly
    ±                   => nearly
    tense               => not
    NO WAY              => not
    a bit messy         => not
    not very clean      => not
    not clean           => not
    too fast            => not
    ✘                   => not
  `);
});

test("nothing is known by a part", () => {
  checkPhrases(`
    ok but sharp            => -
    ok but scratchy         => -
    clean-ish except bar 3  => -
    too fast for me         => -
    hands wobbly            => -
    ✓✗                      => -
    !!                      => -
    very                    => -
  `);
});

test("a journal's own words come first", () => {
  checkPhrases(`
    in the zone => reached
    steady      => nearly
  `);
});

test("other languages, beside English", () => {
  const words = {
    german: "sauber => reached\nfast => nearly\nnicht schlecht => reached\nzu schnell => not\nok => reached",
    french: "très propre => reached\npas mal => reached\ntrop vite => not\nclean => reached",
    dutch: "heel goed => reached\nbijna => nearly\nslordig => not",
    italian: "molto bene => reached\nquasi => nearly\nsporco => not",
    spanish: "muy bien => reached\ncasi => nearly\nsucio => not",
  };
  for (const [id, rows] of Object.entries(words)) checkPhrases(rows, vocabularyOf(id));
});

test("in a line it stands at the end of its part, or before a term", () => {
  check(`
    at 60 clean 5 in a row   => tempo 60 | outcome clean | tries 5/5
    at 60 not bad            => tempo 60 | outcome not bad
    at 60 ok thirds          => tempo 60 | outcome ok | pattern thirds
    at 60 2 slips            => tempo 60 | outcome 2 slips
    at 60 :)                 => tempo 60 | outcome :)
    @ 72 - ok                => tempo 72 | outcome ok
    at 60 in the zone        => tempo 60 | outcome in the zone
    at 60 too fast for me    => tempo 60 | unknown too fast for me
    at 60 clean but late     => tempo 60 | unknown clean but late
    at 60 not clean          => tempo 60 | outcome not clean
    ok but sharp             => unknown ok but sharp
    clean-ish except bar 3   => unknown clean-ish except | place bars 3
    E still sharp            => note E | unknown still sharp
    F sharp late             => note F# | unknown late
    C major + inversions     => second subject C major | unknown + inversions
    lesson went well         => phase lesson | unknown went well
  `);
});

test("several in a row", () => {
  check(`
    60/72/80 ✓✓✗                => number 60 | number 72 | number 80 | outcome ✓ | outcome ✓ | outcome ✗
    60 72 ✓ ✗                   => number 60 | number 72 | outcome ✓ | outcome ✗
    100, 108 clean / almost     => number 100 | number 108 | outcome clean | outcome almost
    72 ok/ok/nope               => number 72 | outcome ok | outcome ok | outcome nope
    60/72/80 ✓✓–                => number 60 | number 72 | number 80 | outcome ✓ | outcome ✓ | outcome –
  `);
});
