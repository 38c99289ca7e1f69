import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// Practice by what stands beside words that nobody knows. Lines invented; common practice, no source.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("words in front of a tempo that is marked, or that stands between commas, name an exercise", () => {
  check(`
    gde gracing, 48, the last one late => entry: gde gracing | tempo 48 | outcome late
    gde gracing @48 clean              => entry: gde gracing | tempo 48 | outcome clean
    gde gracing ♩=48                   => entry: gde gracing | tempo 1/4=48
    gde gracing, 44, 48, 52            => entry: gde gracing | tempo 44 | tempo 48 | tempo 52
  `);
});

test("with a place they are a piece", () => {
  check(`
    the wet collie, 2nd part, 70       => entry: title the wet collie (undeclared) | place 2nd part | tempo 70
    old king parsnip line 4 clean      => entry: title old king parsnip (undeclared) | place lines 4 | outcome clean
  `);
});

test("a sentence, a count and a number inside the words tell of none", () => {
  check(`
    she said the room was at 60, lovely    => prose
    I woke at seven, 60, not good          => prose
    gde gracing at 48                      => prose
    bus 48 was late                        => prose
    counted the bars, 32, and went home    => prose
    no scales for now, 60 seconds rest     => prose
    remember line 4 clean                  => prose
  `);
});

test("a number that opens the line is the tempo of what stands behind it", () => {
  check(`
    84 D major thirds clean            => entry: D major | tempo 84 | pattern thirds | outcome clean
    [72] D major clean                 => entry: D major | tempo 72 | outcome clean
    [54] Gavotte, bars 1-8             => entry: title Gavotte (undeclared) | tempo 54 | place bars 1-8
    72 76 flam taps ok                 => entry: flam taps | tempo 72 | tempo 76 | outcome ok
    metronome on 60 D scale            => entry: D major (major unsaid) | tempo 60
    24 Gavottes, bars 1-8              => entry: title 24 Gavottes (undeclared) | place bars 1-8
    60 minutes of scales               => prose
  `);
});

test("in English a small letter before `scale` is a key, and `a scale` is any", () => {
  check(`
    did my c scale 3 times             => entry: C major (major unsaid) | unknown did my | times 3
    g scale up and down                => entry: G major (major unsaid) | direction up and down
    wrote a scale in the margin        => prose
  `);
});
