import { expect, test } from "vitest";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { readPart } from "../../../server/syntax/line/part.ts";
import { itemsOf, rowsOf } from "./print.ts";

// Terms in the language in which a journal names its notes. German and French are common practice, no source; Dutch,
// Italian and Spanish are from memory.

/** Rows of what is typed in a journal with such names, and what its words mean. */
function check(names: string, rows: string): void {
  const journal = new Journal(
    "file:///j",
    new Map([["file:///j/journal.practice", createDocument(`names ${names}\n`)]]),
  );
  for (const [typed, meaning] of rowsOf(rows))
    expect([typed, itemsOf(readPart(typed, journal.vocabulary)).join(" | ")]).toEqual([typed, meaning]);
}

test("German", () => {
  check(
    "german",
    `
    gebunden           => articulation slurred (slurred)
    gest.              => articulation tongued (single)
    Doppelzunge        => articulation double tongued (multiple)
    paarweise gebunden => articulation slur 2 (mixed)
    8tel               => note value 1/8
    Sechzehntel        => note value 1/16
    Triolen            => note value 1/12
    in Terzen          => pattern thirds
    Sexten             => pattern sixths
    auf und ab         => direction up and down
    aufwärts           => direction up
    aufwarts           => direction up
    punktiert          => rhythm dotted (uneven)
    2 Okt.             => span 2 octaves
    zwei Oktaven       => span 2 octaves
    ganzer Umfang      => span full range
    Takt 5-8           => place bars 5-8
    T. 25-40           => place bars 25-40
    Takt 17 bis Ende   => place bars 17-end
    ab Takt 17         => place bars 17-end
    Satz 2             => place mvt 2
    2. Satz            => place mvt 2
    zweite Zeile       => place zweite Zeile
    Seite 4            => place page 4
    Buchstabe C        => place figure C
    erste Hälfte       => place erste Hälfte
    mit Wiederholungen => place mit Wiederholungen
    leere Saiten       => second subject open strings
    Blattlesen         => second subject sight-reading
    10 Minuten         => 10 min
    etwa 10 Min        => about 10 min
    halbe Stunde       => 30 min
    5 Min je           => 5 min each
    linke Hand         => manner left hand
    slurred            => articulation slurred (slurred)
    bars 5-8           => place bars 5-8
  `,
  );
});

test("French", () => {
  check(
    "french",
    `
    lié                => articulation slurred (slurred)
    détaché            => articulation détaché (single)
    detachees          => articulation tongued (single)
    lié par 2          => articulation slur 2 (mixed)
    double coup de langue => articulation double tongued (multiple)
    croches            => note value 1/8
    doubles croches    => note value 1/16
    triolets           => note value 1/12
    en tierces         => pattern thirds
    par quatre         => pattern fours
    montant et descendant => direction up and down
    rythme pointé      => rhythm dotted (uneven)
    2 octaves          => span 2 octaves
    mes. 5-8           => place bars 5-8
    mesures 5 à 8      => place bars 5-8
    mesure 17 à la fin => place bars 17-end
    2e mouvement       => place mvt 2
    deuxième ligne     => place deuxième ligne
    première moitié    => place première moitié
    du début à la fin  => place du début à la fin
    cordes à vide      => second subject open strings
    déchiffrage        => second subject sight-reading
    10 minutes         => 10 min
    environ 20 min     => about 20 min
    un quart d'heure   => 15 min
    main droite        => manner right hand
  `,
  );
});

test("Dutch, Italian and Spanish", () => {
  check(
    "dutch",
    `
    gebonden      => articulation slurred (slurred)
    achtsten      => note value 1/8
    tertsen       => pattern thirds
    op en neer    => direction up and down
    maat 5-8      => place bars 5-8
    twee octaven  => span 2 octaves
    losse snaren  => second subject open strings
    10 minuten    => 10 min
    half uur      => 30 min
  `,
  );
  check(
    "italian",
    `
    legate        => articulation slurred (slurred)
    crome         => note value 1/8
    per terze     => pattern thirds
    salendo       => direction up
    battute 5-8   => place bars 5-8
    due ottave    => span 2 octaves
    corde vuote   => second subject open strings
    10 minuti     => 10 min
    mezz'ora      => 30 min
  `,
  );
  check(
    "spanish",
    `
    ligado         => articulation slurred (slurred)
    corcheas       => note value 1/8
    en terceras    => pattern thirds
    subiendo       => direction up
    compases 5-8   => place bars 5-8
    dos octavas    => span 2 octaves
    cuerdas al aire => second subject open strings
    10 minutos     => 10 min
    media hora     => 30 min
  `,
  );
});
