// Very many edits, and edits in a very long day: what is kept of them, and what they cost.
import { MeasuringClient } from "./client.mjs";
import { journalText, withLongDay } from "./journal.mjs";
import { median, pause, rounds } from "./measure.mjs";
import { ONE_YEAR } from "./servers.mjs";

const EDITS = 100_000;
/** So many lines are written over again and again. */
const PLACES = 20;
/** After so many edits nobody types for a while, so that the history is read. */
const REST = 5_000;
/** A declaration is new in so many edits: all that was read goes by what is declared. */
const DECLARE = 500;
const LONG = 2_000;
const TYPED = ", focus evenness, 72 clean, 76 nearly";
const MEBIBYTE = 2 ** 20;

/** Lines with a word that stood nowhere before, right and wrong. */
const LINES = [
  (word) => `  D minor, ${word}, 8ths at 60 clean`,
  (word) => `  "${word}", bars 1-8, at 60 clean`,
  (word) => `  G major, thirds, slurred, 8ths at 60 clean, 64 clean, focus ${word}`,
  (word) => `  ${word} went well today`,
  (word) => `    -- ${word}`,
  (word) => `  C major, "${word}", tongued, at 60 clean`,
  (word) => `  F major, thirds, slurred, 8ths at 60 clean, on ${word}`,
  (word) => `${word}, 5 min`,
  (word) => `  long tones on F4, with ${word}, 3 min`,
  (word) => `  Bb major: Bb C D Eb F G ${word}`,
];

/** What is on the heap once 100,000 edits are undone, beside what was there when the history had just been read. */
export async function heapAfterEdits({ bundles, table }) {
  const text = journalText(ONE_YEAR);
  const client = await MeasuringClient.start(bundles.daystave, { probe: "heap" });
  await client.open(text);
  await client.rested();
  const before = await client.tell("heap");
  await editOften(client, text.split("\n"));
  await client.rested();
  const after = await client.tell("heap");
  await client.stop();
  const grown = (figure) => (after[figure] - before[figure]) / MEBIBYTE;
  const beside = `${(before.used / MEBIBYTE).toFixed(0)} MiB before, ${(after.used / MEBIBYTE).toFixed(0)} after`;
  table.lone(`heap over the start after ${EDITS} edits (${beside})`, grown("used"), { unit: "MiB", target: 10 });
  table.lone("  of that, code that V8 compiled meanwhile", grown("code"), { unit: "MiB" });
}

/** Each edit writes another line over one of a few, and asks for diagnostics; at the end all is as it was. */
async function editOften(client, lines) {
  const places = placesIn(lines);
  const now = places.map((line) => lines[line]);
  const write = async (place, text) => {
    const line = places[place];
    await client.replace(text, { line, character: 0 }, { line, character: now[place].length });
    now[place] = text;
  };
  for (let n = 0; n < EDITS; n++) {
    const place = n % PLACES;
    await write(place, newLine(n));
    const position = { line: places[place], character: Math.min(8, now[place].length) };
    if (n % 50 === 0) await client.hover(position);
    if (n % 50 === 25) await client.completions({ ...position, character: now[place].length });
    if (n % REST === 0) await client.rested();
  }
  for (const [place, line] of places.entries()) await write(place, lines[line]);
}

function newLine(n) {
  const word = `wo${n.toString(36).replace(/\d/g, (digit) => "aeiouylrst"[digit])}`;
  return n % DECLARE === 0 ? `piece "${word}": F major` : LINES[n % LINES.length](word);
}

/** Entries, evenly spread over a text. */
function placesIn(lines) {
  const entries = lines.flatMap((text, line) => (/^ {2}\S.* at \d/.test(text) ? [line] : []));
  return Array.from({ length: PLACES }, (_, i) => entries[Math.floor((i * entries.length) / PLACES)]);
}

/** A keystroke in a day of 2,000 lines beside one in a usual day of the same journal. */
export async function compareLongDay({ bundles, count, table }) {
  const { text, line } = withLongDay(ONE_YEAR, LONG);
  const places = new Map([
    ["long", { line: line + (LONG >> 1) }],
    ["usual", { line: line - 40 }],
  ]);
  const lines = text.split("\n");
  const { long, usual } = await rounds(count, places, ({ line }) => typing(bundles.daystave, lines, line));
  const what = `keystroke in a day of ${LONG} lines beside one in a usual day`;
  table.ratio(what, long.keystroke, usual.keystroke, 1.3);
}

/** Types behind three entries from a line on; the median of the keystrokes. */
async function typing(bundle, lines, from) {
  const entries = lines.flatMap((text, line) => (line >= from && /^ {2}\S.* at \d+ clean$/.test(text) ? [line] : []));
  const client = await MeasuringClient.start(bundle);
  await client.open(lines.join("\n"));
  await client.rested();
  const times = [];
  for (const line of entries.slice(0, 3)) {
    for (const [i, character] of [...TYPED].entries()) {
      await pause();
      times.push(await client.type(character, { line, character: lines[line].length + i }));
    }
  }
  await client.stop();
  return { keystroke: median(times) };
}
