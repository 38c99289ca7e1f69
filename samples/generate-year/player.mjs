// The truth behind the diary: what the invented player practises, and how fast she could play it in which week.

/** The steps of a mechanical metronome, in beats a minute; common practice. */
export const MARKS = [
  40, 42, 44, 46, 48, 50, 52, 54, 56, 58, 60, 63, 66, 69, 72, 76, 80, 84, 88, 92, 96, 100, 104, 108, 112, 116, 120,
];

const FINGERS = ["finger changes", "evenness", "quiet hands"];
const TONGUE = ["tonguing", "evenness"];
const PHRASE = ["phrasing", "breath", "end of the phrase"];

/** Two ways in which a line tends to fail, and what the player listens for in it. */
const finger = { fails: ["uneven", "slips"], focuses: FINGERS };
const tongue = { fails: ["uneven", "rushed"], focuses: TONGUE };
const piece = { fails: ["nearly", "slips"], focuses: PHRASE };

/**
 * By its short name in the shorthand: the line as it is written, and the course of the best tempo, as pairs of a week
 * (1 to 52) and beats a minute. Between two pairs the tempo goes by equal metronome steps.
 */
export const EXERCISES = {
  dm3: {
    line: "D melodic minor, thirds, slurred, 8ths",
    // A cold in week 11, two weeks off from week 35.
    course: [
      1, 56, 5, 60, 10, 69, 11, 66, 12, 56, 13, 60, 16, 72, 21, 72, 24, 76, 27, 76, 33, 84, 37, 76, 41, 84, 52, 96,
    ],
    ...finger,
  },
  gm: {
    line: "G minor arpeggio, 2 octaves, slurred",
    // Left alone from week 15 to week 31.
    course: [1, 56, 9, 66, 13, 63, 14, 69, 32, 54, 34, 58, 37, 58, 44, 66, 52, 72],
    ...finger,
  },
  f12: {
    line: "F major, twelfth, slurred, 8ths",
    course: [1, 66, 10, 76, 13, 72, 24, 84, 33, 88, 39, 84, 52, 100],
    ...finger,
  },
  bb4: {
    line: "Bb major, fours, 8ths",
    // A new fingering in week 17.
    course: [4, 66, 10, 72, 16, 76, 17, 58, 19, 60, 23, 69, 33, 80, 37, 76, 44, 84, 52, 88],
    ...finger,
  },
  am: {
    line: "A harmonic minor, slur 2+2, 8ths",
    // Left alone from week 43 to week 48.
    course: [8, 54, 16, 63, 27, 69, 37, 66, 42, 69, 49, 58, 52, 66],
    ...finger,
  },
  // The thumb is set anew in week 41, and what lies above the octave has to be learnt again, slower.
  hi: { line: "F major arpeggio, 2 octaves, slurred, 8ths", course: [41, 88, 52, 69], ...finger },
  eb: { line: "Eb major, thirds, slurred, 8ths", course: [21, 46, 33, 58, 37, 54, 52, 66], ...finger },
  em: { line: "E major, 8ths", course: [41, 48, 52, 63], ...finger },
  chrom: { line: "chromatic from G4 to G5, slurred, 8ths", course: [6, 44, 15, 52, 50, 50, 52, 54], ...finger },
  chain1: { line: "C major > F major > Bb major, slurred, 8ths", course: [3, 60, 40, 72], ...finger },
  chain2: { line: "G major > D major > A major, slurred, 8ths", course: [41, 56, 52, 66], ...finger },
  dom: { line: "dominant seventh in C, slurred", course: [7, 60, 16, 66], ...finger },
  dim: { line: "C# diminished seventh, slurred", course: [45, 50, 52, 58], ...finger },
  wt: { line: "F whole-tone, slurred, 8ths", course: [50, 54, 52, 56], ...finger },
  cross: { line: "notes G5 A5, back and forth, slurred", course: [1, 60, 3, 66], ...finger },
  de: { line: "notes D5 Eb5, back and forth, slurred", course: [17, 50, 19, 60, 28, 72], ...finger },
  tri: { line: "F major, triads, alternating, slurred, 8ths", course: [5, 50, 14, 58], ...finger },
  turns: { line: "G harmonic minor, turns, slurred, 8ths", course: [16, 54, 32, 66], ...finger },
  td: { line: "D melodic minor, thirds, top down, tongued, 8ths", course: [28, 58, 42, 69], ...finger },
  bc: { line: "D minor broken chord, legato tongued", course: [3, 60, 48, 72], ...finger },
  inv: { line: "F major arpeggio, 1st inversion, slurred", course: [34, 58, 43, 63], ...finger },
  pent: { line: "G minor pentatonic, 2 octaves, slurred, 8ths", course: [4, 54, 33, 63], ...finger },
  lss: { line: "D major, LSS, 8ths", course: [9, 54, 21, 60], ...tongue },
  ineg: { line: "D dorian, inégal, 8ths", course: [8, 58, 10, 60], ...tongue },
  stac: { line: "C major, fives, staccato, 8ths", course: [13, 66, 51, 80], ...tongue },
  stile: { line: 'G major, "over the stile", 8ths', course: [15, 60, 40, 76], ...tongue },
  dot: { line: "F major, full range, dotted, 8ths", course: [6, 54, 17, 60], ...tongue },
  // Fast and hard with t-k, then softer and slower with d-g.
  tk: { line: "G major, t-k, 16ths", course: [2, 76, 6, 76, 10, 72, 13, 66], ...tongue },
  dg: { line: "G major, d-g, 16ths", course: [13, 63, 16, 60, 22, 56, 27, 54], ...tongue },
  cd: { line: "C major, d-g, 16ths", course: [39, 50, 52, 66], ...tongue },
  tC: { line: "C major, on tenor recorder, 8ths", course: [3, 69, 52, 69], swing: 1.4, ...tongue },
  tAm: {
    line: "A melodic minor, on tenor recorder, slurred, 8ths",
    course: [3, 52, 15, 60, 33, 63, 52, 72],
    ...finger,
  },
  tG: { line: "G major arpeggio, on tenor recorder, slurred", course: [31, 54, 40, 60], ...finger },
  gal1: { line: "Galliard, bars 1-24", course: [1, 44, 10, 54, 11, 50, 20, 58, 29, 63, 46, 63], ...piece },
  gal2: { line: "Galliard, bars 25-48", course: [2, 42, 10, 50, 20, 56, 29, 60], ...piece },
  gal3: {
    line: "Galliard, bars 49-72",
    course: [6, 40, 10, 48, 20, 52, 29, 58],
    fails: ["rushed", "slips"],
    focuses: PHRASE,
  },
  gat1: { line: "Gates, mvt 1", course: [9, 48, 29, 56], ...piece },
  gat2a: { line: "Gates, mvt 2, bars 1-16", course: [15, 48, 30, 63], ...piece },
  gat2b: { line: "Gates, mvt 2, bars 17-40", course: [18, 44, 30, 60], ...piece },
  gat3a: { line: "Gates, mvt 3, bars 1-24", course: [22, 50, 30, 66], ...piece },
  gat3b: { line: "Gates, mvt 3, bars 25-48", course: [24, 46, 30, 63], ...piece },
  st4a: { line: "Stairs, lines 1-4", course: [32, 54, 40, 66], ...finger },
  st4b: { line: "Stairs, lines 5-8", course: [34, 50, 40, 56], ...finger },
  att: { line: "Attic, lines 1-3", course: [46, 48, 52, 56], ...finger },
  lam1: { line: "Lamps, on tenor recorder, bars 1-20", course: [23, 52, 34, 58, 52, 69], ...piece },
  lam2: { line: "Lamps, on tenor recorder, bars 21-40", course: [42, 52, 52, 63], ...piece },
  lam3: { line: "Lamps, on tenor recorder, bars 41-60", course: [48, 50, 52, 60], ...piece },
  fan1: { line: "Fantasia, bars 1-30", course: [39, 48, 52, 63], ...piece },
  fan2: { line: "Fantasia, bars 31-64", course: [41, 44, 52, 60], ...piece },
  fan3: { line: "Fantasia, bars 65-90", course: [45, 44, 52, 58], ...piece },
  fanall: { line: "Fantasia, from the top", course: [50, 50, 52, 56], ...piece },
};

