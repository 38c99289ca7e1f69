import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What stands in front of what is practised, with a sign behind it. Lines invented; common practice, no source.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("an instrument, a person or a place is kept, and the line is read behind it", () => {
  check(`
    A: D dorian, slurred, 88                => entry: D dorian | unknown A | articulation slurred (slurred) | tempo 88
    A | F major, 12th | 92 | clean          => entry: F major | unknown A | span twelfth | tempo 92 | outcome clean
    T | long tones | – | 6 min              => entry: long tones | unknown T | 6 min
    tenor: long tones, no vibrato, 8 min    => entry: long tones | unknown tenor | unknown no vibrato | 8 min
    [own] tenor: G major 60                 => entry: G major | unknown [own] tenor | tempo 60
    Tenor:long tones, 5 min                 => entry: long tones | unknown Tenor | 5 min
    at home: string crossings, 8x, tidy     => entry: string crossings | unknown at home | times 8 | outcome tidy
    band: Overture to a Fair, letter C, 66  => entry: title Overture to a Fair (undeclared) | unknown band | place letter C | tempo 66
  `);
});

test("a heading with what is practised on the same line is an entry", () => {
  check(`
    Warm-up: long tones, 5 min              => entry: long tones | unknown Warm-up | 5 min
    warm up - lip slurs 5 min               => entry: lip slurs | unknown warm up | 5 min
    warm-up, 10 min                         => phase: phase warm-up | 10 min
    lesson: D minor                         => phase: phase lesson | second subject D natural minor (natural unsaid)
  `);
});

test("who says something is none, nor what a tonic claims", () => {
  check(`
    Ruth: F major slower please             => said
    Lou: "leave the first beat alone"       => prose
    C: C E G                                => entry: C major (major unsaid) | notes C E G
    clarinet: G major 60                    => entry: G major | instrument clarinet in Bb | tempo 60
    dog: walked 20 min                      => prose
  `);
});
