import { describe, expect, test } from "vitest";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import type { Line } from "../../../server/syntax/line/line.ts";
import { parseLine } from "../../../server/syntax/line/parse-line.ts";
import { rowsOf } from "./print.ts";

// Amounts of time as players write them, and what is none. Common practice, no source; Dutch, Italian and Spanish from
// memory.

function read(names: string, typed: string): Line {
  const text = `names ${names}\n`;
  const { partContext } = new Journal("file:///j", new Map([["file:///j/a.practice", createDocument(text)]]));
  return parseLine(typed, { ...partContext, head: false });
}

/** `total 45`, `total of more 230`, `entry 120`: the kind of line, and its first amount. */
function told(line: Line): string {
  const items = "items" in line ? line.items : line.type === "body" && line.total ? [line.total] : [];
  const amount = items.map(({ meaning }) => meaning).find(({ type }) => type === "amount");
  const type = line.type === "total" && line.longer ? "total of more" : line.type;
  return amount?.type === "amount" ? `${type} ${amount.minutes}` : type;
}

/** Rows of a line in a journal with such names, and what it tells. */
function check(names: string, rows: string): void {
  for (const [typed, expected] of rowsOf(rows)) expect([typed, told(read(names, typed))]).toEqual([typed, expected]);
}

describe("totals", () => {
  test("of more than a day are kept apart", () => {
    check(
      "english",
      `
      wk 2h40               => total of more 160
      this week 3 hr 10     => total of more 190
      - week so far 4h      => total of more 240
      month: 22 hrs         => total of more 1320
      week 12: 4 h          => total of more 240
      Day 50 min, week 3h   => total 50
      This week: scales, 10 min a day => prose
    `,
    );
    check("german", "Woche 4 Std. 10 => total of more 250");
    check("french", "cette semaine 3h20 => total of more 200");
    check("dutch", "week tot nu toe 4 uur => total of more 240");
    check("italian", "mese: 28 ore circa => total of more 1680");
    check("spanish", "esta semana 5 horas => total of more 300");
  });

  test("a number with its word or sign is minutes", () => {
    check(
      "english",
      `
      35 total            => total 35
      = 40                => total 40
      = 70 own, 30 taught => total 70
      1:20 total          => total 80
      70                  => prose
      12 total strangers  => prose
      3 in all            => prose
    `,
    );
    check("german", "1:40 ges. => total 100");
  });

  test("with what is in it, or is not", () => {
    check(
      "english",
      `
      50 min incl. breaks             => total 50
      1h10 incl lesson                => total 70
      1 hr 5 not counting the lesson  => total 65
      15 min plus the lesson          => total 15
      40' of which scales 15, duet 25 => total 40
      1h50 w breaks                   => total 110
      own work 35m                    => total 35
      own: 20' only                   => total 20
      20 min plus 15 at home          => prose
      10 min break                    => prose
    `,
    );
    check("french", "1h10 dont 20 de gammes => total 70");
    check("french", "35 mn en tout => total 35");
    check("german", "50 Min inkl. Pausen => total 50");
    check("dutch", "45 min waarvan 10 toonladders => total 45");
    check("italian", "50 min di cui 10 di scale => total 50");
    check("spanish", "50 min sin contar la clase => total 50");
  });

  test("with a short remark", () => {
    check(
      "english",
      `
      40' all                           => total 40
      25 mins (most so far)             => total 25
      30 min?? lost count               => total 30
      15 mins and one tantrum           => total 15
      45 min, cat asleep all through it => total 45
      20 minutes and no bus             => prose
      20 minutes on the bus             => prose
      30 min walk                       => prose
    `,
    );
    check("italian", "Un'ora e venti, non male. => total 80");
  });

  test("behind an amount a pain stays a pain", () => {
    check(
      "english",
      `
      35'. thumb sore            => body 35
      2 1/2 hrs, left wrist sore => body 150
      wrist sore after 20 min    => body
    `,
    );
  });
});

