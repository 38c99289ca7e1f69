// How players write: the same practice in other hands. What is practised is data, and a hand makes lines of it: the
// journals of the benchmark, and of whatever else must hold for any hand. Players, pieces and names are invented.

/**
 * @typedef {readonly [tonic: string, kind: string]} Scale as ["F#", "minor melodic"]
 * @typedef {{ readonly title: string, readonly short: string, readonly key: Scale }} Piece
 *
 * @typedef {{ readonly scale: Scale } | { readonly chain: readonly Scale[] }
 *   | { readonly piece: Piece, readonly bars: readonly [from: number, to: number] }
 *   | { readonly tones: readonly string[] }} Subject `tones` are long ones, as ["F4", "C5"]
 *
 * @typedef {object} Entry what was practised on one line, in the words of the usual hand
 * @property {Subject} subject
 * @property {number} number its place among the entries of its journal: what a hand varies, it varies by this
 * @property {{ readonly notes: readonly string[] } | { readonly said: string }} [claim] notes, or a signature or steps
 * @property {string} [pattern]
 * @property {string} [span]
 * @property {string} [direction]
 * @property {string} [articulation]
 * @property {string} [rhythm]
 * @property {string} [instrument]
 * @property {string} [value] a note value
 * @property {readonly { readonly tempo: number, readonly outcome?: string }[]} [trials]
 * @property {string} [manner]
 * @property {string} [outcome] of an entry without a tempo
 * @property {string} [drone] a note
 * @property {string} [focus]
 * @property {number} [minutes]
 *
 * @typedef {object} Head what a journal declares
 * @property {readonly string[]} lines declarations that every hand writes alike
 * @property {readonly Piece[]} pieces each of 96 bars, its goal 84
 * @property {{ readonly entry: Entry, readonly by: string }} aim
 *
 * @typedef {typeof USUAL & { readonly by?: (number: number) => Hand }} Hand `by` says whose hand a line is in, if not
 *   its own
 */

/** The terms of a line from left to right. `tempo` is the note value and the tempos; the two may stand apart. */
const USUAL_ORDER = [
  "claim",
  "place",
  "pattern",
  "span",
  "direction",
  "articulation",
  "rhythm",
  "instrument",
  "tempo",
  "manner",
  "outcome",
  "drone",
  "focus",
  "minutes",
];

/**
 * Four players who see it otherwise: a tempo first, what is listened for first, the value apart, what is claimed last.
 */
const OTHER_ORDERS = [
  "place tempo articulation instrument pattern span outcome minutes manner direction drone rhythm focus claim",
  "focus minutes drone place articulation rhythm span pattern direction manner outcome claim instrument tempo",
  "instrument place value articulation claim direction trials pattern span focus rhythm manner minutes outcome drone",
  "span minutes pattern claim manner rhythm outcome articulation place focus drone tempo direction instrument",
].map((names) => names.split(" "));

const OWN_PATTERNS = new Map([
  ["thirds", ["hop", "1 3"]],
  ["threes", ["stairs", "1 2 3 1"]],
  ["fours", ["long stairs", "1 2 3 4 2"]],
  ["fifths", ["over the hedge", "1 5 3"]],
  ["triads", ["three-legged", "1 3 5 3"]],
  ["turns", ["round the post", "1 2 1 0"]],
  ["pedal", ["there and back", "1 4 1 3"]],
  ["growing", ["sunflower", "1 2 1 2 3"]],
  ["skips", ["puddles", "1 3 2 4, step 2"]],
  ["thirds alternating", ["zigzag", "1 3 4 2, step 2"]],
  ["straight", ["as it comes", "1 2"]],
]);
const OWN_PHASES = new Map([
  ["warm-up", "arrival"],
  ["groundwork", "the slow hour"],
  ["fluency", "running water"],
  ["pieces", "the red book"],
]);

const RHYTHMS = ["dotted", "reverse dotted", "even", "LSS", "swung"];
const DIRECTIONS = ["up and down", "up", "top down"];
/** Each with a span that it has from any tonic. */
const INSTRUMENTS = [
  { instrument: "on tenor recorder", span: "five notes" },
  { instrument: "on flute", span: "2 octaves" },
  { instrument: "on clarinet", span: "twelfth" },
  { instrument: "on soprano recorder", span: "1 octave" },
];
const TAILS = [
  "easier than it was",
  "5 min more tomorrow",
  "slower, at 50 clean?",
  "teacher: “lighter”, she says",
  "ok",
];

