/**
 * Further names of one beat, as they stand in a tempo, and what part of a whole note each is: short forms, and those of
 * other languages. Words: reference lexicon of practice words, class note-value; Dutch, Italian, Spanish from memory.
 */
export const FURTHER_BEATS: readonly (readonly [words: string, numerator: number, denominator: number])[] = [
  ["w | ronde | ganze | hele | redonda", 1, 1],
  ["h | hn | min | min. | minim. | blanche | halbe | halve | minima | blanca | 2", 1, 2],
  [
    "q | qn | qtr | qtr. | crot | crot. | crotch | crotch. | noire | viertel | 4tel | kwart | kwartnoot | semiminima | negra | 4",
    1,
    4,
  ],
  ["e | quav | quav. | croche | achtel | 8tel | achtste | croma | corchea | 8", 1, 8],
  ["s | semiq | semiq. | sechzehntel | 16tel | zestiende | semicroma | semicorchea | 16", 1, 16],
];

/** Half as long again: before the beat, and behind it. */
export const DOTTED_BEFORE = "dotted | punktierte | punktiertes | gepunteerde".split(" | ");
export const DOTTED_BEHIND = "dotted | pointée | pointee | puntata | puntato | con puntillo".split(" | ");

/** Beats that stand right before a number without `=`: not those that are notes, plurals or other words, too. */
export const SAID_WITHOUT_EQUALS: ReadonlySet<string> = new Set(
  [
    "semibreve | half | minim | minim. | quarter | crotchet | 8th | eighth | quaver | 16th | sixteenth | semiquaver | ♩ | ♪ | 𝅗𝅥",
    "hn | q | qn | qtr | qtr. | crot | crot. | crotch | crotch. | quav | quav. | semiq | semiq.",
    "blanche | noire | croche | halbe | viertel | 4tel | achtel | sechzehntel | kwart | kwartnoot | achtste | zestiende",
    "minima | semiminima | croma | semicroma | blanca | negra | corchea | semicorchea",
  ].flatMap((words) => words.split(" | ")),
);
