import { expect, test } from "vitest";
import { rowsOf } from "../syntax/line/print.ts";
import { attemptsTold } from "./print.ts";

// What is said of several tempos at once, and of which each is said. Lines invented; common practice, no source.

function check(rows: string): void {
  for (const [terms, attempts] of rowsOf(rows)) expect([terms, attemptsTold(terms)]).toEqual([terms, attempts]);
}

test("as many outcomes as tempos are dealt out over them, however they are parted", () => {
  check(`
    100 120 140 good good ok        => 100 good reached | 120 good reached | 140 ok reached
    72 / 80 / 88: + + ~             => 72 + reached | 80 + reached | 88 ~
    60 / 72 (clean / one flub)      => 60 clean reached | 72
    60 66 72    ok / ok / no idea   => 60 ok reached | 66 ok reached | 72
    70 - 80 - 90, ok ok nope        => 70 ok reached | 80 ok reached | 90 nope
    66, 72 - fine, not              => 66 fine reached | 72 not
    66, 72: clean; clean; fine      => 66 | 72
    q=60, 66: clean; uneven         => 1/4=60 clean reached | 1/4=66 uneven
    72 76 80 ✓✓x                    => 72 ✓ reached | 76 ✓ reached | 80 x
    120/130/140 y y n               => 120 y reached | 130 y reached | 140 n
    50, 50, 56 y y n                => 50 y reached | 50 y reached | 56 n
  `);
});

test("fewer outcomes, or two that may both be said of the last tempo, stay with the last", () => {
  check(`
    60, 66, 72 clean tense          => 60 | 66 | 72 clean tense
    at 60, 66 clean, tense          => 60 | 66 clean tense
    at 60 clean, 66 clean, tense    => 60 clean reached | 66 clean tense
  `);
});

test("a mark right behind its tempo says how it went", () => {
  check(`
    84 v                            => 84 v reached
    66 v 72 v 80 x                  => 66 v reached | 72 v reached | 80 x
    96 v, 104 v, 112 x              => 96 v reached | 104 v reached | 112 x
    60 y, 66 n                      => 60 y reached | 66 n
    60 x 3                          => 60
  `);
});

test("a tempo that is named again is the one of before, where something leads back to it", () => {
  check(`
    88, 96, 104 (104 sticky)        => 88 | 96 | 104 sticky
    88 / 96 / 104 -> 96 tense       => 88 | 96 tense | 104
    150, 160, nope at 160           => 150 | 160 nope
    60 66 72: 60 ok, 66 ok, 72 no   => 60 ok reached | 66 ok reached | 72 no
    60, 66, 72, 60 clean            => 60 | 66 | 72 | 60 clean reached
    60 clean, 66 tense, at 60 clean => 60 clean reached | 66 tense | 60 clean reached
    at 60, at 66, at 60 clean       => 60 | 66 | 60 clean reached
  `);
});

test("words that lead to how it went say nothing of it", () => {
  check(`
    72, 80 and steady               => 72 | 80 steady reached
    72, 76, 80 - the last no good   => 72 | 76 | 80 no good
  `);
});
