import { describe, expect, test } from "vitest";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { parseLine } from "../../../server/syntax/line/parse-line.ts";

// What the tables of words must leave alone: remarks of everyday life, with numbers and with words of the trade in
// them. All are invented, which makes them no truth of what people write; that each is no practice is plain.

const REMARKS: Readonly<Record<string, string>> = {
  english: `
    Bought 3 reeds and a new cleaning cloth
    Rain all day, walked home with wet shoes
    Watched the match, 2 slips at the back cost us the game
    Grand day out at the beach
    Nice weather, 24 degrees, sat in the garden
    Uncle Jim is 72 today
    Great game, lost 3-2
    Bridge closed, went round by the river
    Rolls and butter for lunch, 4 of them
    Slides from the holiday, 120 of them
    Wedding on the 12th, buy a hat
    Verse from Psalm 23 at the funeral
    My sister's exam, 84 out of 100
    Coffee with Tom, then the bank
    2 slips of paper in the case
    Head office at 10
    Opening night, 200 seats sold
    Weather grand, 18 degrees
    5 min late to the lesson
    20 minutes on the phone with the bank
    bus 10 min late
    Dentist 10-11, then the shops
    Library open 9-5 pm on Saturdays
    Last week 5 min from the station we met Tom
    This week 2 hours of rain a day
    Group of 8-11 year olds on the train
    Condensation terrible, music room at 62 degrees.
    New pads quoted at 340, hmm
    played Monopoly with Granny
    Film, first half, slow
    Home by the 22h14 train
    Milk, eggs + bread
    Half of the street dark, fuse gone
  `,
  german: `
    Der Zug hatte 20 Minuten Verspätung
    Oma wird 80, Kuchen für 12 Leute
    3 neue Saiten gekauft
    Regen den ganzen Tag, 8 Grad
    Zahnarzt um 10:30, danach ins Büro
    Elternabend um 19 Uhr, viel zu lang
    Bus 14 kam nicht
    Parkplatz 12 Euro
    Nachbar klopft um 9 an die Wand
    5 km gelaufen vor dem Frühstück
    Zug 15 Min zu spät
    Zahnarzt 10-11 Uhr
  `,
  french: `
    Le train avait 20 minutes de retard
    Anniversaire de mamie, 80 ans
    Acheté 3 anches à Paris
    Pluie toute la journée, 8 degrés
    Le bus 14 n'est pas passé
    Parking 12 euros
    5 km de course avant le petit déjeuner
    Neige, école fermée 2 jours
    train 20 min de retard
  `,
  dutch: `
    De trein had 20 minuten vertraging
    Oma wordt 80, taart voor 12 mensen
    3 nieuwe snaren gekocht
    Regen de hele dag, 8 graden
    Tandarts om 10:30, daarna kantoor
    Bus 14 kwam niet
    Parkeren 12 euro
    5 km gelopen voor het ontbijt
  `,
  italian: `
    Il treno aveva 20 minuti di ritardo
    Nonna compie 80 anni, torta per 12
    Comprato 3 ance
    Pioggia tutto il giorno, 8 gradi
    Dentista alle 10:30, poi ufficio
    Autobus 14 mai passato
    Parcheggio 12 euro
    5 km di corsa prima di colazione
  `,
  spanish: `
    El tren llegó con 20 minutos de retraso
    La abuela cumple 80, tarta para 12
    Compré 3 cañas
    Lluvia todo el día, 8 grados
    Dentista a las 10:30, luego oficina
    El autobús 14 no pasó
    Aparcamiento 12 euros
    5 km corriendo antes del desayuno
  `,
};

describe("a remark of everyday life is no practice", () => {
  const rows = Object.entries(REMARKS).flatMap(([names, text]) =>
    text
      .trim()
      .split("\n")
      .map((line) => [names, line.trim()] as const),
  );

  test.each(rows)("in %s: %s", (names, line) => {
    const text = `names ${names}\n`;
    const { partContext } = new Journal("file:///j", new Map([["file:///j/a.practice", createDocument(text)]]));
    expect(parseLine(line, { ...partContext, head: false }).type).toBe("prose");
  });
});
