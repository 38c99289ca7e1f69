import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// Numbers that tell of practice by where they stand. Lines invented; common practice, no source.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("numbers that rise one after the other are tempos, whatever stands before them", () => {
  check(`
    8 on a hand 100 120 140 ok        => entry: 8 on a hand | tempo 100 | tempo 120 | tempo 140 | outcome ok
    kit groove thing 100 then 108     => entry: kit groove thing | tempo 100 | tempo 108
    wet boots / 80 / 90 / 100         => entry: wet boots | tempo 80 | tempo 90 | tempo 100
    bp 120 80, says the nurse         => prose
    paid 40 50 for reeds              => prose
    room 40 then 45                   => prose
  `);
});

test("so is one right behind a technique, a way of playing, or work without the metronome", () => {
  check(`
    five str rolls 90 RRLLR           => entry: five str rolls | tempo 90 | unknown RRLLR
    soft taps in 8ths 90              => entry: soft taps in 8ths | tempo 90
    GDG picking slow then 84          => entry: GDG picking | without click slow | tempo 84
  `);
});

test("a kind of piece with its number is a piece, and no count is one", () => {
  check(`
    song 41 x3 ok                     => entry: title song 41 (undeclared) | times 3 | outcome ok
    No 15. Awful                      => entry: title No 15 (undeclared) | outcome awful
    study 9 sight reading             => entry: title study 9 (undeclared) | second subject sight-reading
    no 5 today                        => prose
    song 2 is stuck in my head        => prose
    March 3, snow                     => prose
    study                             => phase: phase studies
    No                                => prose
    vocalise 5 notes, 80              => entry: vocalises | span 5 degrees | tempo 80
  `);
});

test("keys a fifth apart are practised in turn, and what is said before the first goes for all", () => {
  check(`
    Bb Eb Ab Db 1 octave, 88          => entry: Bb major, Eb major, Ab major, Db major | span 1 octaves | tempo 88
    D E F, 88                         => entry: (no subject) | note D | note E | note F | tempo 88
    arp Bb major, F major, 80         => entry: Bb major arpeggio, F major arpeggio | tempo 80
    Arp Bb major, F major, 80         => entry: Bb major arpeggio, F major arpeggio | tempo 80
    C- mel, F- mel, 92                => entry: C melodic minor, F melodic minor | tempo 92
    scale C 60                        => entry: C major (major unsaid) | unknown scale | tempo 60
  `);
});

test("spaces between columns part what a comma does", () => {
  check(`
    D minor   72   clean              => entry: D natural minor (natural unsaid) | tempo 72 | outcome clean
    D minor  72  clean                => entry: D natural minor (natural unsaid) | tempo 72 | outcome clean
  `);
});

test("words of an exercise in a name make no title of it", () => {
  check(`
    Popping exercise, page 6, clean   => entry: Popping exercise | place page 6 | outcome clean
    Finger trills Bb-C, 20x           => entry: Finger trills Bb-C | times 20
    Galliard 3/2, bars 9-16, 100      => entry: title Galliard (undeclared) | place bars 9-16 | tempo 100
  `);
});

test("of a piece a range in front of a tempo is bars, as one too slow for a tempo is", () => {
  check(`
    "Giga", bars 1-16 @ 58, 17-34 @ 50   => entry: title Giga (undeclared) | place bars 1-16 | tempo 58 | place bars 17-34 | tempo 50
    "Giga", 1st mvt 17-34, 56            => entry: title Giga (undeclared) | place mvt 1 | place 17-34 | tempo 56
    minuet 96 wobbly                     => entry: title minuet (undeclared) | tempo 96 | outcome wobbly
    song 41, clean                       => entry: title song 41 (undeclared) | outcome clean
  `);
});
