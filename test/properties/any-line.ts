import fc from "fast-check";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, TOLD_TOGETHER, WHOLE_LINES } from "./lines.ts";

// Lines in the hands of many players, and the names that their journals declare; invented. For whatever must hold of
// any line in any journal.

/** What stands on a line, as the usual hand would write each part of it. */
interface Said {
  readonly subject: string;
  readonly claim: string;
  readonly terms: readonly string[];
  /** With its note value, and what was said of each. */
  readonly tempos: string;
  readonly place: string;
  readonly focus: string;
  readonly minutes: string;
  readonly remark: string;
}

const USUAL_ORDER = ["terms", "tempos", "place", "focus", "minutes"] as const;
type Slot = (typeof USUAL_ORDER)[number];

/** How a player writes. What a hand varies from line to line, it varies by a number. */
export interface Hand {
  readonly comma: string;
  readonly colon: string;
  readonly end: string;
  readonly order: (number: number) => readonly Slot[];
  readonly subject: (words: string) => string;
  readonly minutes: (words: string, number: number) => string;
  /** Whether minutes and a remark stand on every line. */
  readonly always: readonly ("minutes" | "remark")[];
  /** A last change to a line. */
  readonly line: (text: string, number: number) => string;
}

const USUAL: Hand = {
  comma: ", ",
  colon: ": ",
  end: "\n",
  order: () => USUAL_ORDER,
  subject: (words) => words,
  minutes: (words) => words,
  always: [],
  line: (text) => text,
};

const OTHER_ORDERS: readonly (readonly Slot[])[] = [
  ["tempos", "place", "terms", "minutes", "focus"],
  ["minutes", "focus", "place", "tempos", "terms"],
  ["focus", "terms", "minutes", "tempos", "place"],
  ["place", "minutes", "tempos", "focus", "terms"],
];
const UNITS = [" min", "'", " minutes", "m", " mins", "’"];
const COMMAS = [", ", ",", " ", ",, ", " , ", ",  ", "; ", ": ", ",\t", " – ", " > "];

export const HANDS = {
  usual: USUAL,
  tight: { ...USUAL, comma: ",", colon: ":" },
  reordered: { ...USUAL, order: (number) => OTHER_ORDERS[number % OTHER_ORDERS.length]! },
  capitals: { ...USUAL, line: (text, number) => (number % 2 ? text.toUpperCase() : capitalised(text)) },
  signs: { ...USUAL, line: typographic },
  german: { ...USUAL, subject: inGerman },
  remarks: { ...USUAL, always: ["remark"] },
  crlf: { ...USUAL, end: "\r\n" },
  minutes: { ...USUAL, always: ["minutes"], minutes: (words, number) => words.replace(" min", unit(number)) },
  bare: { ...USUAL, comma: " " },
  /** Commas as they fall. */
  hurried: { ...USUAL, line: (text, number) => text.replaceAll(", ", () => COMMAS[number++ % COMMAS.length]!) },
} satisfies Readonly<Record<string, Hand>>;

export const HAND_NAMES = Object.keys(HANDS) as readonly (keyof typeof HANDS)[];

