import { expect, test } from "vitest";
import { lineText, read, rowsOf } from "./print.ts";

// What is practised: scales, chords, titles, chains, figures, activities, and what cannot stand.

/** Rows of a line, as it is typed below a day, and what it means. */
function check(rows: string): void {
  for (const [typed, meaning] of rowsOf(rows)) expect([typed, lineText(read(typed))]).toEqual([typed, meaning]);
}

test("major and minor in either word order", () => {
  check(`
    C major          => entry: C major
    C Major scale    => entry: C major
    D minor          => entry: D natural minor (natural unsaid)
    d minor          => entry: D natural minor (natural unsaid)
    D natural minor  => entry: D natural minor
    D minor natural  => entry: D natural minor
    D harmonic minor => entry: D harmonic minor
    D minor harmonic => entry: D harmonic minor
    D melodic minor  => entry: D melodic minor
    D minor melodic  => entry: D melodic minor
    D MINOR MELODIC  => entry: D melodic minor
  `);
});

test("tonics", () => {
  check(`
    Bb major             => entry: Bb major
    bb major             => entry: Bb major
    B♭ major             => entry: Bb major
    B flat major         => entry: Bb major
    b flat major         => entry: Bb major
    B-flat major         => entry: Bb major
    F# minor             => entry: F# natural minor (natural unsaid)
    f# minor             => entry: F# natural minor (natural unsaid)
    F sharp minor        => entry: F# natural minor (natural unsaid)
    F-sharp minor        => entry: F# natural minor (natural unsaid)
    Fx major             => entry: F## major
    F## major            => entry: F## major
    F double sharp major => entry: F## major
    Ebb major            => entry: Ebb major
    E double flat major  => entry: Ebb major
    E4 major             => entry: E4 major
    BB major             => prose
    D natural            => entry: D major (major unsaid)
  `);
});

test("a letter alone", () => {
  check(`
    D      => entry: D major (major unsaid)
    F#     => entry: F# major (major unsaid)
    B flat => entry: Bb major (major unsaid)
    d      => entry: ambiguous-subject: D major or D minor
    f#     => entry: ambiguous-subject: F# major or F# minor
    bb     => entry: ambiguous-subject: Bb major or Bb minor
    b      => entry: ambiguous-subject: B major or B minor
  `);
});

test("modes and other kinds", () => {
  check(`
    D dorian                => entry: D dorian
    D Dorian mode           => entry: D dorian
    E phrygian scale        => entry: E phrygian
    F lydian                => entry: F lydian
    G mixolydian            => entry: G mixolydian
    A aeolian               => entry: A aeolian
    B locrian               => entry: B locrian
    C ionian                => entry: C ionian
    C major pentatonic      => entry: C major pentatonic
    A minor pentatonic      => entry: A minor pentatonic
    A blues                 => entry: A blues
    C major blues           => entry: C major blues
    C whole-tone            => entry: C whole-tone
    C whole tone            => entry: C whole-tone
    C wholetone             => entry: C whole-tone
    C half-whole            => entry: C half-whole
    C halfwhole             => entry: C half-whole
    C whole-half            => entry: C whole-half
    C octatonic             => entry: C octatonic (octatonic unsaid)
    C chromatic             => entry: C chromatic
    chromatic               => entry: chromatic
    chromatic scale         => entry: chromatic
    chromatic from G        => entry: G chromatic
    chromatic on G          => entry: G chromatic
    chromatic from G4 to G6 => entry: chromatic from G4 to G6
    "double harmonic" on D  => entry: "double harmonic" on D
    “Double  Harmonic” on D => entry: "double harmonic" on D
    D "double harmonic"     => entry: "double harmonic" on D
  `);
});