/** What is played without a metronome; one of the lines is taken each time. */
export const WITHOUT_TEMPO = {
  tones: [
    "long tones on F4 C5 F5",
    "long tones on G4 D5 G5, with drone G",
    "long tones on A4 E5 A5",
    "long tones on F4 C5 F5, with drone F, focus tuning",
    "long tones on C5 D5 E5 F5, focus sound",
  ],
  tonesT: ["long tones on C4 G4 C5, on tenor recorder", "long tones on D4 A4 D5, on tenor recorder, focus breath"],
  five: [
    "D minor, five notes, slurred, slow",
    "G minor, five notes, slurred, slow, easy",
    "F major, five notes, slow, focus ease",
    "C major, five notes, slurred, slow",
  ],
  breath: ["breathing"],
};

/** The declarations of the journal, which stand in journal.practice. */
export const DECLARATIONS = `-- Everything in this journal is invented: the player, the teacher, the pieces and every figure. It was generated by
-- samples/generate-year.mjs, to show what a year looks like. It is no model of how fast anybody ought to be.

player Hedda
instrument alto recorder
instrument tenor recorder
pitch A=440
usual articulation tongued

piece "Salt Barn Galliard" as Galliard: F major, 72 bars, goal half=63, from 2025-11-24, due 2026-06-20
piece "Seven Gates" as Gates: G minor, from 2026-01-22, due 2026-06-20
movement "Seven Gates" 1 "Iron": G minor, 32 bars, goal quarter=56
movement "Seven Gates" 2 "Willow": Bb major, 40 bars, goal quarter=60
movement "Seven Gates" 3 "Wicket": G minor, 48 bars, goal dotted quarter=66
piece "Three Lamps" as Lamps: A minor, 60 bars, range C4 to B5, goal quarter=66, from 2026-05-02, due 2026-11-21
piece "Reed Bed Fantasia" as Fantasia: C major, 90 bars, goal quarter=60, from 2026-08-19, due 2026-11-21
study "Twelve Stairs no. 4" as Stairs: Bb major
study "Twelve Stairs no. 9" as Attic: E major

concert "Midsummer in the net loft" on 2026-06-20: "Salt Barn Galliard", "Seven Gates"
concert "Lantern evening" on 2026-11-21: "Three Lamps", "Reed Bed Fantasia"

aim D melodic minor, thirds, slurred, 8ths at 100
aim E major, 8ths at 72
aim Lamps, by heart

pattern "over the stile": 1 2 3 5 3 1
focus "quiet hands"
focus "end of the phrase"
phase "tenor corner"
`;
