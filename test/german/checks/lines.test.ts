import { describe, expect, test } from "vitest";
import { minutesTexts } from "../../../server/checks/day/minutes-texts.ts";
import { faultyText } from "../../support/faulty-text.ts";
import { diagnosticsIn } from "./diagnosed.ts";

// What is said of declarations, of lines and of files, in German. Plurals and terms from memory.

describe("declarations", () => {
  test.each([
    ["instrument kazoo", /^Dieses Instrument ist nicht bekannt: Um es festzulegen, /],
    ["instrument bass", /^Schreib, welches Instrument es ist: Dieser Name passt auf mehrere\. Meinst du „.*“ oder „/],
    [
      "instrument violin, german fingering",
      "Schreib nur den Namen des Instruments: Griffweisen gibt es nur bei Blockflöten.",
    ],
    ["pitch A=700", "A kann 380 bis 480 Hertz haben."],
    ["pitch loud", "Gib den Kammerton A in Hertz an: `pitch A=440`."],
    ["names klingon", "Wähle eine Sprache der Tonnamen: `english`, `german`, `dutch`, `french`, `italian`, `spanish`."],
    ["note value soft", "Wähle einen Notenwert: `quarters`, `8ths`, `triplets`, `16ths`."],
    ["piece Abendlied", 'Setz den Namen nach `piece` in Anführungszeichen. Meinst du "Abendlied"?'],
    ['piece "Abendlied', "Nach dem Namen fehlt das schließende Anführungszeichen."],
    ['movement "Suite" 2', "Ein Stück „Suite“ gibt es noch nicht: Leg es zuerst fest."],
    ['concert "Vorspiel"', "Schreib, wann das Konzert ist: `on 2026-05-09`."],
    ['concert "Vorspiel" on 2026-02-30', "Nach `on` kommt ein Datum, das es gibt, in der Form Jahr-Monat-Tag."],
    ['outcome "geht so": vielleicht', /^Schreib nach dem Doppelpunkt, ob das Tempo zählt: /],
    ["aim slow", /^Schreib, was dein Ziel ist: /],
  ])("%s", (line, message) => {
    const said = diagnosticsIn({ "journal.practice": `${line}\n` }).map((each) => each.message);
    expect(said).toEqual([typeof message === "string" ? message : expect.stringMatching(message)]);
  });
});

describe("lines that frame others", () => {
  test.each([
    [
      "2026-03-02 Mon, quarz",
      "„quarz“ kenne ich nicht. In die Zeile mit dem Datum gehören ein Wochentag, Minuten, `lesson`, `plan` oder `rest` mit einem Grund.",
    ],
    [
      "session 19:30, thirds",
      "„thirds“ gehört nicht hierher: In eine Zeile mit `session` gehören eine Uhrzeit und Minuten.",
    ],
    ["break, 70 h", "„70 h“ ist keine mögliche Dauer: 1 bis 1440 Minuten am Tag, 0 bis 59 nach den Stunden."],
  ])("%s", (line, message) => {
    const text = line.startsWith("2026") ? `${line}\n  D minor\n` : `2026-03-02 Mon\n${line}\n  D minor\n`;
    expect(diagnosticsIn({ "journal.practice": text }).map((each) => each.message)).toEqual([message]);
  });
});

test("what adds up to more than the whole", () => {
  expect(minutesTexts.entriesExceed(25, 20)).toBe(
    "Die Einträge darunter ergeben zusammen 25 Minuten, mehr als die 20 hier.",
  );
  expect(minutesTexts.sittingsExceed(40, 30)).toBe(
    "Die Übeeinheiten darunter ergeben zusammen 40 Minuten, mehr als die 30 hier.",
  );
});

test("how many more there are in a file", () => {
  const found = diagnosticsIn({ "journal.practice": faultyText(60_000) });
  expect(found.at(-1)?.message).toMatch(/ \(Und \d+ weitere in dieser Datei\.\)$/);
});
