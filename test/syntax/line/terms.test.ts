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
    2 oct          => span 2 octaves
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
    slur 2 + 2               => articulation slur 2+2 (mixed)
    double tongued           => articulation double tongued (multiple)
    double-tongued           => articulation double tongued (multiple)
    triple tongue            => articulation triple tongued (multiple)
    tongue d                 => articulation tongue d (single)
    t-k                      => articulation t-k (multiple)
    d-g                      => articulation d-g (multiple)
    did-l                    => articulation did-l (multiple)
    t-k-t                    => articulation t-k-t (multiple)
    d-d                      => articulation d-d (single)
    T-K                      => articulation t-k (multiple)
    tk                       => articulation tk (multiple)
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
    1/8          => note value 1/8
    eights       => unknown eights
  `);
});

test("terms as people write them", () => {
  check(`
    2oct                 => span 2 octaves
    2 8ves               => span 2 octaves
    3 octs               => span 3 octaves
    one octave           => span 1 octaves
    two octaves          => span 2 octaves
    12th                 => span twelfth
    tenth                => span 10 degrees
    to the ninth         => span 9 degrees
    up to the 9th        => span 9 degrees
    leg                  => articulation slurred (slurred)
    stacc                => articulation staccato (single)
    sl 2                 => articulation slur 2 (mixed)
    sl. 2                => articulation slur 2 (mixed)
    slur 2               => articulation slur 2 (mixed)
    slurred in twos      => articulation slur 2 (mixed)
    slurred in 4s        => articulation slur 4 (mixed)
    slurred pairs        => articulation slur 2 (mixed)
    2+2                  => articulation slur 2+2 (mixed)
    3+1                  => articulation slur 3+1 (mixed)
    two slurred two tongued => articulation slur 2+1+1 (mixed)
    slur two tongue two  => articulation slur 2+1+1 (mixed)
    tongue 1 slur 3      => articulation slur 1+3 (mixed)
    4 to a bow           => articulation slur 4 (mixed)
    hooked               => articulation hooked (mixed)
    pizz                 => articulation pizzicato (single)
    détaché              => articulation détaché (single)
    spiccato             => articulation spiccato (single)
    TKTK                 => articulation tktk (multiple)
    tktk                 => articulation tktk (multiple)
    dg                   => articulation dg (multiple)
    ti-ri                => articulation ti-ri (multiple)
    dbl tonguing         => articulation double tongued (multiple)
    separate             => articulation separate (single)
    separate bows        => articulation separate (single)
    rest stroke          => articulation rest stroke (single)
    hands together       => manner hands together
    h.t.                 => manner hands together
    HS                   => manner hands separate
    LH                   => manner left hand
    RH                   => manner right hand
    6ths                 => pattern sixths
    in 4ths              => pattern fourths
    groups of 5          => pattern fives
    in 4s                => pattern fours
    up only              => direction up
    up & down            => direction up and down
    tongue gave up       => unknown tongue gave up
    slowed down          => unknown slowed down
    contrary motion      => manner contrary motion
    quavers              => note value 1/8
    semis                => note value 1/16
    16th                 => note value 1/16
    trip                 => note value 1/12
    quintuplets          => note value 1/20
    quarter triplets     => note value 1/6
    dotted rhythm        => rhythm dotted (uneven)
    swing                => rhythm swung (uneven)
    8ths leg             => note value 1/8 | articulation slurred (slurred)
    2oct slurred 16ths   => span 2 octaves | articulation slurred (slurred) | note value 1/16
    vibrato              => second subject vibrato
    with pick            => articulation plectrum (single)
  `);
});

test("in 4s behind a tempo with its beat says how many notes to the beat", () => {
  check(`
    crotchet=60 in 4s => tempo 1/4=60 | note value 1/16
    dotted quarter=60 in 3s => tempo 3/8=60 | note value 1/8
    at 60 in 4s       => tempo 60 | pattern fours
  `);
});

test("amounts as people write them", () => {
  check(`
    5'                   => 5 min
    5 mins               => 5 min
    5min                 => 5 min
    5m                   => 5 min
    8 minutes            => 8 min
    quarter of an hour   => 15 min
    half an hour         => 30 min
    1h05                 => 65 min
    1 hr                 => 60 min
    1.5 h                => 90 min
    1,5 h                => 90 min
    2 1/2 hrs            => 150 min
    5 min each           => 5 min each
    about 10 min         => about 10 min
    ca. 20 min           => about 20 min
    about half an hour   => about 30 min
    10 Minuten           => 10 min
    10 minuti            => 10 min
    10 minutos           => 10 min
    2 Stunden            => 120 min
    8' 4'                => unknown 8' 4'
  `);
});
