import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What a line is: the table of lines of the format, below a day.

/** Rows of a line, as it is typed below a day, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("blank lines and remarks", () => {
  check(`
    -- left thumb too tight => remark "left thumb too tight"
    --left thumb            => remark "left thumb"
    --                      => remark
    --- a rule              => remark "a rule"
    -- ? breathe where      => remark "? breathe where"
    --? breathe where       => remark "? breathe where"
    -- ! roll it            => remark "! roll it"
    – dash                  => remark "dash"
    —dash                   => remark "dash"
    - -- in a list          => remark "in a list"
    • -- ? in a list        => remark "? in a list"
    D minor -- tight        => entry: D natural minor (natural unsaid) | remark "tight"
    D minor – tight         => entry: D natural minor (natural unsaid) | remark "tight"
    D minor — tight         => entry: D natural minor (natural unsaid) | remark "tight"
    D minor, slow -- a -- b => entry: D natural minor (natural unsaid) | without click slow | remark "a -- b"
    D minor, "a -- b"       => entry: D natural minor (natural unsaid) | "a -- b"
    D minor --tight         => entry: D natural minor (natural unsaid) | unknown --tight
  `);
});

test("a line of white space alone is blank, and one over 4,096 units too long", () => {
  for (const typed of ["", "  ", " \t ", "\u00A0", "\uFEFF", "\u3000"]) expect(read(typed).type).toBe("blank");
  expect(read("x".repeat(4096)).type).toBe("prose");
  expect(read("x".repeat(4097)).type).toBe("too long");
});

test("prose: no word of the first part tells an entry", () => {
  check(`
    Felt tense today               => prose
    Slow day.                      => prose
    A major breakthrough!          => prose
    A major breakthrough, at last  => prose
    A minor problem with the thumb => prose
    Sound freer today.             => prose
    Grandma listened               => prose
    D minor wobble                 => entry: D natural minor (natural unsaid) | unknown wobble
    C major was fine at 60         => prose
    Wobble, thirds                 => prose
    minor things                   => prose
    octaves all day                => prose
    Up and down all day            => prose
    *                              => prose
    ,                              => prose
    60                             => prose
    __proto__                      => prose
  `);
});

test("an entry: all words of the first part are known", () => {
  check(`
    D minor     => entry: D natural minor (natural unsaid)
    slow, easy  => entry: (no subject) | without click slow | outcome easy
    at 60 clean => entry: (no subject) | tempo 60 | outcome clean
    Clean       => entry: (no subject) | outcome clean
    thirds      => entry: (no subject) | pattern thirds
    10 min      => total
  `);
});

test("an entry: it opens with a subject, and a later part is all known", () => {
  check(`
    A minor problem, slow    => prose
    C major is hard, slow    => prose
    D minor wobble, thirds   => entry: D natural minor (natural unsaid) | unknown wobble | pattern thirds
    "A book" somewhere, slow => entry: title A book (undeclared) | unknown somewhere | without click slow
  `);
});

test("an entry: a later part is a tempo, a place or an amount", () => {
  check(`
    Wobble, at 60            => entry: title Wobble (undeclared) | tempo 60
    Wobble, 10 min           => entry: Wobble | 10 min
    Wobble, bars 1-4         => entry: title Wobble (undeclared) | place bars 1-4
    C major went well, at 60 => entry: C major | outcome went well | tempo 60
    In the morning, at 60    => prose
  `);
});

test("a bullet is skipped", () => {
  check(`
    - D minor        => entry: D natural minor (natural unsaid)
    * D minor, slow  => entry: D natural minor (natural unsaid) | without click slow
    • D minor        => entry: D natural minor (natural unsaid)
    - set D minor    => declaration: set
    - groundwork     => phase: phase groundwork
    - 2026-03-02 Mon => day: 2026-03-02 | weekday 1
    -D minor         => prose
  `);
});

test("days", () => {
  check(`
    2026-03-02                        => day: 2026-03-02
      2026-03-02 Mon                  => day: 2026-03-02 | weekday 1
    2026-03-02 Monday                 => day: 2026-03-02 | weekday 1
    2026-03-02, Mon, 50 min           => day: 2026-03-02 | weekday 1 | 50 min
    2026-03-02 50 min Mon             => day: 2026-03-02 | 50 min | weekday 1
    2026-03-02: mon.                  => day: 2026-03-02 | weekday 1
    2026-03-02 plan                   => day: 2026-03-02 | line word plan
    2026-03-02 Mon, 20 min, plan      => day: 2026-03-02 | weekday 1 | 20 min | line word plan
    2026-03-02, rest, sore left thumb => day: 2026-03-02 | line word rest | sore left thumb
    2026-03-02 -- cold hands          => day: 2026-03-02 | remark "cold hands"
    2026/03/02                        => day: 2026/03/02
    2026.3.2 Mon                      => day: 2026.3.2 | weekday 1
    02.03.2026                        => day: 02.03.2026
    2/3/2026                          => day: 2/3/2026
    3-2-2026                          => day: 3-2-2026
    2026-13-45                        => day: 2026-13-45
    2026-02-30                        => day: 2026-02-30
    2026-03-02 Montag                 => day: 2026-03-02 | weekday 1
    2026-03-02 evening                => day: 2026-03-02 | unknown evening
    2026-03-02 D minor                => day: 2026-03-02 | second subject D natural minor (natural unsaid)
  `);
});

test("what is no day", () => {
  check(`
    26-03-02         => prose
    2026-03          => prose
    2026-03/02       => day: 2026-03/02
    12026-03-02      => prose
    2026-03-02T10:00 => prose
    2 March          => prose
    Mon 2 March      => prose
  `);
});

test("a date with its year opens a day, however it is written: what is below is not of the day above", () => {
  check(`
    20260302                 => day: 20260302
    2 March 2026             => day: 2 March 2026
    Mon 2026-03-02           => day: Mon 2026-03-02
    Mon, 2nd Mar. 2026, 40 min => day: Mon, 2nd Mar. 2026 | 40 min
    March 2nd, 2026          => day: March 2nd, 2026
    Montag, den 2. März 2026 => day: Montag, den 2. März 2026
    le 2 mars 2026           => day: le 2 mars 2026
    2 de marzo de 2026       => day: 2 de marzo de 2026
  `);
});

test("sessions and breaks", () => {
  check(`
    session               => session: line word session
    session 19:30         => session: line word session | 19:30
    session 19:30, 40 min => session: line word session | 19:30 | 40 min
    session at 19:30      => session: line word session | 19:30
    session 9.00          => session: line word session | 9:00
    Session: 40 min       => session: line word session | 40 min
    session with Anna     => session: line word session | with Anna
    session 7 pm          => prose
    morning               => session: line word session
    evening session       => session: line word session
    morning, 30 min       => session: line word session | 30 min
    Mon evening: 19:30    => session: line word session | 19:30
    break                 => break: line word break
    break, 5 min          => break: line word break | 5 min
    break 5 min           => break: line word break | 5 min
    coffee break          => prose
  `);
});

test("phases", () => {
  check(`
    warm-up                    => phase: phase warm-up
    warm up                    => phase: phase warm-up
    WarmUp, 5 min              => phase: phase warm-up | 5 min
    warm-up: 5 min             => phase: phase warm-up | 5 min
    groundwork, 15 min, plan   => phase: phase groundwork | 15 min | line word plan
    slow work                  => phase: phase groundwork
    slow-work 5 min            => phase: phase groundwork | 5 min
    fluency                    => phase: phase fluency
    studies                    => phase: phase studies
    pieces plan                => phase: phase pieces | line word plan
    reading                    => phase: phase reading
    reading a book             => prose
    together with Anna, 90 min => phase: phase together | with Anna | 90 min
    lesson 45 min              => phase: phase lesson | 45 min
    lesson went well           => prose
    lesson: D minor            => phase: phase lesson | second subject D natural minor (natural unsaid)
    away                       => phase: phase away
    market band                => phase: phase market band
    market-band, 20 min        => phase: phase market band | 20 min
    warm-up (5 min)            => phase: phase warm-up | 5 min
  `);
});

test("plan and rest", () => {
  check(`
    plan                => plan: line word plan
    plan more slow work => prose
    rest                => rest: line word rest
    rest, sore thumb    => rest: line word rest | sore thumb
    Rest well           => prose
  `);
});

test("declarations below a day", () => {
  check(`
    set D minor, thirds, 5 days => declaration: set
    set "clap it"               => declaration: set
    set the table               => prose
    aim D minor by 2026-03-09   => declaration: aim
    aim higher                  => prose
    piece "X": G minor          => declaration: piece
    piece of cake               => prose
    pattern "x": 1 2            => declaration: pattern
    scale practice              => prose
    scale                       => prose
    study                       => phase: phase studies
    study hard                  => prose
    instrument alto recorder    => declaration: instrument
    instrument out of tune      => prose
    pitch A=415                 => declaration: pitch
    pitch was low               => prose
    note value 8ths             => declaration: note value
    Note-value 8ths             => declaration: note value
    note to self                => prose
    player Noor                 => declaration: player
    player missed the bus       => prose
    names german                => declaration: names
    names of notes              => prose
    focus "sound"               => declaration: focus
    focus sound                 => entry: (no subject) | focus sound
    usual articulation tongued  => declaration: usual articulation
    usual stuff                 => prose
  `);
});

test("marks of a merge", () => {
  check(`
    <<<<<<< mine   => conflict marker
    =======        => conflict marker
    >>>>>>> theirs => conflict marker
    ||||||| base   => conflict marker
    ======         => prose
  `);
});

test("the body: what hurts is kept, unless its own clause takes it back", () => {
  check(`
    left thumb sore                       => body
    left thumb sore, tone good            => body
    wrist aching again. everything fine   => body
    thumb stiff but fine                  => prose
    wrist pain better                     => prose
    45 min, no pain                       => total
  `);
});