// Names in use among players in Britain and America: common practice, no source.
test("kinds and chords by the other names of the trade", () => {
  check(`
    D half-whole diminished         => entry: D half-whole
    D octatonic half-whole          => entry: D half-whole
    D diminished scale half-whole   => entry: D half-whole
    D half-whole octatonic scale    => entry: D half-whole
    D semitone-tone                 => entry: D half-whole
    D half-step whole-step          => entry: D half-whole
    D whole-half diminished scale   => entry: D whole-half
    D diminished whole-half         => entry: D whole-half
    D tone-semitone                 => entry: D whole-half
    D jazz minor                    => entry: D jazz minor
    D jazz melodic minor scale      => entry: D jazz minor
    D melodic minor ascending       => entry: D melodic minor | direction up
    D dominant 7                    => entry: D dominant seventh
    D dom 7th arpeggio              => entry: D dominant seventh
    D minor 7 arpeggio              => entry: D minor seventh
    D maj7 arpeggio                 => entry: D major seventh
    D minor 7 min                   => entry: D natural minor (natural unsaid) | 7 min
    D minor seventh flat five       => entry: D half-diminished seventh
    D minor 7 flat 5 arpeggio       => entry: D half-diminished seventh
    D half-diminished 7 min         => entry: D half-diminished seventh | 7 min
    D fully diminished seventh      => entry: D diminished seventh
    D dim 7                         => entry: D diminished seventh
    D dim arpeggio                  => entry: D diminished arpeggio
    D aug arpeggio                  => entry: D augmented arpeggio
    D minor common chord            => entry: D minor arpeggio
    D common chord                  => entry: D major arpeggio
  `);
});

test("a tonic behind its kind, as syllabuses have it", () => {
  check(`
    whole-tone scale starting on C    => entry: C whole-tone
    chromatic scale starting on G     => entry: G chromatic
    chromatic beginning on G4 to G6   => entry: chromatic from G4 to G6
    diminished seventh on A           => entry: A diminished seventh
    diminished seventh starting on Bb => entry: Bb diminished seventh
    dominant seventh from A           => entry: A dominant seventh
    minor arpeggio on D               => entry: D minor arpeggio
    broken chord on D, at 60          => entry: D major broken chord | tempo 60
    chromatic scale on A clarinet     => entry: chromatic | instrument clarinet in A
  `);
});

test("what cannot stand, and what may be meant", () => {
  check(`
    D diminished         => entry: ambiguous-subject: D diminished arpeggio or D diminished seventh or D half-whole or D whole-half
    D symmetric diminished scale => entry: ambiguous-subject: D half-whole or D whole-half
    D dominant           => entry: ambiguous-subject: D dominant seventh or D mixolydian
    D ascending melodic minor => entry: ambiguous-subject: D melodic minor, up or D jazz minor
    D harmonic dorian    => entry: ambiguous-subject: D harmonic minor | kind dorian
    D harmonic major     => entry: D harmonic major
    H minor              => entry: unknown-key: B minor
    h minor              => entry: unknown-key: B minor
    Hb major             => entry: unknown-key: Bb major
    Fis minor            => entry: unknown-key: F# minor
    Es major             => entry: unknown-key: Eb major
    P major              => entry: unknown-key
    F### major           => entry: unknown-key
    Dm                   => entry: D natural minor (natural unsaid)
    Dmin                 => entry: D natural minor (natural unsaid)
    CM                   => entry: C major
    Cmaj                 => entry: C major
    D dur                => entry: D major
    d moll               => entry: D natural minor (natural unsaid)
    D harmonic           => entry: D harmonic minor
    D pentatonic         => entry: ambiguous-subject: D major pentatonic or D minor pentatonic
    C diminished scale   => entry: ambiguous-subject: C half-whole or C whole-half
    "unknown scale" on D => entry: unknown-declaration
    C7                   => entry: C dominant seventh
    thirds in D minor    => entry: D natural minor (natural unsaid) | pattern thirds
    slow D minor         => entry: D natural minor (natural unsaid) | without click slow
    slow, D minor        => entry: D natural minor (natural unsaid) | without click slow
    in thirds D minor    => entry: D natural minor (natural unsaid) | pattern thirds
    C, G and D major     => entry: C major, G major, D major
    C G and D major      => entry: C major, G major, D major
    C and G major        => entry: C major, G major
    thirds, slow         => entry: (no subject) | pattern thirds | without click slow
  `);
});

test("a second subject", () => {
  check(`
    C major, G major     => entry: C major, G major
    C major and G major  => entry: C major, G major
    D minor, notes E5 F5 => entry: D natural minor (natural unsaid) | second subject notes E5 F5
    D minor minor        => entry: D natural minor (natural unsaid) | kind natural minor
  `);
});

