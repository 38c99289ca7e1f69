import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// Pieces by the names that players give them, and lines that only look like one. Composers are real, the lines invented.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("a composer stands before a kind of piece, a movement or a key", () => {
  check(`
    Bach, Minuet in G, bars 1-8         => entry: title Bach, Minuet in G (undeclared) | place bars 1-8
    Monday, Minuet, bars 1-8            => prose
    Brahms I, bars 38-60                => entry: title Brahms I (undeclared) | place bars 38-60
    Mozart D maj i / expo / 116 / solid => entry: title Mozart D maj i (undeclared) | unknown expo | tempo 116 | outcome solid
    Slow D major, bars 1-8              => entry: D major | without click slow | place bars 1-8
  `);
});

test("a title ends before the one it was played to", () => {
  check(`
    Mouse Waltz for Granny on the phone, whole thing => entry: title Mouse Waltz (undeclared) | place whole thing
    played Skye Boat to Granny and she sang          => entry: title Skye Boat (undeclared)
    played Monopoly with Granny                      => prose
    Fanfare for the Common Man, bars 1-8             => entry: title Fanfare for the Common Man (undeclared) | place bars 1-8
  `);
});

test("a part of the piece, or its kind, stands before its name", () => {
  check(`
    trio of the Minuet, 88 good                  => entry: title Minuet (undeclared) | tempo 88 | outcome good
    end of the day, tired                        => prose
    strathspey (Mrs Pirnie's Kettle) part 1, 108 => entry: title Mrs Pirnie's Kettle (undeclared) | unknown strathspey | place part 1 | tempo 108
    Pavan (I am on part 3) bars 1-16, at 50      => entry: title Pavan (undeclared) | unknown I am on | place part 3 | place bars 1-16 | tempo 50
  `);
});

test("small letters are a title beside a place apart, and how it was played there", () => {
  check(`
    greensleeves - first half - slow - nearly => entry: title greensleeves (undeclared) | place first half | without click slow | outcome nearly
    stella, first 16, slow, nearly            => entry: title stella (undeclared) | place first 16 | without click slow | outcome nearly
    film, first half, slow                    => prose
  `);
});
