import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What a line claims: a note list behind a colon, a signature, steps.

/** Rows of a line, as it is typed below a day, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("note lists run over spaces, bars, hyphens and commas", () => {
  check(`
    D minor: D E F G A Bb C D                    => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    D minor:D E F G                              => entry: D natural minor (natural unsaid) | notes D E F G
    D minor : D E F G                            => entry: D natural minor (natural unsaid) | notes D E F G
    D minor: d e f g a bb c d                    => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    D minor: D, E, F, G, A, Bb, C, D             => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    D minor: D-E-F-G-A-Bb-C-D                    => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    D minor: D–E–F–G                             => entry: D natural minor (natural unsaid) | notes D E F G
    D minor: D E F G | A Bb C D                  => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    D minor: |D E F G|                           => entry: D natural minor (natural unsaid) | notes D E F G
    D minor: | D E F G |, slow                   => entry: D natural minor (natural unsaid) | notes D E F G | without click slow
    D minor: D4 E4 F4 Bb5                        => entry: D natural minor (natural unsaid) | notes D4 E4 F4 Bb5
    D minor: D E F G A B♭ C♯ D                   => entry: D natural minor (natural unsaid) | notes D E F G A Bb C# D
    D minor: D E F G A B flat C sharp D          => entry: D natural minor (natural unsaid) | notes D E F G A Bb C# D
    D minor: D, E, F, G, A, B flat, C, D         => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    D minor: D E F G A B-flat C D                => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D
    D minor: Fx F## F𝄪 Ebb E𝄫                    => entry: D natural minor (natural unsaid) | notes Fx Fx Fx Ebb Ebb
    D minor: F double sharp, E double flat, B natural => entry: D natural minor (natural unsaid) | notes Fx Ebb B
  `);
});

test("a note or two with words behind them are what was said of these", () => {
  check(`
    D minor at 60: C sharp late       => entry: D natural minor (natural unsaid) | tempo 60 | unknown C sharp late
    D minor, 60: f#'' late every time => entry: D natural minor (natural unsaid) | tempo 60 | unknown f#'' late every time
    D minor: D E late                 => entry: D natural minor (natural unsaid) | note D | note E | unknown late
    D minor: D E F late               => entry: D natural minor (natural unsaid) | notes D E F | outcome late
    D minor: D E                      => entry: D natural minor (natural unsaid) | notes D E
  `);
});

test("and end at the first word that is no note", () => {
  check(`
    D minor: D E F G, slow            => entry: D natural minor (natural unsaid) | notes D E F G | without click slow
    D minor: D E F G slow             => entry: D natural minor (natural unsaid) | notes D E F G | without click slow
    D minor: D E F G at 60 clean      => entry: D natural minor (natural unsaid) | notes D E F G | tempo 60 | outcome clean
    D minor: D E F G, d-g             => entry: D natural minor (natural unsaid) | notes D E F G | articulation d-g (multiple)
    D minor: D E F G d-g              => entry: D natural minor (natural unsaid) | notes D E F G | articulation d-g (multiple)
    D minor: D E F G A Bb C D, 1 flat => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D | signature -1
    D minor: D E F G A Bb C D 1 flat  => entry: D natural minor (natural unsaid) | notes D E F G A Bb C D | signature -1
    D minor: D E F G, thirds, at 60   => entry: D natural minor (natural unsaid) | notes D E F G | pattern thirds | tempo 60
    D minor: D E F G -- not A         => entry: D natural minor (natural unsaid) | notes D E F G | remark "not A"
  `);
});

test("they may stand behind terms", () => {
  check(`
    D minor, five notes: D E F G A     => entry: D natural minor (natural unsaid) | notes D E F G A | span 5 degrees
    D minor five notes: D E F G A      => entry: D natural minor (natural unsaid) | notes D E F G A | span 5 degrees
    D minor, thirds: D F E G F A, slow => entry: D natural minor (natural unsaid) | notes D F E G F A | pattern thirds | without click slow
  `);
});

test("a note-like word that is none keeps its place", () => {
  check(`
    D minor: D E F G A H C D => entry: D natural minor (natural unsaid) | notes D E F G A (H) C D
    D minor: D E Fis G       => entry: D natural minor (natural unsaid) | notes D E (Fis) G
    D minor: D Es F          => entry: D natural minor (natural unsaid) | notes D (Es) F
    D minor: D E F### G      => entry: D natural minor (natural unsaid) | notes D E (F###) G
    D minor: D R F           => entry: D natural minor (natural unsaid) | notes D (R) F
  `);
});

test("what is no claim", () => {
  check(`
    D minor: slow            => entry: D natural minor (natural unsaid) | without click slow
    D minor: DEFGABbCD       => entry: D natural minor (natural unsaid) | unknown DEFGABbCD
    D minor, D E F G         => entry: D natural minor (natural unsaid) | note D | note E | note F | note G
    D minor D E F G          => entry: D natural minor (natural unsaid) | note D | note E | note F | note G
    D minor (D E F G)        => entry: D natural minor (natural unsaid) | unknown (D | note E | note F | unknown G)
    C major > F major: C D E => entry: C major > F major | notes C D E
    notes: E5 F5             => prose
  `);
});

test("signatures", () => {
  check(`
    F# major, 6 sharps          => entry: F# major | signature 6
    F# major, 6#                => entry: F# major | signature 6
    F# major, 6♯                => entry: F# major | signature 6
    F# major 6 sharps           => entry: F# major | signature 6
    F# major, six sharps        => entry: F# major | signature 6
    F# major: 6 sharps          => entry: F# major | signature 6
    D minor, 1 flat             => entry: D natural minor (natural unsaid) | signature -1
    D minor, 1b                 => entry: D natural minor (natural unsaid) | signature -1
    D minor, 1♭                 => entry: D natural minor (natural unsaid) | signature -1
    C major, no accidentals     => entry: C major | signature 0
    C major, no sharps or flats => entry: C major | signature 0
    C major, 0 sharps           => entry: C major | signature 0
    C major, 14 sharps          => entry: C major | signature 14
    C major, 15 sharps          => entry: C major | number 15 | unknown sharps
    D minor, 2B                 => entry: D natural minor (natural unsaid) | unknown 2B
  `);
});

test("steps", () => {
  check(`
    C major, steps T T S T T T S    => entry: C major | steps T T S T T T S | steps T T S T T T S
    C major, steps TTSTTTS          => entry: C major | steps TTSTTTS | steps TTSTTTS
    C major, steps W W H W W W H    => entry: C major | steps W W H W W W H | steps W W H W W W H
    C major, steps 2 2 1 2 2 2 1    => entry: C major | steps 2 2 1 2 2 2 1 | steps 2 2 1 2 2 2 1
    C major, steps 2-2-1-2-2-2-1    => entry: C major | steps 2-2-1-2-2-2-1 | steps 2-2-1-2-2-2-1
    C major: steps 2 2 1 2 2 2 1    => entry: C major | steps 2 2 1 2 2 2 1 | steps 2 2 1 2 2 2 1
    C major: TTSTTTS                => entry: C major | steps TTSTTTS
    C major: T T S T T T S          => entry: C major | steps T T S T T T S
    C major: T-T-S-T-T-T-S          => entry: C major | steps T-T-S-T-T-T-S
    C major: W W H W W W H, slow    => entry: C major | steps W W H W W W H | without click slow
    A harmonic minor: T S T T S A S => entry: A harmonic minor | steps T S T T S A S
    C major: TTST                   => entry: C major | unknown TTST
    C major: TTSWW                  => entry: C major | unknown TTSWW
    C major: 2 2 1 2 2 2 1          => entry: C major | number 2 | number 2 | number 1 | number 2 | number 2 | number 2 | number 1
    C major, TTSTTTS                => entry: C major | unknown TTSTTTS
  `);
});
