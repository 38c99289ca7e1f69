import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// Where a chromatic scale begins is said in many places: common practice, no source.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("a chromatic scale takes its tonic from what stands behind", () => {
  check(`
    chromatic, 2 octaves from D, triplets @ 100 => entry: D chromatic | span 2 octaves | note value 1/12 | tempo 100
    chromatic down from E, at 60     => entry: E chromatic | direction down | tempo 60
    chromatic in thirds, start on C  => entry: C chromatic | pattern thirds
    chromatic, low F to high F, 8ths => entry: F chromatic | note value 1/8
    chrom low Bb–high F#, 16ths      => entry: Bb chromatic | note value 1/16
    chromatic from low C, at 60      => entry: C chromatic | tempo 60
    f-f''' chromatic, at 60          => entry: chromatic from F to F6 | tempo 60
    chromatic, at 60, from D         => entry: D chromatic | tempo 60
  `);
});

test("what is said of how it went tells no tonic", () => {
  check(`
    chromatic, at 60 clean, from D uneven => entry: chromatic | tempo 60 | outcome clean | unknown from D uneven
    chromatic, at 60, C# to D bad         => entry: chromatic | tempo 60 | note C# | unknown to | note D | unknown bad
    chromatic, uneven from G on           => entry: chromatic | unknown uneven from G on
  `);
});
