// Writes the journals that the benchmark reads: invented, for measuring only, the same for the same seed.
import { Scale } from "tonal";

const DAY = 86_400_000;
const WEEKDAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const KEYS = [
  "D minor melodic",
  "G major",
  "F major",
  "A minor melodic",
  "Bb major",
  "G minor harmonic",
  "C major",
  "E minor melodic",
  "Eb major",
  "D major",
  "A major",
  "C minor harmonic",
  "B minor melodic",
  "F minor melodic",
  "E major",
  "Ab major",
];
const PATTERNS = [
  "thirds",
  "threes",
  "fours",
  "fifths",
  "triads",
  "turns",
  "pedal",
  "growing",
  "skips",
  "thirds alternating",
];
const ARTICULATIONS = ["slurred", "tongued", "staccato", "slur 2+2", "t-k", "d-g"];
const FOCUSES = ["finger changes", "evenness", "tonguing", "ease", "breath", "half holes", "tuning"];
const PIECES = [
  ["Ground in G minor", "Ground", "G minor"],
  ["Evening by the lock", "Evening", "D minor"],
  ["Six short walks", "Walks", "F major"],
  ["The ferry's jig", "Jig", "C major"],
  ["Slow air for a wet day", "Air", "A minor"],
];
const REMARKS = [
  "E5 to F5 is what breaks",
  "left thumb too tight – “lighter”, says the teacher",
  "für Élise's sake: slower 🎵",
  "the bell key sticks ♯ again",
  "? breathe before or after the tie in 24?",
  "! keep the elbows low",
  "指を近くに, fingers close",
  "much freer than last week ✓",
  "𝄞 read it from the facsimile",
];

/** Wrong lines, each with one diagnostic to it: a wrong note, letter or signature, a word that is none, a tempo out of range. */
const WRONG = [
  "D minor natural: D E F G A B C D, 8ths at 60 clean",
  "F# major: F# G# A# B C# D# F F#",
  "G major: 2 sharps",
  "A major: A B C# D E F# Ab A",
  "D minor melodic, thirdz, 8ths at 60 clean",
  "H# major, 8ths at 60 clean",
  "C major: T T T S T T S",
  "Bb major: Bb C D Eb F G A# Bb",
];

/** Numbers from 0 up to 1, evenly spread, by Marsaglia's xorshift (32 bit; shifts 13, 17, 5). */
function randomFrom(seed) {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/**
 * A player's journal in one file: six days a week but for the odd one, phases, ten to fourteen lines a day, tempos that
 * rise over the years, a remark here and there.
 *
 * @param {{ lines: number, wrong: number, seed?: number, from?: string }} size how many lines, and how many of them are wrong
 * @returns {string}
 */
export function journalText({ lines, wrong, seed = 1, from = "2016-01-04" }) {
  const random = randomFrom(seed);
  const one = (list) => list[Math.floor(random() * list.length)];
  const text = [
    "player Noor",
    "instrument alto recorder",
    "pitch A=415",
    ...PIECES.map(([title, short, key]) => `piece "${title}" as ${short}: ${key}, 96 bars, goal quarter=84`),
    "aim D minor melodic, thirds, 8ths at 132 by 2036-01-01",
    "",
  ];
  const begins = Date.parse(from);
  const total = Math.ceil(lines / 14.6 / 5.7) * 7; // days in all: the odd day without practice comes on top
  const progress = (day) => Math.sqrt(Math.min(1, day / total));
  const marks = new Map();
  /** 16ths go at about a fifth more notes a minute than 8ths, not at twice as many. A tempo for something practised: a little above or below where it stands, which rises from 46 to 120 at most. */
  const tempo = (what, day) => {
    if (!marks.has(what)) marks.set(what, 46 + Math.floor(random() * 20));
    return Math.round(marks.get(what) + 48 * progress(day) + (random() - 0.5) * 8);
  };
  const outcome = () =>
    one(["clean", "clean", "clean", "clean 5 in a row", "clean 4 of 5", "nearly", "uneven", "slips", "easy", "tense"]);
  const ladder = (what, day, share = 1) => {
    const base = Math.round(tempo(what, day) * share);
    const rungs = random() < 0.4 ? 3 : 1;
    return Array.from(
      { length: rungs },
      (_, i) => `${i === 0 ? "at " : ""}${base + 4 * i} ${i < rungs - 1 ? "clean" : outcome()}`,
    ).join(", ");
  };
  const exercise = (day, value) => {
    const key = one(KEYS.slice(0, 4 + Math.ceil(12 * progress(day))));
    const terms = [key, ...(random() < 0.6 ? [one(PATTERNS)] : []), one(ARTICULATIONS)];
    const focus = random() < 0.2 ? `, focus ${one(FOCUSES)}` : "";
    return `  ${terms.join(", ")}, ${value} ${ladder(terms.join(), day, value === "16ths" ? 0.6 : 1)}${focus}`;
  };
  const spelled = () => {
    const [tonic, kind] = [one(["C", "G", "D", "A", "F", "Bb", "Eb"]), one(["major", "major pentatonic"])];
    return `  ${tonic} ${kind}: ${[...Scale.get(`${tonic} ${kind}`).notes, tonic].join(" ")}, slurred, slow`;
  };
  const remark = () => (random() < 0.25 ? [`    -- ${one(REMARKS)}`] : []);

  let wrongSoFar = 0;
  for (let day = 0; text.length < lines; day++) {
    const date = new Date(begins + day * DAY);
    if (date.getUTCDay() === 0 || random() < 0.05) continue;
    text.push(`${date.toISOString().slice(0, 10)} ${WEEKDAYS[date.getUTCDay()]}, 50 min`);
    text.push(
      "warm-up, 8 min",
      "  long tones on F4 C5 F5, with drone F",
      random() < 0.5 ? spelled() : "  D minor, five notes, slurred, slow, clean",
    );
    text.push("groundwork, 15 min", exercise(day, "8ths"), ...remark(), exercise(day, "8ths"));
    text.push("fluency, 10 min", exercise(day, "16ths"), ...remark(), exercise(day, "16ths"), ...remark());
    if (random() < 0.5) text.push("  C major > F major > Bb major, straight, 16ths at 60 nearly");
    const piece = one(PIECES)[1];
    const bar = 1 + 16 * Math.floor(random() * 5);
    text.push("pieces, 15 min", `  ${piece}, bars ${bar}-${bar + 15}, ${ladder(piece + bar, day)}`, ...remark());
    // Spread evenly over the whole, whatever the number.
    while (wrongSoFar < Math.floor((wrong * text.length) / lines)) text.push(`  ${WRONG[wrongSoFar++ % WRONG.length]}`);
    text.push("");
  }
  return `${text.join("\n")}\n`;
}

/** As many lines for plain-text accounting: one transaction of three lines and a blank for every four lines. */
export function ledgerText(lines) {
  const text = [];
  for (let day = 0; text.length < lines; day++) {
    const date = new Date(Date.parse("2016-01-04") + (day / 3) * DAY).toISOString().slice(0, 10);
    text.push(
      `${date} Shop ${day % 97}`,
      `    Expenses:Food:Kind${day % 23}    ${(day % 5000) / 100 + 1} EUR`,
      "    Assets:Purse",
      "",
    );
  }
  return `${text.join("\n")}\n`;
}
