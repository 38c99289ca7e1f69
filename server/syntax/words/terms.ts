import { FURTHER_BEATS } from "../lexicon/beats.ts";
import { lexiconPhrases } from "./lexicon-phrases.ts";
import type { Fraction, Verdict } from "./meaning.ts";
import { merged, type Phrase, phrase } from "./phrase.ts";

export type { Phrase };

const WEEKDAYS = [
  "mon monday mon.",
  "tue tues tuesday tue.",
  "wed wednesday wed. weds",
  "thu thur thurs thursday thu.",
  "fri friday fri.",
  "sat saturday sat.",
  "sun sunday sun.",
];

/**
 * The words of the language that need no theory to be read: common practice of the trade, no source, or decisions of
 * the format; the larger tables are in `lexicon/`. Scale kinds, chords, patterns and instruments come from `music/`.
 */
export const TERMS: readonly Phrase[] = merged([
  ...directions(),
  ...spans(),
  ...rhythms(),
  ...noteValues(),
  ...withoutClick(),
  ...outcomes(),
  ...manners(),
  ...inversions(),
  ...phases(),
  ...lineWords(),
  ...lexiconPhrases("english"),
]);

function directions(): Phrase[] {
  return [
    phrase(
      "up | ascending | rising | upwards",
      { type: "direction", id: "up" },
      "From the lowest note to the highest only.",
    ),
    phrase(
      "down | descending | falling | downwards",
      { type: "direction", id: "down" },
      "From the highest note to the lowest only.",
    ),
    phrase(
      "up and down | up down | ascending and descending | both ways",
      { type: "direction", id: "up and down" },
      "Up, then down again: the default.",
    ),
    phrase(
      "top down | down and up | down up | from the top down",
      { type: "direction", id: "down and up" },
      "Down from the top first, then up again.",
    ),
    phrase(
      "back and forth | to and fro",
      { type: "direction", id: "back and forth" },
      "The notes in turn, there and back, again and again.",
    ),
  ];
}

function spans(): Phrase[] {
  return [
    phrase(
      "full range | whole range",
      { type: "span", reach: { type: "full range" } },
      "Every note of the scale that the instrument has.",
    ),
    phrase("twelfth | a twelfth | one twelfth", { type: "span", reach: { type: "twelfth" } }, "An octave and a fifth."),
    phrase("octave | an octave", { type: "span", reach: { type: "octaves", count: 1 } }, "From a tonic to the next."),
  ];
}

function rhythms(): Phrase[] {
  const of = (words: string, even: boolean, sentence: string): Phrase =>
    phrase(words, { type: "rhythm", id: words.split(" | ")[0]!, even }, sentence);
  return [
    of("even | evenly", true, "All notes the same length: the default."),
    of("dotted", false, "Long and short in turn."),
    of("reverse dotted | scotch snap", false, "Short and long in turn."),
    of("swung | swing", false, "Pairs of long and short, nearer to two and one."),
    of("inégal | inegal | inégale | notes inégales", false, "Pairs softly unequal, the French way."),
  ];
}

function value(numerator: number, denominator: number): Fraction {
  return { numerator, denominator };
}

function noteValues(): Phrase[] {
  const of = (words: string, numerator: number, denominator: number): Phrase => {
    const names = words.split(" | ");
    return {
      words: [...names, ...names.map((name) => `in ${name}`)],
      meaning: { type: "note value", value: value(numerator, denominator) },
    };
  };
  return [
    of("wholes | semibreves | whole notes", 1, 1),
    of("halves | minims | half notes", 1, 2),
    of("quarters | crotchets | quarter notes | 4ths notes", 1, 4),
    of("8ths | quavers | eighths | eighth notes | 8th notes", 1, 8),
    of("triplets | 8th triplets | triplet quavers | quaver triplets | triplet 8ths", 1, 12),
    of("16ths | semiquavers | sixteenths | sixteenth notes | 16th notes", 1, 16),
    of("sextuplets | sextuplet semiquavers", 1, 24),
    of("32nds | demisemiquavers | thirty seconds | 32nd notes", 1, 32),
  ];
}

