import { expect, test } from "vitest";
import { ENGLISH_NAMES, noteText } from "../../../server/music/notes/note-names.ts";
import type { SingleSubject } from "../../../server/syntax/words/meaning.ts";
import { lineText, read, rowsOf } from "./print.ts";

// Subjects in the hands that people have. Abbreviations and symbols: common practice, no source.

/** Rows of a line, as it is typed below a day, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("directly behind a tonic, case tells major from minor", () => {
  check(`
    F maj                      => entry: F major
    Fmaj                       => entry: F major
    F M                        => entry: F major
    BM                         => entry: B major
    g maj                      => entry: G major
    Fm                         => entry: F natural minor (natural unsaid)
    F m                        => entry: F natural minor (natural unsaid)
    Am                         => entry: A natural minor (natural unsaid)
    F#m                        => entry: F# natural minor (natural unsaid)
    f#m                        => entry: F# natural minor (natural unsaid)
    D min                      => entry: D natural minor (natural unsaid)
    Dmi                        => entry: D natural minor (natural unsaid)
    f# min                     => entry: F# natural minor (natural unsaid)
    Am scale                   => entry: A natural minor (natural unsaid)
    Am I right                 => prose
    D m 9                      => prose
    5 cm                       => prose
  `);
});

test("which minor, in either order, with or without points", () => {
  check(`
    C hm                       => entry: C harmonic minor
    C mm                       => entry: C melodic minor
    C nm                       => entry: C natural minor
    F# harm min                => entry: F# harmonic minor
    f# min mel                 => entry: F# melodic minor
    E mel. min.                => entry: E melodic minor
    bm nat                     => entry: B natural minor
    Em harm                    => entry: E harmonic minor
    f min harm                 => entry: F harmonic minor
    D harmonic                 => entry: D harmonic minor
    A harmonic on D            => prose
    D minor, harmonic          => entry: D harmonic minor
    D minor, melodic, slow     => entry: D melodic minor | without click slow
  `);
});

test("other kinds, shortened or in capitals", () => {
  check(`
    C scale                    => entry: C major (major unsaid)
    D MIXO                     => entry: D mixolydian
    D DORIAN                   => entry: D dorian
    F#m pent                   => entry: F# minor pentatonic
    A pent min                 => entry: A minor pentatonic
    G maj pent                 => entry: G major pentatonic
    chrom                      => entry: chromatic
    chromatics                 => entry: chromatic
    chromatic F to F           => entry: F chromatic
    chrom f'-g'''              => entry: chromatic from F4 to G6
    Chrom. from open G         => entry: G chromatic
    whole tone from f          => entry: F whole-tone
    scale of D minor           => entry: D natural minor (natural unsaid)
    E octatonic scale          => entry: E octatonic (octatonic unsaid)
  `);
});

test("arpeggios and chords", () => {
  check(`
    D arp                      => entry: D major arpeggio
    D min arps                 => entry: D minor arpeggio
    Amaj arp                   => entry: A major arpeggio
    Bflat arp                  => entry: Bb major arpeggio
    c hm arp                   => entry: C minor arpeggio
    arpeggio of D minor        => entry: D minor arpeggio
    arpeggio in D              => entry: D major arpeggio
    D major broken chords      => entry: D major broken chord
    D broken arpeggio          => entry: D major broken chord
    B dim7 arp                 => entry: B diminished seventh
    Bdim 7                     => entry: B diminished seventh
    E dom7 arp                 => entry: E dominant seventh
    F7 dom 7th                 => entry: F dominant seventh
    F 7th                      => entry: F dominant seventh
    A maj7                     => entry: A major seventh
    D aug                      => entry: D augmented arpeggio
    D dim, 1st inversion       => entry: D diminished arpeggio | inversion 1
  `);
});

test("chords by their symbols; a figure alone behind a letter is a chord at the beginning only", () => {
  check(`
    Cmaj7                      => entry: C major seventh
    CM7                        => entry: C major seventh
    Cm7                        => entry: C minor seventh
    C-7                        => entry: C minor seventh
    CmM7                       => entry: C minor major seventh
    Cmaj7#5                    => entry: C augmented seventh
    F#m7b5                     => entry: F# half-diminished seventh
    Bø                         => entry: B half-diminished seventh
    Csus4                      => entry: C suspended fourth arpeggio
    C+                         => entry: C augmented arpeggio
    C6                         => entry: C major sixth
    C7, slow                   => entry: C dominant seventh | without click slow
    C7 arpeggio                => entry: C dominant seventh
    C9 arp                     => entry: C dominant ninth
    C6/9                       => entry: C sixth added ninth
    C13                        => entry: C dominant thirteenth
    G7b9                       => entry: G dominant flat ninth
    Cm6, at 60                 => entry: C minor sixth | tempo 60
    C5                         => entry: ambiguous-subject: notes C5 or long tones on C5
    C4 arpeggio                => entry: C4 major arpeggio
    C6 major arpeggio          => entry: C6 major arpeggio
    C6 D6                      => entry: (no subject) | note C6 | note D6
    notes C6 D7                => entry: notes C6 D7
    Do it again                => prose
  `);
});

test("several subjects in a row", () => {
  check(`
    G maj F maj C maj 6ths     => entry: G major, F major, C major | pattern sixths
    D, A, E maj arps           => entry: D major arpeggio, A major arpeggio, E major arpeggio
    G maj & arp                => entry: G major, G major arpeggio
    D minor & arp, at 60       => entry: D natural minor, D minor arpeggio | tempo 60
    F maj, F arp, F 7th        => entry: F major, F major arpeggio, F dominant seventh
    g# nat/harm/mel            => entry: G# natural minor, G# harmonic minor, G# melodic minor
    E maj / e mm / e hm        => entry: E major, E melodic minor, E harmonic minor
    whole tone from f / from f# => entry: F whole-tone, F# whole-tone
    Bbmaj7 Ebmaj7 arps         => entry: Bb major seventh, Eb major seventh
    10m scales F C G maj       => entry: F major, C major, G major | 10 min
    thirds in C, G and D major => entry: C major, G major, D major | pattern thirds
    trill A with Bb, trill B with C => entry: trill A with Bb, trill B with C
    A major, G string          => entry: A major | unknown G string
  `);
});

test("sets of keys, and all forms of a minor", () => {
  check(`
    all majors                 => entry: all major scales
    all maj scales, at 60      => entry: all major scales | tempo 60
    all 12 major scales        => entry: all major scales
    all the minors             => entry: all minor scales
    all major arpeggios        => entry: all major arpeggios
    All majors, circle of 4ths, slow => entry: all major scales | without click slow
    circle of 5ths min harm    => entry: circle of fifths harmonic minor
    circle of fourths          => entry: circle of fourths
    A minor all three forms    => entry: A natural minor, A harmonic minor, A melodic minor
    all forms of A minor       => entry: A natural minor, A harmonic minor, A melodic minor
  `);
});

test("a set says its keys", () => {
  const line = read("circle of fourths");
  const subject = line.type === "entry" ? line.subject?.meaning : undefined;
  const tonics = subject?.type === "several" ? subject.subjects.map((each) => tonicOf(each)) : [];
  // Twelve keys, each a fourth above the one before: common practice, no source.
  expect(tonics.join(" ")).toBe("C F Bb Eb Ab Db F# B E A D G");
});

function tonicOf(subject: SingleSubject): string {
  return subject.type === "scale" ? noteText(subject.tonic, ENGLISH_NAMES) : "";
}

test("word order is free where every word is known", () => {
  check(`
    thirds in D minor          => entry: D natural minor (natural unsaid) | pattern thirds
    thirds in C quavers        => entry: C major (major unsaid) | pattern thirds | note value 1/8
    2 octaves F major slurred  => entry: F major | span 2 octaves | articulation slurred (slurred)
    slow C major               => entry: C major | without click slow
    slow, at 60, in D          => entry: D major (major unsaid) | without click slow | tempo 60
    It was in C                => prose
    my Air in D minor, slow    => prose
  `);
});

test("figures", () => {
  check(`
    LT 5 min                   => entry: long tones | 5 min
    long notes                 => entry: long tones
    held notes on G            => entry: long tones on G
    long tones low F to C      => entry: long tones
    trill high A with Bb       => entry: trill A with Bb
    trill E to F sharp         => entry: trill E with F#
    tr. g#''/a''               => entry: trill G#5 with A5
    Trills D6-E6               => entry: trill D6 with E6
    Trill on A/B               => entry: trill A with B
    Bb to C trill              => entry: trill Bb with C
    notes G G# A Bb            => entry: notes G G# A Bb
    throat notes G G# A Bb     => entry: notes G G# A Bb
    finger pattern A to B      => entry: notes A B
    A to B back and forth      => entry: notes A B | direction back and forth
    five-note scale on D       => entry: five-note scale on D
    5 note scale               => entry: five-note scale
    C major, octave leaps      => entry: C major | pattern octaves
  `);
});

test("one slip in a word of the trade", () => {
  check(`
    D arpegio                  => entry: D major arpeggio
    D minor, thrids            => entry: D natural minor (natural unsaid) | pattern thirds
    chromactic E to E          => entry: E chromatic
    D dorain                   => entry: D dorian
    D mayor                    => entry: D major
    the mayor came, slowly     => prose
    three light notes, slowly  => prose
  `);
});
