import { describe, expect, test } from "vitest";
import { languageWords } from "../../../server/journal/language.ts";
import { NOTE_NAMES } from "../../../server/music/notes/note-names.ts";
import { outcomePhrase } from "../../../server/syntax/words/outcome-words.ts";
import { NO_NAMES, Vocabulary } from "../../../server/syntax/words/vocabulary.ts";
import { rowsOf } from "../line/print.ts";

// Phrases of a tempo, one or two of each kind, and which verdict each has: common practice and from memory, no source.

function vocabularyOf(id: string): Vocabulary {
  const names = NOTE_NAMES.find((each) => each.id === id)!;
  return new Vocabulary(languageWords(names), names, NO_NAMES);
}

/** Rows of a language, a phrase, and what it says of its tempo; `-` for nothing. */
function check(rows: string): void {
  for (const [typed, says] of rowsOf(rows)) {
    const [language, ...words] = typed.split(" ");
    expect([typed, outcomePhrase(words.join(" "), vocabularyOf(language!)) ?? "-"]).toEqual([typed, says]);
  }
}

test("phrases say how it went", () => {
  check(`
    english sat nicely          => reached
    english in the bag          => reached
    english v. good             => reached
    english vg                  => reached
    english ok but slow         => nearly
    english kinda               => nearly
    english nearly had it       => nearly
    english good-ish            => nearly
    english clean mostly        => nearly
    english rushed the end      => not
    english fell over           => not
    english not up to speed     => not
    german läuft wie geschmiert => reached
    german fast im Takt         => nearly
    german noch nicht sauber    => not
    french ça roule             => reached
    french pas tout à fait      => nearly
    french pas du tout en place => not
    dutch ging lekker           => reached
    dutch bijna zuiver          => nearly
    dutch viel uit elkaar       => not
    italian liscio come l'olio  => reached
    italian non del tutto       => nearly
    italian per niente pulito   => not
    spanish como la seda        => reached
    spanish casi limpio         => nearly
    spanish a trompicones       => not
  `);
});

test("mistakes are counted: none is reached, one or two are nearly, more are not", () => {
  check(`
    english no wrong notes      => reached
    english 1 drop              => nearly
    english 2 slips             => nearly
    english 3 slips             => not
    english lots of stops       => not
    german ohne Patzer          => reached
    german ein Hänger           => nearly
    german 3 Fehler             => not
    french sans accrocs         => reached
    french deux couacs          => nearly
    french trop de fautes       => not
    dutch zonder haperingen     => reached
    dutch één fout              => nearly
    dutch 3 missers             => not
    italian senza sbagli        => reached
    italian una stecca          => nearly
    italian troppi errori       => not
    spanish sin tropiezos       => reached
    spanish un par de gallos    => nearly
    spanish muchos errores      => not
  `);
});

describe("a word that also stands in what is said of a pain says nothing by itself", () => {
  // Such a word takes the pain back, where it says that something went well: `pain is constant`, `hurts easily`.
  test.each([
    ["english", "easily grand stable consistent tired sore"],
    ["german", "regelmäßig richtig genau müde"],
    ["french", "précis facilement fatigué"],
    ["dutch", "strak zit staat moe"],
    ["italian", "va tiene stanco"],
    ["spanish", "constante firme cansado"],
  ])("in %s", (language, words) => {
    const { outcomes } = vocabularyOf(language);
    expect(words.split(" ").filter((word) => outcomes.of(word) !== undefined)).toEqual([]);
  });
});
