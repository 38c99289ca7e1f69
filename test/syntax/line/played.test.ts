import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// Tempos and how it went, and what is said once of a line. Each stands behind `D minor, `.

/** Rows of a term, as it is typed behind `D minor, `, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) {
    const line = read(`D minor, ${typed}`);
    expect([typed, line.type, lineText(line).split(" | ").slice(1).join(" | ")]).toEqual([typed, "entry", meaning]);
  }
}

test("tempos", () => {
  check(`
    at 72               => tempo 72
    72 bpm              => tempo 72
    72bpm               => tempo 72
    at 72 bpm           => tempo 72
    @ 72                => tempo 72
    at quarter=72       => tempo 1/4=72
    quarter=72          => tempo 1/4=72
    quarter = 72        => tempo 1/4=72
    ♩=72                => tempo 1/4=72
    ♩ = 72              => tempo 1/4=72
    ♩.=60               => tempo 3/8=60
    ♩. = 60             => tempo 3/8=60
    1/4=72              => tempo 1/4=72
    1/4.=60             => tempo 3/8=60
    dotted crotchet=60  => tempo 3/8=60
    dotted quarter = 60 => tempo 3/8=60
    8th=96              => tempo 1/8=96
    half=60             => tempo 1/2=60
    at 60 to 72         => tempo 60-72
    at 60-72            => tempo 60-72
    at 60–72            => tempo 60-72
    at 60 - 72          => tempo 60-72
    at 60.5             => tempo 60.5
    AT 72 BPM           => tempo 72
    at sixty            => unknown at sixty
    tempo 60            => tempo 60
    60                  => tempo 60
    60-72               => tempo 60-72
    crotchet at 72      => note value 1/4 | tempo 72
  `);
});

test("once a tempo stands, a bare number goes on with it, at its beat", () => {
  check(`
    at 60, 66, 72                        => tempo 60 | tempo 66 | tempo 72
    at 60 66 72                          => tempo 60 | tempo 66 | tempo 72
    8ths at 60 clean, 66 clean, 72 slips => note value 1/8 | tempo 60 | outcome clean | tempo 66 | outcome clean | tempo 72 | outcome slips
    8ths at 60 clean, 16ths at 60 slips  => note value 1/8 | tempo 60 | outcome clean | note value 1/16 | tempo 60 | outcome slips
    ♩.=46 clean, 50 uneven               => tempo 3/8=46 | outcome clean | tempo 3/8=50 | outcome uneven
    at 60 to 66, 70-76                   => tempo 60-66 | tempo 70-76
    at 60, 5 min                         => tempo 60 | 5 min
    at 60, 5 notes                       => tempo 60 | span 5 degrees
    at 60, 2 octaves                     => tempo 60 | span 2 octaves
    at 60, 3 times                       => tempo 60 | times 3
    at 60, 2 flats                       => tempo 60 | signature -2
    clean, 60                            => outcome clean | tempo 60
  `);
});

test("without a metronome", () => {
  check(`
    slow          => without click slow
    slowly        => without click slow
    slow at 60    => without click slow | tempo 60
    free          => without click free
    no click      => without click no click
    no-click      => without click no click
    without click => without click no click
    with click    => with click
  `);
});

test("outcomes; two may stand together", () => {
  check(`
    easy            => outcome easy
    clean           => outcome clean
    nearly          => outcome nearly
    uneven          => outcome uneven
    rushed          => outcome rushed
    slips           => outcome slips
    slip            => outcome slips
    tense           => outcome tense
    broke down      => outcome broke down
    stopped         => outcome broke down
    clean tense     => outcome clean | outcome tense
    clean, tense    => outcome clean | outcome tense
    at 60: clean    => tempo 60 | outcome clean
    at 60 CLEAN     => tempo 60 | outcome clean
    at 60 (clean)   => tempo 60 | outcome clean
    at 60 clean!    => tempo 60 | outcome clean
    at 60 not clean => tempo 60 | outcome not clean
  `);
});

test("tries stand right behind an outcome", () => {
  check(`
    at 60 clean 5 in a row    => tempo 60 | outcome clean | tries 5/5
    at 60 clean five in a row => tempo 60 | outcome clean | tries 5/5
    at 60 clean 4 of 5        => tempo 60 | outcome clean | tries 4/5
    at 60 clean 4 out of 5    => tempo 60 | outcome clean | tries 4/5
    at 60 clean 4/5           => tempo 60 | outcome clean | tries 4/5
    at 60 clean 5x            => tempo 60 | outcome clean | tries 5/5
    at 60 clean x5            => tempo 60 | outcome clean | tries 5/5
    at 60 clean 3 times       => tempo 60 | outcome clean | tries 3/3
    at 60 clean twice         => tempo 60 | outcome clean | tries 2/2
    at 60 clean tense 2 of 3  => tempo 60 | outcome clean | outcome tense | tries 2/3
    at 60 clean, 3 times      => tempo 60 | outcome clean | times 3
    at 60 clean, 5x           => tempo 60 | outcome clean | times 5
    3 times                   => times 3
    5x                        => times 5
    once                      => times 1
    at 60 clean, 4 of 5       => tempo 60 | outcome clean | tries 4/5
    at 60 4/5                 => tempo 60 | unknown 4/5
    at 60 clean 6 of 5        => tempo 60 | outcome clean | number 6 | unknown of | number 5
    at 60 5 in a row          => tempo 60 | tries 5/5
    at 60 clean 0 of 5        => tempo 60 | outcome clean | tries 0/5
  `);
});

test("manners", () => {
  check(`
    by heart                => manner by heart
    by-heart                => manner by heart
    from memory             => manner by heart
    by ear                  => manner by ear
    at sight                => manner at sight
    sung                    => manner sung
    silent                  => manner silent
    mental                  => manner mental
    with drone D A          => with drone D A
    with Anna at 60         => with Anna | tempo 60
    with a drone on D, slow => with a drone on D | without click slow
    with                    => unknown with
  `);
});

test("focus and sore take the words up to a comma, a tempo, an outcome, an amount", () => {
  check(`
    focus finger changes             => focus finger changes
    focus finger changes at 60 clean => focus finger changes | tempo 60 | outcome clean
    focus on tuning, 10 min          => focus on tuning | 10 min
    focus tuning 10 min              => focus tuning | 10 min
    focus right notes                => focus right notes
    sore left thumb                  => sore left thumb
    sore left thumb clean            => sore left thumb | outcome clean
    focus clean tone                 => unknown focus clean tone
    focus: tuning                    => unknown focus | second subject tuning
    focus                            => unknown focus
    sore                             => unknown sore
  `);
});

test("amounts", () => {
  check(`
    10 min                => 10 min
    10 mins               => 10 min
    10min                 => 10 min
    10 Min.               => 10 min
    45 minutes            => 45 min
    10m                   => 10 min
    10'                   => 10 min
    10′                   => 10 min
    10’                   => 10 min
    1 h 20                => 80 min
    1h20                  => 80 min
    1h 20                 => 80 min
    1 h 20 min            => 80 min
    1 hour 20 minutes     => 80 min
    1 hour and 20 minutes => 80 min
    2 hours               => 120 min
    1.5 h                 => 90 min
    half an hour          => 30 min
    an hour               => 60 min
    ten minutes           => 10 min
    0 min                 => impossible amount
    25 h                  => impossible amount
    1 h 75                => impossible amount
    24 h                  => 1440 min
    1440 min              => 1440 min
    1441 min              => impossible amount
    about 10 min => about 10 min
    1:30                  => 1:30
    30 s                  => number 30 | unknown s
  `);
});

test("instruments win over tonics", () => {
  check(`
    on tenor recorder     => instrument tenor recorder
    tenor recorder        => instrument tenor recorder
    on A clarinet         => instrument clarinet in A
    on clarinet in A      => instrument clarinet in A
    on alto recorder in G => instrument alto recorder in G
    alto recorder in g    => instrument alto recorder in G
    on my flute           => instrument my flute
    on "My flute"         => instrument my flute
    on "my flute          => unknown on | "my flute" (open)
    on "my fute", slow    => unknown on "my fute" | without click slow
    on clarinet in B flat => instrument clarinet in Bb
    alto voice            => instrument alto voice
    on piano              => instrument piano
    piano                 => unknown piano
    double bass, slow     => instrument double bass | without click slow
    on tenor              => unknown on tenor
    on the tenor recorder => unknown on the | instrument tenor recorder
  `);
});

test("done", () => {
  check(`
    done        => done
    done, 5 min => done | 5 min
    at 60 done  => tempo 60 | done
  `);
});
