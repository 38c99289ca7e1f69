// How invented players write in five languages: the words that the journals of this folder are made of. The words are the
// format's own (syntaxes/FORMAT.md); what is said of the body stands in a table of words as well (plan.md, 7).

/** The words of one hand. */
export interface Hand {
  /** What the head says of the names of notes; undefined for the usual ones. */
  readonly names?: string;
  /** Between the terms of a line. */
  readonly comma: string;
  /** Scales, chords, chains, figures: what an entry begins with. */
  readonly subjects: readonly string[];
  readonly terms: readonly string[];
  readonly values: readonly string[];
  readonly reached: readonly string[];
  readonly failed: readonly string[];
  /** A place, from one bar to another. */
  readonly bars: (from: number, to: number) => string;
  readonly same: string;
  /** What hurts; no word of the day before an entry's own. */
  readonly hurts: readonly string[];
  readonly eased: string;
  /** Of no part that hurts. */
  readonly remarks: readonly string[];
  readonly instruments: readonly string[];
}

const INSTRUMENTS = [
  "alto recorder",
  "soprano recorder",
  "violin",
  "cello",
  "piano",
  "clarinet",
  "trumpet",
  "guitar",
  "soprano",
  "snare drum",
  '"wooden flute": D4 to B5',
  '"no range"',
];

const ENGLISH: Hand = {
  comma: ", ",
  subjects: [
    "D minor",
    "D melodic minor",
    "G harmonic minor",
    "F major",
    "Bb major",
    "C major",
    "A minor",
    "D dorian",
    "chromatic from G",
    "D minor arpeggio",
    "G major arpeggio",
    "A dominant seventh",
    "E major > A major",
    "F major, C major",
    "C# major",
    "long tones on F4 C5",
    "notes E5 F5",
    "trill E5 with F5",
    '"double harmonic" on D',
    "open strings",
    "sight-reading",
    "thumb under",
  ],
  terms: [
    "thirds",
    "fours",
    '"zig-zag"',
    "2 octaves",
    "five notes",
    "twelfth",
    "slurred",
    "tongued",
    "staccato",
    "legato",
    "dotted",
    "top down",
    "up",
    "by heart",
    "with drone F",
    "focus finger changes",
    "focus ease <b>now</b>",
    "on tenor recorder",
    "5 min",
    "left hand",
  ],
  values: ["8ths ", "16ths ", "triplets ", "quavers ", ""],
  reached: ["clean", "clean 4 of 5", "clean 5 in a row", "clean 3 in a row", "easy", "ok"],
  failed: ["uneven", "slips", "nearly", "broke down", "clean tense", "rushed", "clean 1 of 5"],
  bars: (from, to) => `bars ${from}-${to}`,
  same: "same",
  hurts: ["sore left thumb", "wrist hurts", "my neck aches", "numb finger", "pain in the jaw"],
  eased: "no pain today",
  remarks: ["E5 to F5 is “what breaks” -- again", "lighter, <em>she</em> says", "cold hands, tired", "60 was too fast"],
  instruments: INSTRUMENTS,
};

const GERMAN: Hand = {
  ...ENGLISH,
  names: "german",
  subjects: [
    "d-Moll melodisch",
    "g-Moll harmonisch",
    "F-Dur",
    "B-Dur",
    "H-Dur",
    "fis-Moll",
    "D-Dur Dreiklang",
    "C-Dur > F-Dur",
    "leere Saiten",
    "long tones on f' c''",
    "notes e'' f''",
  ],
  terms: ["Terzen", "gebunden", "gestoßen", "zwei Oktaven", "punktiert", "aufwärts", "10 Minuten", "linke Hand"],
  values: ["Achtel ", "8tel ", "Sechzehntel ", ""],
  reached: ["sauber", "geht", "sitzt", "gut", "clean 4 of 5"],
  failed: ["ungleichmäßig", "fast", "holpert", "noch nicht"],
  bars: (from, to) => `Takt ${from}-${to}`,
  same: "nochmal",
  hurts: ["Daumen tut weh", "Schmerzen im Handgelenk"],
  eased: "keine Schmerzen",
  remarks: ["von h' nach cis'' hakt es „noch“ -- schade", "müde heute"],
};

const FRENCH: Hand = {
  ...ENGLISH,
  names: "french",
  subjects: [
    "ré mineur",
    "ré majeur",
    "si bémol majeur",
    "fa dièse mineur harmonic",
    "sol mineur arpeggio",
    "do majeur",
    "cordes à vide",
    "notes mi5 fa5",
  ],
  terms: ["en tierces", "lié", "détaché", "2 octaves", "rythme pointé", "10 minutes", "main droite"],
  values: ["croches ", "doubles croches ", ""],
  reached: ["propre", "bien", "facile"],
  failed: ["presque", "inégal", "pas encore", "accrocs"],
  bars: (from, to) => `mesures ${from} à ${to}`,
  same: "pareil",
  hurts: ["douleur au poignet", "mal au pouce"],
  eased: "sans douleur",
  remarks: ["« plus léger », dit-elle", "fatigué, froid"],
};

const DUTCH: Hand = {
  ...ENGLISH,
  names: "dutch",
  subjects: ["d klein", "bes groot", "fis klein", "g groot", "losse snaren", "c groot > f groot"],
  terms: ["tertsen", "gebonden", "twee octaven", "10 minuten"],
  values: ["achtsten ", ""],
  reached: ["goed", "schoon", "lukt"],
  failed: ["ongelijk", "bijna", "nog niet"],
  bars: (from, to) => `maat ${from}-${to}`,
  same: "hetzelfde",
  hurts: ["pijn in de pols"],
  eased: "geen pijn",
  remarks: ["‘lichter’, zegt ze -- moe"],
};

const ITALIAN: Hand = {
  ...ENGLISH,
  names: "italian",
  subjects: ["re minore", "fa diesis minore", "si bemolle maggiore", "sol maggiore", "corde vuote"],
  terms: ["per terze", "legate", "salendo", "due ottave", "10 minuti"],
  values: ["crome ", ""],
  reached: ["pulito", "bene", "facile"],
  failed: ["irregolare", "quasi", "non ancora"],
  bars: (from, to) => `battute ${from}-${to}`,
  same: "come sopra",
  hurts: ["dolore al polso"],
  eased: "senza dolore",
  remarks: ["«più leggero», dice lei"],
};

/** Those without commas, and those that mix, stand beside the usual ones. */
export const HANDS: readonly Hand[] = [
  ENGLISH,
  ENGLISH,
  { ...ENGLISH, comma: " " },
  { ...ENGLISH, comma: "," },
  GERMAN,
  FRENCH,
  DUTCH,
  ITALIAN,
  { ...GERMAN, comma: " " },
];