function capitalised(text: string): string {
  return text.replace(/(?<![\p{L}#♯♭])\p{L}/gu, (letter) => letter.toUpperCase());
}

function typographic(text: string): string {
  return text
    .replace(/(?<=\b[A-Ha-h])#/g, "♯")
    .replace(/(?<=\b[A-H])b\b/g, "♭")
    .replace(/"([^"]*)"/g, "“$1”")
    .replace(/--|(?<=\d)-(?=\d)/g, "–")
    .replaceAll(" > ", " → ")
    .replaceAll("'", "’");
}

const GERMAN_NAMES: ReadonlyMap<string, string> = new Map([
  ["F#", "Fis"],
  ["C#", "Cis"],
  ["G#", "Gis"],
  ["Bb", "B"],
  ["Eb", "Es"],
  ["Ab", "As"],
  ["B", "H"],
]);

function inGerman(words: string): string {
  return words.replace(/\b([A-G][#b]?) (major|minor)/g, (_, tonic: string, kind: string) => {
    const name = GERMAN_NAMES.get(tonic) ?? tonic;
    return kind === "major" ? `${name}-Dur` : `${name.toLowerCase()}-Moll`;
  });
}

function unit(number: number): string {
  return UNITS[number % UNITS.length]!;
}

function written(hand: Hand, said: Said, number: number): string {
  const { claim, remark } = said;
  const slots: Readonly<Record<Slot, readonly string[]>> = {
    terms: said.terms,
    tempos: [said.tempos],
    place: [said.place],
    focus: [said.focus],
    minutes: [hand.minutes(said.minutes || (hand.always.includes("minutes") ? "3 min" : ""), number)],
  };
  const terms = hand.order(number).flatMap((slot) => slots[slot].filter((each) => each !== ""));
  const opening = hand.subject(said.subject) + (claim && hand.colon + claim);
  const tail = remark || (hand.always.includes("remark") ? " -- easier than at 50, 5 min more" : "");
  return hand.line([opening, ...terms].join(hand.comma) + tail, number);
}

const OUTCOMES = [
  "",
  " clean",
  " clean",
  " clean 4 of 5",
  " clean 5 in a row",
  " tense",
  " nearly",
  " slips",
  " uneven",
];
const ODD_OUTCOMES = [
  ...[" 3 times", " 5x", " clean tense", " slurred", " 20 min", " cleen", " not clean", " quarter", " 6 of 5", " done"],
];
const FIGURES = ["60", "63", "66", "72", "84", "120", "60-72", "60 to 72"];
const ODD_FIGURES = ["60 - 72", "63–66", "60→72", "19", "20", "400", "401", "7", "66.5", "060", "1000", "60/72"];

/** `8ths at 60 clean, 66`, `16ths at 60 to 72 clean`, `at 60, 63-66 clean, 70`. */
function temposOf(
  openings: readonly string[],
  figures: readonly string[],
  outcomes: readonly string[],
): fc.Arbitrary<string> {
  const trial = fc.tuple(fc.constantFrom(...figures), fc.constantFrom(...outcomes)).map((each) => each.join(""));
  return fc
    .tuple(fc.constantFrom(...openings), fc.array(trial, { minLength: 1, maxLength: 4 }))
    .map(([opening, trials]) => opening + trials.join(", "));
}

const fittingTempos = temposOf(
  ["at ", "at ", "8ths at ", "8ths at ", "16ths at ", "at quarter=", "8ths at half=", "♩=", "triplets at "],
  FIGURES,
  OUTCOMES,
);
const tempos = temposOf(
  ["at ", "8ths at ", "dotted 8ths at ", "slurred 8ths at ", "at ♩. = ", "half=", "8ths ", "", "@"],
  [...FIGURES, ...ODD_FIGURES],
  [...OUTCOMES, ...ODD_OUTCOMES],
);

const sometimes = (...words: readonly string[]) =>
  fc.oneof({ weight: 3, arbitrary: fc.constant("") }, { weight: 1, arbitrary: fc.constantFrom(...words) });
const LOCAL_SUBJECTS = ["fis-Moll", "H-Dur", "B-Dur > g-Moll", "Es Dur", "si bémol majeur", "fa# mineur", "re mineur"];
const FITTING = [
  ...[
    "G major",
    "C major > F major > Bb major",
    "D minor arpeggio",
    "chromatic from G",
    "long tones on F4",
    "G mixolydian",
  ],
  ...["Ground", "Set", '"Daily study"', "Sixty 60", "Clean", "duo 12", "stretching", "market band"],
];
const PROSE_SUBJECTS = ["D tricky bit", "G a bit slow", "the hard bar", "A", "a better day", "Flat on E again"];
const CLAIMS = ["D E F G A Bb C D", "F# G# A# B C# D# E# F#", "1 flat", "6 sharps", "TTSTTTS", "D,E,F,G,A", "nothing"];

const endings = {
  place: sometimes("bars 5-8", "bars 17-32, 40", "mvt 2", "letter B", "from the top", "page 4"),
  focus: sometimes("focus ease", "focus the left hand", "focus 60", "sore left thumb", "with Anna", "with drone F"),
  minutes: sometimes("10 min", "20 min", "5 min", "1 h"),
  remark: sometimes(" -- a remark at 60 clean", " --", " – at 72", " -- ? breathe", " -- 20 min"),
};

/** What fits together, so that most of it is read without a complaint. */
const fitting: fc.Arbitrary<Said> = fc.record({
  ...endings,
  subject: fc.constantFrom(...["D minor", "F# major", "Bb major", "A minor harmonic", "D minor melodic"], ...FITTING),
  claim: fc.constant(""),
  terms: fc
    .tuple(
      sometimes("thirds", "broken thirds", "turns", "fours", "thirds alternating", '"zigzag"', "in 3rds"),
      sometimes("slurred", "tongued", "staccato", "t-k", "slur 2+2", "slurred up tongued down"),
      sometimes("dotted", "even", "LSS", "reverse dotted"),
      sometimes("up", "down", "up and down", "top down", "back and forth"),
      sometimes("five notes", "2 octaves", "1 octave", "twelfth"),
      sometimes("on tenor recorder", "on flute", "by heart", "sung", "no click"),
    )
    .map((terms) => terms.filter((each) => each !== "")),
  tempos: fc.oneof(
    { weight: 4, arbitrary: fittingTempos },
    { weight: 1, arbitrary: fc.constantFrom("", "slow", ...TOLD_TOGETHER) },
  ),
});

/** Anything next to anything. */
const anything: fc.Arbitrary<Said> = fc.record({
  ...endings,
  subject: fc.constantFrom(...SCALE_SUBJECTS, ...CHORD_SUBJECTS, ...FITTING, ...LOCAL_SUBJECTS, ...PROSE_SUBJECTS),
  claim: fc.oneof({ weight: 5, arbitrary: fc.constant("") }, { weight: 1, arbitrary: fc.constantFrom(...CLAIMS) }),
  terms: fc.array(fc.constantFrom(...TERMS.filter((each) => each !== "")), { maxLength: 3 }),
  tempos: fc.oneof({ weight: 2, arbitrary: tempos }, { weight: 1, arbitrary: fc.constantFrom("", ...TOLD_TOGETHER) }),
  place: sometimes("bars 5-8", "letter B", "at letter B", "at home", "bars 5-8 at 60"),
  minutes: sometimes("10 min", "0 min", "25 hours"),
  remark: sometimes("--x", ",", " ", " -- so"),
});

const said = fc.oneof({ weight: 2, arbitrary: fitting }, { weight: 1, arbitrary: anything });

const indent = fc.constantFrom("  ", "  ", "  ", "", "\t", "- ", "* ", "\u00A0");
const anyNumber = fc.nat(1000);

/** A line below a day, as one hand writes it; some of them are no entries. */
export function lineBy(hand: Hand): fc.Arbitrary<string> {
  const entry = fc.tuple(indent, said, anyNumber).map(([space, each, i]) => space + written(hand, each, i));
  const whole = fc.tuple(fc.constantFrom(...WHOLE_LINES), anyNumber).map(([line, i]) => hand.line(line, i));
  return fc.oneof({ weight: 6, arbitrary: entry }, { weight: 1, arbitrary: whole });
}

/** Lines that have much in common, as a player's lines do: each is put together from what a few of them say. */
export function kindredLinesBy(hand: Hand): fc.Arbitrary<readonly string[]> {
  const parts = fc.array(fc.nat(), { minLength: 8, maxLength: 8 });
  return fc
    .tuple(indent, fc.array(said, { minLength: 2, maxLength: 4 }), fc.array(parts, { minLength: 2, maxLength: 30 }))
    .map(([space, stock, lines]) => lines.map((from) => space + written(hand, mixed(stock, from), from[0]! % 1000)));
}

function mixed(stock: readonly Said[], from: readonly number[]): Said {
  const of = (i: number): Said => stock[from[i]! % stock.length]!;
  return {
    subject: of(0).subject,
    claim: of(0).claim,
    terms: [...of(1).terms.slice(0, 1), ...of(2).terms.slice(1)],
    tempos: of(3).tempos,
    place: of(4).place,
    focus: of(5).focus,
    minutes: of(6).minutes,
    remark: of(7).remark,
  };
}

const ODD_SIGNS = [
  ..." ,:;-–—>→|=\"“”#b♯♭().+/'019adnrsxDEH",
  ...["\t", "\u00A0", "\u00AD", "\u2028", "\u0000", "\u0301", "\uFEFF", "𝄪"],
];
/** A line with one slip of the fingers: a sign gone, added, put for another, or two that changed places. */
const slipped = (line: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc
    .tuple(line, fc.nat(10_000), fc.constantFrom(...ODD_SIGNS), fc.constantFrom("gone", "added", "put", "swapped"))
    .map(([text, place, sign, slip]) => {
      const at = place % (text.length + 1);
      const [before, one, two, after] = [text.slice(0, at), text[at] ?? "", text[at + 1] ?? "", text.slice(at + 2)];
      if (slip === "gone") return before + two + after;
      if (slip === "added") return before + sign + one + two + after;
      return slip === "put" ? before + sign + two + after : before + two + one + after;
    });

/** A line below a day, in any hand, and now and then with a slip. It holds no line end. */
export const anyLine: fc.Arbitrary<string> = fc
  .constantFrom(...HAND_NAMES)
  .chain((name) =>
    fc.oneof({ weight: 5, arbitrary: lineBy(HANDS[name]) }, { weight: 1, arbitrary: slipped(lineBy(HANDS[name])) }),
  );

const DECLARATIONS = [
  "instrument alto recorder",
  "instrument tenor recorder",
  'instrument "wooden flute": D4 to B5',
  'piece "Ground in G minor" as Ground: G minor, 96 bars, goal half=48',
  'study "Daily study" as Set: D minor',
  'pattern "zigzag": 1 3 2 4',
  'scale "double harmonic": 1 b2 3 4 5 b6 7',
  'phase "market band"',
  'activity "stretching"',
  "note value 8ths",
  "note value quarters",
  "usual articulation slurred",
  "pitch A=415, Vallotti",
  "aim D minor, thirds, 8ths at 96 by 2026-12-31",
];
/** Names that could be taken for words of the language, or for figures. */
const MISLEADING = [
  'activity "pitch"',
  'study "Second set" as Clean: C minor',
  'piece "Slow" as Slow',
  'phase "h"',
  'phase "R & R"',
  'phase "Übergang"',
  'pattern "thirds": 1 3',
  'activity "with friends"',
  'instrument "flute 415": D4 to B5',
  'phase "round 60"',
  'piece "Study 60" as Sixty 60: G minor',
  'activity "duo 12"',
  'study "Op. 30" as Op 30: C major',
];

/** The declarations of a journal, a line each: its own words, how its notes are called, what goes without saying. */
export const anyVocabulary: fc.Arbitrary<readonly string[]> = fc
  .tuple(
    fc.constantFrom([], [], ["names german"], ["names french"]),
    fc.subarray(DECLARATIONS),
    fc.oneof({ weight: 2, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: fc.subarray(MISLEADING) }),
  )
  .map((parts) => parts.flat());
