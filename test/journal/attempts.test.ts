import { expect, test } from "vitest";
import { rowsOf } from "../syntax/line/print.ts";
import { attemptsTold } from "./print.ts";

// Which conditions and outcomes hold for which tempo: the rules under "Entries" of the format.

/** Rows of an entry's terms, as they stand behind `D minor, `, and its attempts. */
function check(rows: string): void {
  for (const [terms, attempts] of rowsOf(rows)) expect([terms, attemptsTold(terms)]).toEqual([terms, attempts]);
}

test("what stands before the first tempo holds for the whole line", () => {
  check(`
    slurred, 8ths, 2 octaves, at 60 clean, 66 slips => slurred (slurred), 1/8s, 2 oct: 60 clean reached | slurred (slurred), 1/8s, 2 oct: 66 slips
    8ths at 60                                      => 1/8s: 60
    by heart, at 60 clean                           => by heart: 60 clean reached
    dotted, down, at 60, 66                         => dotted (uneven), down: 60 | dotted (uneven), down: 66
  `);
});

test("a condition after a tempo replaces the earlier one from there on", () => {
  check(`
    slurred at 54 clean, tongued at 54 uneven, 50 clean => slurred (slurred): 54 clean reached | tongued (single): 54 uneven | tongued (single): 50 clean reached
    8ths at 60 clean, 16ths at 60 slips             => 1/8s: 60 clean reached | 1/16s: 60 slips
    up, at 60 clean, down, 60 slips                 => up: 60 clean reached | down: 60 slips
    1 octave at 60 clean, 2 octaves at 60 uneven    => 1 oct: 60 clean reached | 2 oct: 60 uneven
    at 60 clean, dotted at 60 uneven                => 60 clean reached | dotted (uneven): 60 uneven
    even at 60, dotted at 60, LSS at 60             => even: 60 | dotted (uneven): 60 | LSS (uneven): 60
  `);
});

test("a term after the last tempo holds for the whole line", () => {
  check(`
    at 60 clean, 66 slips, slurred                  => slurred (slurred): 60 clean reached | slurred (slurred): 66 slips
    at 60 clean, 8ths                               => 1/8s: 60 clean reached
    at 60 clean, by heart                           => by heart: 60 clean reached
    slurred at 60, tongued at 66, 2 octaves         => slurred (slurred), 2 oct: 60 | tongued (single), 2 oct: 66
  `);
});

test("two halves make one articulation, mixed where they differ", () => {
  check(`
    slurred up, tongued down, at 60                 => slurred up, tongued down (mixed): 60
    slurred up, slurred down, at 60                 => slurred up, slurred down (slurred): 60
    t-k up, slurred down, at 60                     => t-k up, slurred down (mixed): 60
    slurred up, at 60                               => slurred up (slurred): 60
  `);
});

test("an outcome belongs to the tempo before it, or to the line where there is none", () => {
  check(`
    at 60 clean                                     => 60 clean reached
    at 60 clean, 66 slips, 72 broke down            => 60 clean reached | 66 slips | 72 broke down
    at 60, 66 clean                                 => 60 | 66 clean reached
    at 60 to 72 clean                               => 60-72 clean reached
    clean                                           => clean reached
    slow, clean                                     => slow: clean reached
    slow, clean, at 60 slips                        => slow: clean reached | slow: 60 slips
    thirds                                          =>
    clean at 60                                     => 60 clean reached
    clean, at 60                                    => 60 clean reached
    at 60, 5 min clean 66 nearly                    => 60 clean reached | 66 nearly
    at 54, 60, slurred clean 66 nearly              => 54 | 60 clean reached | slurred (slurred): 66 nearly
    at 60, 5 min clean 66                           => 60 | 66 clean reached
  `);
});

test("a tempo counts as reached when easy or clean and not tense, in at least half of the tries", () => {
  check(`
    at 60 easy                                      => 60 easy reached
    at 60 clean tense                               => 60 clean tense
    at 60 clean, tense                              => 60 clean tense
    at 60 easy uneven                               => 60 easy uneven reached
    at 60 nearly                                    => 60 nearly
    at 60 clean 5 in a row                          => 60 clean 5/5 reached
    at 60 clean 5x                                  => 60 clean 5/5 reached
    at 60 clean 1 of 2                              => 60 clean 1/2 reached
    at 60 clean 2 of 5                              => 60 clean 2/5
    at 60 clean 3 of 5                              => 60 clean 3/5 reached
    at 60 slips 4 of 5                              => 60 slips 4/5
    at 60 clean, 5x                                 => 60 clean reached
  `);
});

test("a tempo that goes on keeps its beat", () => {
  check(`
    ♩.=46 clean, 50 slips                           => 3/8=46 clean reached | 3/8=50 slips
    8th=96 clean, quarter=52 slips, 54              => 1/8=96 clean reached | 1/4=52 slips | 1/4=54
  `);
});