/** A hand: each of its writers takes what is meant, as the usual hand would name it, and gives the text. */
const USUAL = {
  end: "\n",
  comma: ", ",
  colon: ": ",
  joint: " > ",
  dash: "--",
  range: "-",
  /** Declarations that only this hand needs. */
  declares: /** @type {readonly string[]} */ ([]),
  quote: (/** @type {string} */ name) => `"${name}"`,
  /** A note as "Bb", with its octave as "F#4". */
  note: (/** @type {string} */ note) => note,
  /** The tonic as the hand names it, the kind as usual. */
  scale: (/** @type {string} */ tonic, /** @type {string} */ kind) => `${tonic} ${kind}`,
  piece: (/** @type {Piece} */ { short }) => short,
  pattern: (/** @type {string} */ name) => name,
  phase: (/** @type {string} */ name) => name,
  minutes: (/** @type {number} */ minutes, /** @type {number} */ _number) => `${minutes} min`,
  order: (/** @type {number} */ _number) => USUAL_ORDER,
  /** What the hand says beside what it was given. */
  more: (/** @type {Entry} */ _entry) => /** @type {Partial<Entry>} */ ({}),
  /** A last change to a line that is neither blank nor a remark. */
  line: (/** @type {string} */ text, /** @type {number} */ _number) => text,
};

/** Those that share their declarations. */
const ALIKE = ["usual", "tight", "reordered", "capitals", "signs", "remarks", "minutes", "bare"];

/** Each by its name. Every hand says the same, but for what it adds of its own. */
export const HANDS = {
  usual: USUAL,
  tight: hand({ comma: "," }),
  reordered: hand({ order: (number) => OTHER_ORDERS[number % OTHER_ORDERS.length] }),
  /** Every other line in capitals throughout. */
  capitals: hand({ line: (text, number) => capitalised(text, number % 2 === 0) }),
  signs: hand({
    joint: " → ",
    dash: "–",
    range: "–",
    note: (note) => note.replace("#", "♯").replace(/(?<=[A-G])b/, "♭"),
    quote: (name) => `“${name.replaceAll("'", "’")}”`,
    minutes: (minutes) => `${minutes}’`,
  }),
  german: hand({ declares: ["names german"], note: germanNote, scale: germanScale }),
  own: hand({
    declares: [
      ...[...OWN_PHASES.values()].map((name) => `phase "${name}"`),
      ...[...OWN_PATTERNS.values()].map(([name, degrees]) => `pattern "${name}": ${degrees}`),
    ],
    piece: ({ title }) => `"${title}"`,
    pattern: (name) => `"${OWN_PATTERNS.get(name)?.[0] ?? name}"`,
    phase: (name) => OWN_PHASES.get(name) ?? name,
  }),
  many: hand({ more: manyTerms }),
  remarks: hand({ line: (text, number) => `${text} -- ${TAILS[number % TAILS.length]}` }),
  crlf: hand({ end: "\r\n" }),
  minutes: hand({ more: () => ({ minutes: 3 }), minutes: (minutes, number) => minutes + unit(number) }),
  /** The format reads lines without commas where every word is known. With a word that is not, such a line is prose. */
  bare: hand({ comma: " " }),
  /** Every line in another of those hands. */
  mixed: hand({ by: (number) => HANDS[ALIKE[(number + (number >> 3)) % ALIKE.length]] }),
};

/**
 * A hand that differs from the usual one in these writers.
 *
 * @param {Partial<Hand>} writers
 * @returns {Hand}
 */
function hand(writers) {
  return { ...USUAL, ...writers };
}

/**
 * The declarations of a journal, a line each.
 *
 * @param {Hand} hand
 * @param {Head} head
 */
export function headLines(hand, { lines, pieces, aim }) {
  const piece = ({ title, short, key }) =>
    `piece ${hand.quote(title)} as ${short}: ${[scaleOf(hand, key), "96 bars", "goal quarter=84"].join(hand.comma)}`;
  const last = `aim ${entryText({ ...hand, more: USUAL.more, order: USUAL.order }, aim.entry)} by ${aim.by}`;
  return [...hand.declares, ...lines, ...pieces.map(piece), last].map(hand.line);
}

/**
 * @param {Hand} own
 * @param {{ readonly date: string, readonly weekday: string, readonly minutes: number, readonly number: number }} day
 */
export function dayLine(own, { date, weekday, minutes, number }) {
  const hand = own.by?.(number) ?? own;
  return hand.line(`${date} ${weekday}${hand.comma}${hand.minutes(minutes, number)}`, number);
}

/**
 * @param {Hand} own
 * @param {{ readonly name: string, readonly minutes: number, readonly number: number }} phase
 */
