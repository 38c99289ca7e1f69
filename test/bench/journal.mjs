// Writes the journals that the benchmark reads: invented, for measuring only, the same for the same seed.
import { readFileSync } from "node:fs";
import { Scale } from "tonal";
import { dayLine, entryLine, HANDS, headLines, phaseLine, remarkLine } from "../support/hands.mjs";

/**
 * The usual hand, but for what stands in its days: the lines of invented players of many instruments
 * (test/reference/README.md), so that none is declared.
 */
const WRITTEN = { ...HANDS.usual, days: writtenDays(), begins: "2004-01-05" };
/** Whose journals are measured. */
export const WRITERS = { ...HANDS, written: WRITTEN };

const DAY = 86_400_000;
const WEEKDAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const KEYS = [
  ["D", "minor melodic"],
  ["G", "major"],
  ["F", "major"],
  ["A", "minor melodic"],
  ["Bb", "major"],
  ["G", "minor harmonic"],
  ["C", "major"],
  ["E", "minor melodic"],
  ["Eb", "major"],
  ["D", "major"],
  ["A", "major"],
  ["C", "minor harmonic"],
  ["B", "minor melodic"],
  ["F", "minor melodic"],
  ["E", "major"],
  ["Ab", "major"],
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
const OUTCOMES = "clean|clean|clean|clean 5 in a row|clean 4 of 5|nearly|uneven|slips|easy|tense".split("|");
const FOCUSES = ["finger changes", "evenness", "tonguing", "ease", "breath", "half holes", "tuning"];
const PIECES = [
  { title: "Ground in G minor", short: "Ground", key: ["G", "minor"] },
  { title: "Evening by the lock", short: "Evening", key: ["D", "minor"] },
  { title: "Six short walks", short: "Walks", key: ["F", "major"] },
  { title: "The ferry's jig", short: "Jig", key: ["C", "major"] },
  { title: "Slow air for a wet day", short: "Air", key: ["A", "minor"] },
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
const HEAD = {
  lines: ["player Noor", "instrument alto recorder", "pitch A=415"],
  pieces: PIECES,
  aim: {
    entry: {
      subject: { scale: ["D", "minor melodic"] },
      pattern: "thirds",
      value: "8ths",
      trials: [{ tempo: 132 }],
      number: 0,
    },
    by: "2036-01-01",
  },
};
/** Counted as the usual hand's, so that each hand writes the same days. */
const HEAD_LINES = headLines(HANDS.usual, HEAD).length + 1;
const LONG_TONES = { subject: { tones: ["F4", "C5", "F5"] }, drone: "F" };
const FIVE_NOTES = {
  subject: { scale: ["D", "minor"] },
  span: "five notes",
  articulation: "slurred",
  manner: "slow",
  outcome: "clean",
};
const CHAIN = {
  subject: { chain: ["C", "F", "Bb"].map((tonic) => [tonic, "major"]) },
  pattern: "straight",
  value: "16ths",
  trials: [{ tempo: 60, outcome: "nearly" }],
};

const notes = (names) => ({ notes: names.split(" ") });
const AT_60 = { value: "8ths", trials: [{ tempo: 60, outcome: "clean" }] };
/** Wrong entries, each with one diagnostic to it: a wrong note, letter or signature, a word or a note that is none. */
const WRONG = [
  { subject: { scale: ["D", "minor natural"] }, claim: notes("D E F G A B C D"), ...AT_60 },
  { subject: { scale: ["F#", "major"] }, claim: notes("F# G# A# B C# D# F F#") },
  { subject: { scale: ["G", "major"] }, claim: { said: "2 sharps" } },
  { subject: { scale: ["A", "major"] }, claim: notes("A B C# D E F# Ab A") },
  { subject: { scale: ["D", "minor melodic"] }, pattern: "thirdz", ...AT_60 },
  { subject: { scale: ["H#", "major"] }, ...AT_60 },
  { subject: { scale: ["C", "major"] }, claim: { said: "T T T S T T S" } },
  { subject: { scale: ["Bb", "major"] }, claim: notes("Bb C D Eb F G A# Bb") },
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

/** What a player does, day by day. All that is random of a journal is drawn here, and no hand bears on it. */
class Player {
  #random;
  /** Days in all: the odd day without practice comes on top. */
  #total;
  /** Where each thing practised began. */
  #marks = new Map();

  constructor(seed, lines) {
    this.#random = randomFrom(seed);
    this.#total = Math.ceil(lines / 14.6 / 5.7) * 7;
  }

  /** Whether nothing was practised on this day, a day of the week from Sunday as 0. */
  rests(weekday) {
    return weekday === 0 || this.#random() < 0.05;
  }

  /** The phases of a day: of each its name, its minutes and its entries. */
  phases(day) {
    return [
      {
        name: "warm-up",
        minutes: 8,
        entries: [LONG_TONES, this.#random() < 0.5 ? this.#spelled() : FIVE_NOTES],
      },
      {
        name: "groundwork",
        minutes: 15,
        entries: [this.#remarked(this.#exercise(day, "8ths")), this.#exercise(day, "8ths")],
      },
      {
        name: "fluency",
        minutes: 10,
        entries: [
          this.#remarked(this.#exercise(day, "16ths")),
          this.#remarked(this.#exercise(day, "16ths")),
          ...(this.#random() < 0.5 ? [CHAIN] : []),
        ],
      },
      { name: "pieces", minutes: 15, entries: [this.#remarked(this.#piece(day))] },
    ];
  }

  #exercise(day, value) {
    const scale = this.#one(KEYS.slice(0, 4 + Math.ceil(12 * this.#progress(day))));
    const pattern = this.#random() < 0.6 ? this.#one(PATTERNS) : undefined;
    const articulation = this.#one(ARTICULATIONS);
    const focus = this.#random() < 0.2 ? this.#one(FOCUSES) : undefined;
    const what = [...scale, pattern, articulation].join();
    // 16ths go at about a fifth more notes a minute than 8ths, not at twice as many.
    const trials = this.#trials(what, day, value === "16ths" ? 0.6 : 1);
    return { subject: { scale }, pattern, articulation, value, trials, focus };
  }

  #spelled() {
    const tonic = this.#one(["C", "G", "D", "A", "F", "Bb", "Eb"]);
    const kind = this.#one(["major", "major pentatonic"]);
    const claim = { notes: [...Scale.get(`${tonic} ${kind}`).notes, tonic] };
    return { subject: { scale: [tonic, kind] }, claim, articulation: "slurred", manner: "slow" };
  }

  #piece(day) {
    const piece = this.#one(PIECES);
    const bar = 1 + 16 * Math.floor(this.#random() * 5);
    return { subject: { piece, bars: [bar, bar + 15] }, trials: this.#trials(piece.short + bar, day) };
  }

  #remarked(entry) {
    return this.#random() < 0.25 ? { ...entry, remark: this.#one(REMARKS) } : entry;
  }

  #trials(what, day, share = 1) {
    const base = Math.round(this.#tempo(what, day) * share);
    const count = this.#random() < 0.4 ? 3 : 1;
    return Array.from({ length: count }, (_, i) => ({
      tempo: base + 4 * i,
      outcome: i < count - 1 ? "clean" : this.#one(OUTCOMES),
    }));
  }

  /** For something practised: a little above or below where it stands, which rises from 46 to 120 at most. */
  #tempo(what, day) {
    if (!this.#marks.has(what)) this.#marks.set(what, 46 + Math.floor(this.#random() * 20));
    return Math.round(this.#marks.get(what) + 48 * this.#progress(day) + (this.#random() - 0.5) * 8);
  }

  #progress(day) {
    return Math.sqrt(Math.min(1, day / this.#total));
  }

  #one(list) {
    return list[Math.floor(this.#random() * list.length)];
  }
}

/**
 * The days of a journal, each with its date and its lines: six a week but for the odd one, phases, ten to fourteen
 * lines a day, tempos that rise over the years, a remark here and there.
 */
function* daysOf({ lines, wrong, seed = 1, from = "2016-01-04", hand = HANDS.usual }) {
  if (hand.days) return yield* repeated(hand.days, lines, Date.parse(hand.begins));
  const player = new Player(seed, lines);
  const begins = Date.parse(from);
  let number = 0;
  let wrongSoFar = 0;
  for (let day = 0, count = HEAD_LINES; count < lines; day++) {
    const date = new Date(begins + day * DAY);
    if (player.rests(date.getUTCDay())) continue;
    const written = { date: date.toISOString().slice(0, 10), weekday: WEEKDAYS[date.getUTCDay()], minutes: 50 };
    const text = [dayLine(hand, { ...written, number: day })];
    const write = (entry) => text.push(entryLine(hand, { ...entry, number: number++ }));
    for (const { name, minutes, entries } of player.phases(day)) {
      text.push(phaseLine(hand, { name, minutes, number: day }));
      for (const entry of entries) {
        write(entry);
        if (entry.remark) text.push(remarkLine(hand, entry.remark));
      }
    }
    // Spread evenly over the whole, whatever the number.
    while (wrongSoFar < Math.floor((wrong * (count + text.length)) / lines)) write(WRONG[wrongSoFar++ % WRONG.length]);
    text.push("");
    count += text.length;
    yield { date: written.date, text };
  }
}

/** The lines of each day that players wrote, one after another. */
function writtenDays() {
  const rows = readFileSync(new URL("../reference/natural-lines.tsv", import.meta.url), "utf8")
    .trimEnd()
    .split("\n");
  const days = new Map();
  for (const row of rows.slice(1)) {
    const [person, day, line] = row.split("\t");
    const key = `${person} ${day}`;
    days.set(key, [...(days.get(key) ?? []), `  ${line}`]);
  }
  return [...days.values()];
}

/** Written days, again and again, a day each, until there are so many lines. */
function* repeated(days, lines, begins) {
  for (let day = 0, count = HEAD_LINES; count < lines; day++) {
    const date = new Date(begins + day * DAY).toISOString().slice(0, 10);
    const text = [date, ...days[day % days.length], ""];
    count += text.length;
    yield { date, text };
  }
}

/**
 * A player's journal in one file. In each hand it has the same days and entries, a line each.
 *
 * @param {{ lines: number, wrong: number, seed?: number, from?: string, hand?: import("../support/hands.mjs").Hand }}
 *   size how many lines, how many of them are wrong, the first day, and who writes
 * @returns {string}
 */
export function journalText(size) {
  const { hand = HANDS.usual } = size;
  const days = [...daysOf(size)].flatMap(({ text }) => text);
  const head = hand.days ? ["player Noor"] : headLines(hand, HEAD);
  return [...head, "", ...days, ""].join(hand.end);
}

/** The same journal in a file a day, by their names. What is declared stands in `journal.practice`. */
export function journalFiles(size) {
  const { hand = HANDS.usual } = size;
  const days = Array.from(daysOf(size), ({ date, text }) => [`${date}.practice`, text.join(hand.end) + hand.end]);
  return new Map([["journal.practice", headLines(hand, HEAD).join(hand.end) + hand.end], ...days]);
}

/**
 * The same journal, in the middle of which a day is so many lines long: as if whole weeks had been noted under one
 * date. Returns the line of that day, too.
 */
export function withLongDay(size, long) {
  const { hand = HANDS.usual } = size;
  const days = Array.from(daysOf(size), ({ text }) => text);
  const more = [...daysOf({ ...size, lines: long * 2, seed: 2 })].flatMap(({ text }) => text.slice(1, -1));
  const middle = days.length >> 1;
  days[middle] = [days[middle][0], ...more.slice(0, long - 2), ""];
  const before = [...headLines(hand, HEAD), "", ...days.slice(0, middle).flat()];
  return { text: [...before, ...days.slice(middle).flat(), ""].join(hand.end), line: before.length };
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