/** The names of one beat, as they stand before `=`; a dot or `dotted` adds half. Signs as in Unicode's music block. */
export const BEATS: ReadonlyMap<string, Fraction> = new Map(
  (
    [
      ["whole semibreve 1/1 𝅝 wholes semibreves", 1, 1],
      ["half minim 1/2 𝅗𝅥 halves minims", 1, 2],
      ["quarter crotchet 1/4 ♩ quarters crotchets 4th", 1, 4],
      ["8th eighth quaver 1/8 ♪ 8ths eighths quavers", 1, 8],
      ["16th sixteenth semiquaver 1/16 16ths sixteenths semiquavers", 1, 16],
      ["32nd demisemiquaver 1/32 32nds demisemiquavers", 1, 32],
      ["3/8", 3, 8],
      ["3/4", 3, 4],
      ["3/16", 3, 16],
      ...FURTHER_BEATS.map(([names, ...part]) => [names.replaceAll(" | ", " "), ...part] as const),
    ] as const
  ).flatMap(([names, numerator, denominator]) =>
    names.split(" ").map((name) => [name, value(numerator, denominator)] as const),
  ),
);

function withoutClick(): Phrase[] {
  const of = (words: string, id: "slow" | "free" | "no click", sentence: string): Phrase =>
    phrase(words, { type: "without click", id }, sentence);
  return [
    of("free | freely", "free", "In free time, without a metronome."),
    of("no click | without click | no metronome | without metronome", "no click", "In time, without a metronome."),
  ];
}

function outcomes(): Phrase[] {
  const of = (words: string, says: Verdict, sentence: string): Phrase =>
    phrase(words, { type: "outcome", id: words.split(" | ")[0]!, says }, sentence);
  return [
    of("easy", "reached", "With room to spare; the tempo counts as reached."),
    of("clean", "reached", "Right notes, even, in time; the tempo counts as reached."),
    of("nearly", "nearly", "One thing amiss."),
    of("uneven", "not", "Right notes, but not even."),
    of("rushed", "not", "It ran away from the beat."),
    of("slips | slip", "not", "Wrong or missing notes."),
    of(
      "tense",
      "not",
      "Held by effort: it does not count as reached, however clean. Rest; if it lasts or comes back, ask your teacher.",
    ),
    of("broke down | stopped | breakdown", "not", "It came to a stop."),
  ];
}

function manners(): Phrase[] {
  const of = (words: string, sentence: string): Phrase =>
    phrase(words, { type: "manner", id: words.split(" | ")[0]! }, sentence);
  return [
    of("by heart | from memory | memorised | memorized", "Without the page."),
    of("by ear", "Found by listening, not reading."),
    of("at sight", "Read for the first time."),
    of("hide notes", "The names of its notes are not shown until you ask."),
    of("sung | singing", "Sung: its minutes count, its tempo does not."),
    of("silent | silently", "Fingers only: its minutes count, its tempo does not."),
    of("mental | mentally", "In the mind only: its minutes count, its tempo does not."),
  ];
}

function inversions(): Phrase[] {
  return [
    phrase("root position", { type: "inversion", inversion: 0 }, "The chord on its root."),
    phrase("1st inversion | first inversion", { type: "inversion", inversion: 1 }, "The chord from its third."),
    phrase("2nd inversion | second inversion", { type: "inversion", inversion: 2 }, "The chord from its fifth."),
    phrase(
      "3rd inversion | third inversion",
      { type: "inversion", inversion: 3 },
      "A chord of four notes from its seventh.",
    ),
  ];
}

function phases(): Phrase[] {
  const of = (words: string, sentence: string): Phrase =>
    phrase(words, { type: "phase", id: words.split(" | ")[0]! }, sentence);
  return [
    of("warm-up", "First notes: breath, fingers, sound."),
    of("groundwork | slow work", "Slow work, for form."),
    of("fluency", "Tempo and variety, once the form is secure."),
    of("studies", "Studies."),
    of("pieces", "Your current pieces."),
    of("reading", "Reading at sight."),
    of("together", "Playing with others."),
    of("lesson", "A lesson with a teacher."),
    of("away", "Practice without the instrument."),
  ];
}

function lineWords(): Phrase[] {
  return [
    phrase("session", { type: "line word", id: "session" }, "Another sitting on the same day."),
    phrase("break", { type: "line word", id: "break" }, "A pause."),
    phrase(
      "plan | planned",
      { type: "line word", id: "plan" },
      "What follows is meant to be done, and is not counted yet.",
    ),
    phrase("rest | rest day", { type: "line word", id: "rest" }, "A day without playing."),
    phrase("done", { type: "done" }, "A planned or set line that was done."),
    phrase(
      "no accidentals | no sharps or flats | no sharps | no flats",
      { type: "signature", fifths: 0 },
      "A key signature with nothing in it.",
    ),
    phrase(
      "from the top",
      { type: "place", word: "from the top", text: "from the top" },
      "From the beginning of the piece.",
    ),
    ...WEEKDAYS.map((names, day) => ({ words: names.split(" "), meaning: { type: "weekday", day: day + 1 } as const })),
  ];
}