export function phaseLine(own, { name, minutes, number }) {
  const hand = own.by?.(number) ?? own;
  return hand.line(`${hand.phase(name)}${hand.comma}${hand.minutes(minutes, number)}`, number);
}

/**
 * @param {Hand} own
 * @param {Entry} entry
 */
export function entryLine(own, entry) {
  const hand = own.by?.(entry.number) ?? own;
  return hand.line(`  ${entryText(hand, entry)}`, entry.number);
}

/**
 * A remark below an entry.
 *
 * @param {Hand} hand
 * @param {string} words
 */
export function remarkLine(hand, words) {
  return `    ${hand.dash} ${words}`;
}

/** The subject and its terms: what is claimed behind a colon, all else behind commas. */
function entryText(hand, entry) {
  const terms = termsOf(hand, { ...entry, ...hand.more(entry) });
  let text = subjectOf(hand, entry.subject);
  for (const name of hand.order(entry.number))
    if (terms[name]) text += (name === "claim" ? hand.colon : hand.comma) + terms[name];
  return text;
}

function termsOf(hand, entry) {
  const { subject, claim, pattern, value, trials = [], drone, focus, minutes, number } = entry;
  const tries = trials.map(({ tempo, outcome }, i) => [i === 0 ? "at" : "", tempo, outcome].filter(Boolean).join(" "));
  const tempos = tries.join(hand.comma);
  return {
    ...entry,
    claim: claim && (claim.said ?? claim.notes.map(hand.note).join(" ")),
    place: subject.bars && `bars ${subject.bars.join(hand.range)}`,
    pattern: pattern && hand.pattern(pattern),
    trials: tempos,
    tempo: [value, tempos].filter(Boolean).join(" "),
    drone: drone && `with drone ${hand.note(drone)}`,
    focus: focus && `focus ${focus}`,
    minutes: minutes && hand.minutes(minutes, number),
  };
}

function subjectOf(hand, subject) {
  if (subject.scale) return scaleOf(hand, subject.scale);
  if (subject.chain) return subject.chain.map((scale) => scaleOf(hand, scale)).join(hand.joint);
  if (subject.piece) return hand.piece(subject.piece);
  return `long tones on ${subject.tones.map(hand.note).join(" ")}`;
}

function scaleOf(hand, [tonic, kind]) {
  return hand.scale(hand.note(tonic), kind);
}

/** A single letter keeps its case, as a tonic must and a syllable does, and so does a flat behind its note. */
function capitalised(text, throughout) {
  return text.replace(/[\p{L}\d'’]+/gu, (word) => {
    if (/^(\p{L}|[A-G](b|bb|x)\d*)$/u.test(word)) return word;
    return throughout ? word.toUpperCase() : word[0].toUpperCase() + word.slice(1);
  });
}

const GERMAN_ACCIDENTALS = { "": "", "#": "is", "##": "isis", x: "isis", b: "es", bb: "eses" };

/** As "fis''" for F#5. What is no note in English becomes none in German: H is one there, and J is none. */
function germanNote(note) {
  const [, letter, accidental, octave] = /^([A-G])(##|#|x|bb|b)?(\d)?$/.exec(note) ?? [];
  if (!letter) return note.replace("H", "J");
  const base = letter === "B" ? "h" : letter.toLowerCase();
  const name = `${base}${GERMAN_ACCIDENTALS[accidental ?? ""]}`.replace(/^([ae])e/, "$1").replace(/^hes$/, "b");
  return name + "'".repeat(Math.max(0, (octave ?? 3) - 3));
}

/** As "Fis-Dur" and "fis-Moll melodic". */
function germanScale(tonic, kind) {
  const [, word, rest] = /^(major|minor)\b(.*)$/.exec(kind) ?? [];
  if (!word || tonic.startsWith("J")) return `${tonic} ${kind}`;
  return word === "major" ? `${tonic[0].toUpperCase()}${tonic.slice(1)}-Dur${rest}` : `${tonic}-Moll${rest}`;
}

/** Where notes are claimed, what is claimed stays true. */
function manyTerms({ subject, claim, number }) {
  if (!subject.scale && !subject.chain) return { minutes: 3, instrument: "on flute" };
  const more = { rhythm: RHYTHMS[number % RHYTHMS.length], minutes: 3 };
  const { instrument, span } = INSTRUMENTS[number % INSTRUMENTS.length];
  if (claim || subject.chain) return { ...more, instrument };
  return { ...more, instrument, span, direction: DIRECTIONS[number % DIRECTIONS.length] };
}

function unit(number) {
  return [" min", "'", " minutes", "m"][number % 4];
}
