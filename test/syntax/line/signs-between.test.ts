import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What parts one thing on a line from the next where no comma stands. Lines invented; common practice, no source.

/** Rows of a line, as it is typed below a day, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("a full stop parts as a comma does, but behind an abbreviation or in an ordinal", () => {
  check(`
    D minor, slurred. Nearly.    => entry: D natural minor (natural unsaid) | articulation slurred (slurred) | outcome nearly
    D minor, at 56. Low C cracks => entry: D natural minor (natural unsaid) | tempo 56 | unknown Low C cracks
    D minor, both. 54            => entry: D natural minor (natural unsaid) | unknown both | tempo 54
    D harm. Min, at 60           => entry: D harmonic minor | tempo 60
    "Jig", 60. Takt              => entry: title Jig (undeclared) | unknown 60. Takt
    D minor, op. 3               => entry: D natural minor (natural unsaid) | unknown op. 3
  `);
});

test("so does a hyphen between spaces, where no range goes on", () => {
  check(`
    D minor - at 60 - clean      => entry: D natural minor (natural unsaid) | tempo 60 | outcome clean
    lip trills 3 min - easy      => entry: lip trills | 3 min | outcome easy
    "Jig", bars 9 - 12           => entry: title Jig (undeclared) | place bars 9-12
    "Jig", bar 17 - end          => entry: title Jig (undeclared) | place bars 17-end
    D minor, 60 - 66 - 72        => entry: D natural minor (natural unsaid) | tempo 60 | tempo 66 | tempo 72
  `);
});

test("behind a dash stands a remark, but where a tempo does or where only both together tell of practice", () => {
  check(`
    D minor, at 60 – nice and calm                => entry: D natural minor (natural unsaid) | tempo 60 | remark "nice and calm"
    Slow Freight – head @ 168 solid               => entry: title Slow Freight (undeclared) | place head | tempo 168 | outcome solid
    Late Bus Home – head, 160                     => entry: title Late Bus Home (undeclared) | place head | tempo 160
    D minor – in F @ 120                          => entry: D natural minor (natural unsaid) | unknown in F | tempo 120
    Good Morning – at last 30 min for the sarabande => prose | remark "at last 30 min for the sarabande"
  `);
});

test("how it went may be close to its tempo", () => {
  check(`
    D minor 66✓ 72✓ 76✗          => entry: D natural minor (natural unsaid) | tempo 66 | outcome ✓ | tempo 72 | outcome ✓ | tempo 76 | outcome ✗
    D minor 80ok 85ok 90nope     => entry: D natural minor (natural unsaid) | tempo 80 | outcome ok | tempo 85 | outcome ok | tempo 90 | outcome nope
    D minor 66(ok) 72(no)        => entry: D natural minor (natural unsaid) | tempo 66 | outcome ok | tempo 72 | outcome no
    D minor 72+ 80+ 84± 88-      => entry: D natural minor (natural unsaid) | tempo 72 | outcome + | tempo 80 | outcome + | tempo 84 | outcome ± | tempo 88 | outcome –
    D minor 60s 16ths 20x        => entry: D natural minor (natural unsaid) | unknown 60s | note value 1/16 | times 20
  `);
});

test("what was said of a tempo goes on to the next comma, whatever is found in it, but for terms", () => {
  check(`
    D minor, at 60 flat on the long D      => entry: D natural minor (natural unsaid) | tempo 60 | unknown flat on the long D
    D minor, at 60 thumb too slow, 66 fine => entry: D natural minor (natural unsaid) | tempo 60 | unknown thumb too slow | tempo 66 | outcome fine
    D minor, at 60 thirds slurred          => entry: D natural minor (natural unsaid) | tempo 60 | pattern thirds | articulation slurred (slurred)
    D minor, F sharp missing, 60           => entry: D natural minor (natural unsaid) | unknown F sharp missing | tempo 60
    D minor, F4 to G6                      => entry: D natural minor (natural unsaid) | note F4 | unknown to | note G6
  `);
});

test("a number behind a range of bars is a tempo, one in a list of bars is none", () => {
  check(`
    "Jig", bars 1-12 66 ok       => entry: title Jig (undeclared) | place bars 1-12 | tempo 66 | outcome ok
    "Jig", bars 1-12, 66         => entry: title Jig (undeclared) | place bars 1-12 | tempo 66
    "Jig", bars 12, 30, 44       => entry: title Jig (undeclared) | place bars 12, 30, 44
    "Jig", bars 1-8, 17-24, 30   => entry: title Jig (undeclared) | place bars 1-8, 17-24, 30
    "Jig", mes. 1 à 24           => entry: title Jig (undeclared) | unknown mes. 1 à 24
  `);
});

test("an amount before the subject stands beside it", () => {
  check(`
    5' lip slurs                 => entry: lip slurs | 5 min
    10 min, D minor, 60          => entry: D natural minor (natural unsaid) | 10 min | tempo 60
    5 min stopped notes, uneven  => entry: stopped notes | 5 min | outcome uneven
  `);
});

test("columns are parted by bars, by brackets, and by slashes where one of them has the tempo", () => {
  check(`
    D minor | thirds | 72 | clean     => entry: D natural minor (natural unsaid) | pattern thirds | tempo 72 | outcome clean
    D minor / thirds / ♩=72 / clean   => entry: D natural minor (natural unsaid) | pattern thirds | tempo 1/4=72 | outcome clean
    D minor [thirds] 72 clean         => entry: D natural minor (natural unsaid) | pattern thirds | tempo 72 | outcome clean
    D minor, 72 ok / 80 no            => entry: D natural minor (natural unsaid) | tempo 72 | outcome ok | tempo 80 | outcome no
    D minor, slurred / tongued        => entry: D natural minor (natural unsaid) | articulation slurred (slurred) | unknown / | articulation tongued (single)
    D major: D E F# G | A B C# D      => entry: D major | notes D E F# G A B C# D
    notes E | F                       => entry: notes E F
  `);
});

test("pictures say how it went as ticks and crosses do, whatever their colour", () => {
  check(`
    D minor, 60 66 72 ✅✅❌   => entry: D natural minor (natural unsaid) | tempo 60 | tempo 66 | tempo 72 | outcome ✅ | outcome ✅ | outcome ❌
    D minor, 60 👍🏽, 66 👎     => entry: D natural minor (natural unsaid) | tempo 60 | outcome 👍 | tempo 66 | outcome 👎
    D minor ✔️                 => entry: D natural minor (natural unsaid) | outcome ✔
    D minor, 66😀             => entry: D natural minor (natural unsaid) | tempo 66 | outcome 😀
  `);
});
