import { expect, test } from "vitest";
import { bodyOf } from "../../../server/journal/body-said.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

// What words say of the player's body. Words of everyday speech, from memory; the sentences are invented.

function saidIn(names: string, text: string): string {
  const journal = new Journal("file:///j", new Map([["file:///j/a.practice", createDocument(`names ${names}\n`)]]));
  return bodyOf(text, journal.vocabulary) ?? "-";
}

function check(names: string, expected: string, sentences: string): void {
  for (const text of sentences.split("\n").map((line) => line.trim())) {
    if (text === "") continue;
    expect([text, saidIn(names, text)]).toEqual([text, expected]);
  }
}

test("what hurts, in English", () => {
  check(
    "english",
    "hurts",
    `
    backache
    bad headache after band
    earache
    jaw ache
    pins and needles in fingers
    pins & needles in my left hand
    shoulder tight
    jaw tight L
    neck too tight
    lips swollen
    cramp in my thumb
    wrist acting up
    tendinitis again
    fingertips tender
    my ear's ringing
    `,
  );
});

test("what hurts, in German", () => {
  check(
    "german",
    "hurts",
    `
    Rückenschmerzen
    Kopfschmerzen nach der Probe
    Nackenschmerzen, Gelenkschmerzen
    leichte Handgelenkschmerzen
    Schulterschmerz links
    Kopfweh
    Krampf im Daumen
    Fingerkrampf
    Sehnenscheidenentzündung
    Schulter verspannt
    Hand verkrampft
    Handgelenk zwickt
    Daumen ziept
    Fingerkuppen wund
    Ellenbogen brennt
    Sehnenscheide meldet sich
    Lippe kaputt
    RÜCKENSCHMERZEN
    `,
  );
});

test("what hurts, in Dutch, French, Italian and Spanish", () => {
  check("dutch", "hurts", "rugpijn\nhoofdpijn\nkramp in de hand\nvingers tintelen\npeesontsteking\nschouder verkrampt");
  check(
    "french",
    "hurts",
    "mal de dos\ntendinite au poignet\ncrampe\nfourmillements dans les doigts\népaule contractée\nlèvres gonflées",
  );
  check(
    "italian",
    "hurts",
    "mal di schiena\ntendinite\ncrampo al pollice\ndita intorpidite\npollice intorpidito\nspalla contratta",
  );
  check("spanish", "hurts", "dolor de espalda\ntendinitis\ncalambre\nhormigueo en los dedos\nhombro contracturado");
});

test("one slip of spelling beside a part of the body counts, for safety's sake", () => {
  check("english", "hurts", "lips swolen\near's are rining\nthumb swollon\nnumbnes in the left hand");
  check("german", "hurts", "Daumen schmertzt\nHandgelenk geschwolen");
});

test("a slip of something else, or away from the body, does not", () => {
  check(
    "english",
    "-",
    `
    swolen
    thumb turning under
    arching fingers
    looked at the left hand
    bringing the hand along
    singing voice first
    left hand clamps the peg
    `,
  );
});

test("what is tight may be the playing", () => {
  check("english", "-", "tight ensemble\ntight rhythm\n16ths tight");
  check("english", "tense", "fingers tight on the beat\nhands tight with the pulse\ntight");
});

test("what does not hurt is no alarm", () => {
  check("english", "eased", "no pain\npain free\npain-free today\nno backache\nno pins and needles\nwithout pain");
  check("german", "eased", "KEINE SCHMERZEN\nkeine Rückenschmerzen\nohne Schmerzen\nschmerzfrei");
  check("german", "-", "Daumen locker\nSchulter locker\nHandgelenk leicht");
  check("dutch", "eased", "geen rugpijn\npijnvrij");
});

test("a good word eases a pain only where it is said of it", () => {
  check("english", "hurts", "wrist hurts even at rest\nwrist sore after a good run\nshoulder hurts not good");
  check("english", "hurts", "wrist pain still strong\nthumb stiff but not good");
  check("english", "eased", "thumb stiff but fine\nwrist sore but ok now");
  check("german", "hurts", "Schulter schmerzt leicht\nSchmerz geht durch den Arm\nSchmerz sitzt tief");
  check("french", "hurts", "douleur au pouce bien présente");
  check("spanish", "hurts", "dolor de mano y codo");
});
