import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What is played and how: the term table of the format, one row for each, with other spellings. Each stands behind `D minor, `.

/** Rows of a term, as it is typed behind `D minor, `, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) {
    const line = read(`D minor, ${typed}`);
    expect([typed, line.type, lineText(line).split(" | ").slice(1).join(" | ")]).toEqual([typed, "entry", meaning]);
  }
}

test("patterns, with the names that go before and behind them", () => {
  check(`
    thirds              => pattern thirds
    in thirds           => pattern thirds
    3rds                => pattern thirds
    broken thirds       => pattern thirds
    groups of three     => pattern threes
    groups of 3         => pattern threes
    upper-neighbours    => pattern upper neighbours
    upper neighbors     => pattern upper neighbours
    five notes on each  => pattern five notes on each
    7ths                => pattern sevenths
    sevenths            => pattern sevenths
    seventh chords      => pattern seventh chords
    octaves             => pattern octaves
    "zigzag"            => "zigzag"
    diatonic thirds     => pattern thirds
    in 3s               => pattern threes
    in 4s               => pattern fours
    four-note groups    => pattern fours
    five-note groups    => pattern fives
    octave leaps        => pattern octaves
    upper auxiliaries   => pattern upper neighbours
    lower neighbour notes => pattern lower neighbours
    diatonic triads     => pattern triads
    leaps               => pattern leaps
    in leaps            => pattern leaps
    thirds alternating  => pattern thirds | variant alternating
    thirds, alternating => pattern thirds | variant alternating
    alternating thirds  => variant alternating | pattern thirds
    triads broken       => pattern triads | variant broken
    straight            => pattern straight
    thirds and sixths   => pattern thirds | unknown and | pattern sixths
  `);
});

test("directions", () => {
  check(`
    up             => direction up
    down           => direction down
    ascending      => direction up
    upwards        => direction up
    up and down    => direction up and down
    top down       => direction down and up
    down and up    => direction down and up
    back and forth => direction back and forth
    up/down        => unknown up/down
  `);
});

test("spans", () => {
  check(`
    five notes     => span 5 degrees
    9 notes        => span 9 degrees
    five-note      => span 5 degrees
    1 octave       => span 1 octaves
    octave         => span 1 octaves
    an octave      => span 1 octaves
    2 octaves      => span 2 octaves
    two octaves    => span 2 octaves
    twelfth        => span twelfth
    a twelfth      => span twelfth
    full range     => span full range
    full-range     => span full range
    from F4 to G6  => span F4 to G6
    from F4 to F#5 => span F4 to F#5
    F4 to G6       => note F4 | unknown to | note G6
    F4-G6          => unknown F4-G6
    2 oct          => number 2 | unknown oct
    2.5 octaves    => number 2.5 | pattern octaves
    60 notes       => span 60 degrees
    61 notes       => number 61 | unknown notes
  `);
});

test("articulations, and the half they hold for", () => {
  check(`
    slurred                  => articulation slurred (slurred)
    legato                   => articulation slurred (slurred)
    tongued                  => articulation tongued (single)
    staccato                 => articulation staccato (single)
    portato                  => articulation portato (single)
    legato tongued           => articulation legato tongued (single)
    no tongue                => articulation no tongue (slurred)
    slur 2+2                 => articulation slur 2+2 (mixed)
    slur 2+1+1               => articulation slur 2+1+1 (mixed)
    slur 1+1                 => articulation slur 1+1 (single)
    slurred 2+2              => articulation slur 2+2 (mixed)
    slurred 2 octaves        => articulation slurred (slurred) | span 2 octaves
    slur 2 + 2               => articulation slur 2 (mixed) | unknown + | number 2
    double tongued           => articulation double tongued (multiple)
    double-tongued           => articulation double tongued (multiple)
    triple tongue            => articulation triple tongued (multiple)
    tongue d                 => articulation tongue d (single)
    t-k                      => articulation t-k (multiple)
    d-g                      => articulation d-g (multiple)
    did-l                    => articulation did-l (multiple)
    t-k-t                    => articulation t-k-t (multiple)
    d-d                      => articulation d-d (single)
    T-K                      => unknown T-K
    tk                       => unknown tk
    slurred up, tongued down => articulation slurred up (slurred) | articulation tongued down (single)
    slurred up tongued down  => articulation slurred up (slurred) | articulation tongued down (single)
    slurred up and down      => articulation slurred (slurred) | direction up and down
    slurred, up              => articulation slurred (slurred) | direction up
    up slurred               => direction up | articulation slurred (slurred)
    staccato down            => articulation staccato down (single)
  `);
});

test("rhythms; long-short words are in capitals", () => {
  check(`
    even           => rhythm even
    straight 8ths  => rhythm even | note value 1/8
    straight, 8ths => pattern straight | note value 1/8
    8ths straight  => note value 1/8 | pattern straight
    dotted         => rhythm dotted (uneven)
    reverse dotted => rhythm reverse dotted (uneven)
    swung          => rhythm swung (uneven)
    inégal         => rhythm inégal (uneven)
    inegal         => rhythm inégal (uneven)
    LSS            => rhythm LSS (uneven)
    SLL            => rhythm SLL (uneven)
    LSSS           => rhythm LSSS (uneven)
    LLL            => unknown LLL
    lss            => unknown lss
  `);
});

test("note values", () => {
  check(`
    wholes       => note value 1/1
    semibreves   => note value 1/1
    halves       => note value 1/2
    minims       => note value 1/2
    quarters     => note value 1/4
    crotchets    => note value 1/4
    8ths         => note value 1/8
    eighths      => note value 1/8
    quavers      => note value 1/8
    8th notes    => note value 1/8
    in 8ths      => note value 1/8
    triplets     => note value 1/12
    8th triplets => note value 1/12
    16ths        => note value 1/16
    semiquavers  => note value 1/16
    sextuplets   => note value 1/24
    32nds        => note value 1/32
    1/8          => unknown 1/8
    eights       => unknown eights
  `);
});
