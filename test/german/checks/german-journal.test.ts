import { describe, expect, test } from "vitest";
import { diagnosticsIn } from "./diagnosed.ts";

// A journal with German names of notes, read in German. Terms of music and plurals: from memory.

describe("what is said of notes, signatures and steps", () => {
  test.each([
    ["D-Dur: D E Fis G A H C D", "D-Dur hat Cis, nicht C: Die siebte Stufe liegt einen Ganzton über H."],
    ["D-Dur: D E F G A H Cis D", "D-Dur hat Fis, nicht F: Die dritte Stufe liegt einen Ganzton über E."],
    [
      "d-Moll melodisch: D E F G A B Cis D",
      "d-Moll melodisch hat aufwärts H, nicht B: Aufwärts sind die sechste und die siebte Stufe erhöht.",
    ],
    ["Fis-Dur: Fis Gis Ais H Cis Dis F Fis", "Fis-Dur hat Eis, nicht F: Die siebte Stufe hat den Stammton E."],
    ["G7: G H D Fis", "G7 hat F, nicht Fis: Die Septime liegt eine kleine Septime über G."],
    ["C-Dur: C D Q F G A H C", "Q ist kein Tonname: C-Dur hat hier E."],
    ["D-Dur: D E Fis G Gis A H Cis D", "D-Dur hat kein Gis: Hier geht es von G nach A."],
    ["D-Dur: D E Fis G A H A H Cis D", "A H sind zu viel: Hier geht D-Dur von G nach A."],
    ["D-Dur: Es F G", "Alle 3 Töne weichen von D-Dur ab. So geht es: D E Fis G A H Cis D."],
    [
      "Fis-Dur: Ges As B Ces Des Es F Ges",
      "So geschrieben ist es Ges-Dur: Fis-Dur schreibt man Fis Gis Ais H Cis Dis Eis Fis.",
    ],
    ["C-Dur, Terzen: C E D F E G F H G H A C", "Die vierte Terz aufwärts ist F A, nicht F H."],
    [
      "C-Dur, Dreiergruppen: C D E D E F E F A F G A G A H A H C",
      "Figur 3 aufwärts (Dreiergruppen) ist E F G, nicht E F A.",
    ],
    ["B-Dur, 3b", "B-Dur hat 2 b (B Es), nicht 3 b. 3 b gehören zu Es-Dur und c-Moll."],
    [
      "d-Moll harmonisch, 2b",
      "d-Moll harmonisch hat 1 b (B), nicht 2 b. Es hat die Vorzeichen von d-Moll; bei Cis steht das Vorzeichen vor dem Ton. 2 b gehören zu g-Moll und B-Dur.",
    ],
    [
      "C-Dur: T T T S T T S",
      "Der dritte Schritt von C-Dur (E bis F) umfasst einen Halbton, nicht einen Ganzton: T T S T T T S.",
    ],
    ["Dis-Dur", "Dis-Dur bräuchte 9 Kreuze (Fisis und Cisis). Üblich ist der Name Es-Dur (3 b)."],
    [
      "a-Moll: A H C D E F Gis A",
      "Das sind die Töne von a-Moll harmonisch. Moll allein heißt hier natürliches Moll: Schreib dazu, dass es harmonisches Moll ist, wenn du das gespielt hast.",
    ],
    [
      "notes c' d', on Altblockflöte",
      "c' und d' gibt es auf diesem Instrument nicht (Altblockflöte: f' bis g''', wie notiert).",
    ],
  ])("%s", (line, message) => expect(messagesOn(line)).toEqual([message]));
});

describe("one and two", () => {
  test.each([
    ["F-Dur: F G A C D E F", "B fehlt zwischen A und C: F-Dur hat hier A B C."],
    ["F-Dur: F G A D E F", "B C fehlen zwischen A und D: F-Dur hat hier A B C D."],
    ["C-Dur, 1#", "C-Dur hat keine Vorzeichen, nicht 1 Kreuz. 1 Kreuz gehört zu G-Dur und e-Moll."],
    ["C-Dur, 2#", "C-Dur hat keine Vorzeichen, nicht 2 Kreuze. 2 Kreuze gehören zu D-Dur und h-Moll."],
    ["C-Dur: D", "So geht C-Dur: C D E F G A H C. Das sind 8 Töne, hier steht nur einer."],
    ["C-Dur: D F", "So geht C-Dur: C D E F G A H C. Das sind 8 Töne, hier stehen 2."],
  ])("%s", (line, message) => expect(messagesOn(line)).toEqual([message]));
});

describe("titles of fixes", () => {
  test.each([
    ["F-Dur: F G A C D E F", ["B einfügen"]],
    ["F-Dur: F G A D E F", ["Die 2 fehlenden Töne einfügen"]],
    ["D-Dur: D E Fis G Gis A H Cis D", ["Gis streichen"]],
    ["D-Dur: D E Fis G A H A H Cis D", ["2 Töne streichen"]],
    ["D-Dur: Es F G", ["Die Töne von D-Dur ausschreiben"]],
    ["D-Dur: D E Fis G A H C D", ["C in Cis ändern"]],
    ["d-Moll, Terzen, Quarten", ["„Quarten“ streichen"]],
    ["h", ["In „H-Dur“ ändern", "In „h-Moll“ ändern"]],
    ["G-Dur F G A", ["Einen Doppelpunkt vor die Töne setzen"]],
    ["G-Dur clean at 60", ["„at 60 clean“ schreiben"]],
    ['"Waldlied', ["Anführungszeichen schließen"]],
    ['"Waldlied"', ['Festlegen: piece "Waldlied"']],
    ["das ging heute gut.", ["Zur Bemerkung machen"]],
  ])("%s", (line, titles) =>
    expect(found(line).flatMap(({ fixes }) => fixes.map(({ title }) => title))).toEqual(titles),
  );
});

/** What is found on a line below a day. */
function found(line: string): ReturnType<typeof diagnosticsIn> {
  return diagnosticsIn({ "journal.practice": `names german\n2026-03-02 Mon\n${line}\n` });
}

function messagesOn(line: string): readonly string[] {
  return found(line).map(({ message }) => message);
}
