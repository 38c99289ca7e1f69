import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What is practised as players write it in short, and several things on one line. Abbreviations: common practice, no
// source; the lines are invented.

function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("short forms of what is played, and of how", () => {
  check(`
    l.t. low F–C 5'                      => entry: long tones | 5 min
    low C long notes, 5 min              => entry: long tones on C | 5 min
    sc F, Bb, g hm.                      => entry: F major, Bb major, G harmonic minor
    sc 3rds F tg 66                      => entry: F major (major unsaid) | unknown sc | pattern thirds | articulation tongued (single) | tempo 66
    Dom 7s / C F Bb Eb / slurred / 80    => entry: C dominant seventh, F dominant seventh, Bb dominant seventh, Eb dominant seventh | articulation slurred (slurred) | tempo 80
    dim7 B sl 60                         => entry: B diminished seventh | articulation slurred (slurred) | tempo 60
    arp F 72                             => entry: F major arpeggio | tempo 72
    arp G, D 72                          => entry: G major arpeggio, D major arpeggio | tempo 72
    arp A bit better today               => entry: (no subject) | chord kind major | outcome better
    G major tg/sl/st                     => entry: G major | articulation tongued (single) | articulation slurred (slurred) | articulation staccato (single)
    G major s/t                          => entry: G major | unknown s/t
    d.tg one note, at 96                 => entry: double tonguing | tempo 96
    double tongued on repeated notes, 96 => entry: double tonguing | tempo 96
  `);
});

test("techniques that a sign joins, and that end in the same word, are several", () => {
  check(`
    LT + overtones, 10 min               => entry: long tones, overtones | 10 min
    lip slurs + long tones               => entry: lip slurs, long tones
    5 stroke rolls 9 stroke rolls, at 80 => entry: five stroke rolls, nine stroke rolls | tempo 80
    long tones, vibrato, 10 min          => entry: long tones | second subject vibrato | 10 min
  `);
});

test("scales and arpeggios joined by a word", () => {
  check(`
    F scale n Bb scale                   => entry: F major, Bb major
    G major scale and G arpejio          => entry: G major, G major arpeggio
    g scale and d scale and the arpegios => entry: G major, D major, G major arpeggio, D major arpeggio
  `);
});

test("pairs of notes behind a trill are trills", () => {
  check(`
    trill e''/f'', g#'/a'                            => entry: trill E5 with F5, trill G#4 with A4
    Trills from above, E-flat/D and B-flat/A, 10 min => entry: trill Eb with D, trill Bb with A | 10 min
    trill e''/f'', slow                              => entry: trill E5 with F5 | without click slow
  `);
});

test("what is said of a key stands before the next one, and an arpeggio goes with its key", () => {
  check(`
    B flat major 76, even. Arpeggio 66           => entry: Bb major, Bb major arpeggio | tempo 76 | rhythm even | second subject Bb major arpeggio | tempo 66
    E flat maj 54 ok, E flat min NOT ok          => entry: Eb major, Eb natural minor | tempo 54 | outcome ok | second subject Eb natural minor (natural unsaid) | outcome not ok
    concert eb 80 yes concert f 84 no            => entry: Eb major, F major | tempo 80 | outcome yes | second subject F major (major unsaid) | tempo 84 | outcome no
    G7 arp up, Cmaj7 arp down, 88                => entry: G dominant seventh, C major seventh | direction up | second subject C major seventh | direction down | tempo 88
    C major, arpeggio, 60                        => entry: C major arpeggio | tempo 60
    C major scale, arpeggio, 60                  => entry: C major, C major arpeggio | tempo 60
    Arps / C maj, C min / staccato / 92          => entry: C major arpeggio, C minor arpeggio | articulation staccato (single) | tempo 92
    B flat major 92 ok, E flat major next week   => entry: Bb major | tempo 92 | outcome ok | second subject Eb major | unknown next week
    D major 66 ok, D minor is hard               => entry: D major | tempo 66 | outcome ok | second subject D natural minor (natural unsaid) | unknown is hard
  `);
});
