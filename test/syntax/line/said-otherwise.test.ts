import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// The same thing in other words, and what only looks like it. Lines invented; common practice, no source.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("concert pitch says how a key sounds, and is no concert", () => {
  check(`
    concert Bb scale, twice              => entry: Bb major (major unsaid) | times 2
    concert eb 80                        => entry: Eb major (major unsaid) | tempo 80
    concert a week later                 => entry: gig | note A (lower) | unknown week later
    concert, 90 min                      => entry: gig | 90 min
  `);
});

test("a title in quotes may come after a few words, and what somebody said is none", () => {
  check(`
    new piece "Harvest", bars 1-8        => entry: title Harvest (undeclared) | unknown new piece | place bars 1-8
    "Harvest", bars 1-8                  => entry: title Harvest (undeclared) | place bars 1-8
    "my thumb is loose" she said         => prose
  `);
});

test("a kind with its article tells which minor, and a progression has a key", () => {
  check(`
    G minor (the melodic one), 72        => entry: G melodic minor | unknown one | tempo 72
    ii-V-I in G, 90                      => entry: ii V I on G | tempo 90
  `);
});

test("behind the name of an instrument a full stop and a dash part as a colon does", () => {
  check(`
    Treble. Long tones, 5 min            => entry: long tones | unknown Treble. | 5 min
    TENOR - Pavan, bars 1-8, 92          => entry: title Pavan (undeclared) | unknown TENOR | place bars 1-8 | tempo 92
  `);
});

test("a place is of the piece above, with a tempo or how it went", () => {
  check(`
    bars 9-12 of it apart, 50 then 56    => entry: (no subject) | place bars 9-12 | unknown of it apart | tempo 50 | tempo 56
    Development, bars 80-112, at 60 ok   => entry: (no subject) | place development | place bars 80-112 | tempo 60 | outcome ok
    Head office at 10                    => prose
  `);
});
