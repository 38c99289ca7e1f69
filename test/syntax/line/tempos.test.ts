import { expect, test } from "vitest";
import { languageWords } from "../../../server/journal/language.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { PieceTable } from "../../../server/syntax/line/pieces.ts";
import { Vocabulary } from "../../../server/syntax/words/vocabulary.ts";
import { itemsOf, rowsOf } from "./print.ts";

// How tempos are written: forms after the design's page on reading; common practice, no source.

const table = new PieceTable(new Vocabulary(languageWords(ENGLISH_NAMES), ENGLISH_NAMES));

/** Rows of a stretch of words and the items in it. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows))
    expect([typed, itemsOf(table.itemsIn(typed, 0, typed.length)).join(" | ")]).toEqual([typed, meaning]);
}

test("a number with a mark of its own", () => {
  check(`
    @60                 => tempo 60
    @ 60                => tempo 60
    60 bpm              => tempo 60
    60bpm               => tempo 60
    60-72bpm            => tempo 60-72
    mm 60               => tempo 60
    MM=60               => tempo 60
    M.M. 60             => tempo 60
    M.M. = 60           => tempo 60
    bei 60              => tempo 60
    Tempo 76            => tempo 76
    metronome at 50     => tempo 50
    metro 60            => tempo 60
    click 60            => tempo 60
    click = 60          => tempo 60
    ca. 60              => tempo 60
    c. 60               => tempo 60
    about 60            => tempo 60
    at about 60         => tempo 60
    ~60                 => tempo 60
    80ish               => tempo 80
    80-ish              => tempo 80
    D minor at 60.      => second subject D natural minor (natural unsaid) | tempo 60
  `);
});

test("a number with its beat", () => {
  check(`
    q=60                  => tempo 1/4=60
    q 60                  => tempo 1/4=60
    q = ca. 60            => tempo 1/4=60
    e=120                 => tempo 1/8=120
    h = 60                => tempo 1/2=60
    crotchet 60           => tempo 1/4=60
    crotch. 60            => tempo 1/4=60
    crotchet 100 ish      => tempo 1/4=100
    minim 60              => tempo 1/2=60
    min = 60              => tempo 1/2=60
    dotted quarter = 60   => tempo 3/8=60
    dotted crotchet 44    => tempo 3/8=44
    ♩=60                  => tempo 1/4=60
    ♩ = 60                => tempo 1/4=60
    8th=104               => tempo 1/8=104
    noire 69              => tempo 1/4=69
    noire pointée = 60    => tempo 3/8=60
    Viertel 60            => tempo 1/4=60
    punktierte Viertel = 60 => tempo 3/8=60
    Halbe = 60            => tempo 1/2=60
    112 to the crotchet   => tempo 1/4=112
    at 8ths 60            => tempo 1/8=60
  `);
});

test("rows of tempos, and two that are one attempt", () => {
  check(`
    72 84 96                => number 72 | number 84 | number 96
    60/72/80                => number 60 | number 72 | number 80
    at 60/72/80             => tempo 60 | number 72 | number 80
    60, 66, 72              => number 60 | number 66 | number 72
    36 — 40 — 44            => number 36 | number 40 | number 44
    104 → 112 → 120         => number 104 | number 112 | number 120
    ♩=80 / 88 / 96 / 104!!  => tempo 1/4=80 | number 88 | number 96 | number 104
    60bpm / 66bpm / 72bpm   => tempo 60 | tempo 66 | tempo 72
    132 / 144               => number 132 | number 144
    52-60                   => range 52-60
    60 to 72                => range 60-72
    60 → 69                 => range 60-69
    60 -> 72                => range 60-72
    at 60 → 69              => tempo 60-69
    quavers 60 72           => note value 1/8 | number 60 | number 72
  `);
});

test("mm before a range is a tempo behind a term of a scale, and else measures for whoever reads places", () => {
  check(`
    thirds quavers mm 60-80 => pattern thirds | note value 1/8 | tempo 60-80
    Study mm 60-80          => unknown Study | place bars 60-80
  `);
});

test("what is no tempo", () => {
  check(`
    goal 84          => goal 84
    was 60           => unknown was 60
    was at 60        => unknown was at 60
    since 60         => unknown since 60
    string 60        => unknown string 60
    finger 40        => unknown finger 40
    about 60 people  => unknown about | number 60 | unknown people
    about 60 min     => about 60 min
    click 4          => unknown click | number 4
    60. Takt         => unknown 60. Takt
    3/4              => unknown 3/4
    e minor          => second subject E natural minor (natural unsaid)
  `);
});

test("a dash begins a remark only where no tempo, sign or number of a row follows", () => {
  check(`
    at 60 clean – too loud  => tempo 60 | outcome clean
    at 60 clean – @72 slips => tempo 60 | outcome clean | tempo 72 | outcome slips
    at 60 – ✓               => tempo 60 | unknown – | outcome ✓
    C major – 8ths 100      => second subject C major | note value 1/8 | number 100
  `);
});