test("chords", () => {
  check(`
    D minor arpeggio                  => entry: D minor arpeggio
    D arpeggio                        => entry: D major arpeggio
    D major arpeggio                  => entry: D major arpeggio
    D minor triad                     => entry: D minor arpeggio
    D augmented arpeggio              => entry: D augmented arpeggio
    D diminished arpeggio             => entry: D diminished arpeggio
    A dominant seventh                => entry: A dominant seventh
    A dominant 7th                    => entry: A dominant seventh
    A dominant seventh arpeggio       => entry: A dominant seventh
    dominant seventh in D             => entry: A dominant seventh (in D)
    dominant seventh of D major       => entry: A dominant seventh (in D)
    D major seventh                   => entry: D major seventh
    D minor seventh                   => entry: D minor seventh
    B half-diminished                 => entry: B half-diminished seventh
    B half-diminished seventh         => entry: B half-diminished seventh
    B diminished seventh              => entry: B diminished seventh
    D broken chord                    => entry: D major broken chord
    D minor broken chord              => entry: D minor broken chord
    D minor arpeggio, 1st inversion   => entry: D minor arpeggio | inversion 1
    D minor arpeggio second inversion => entry: D minor arpeggio | inversion 2
    D minor arpeggio, root position   => entry: D minor arpeggio | inversion 0
  `);
});

test("titles, by their names or their short names, in any quotes", () => {
  check(`
    Ground                      => entry: title Ground in G minor
    GROUND, slow                => entry: title Ground in G minor | without click slow
    Ground at 60                => entry: title Ground in G minor | tempo 60
    "Ground in G minor"         => entry: title Ground in G minor
    "ground  in g minor"        => entry: title Ground in G minor
    “Ground in G minor”         => entry: title Ground in G minor
    „Ground in G minor“         => entry: title Ground in G minor
    «Ground in G minor»         => entry: title Ground in G minor
    "Daily thirds no. 3"        => entry: title Daily thirds no. 3
    "Not declared", bars 1-8    => entry: title Not declared (undeclared) | place bars 1-8
    "A -- B: c, d", slow        => entry: title A -- B: c, d (undeclared) | without click slow
    "open, at 60                => entry: title open (undeclared) | tempo 60
    Ground in G minor, bars 1-8 => entry: title Ground in G minor | place bars 1-8
  `);
});

test("chains", () => {
  check(`
    C major > F major > Bb major       => entry: C major > F major > Bb major
    C major → F major                  => entry: C major > F major
    C major>F major                    => entry: C major > F major
    C > F > Bb                         => entry: C major > F major > Bb major
    C > F > Bb major                   => entry: C major > F major > Bb major
    C major > F major, straight, at 60 => entry: C major > F major | pattern straight | tempo 60
    C major > F major straight at 60   => entry: C major > F major | pattern straight | tempo 60
    C major >                          => entry: C major
    C major > thirds                   => entry: C major | pattern thirds
    C major > H major                  => entry: C major | second subject unknown-key: B major
    C major -> F major                 => entry: C major > F major | unknown -
  `);
});

test("figures", () => {
  check(`
    notes E5 F5              => entry: notes E5 F5
    notes E5, F5, G5, slow   => entry: notes E5 F5 G5 | without click slow
    notes E5-F5              => entry: notes E5 F5
    note E5                  => entry: notes E5
    long tones               => entry: long tones
    long-tones               => entry: long tones
    longtones                => entry: long tones
    long tones on F4 C5      => entry: long tones on F4 C5
    long tones F4 C5         => entry: long tones on F4 C5
    long tones on D minor    => entry: long tones on D natural minor
    long tones on D          => entry: long tones on D
    long tones on A clarinet => entry: long tones | instrument clarinet in A
    trill E6 with F6         => entry: trill E6 with F6
    trill E6 F6              => entry: trill E6 with F6
    trill E6                 => entry: trill E6
    E5 F5                    => entry: (no subject) | note E5 | note F5
  `);
});

test("activities", () => {
  check(`
    sight-reading            => entry: sight-reading
    sightreading, 10 min     => entry: sight-reading | 10 min
    improvising on D dorian  => entry: improvising on D dorian
    improvisation in D minor => entry: improvising on D natural minor
    tuning with Anna         => entry: tuning | with Anna
    score-study              => entry: score study
    run through              => entry: run-through
    rehearsing               => entry: rehearsal
    Stretching, 5 min        => entry: stretching | 5 min
  `);
});

test("free words", () => {
  check(`
    done "clap it" => entry: done clap it
    done D minor   => entry: D natural minor (natural unsaid) | done
  `);
});