describe("amounts", () => {
  test("in words, about, and at the end of a sentence", () => {
    check(
      "english",
      `
      ~1 hr              => total 60
      ~ 20 min           => total 20
      half an hour.      => total 30
      twenty minutes     => total 20
      an hour and twenty => total 80
    `,
    );
    check("german", "zwanzig Minuten => total 20");
    check("italian", "In tutto tre quarti d'ora. => total 45");
  });

  test("nothing took so long as something was too late, or ago", () => {
    check(
      "english",
      `
      bus 10 min late  => prose
      20 minutes late  => prose
      tram 5 min early => prose
    `,
    );
    check("german", "Bahn 10 Min zu spät => prose");
    check("french", "bus 10 min de retard => prose");
  });

  test("of a warm-up, with a word on what it was", () => {
    check(
      "english",
      `
      w/u 8                  => phase 8
      WARM UP 15             => phase 15
      warm up at 60          => phase
      warm up 5 min slowly   => phase 5
      pieces 20              => phase
    `,
    );
    check("dutch", "inspelen 10 min manualiter => phase 10");
  });

  test("minutes behind long tones, with a word between", () => {
    check(
      "english",
      `
      Long tones again, 10, better => entry 10
      made up a tune, 5 mins       => entry 5
    `,
    );
  });
});

describe("hours of the clock are minutes", () => {
  test("on a line of a rehearsal, a group, a lesson or one's own time", () => {
    check(
      "english",
      `
      band 7.15-9.30                 => entry 135
      Orchestra 7.45-10, sat at back => entry 135
      Consort 7.30 - 9.30 upstairs   => entry 120
      Rehearsal 7.30 to 9            => entry 90
      Quartet reh 8–10pm             => entry 120
      session at the Crown 8-11      => entry 180
      Band at the hall 8 till half ten => entry 150
      choir 11-1 pm                  => entry 120
      own 7.30-8.15                  => total 45
      lesson 10.30-11.00             => phase 30
      Band 7.30, 2 hrs               => entry 120
    `,
    );
    check("german", "Kammermusik Probe 16-18 Uhr => entry 120");
    check("german", "Probe 19.30 bis 21.30 => entry 120");
    check("french", "répétition 20h30 à 22h => entry 90");
    check("dutch", "Les van 10.30 - 11.00 => phase 30");
    check("french", "Orchestre 20h-22h => entry 120");
    check("spanish", "ensayo 20.00-22.15 => entry 135");
  });

  test("bars, tempos and other things are none", () => {
    check(
      "english",
      `
      band 88-96              => prose
      group of 10-12 people   => prose
      Class photo 10.15-10.30 => prose
      Group chat 9-10 pm      => prose
      Practice room closed 7-8 pm => prose
      band members 3-4 ill    => prose
      trio 1-8                => prose
      Orchestra, bars 8-10    => entry
      Orchestra: Overture 1-4 => entry
      dentist 10-11 am        => prose
      shop open 9-5           => prose
      class of 8-11 year olds => prose
      7-9 pm                  => prose
    `,
    );
  });

  test("nor are people and mistakes that are counted", () => {
    check("german", "Gruppe 3-4 Leute => prose");
    check("french", "groupe de 8-10 ans => prose");
    check("dutch", "groep 3-4 kinderen => prose");
  });

  test("nor is what did not take place", () => {
    check(
      "english",
      `
      No band 7.30-9.30        => prose
      band cancelled 7.30-9.30 => prose
    `,
    );
  });
});

test("fingers of the plucking hand are no word of a sentence, and a technique is no pain", () => {
  check("spanish", "cuerdas al aire i-m, 5 min => entry 5");
  expect(read("french", "main droite cordes à vide 5 min").type).not.toBe("body");
  expect(read("french", "poignet vide").type).toBe("body");
});
