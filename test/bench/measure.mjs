import { entryLine } from "../support/hands.mjs";
import { MeasuringClient } from "./client.mjs";

/** What is typed, as each hand writes it: "  D minor melodic, thirds, 8ths at 72 clean". */
const TYPED = {
  subject: { scale: ["D", "minor melodic"] },
  pattern: "thirds",
  value: "8ths",
  trials: [{ tempo: 72, outcome: "clean" }],
  number: 0,
};
/** An exercise's name in any hand, at the head of a line. */
const EXERCISE = /^ {2}[A-H](e?s|is|[#b♯♭])?[ -](major|minor|dur|moll)/i;

export function median(values) {
  return quantile(values, 0.5);
}

/** The value that this share of the values do not exceed, between two of them by proportion. */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  const place = (sorted.length - 1) * share;
  const below = sorted[Math.floor(place)];
  return below + (sorted[Math.ceil(place)] - below) * (place % 1);
}

/** One life of a server with one text: start, open, hover, type a line in the middle and one at the end, complete. */
export async function life({ bundle, text, hand }) {
  const client = await MeasuringClient.start(bundle);
  const { time, count } = await client.open(text);
  const lines = text.split(/\r?\n/);
  const places = [blankLineFrom(lines, lines.length >> 1), blankLineFrom(lines, lines.length - 30)];
  await client.rested();
  const hovers = await hoverTimes(client, lines, places[0]);
  const typed = entryLine(hand, TYPED);
  const keystrokes = [];
  const completions = [];
  for (const line of places) {
    for (let character = 0; character < typed.length; character++) {
      await pause();
      keystrokes.push(await client.type(typed[character], { line, character }));
    }
    for (let i = 0; i < 10; i++) {
      await pause();
      completions.push(await client.complete(i === 0 ? "," : "x", { line, character: typed.length + i }));
    }
  }
  const result = {
    start: client.startTime,
    first: time,
    keystroke: median(keystrokes),
    slowKeystroke: quantile(keystrokes, 0.95),
    completion: median(completions),
    hover: median(hovers),
    memory: client.peakMemory(),
    count,
  };
  await client.stop();
  return result;
}

async function hoverTimes(client, lines, from) {
  const times = [];
  for (let round = 0; round < 6; round++) {
    for (let i = 0; i < 20; i++) {
      const time = await client.hover(exerciseFrom(lines, from + i * 50));
      if (round > 2) times.push(time); // once warm
    }
  }
  return times;
}

/**
 * From the first diagnostics on until the server rests: the longest stretch for which it answered nobody, in
 * milliseconds, by a timer within its process.
 */
export async function longestSlice({ bundle, text }) {
  const client = await MeasuringClient.start(bundle, { probe: "loop" });
  await client.open(text);
  const opened = performance.timeOrigin + performance.now();
  await client.rested();
  const blocked = await client.tell("blocked");
  await client.stop();
  return { slice: Math.max(0, ...blocked.filter(({ at }) => at >= opened).map(({ time }) => time)) };
}

/**
 * What several contenders measure, in turn, each round in the opposite order of the one before; medians of every
 * figure.
 *
 * @template C
 * @param {number} count how many rounds
 * @param {ReadonlyMap<string, C>} contenders by their names
 * @param {(contender: C) => Promise<Record<string, number>>} measure
 * @returns {Promise<Record<string, Record<string, number>>>}
 */
export async function rounds(count, contenders, measure) {
  const all = new Map([...contenders.keys()].map((name) => [name, []]));
  for (let round = 0; round < count; round++) {
    const order = [...contenders];
    for (const [name, contender] of round % 2 ? order.reverse() : order) all.get(name).push(await measure(contender));
  }
  return Object.fromEntries([...all].map(([name, each]) => [name, medians(each)]));
}

function medians(all) {
  return Object.fromEntries(Object.keys(all[0]).map((figure) => [figure, median(all.map((each) => each[figure]))]));
}

function blankLineFrom(lines, from) {
  const found = lines.indexOf("", from);
  return found < 0 ? lines.length - 1 : found;
}

/** A fast typist's pause would make the benchmark long; this one lets the server settle. */
export function pause(time = 3) {
  return new Promise((resolve) => setTimeout(resolve, time));
}

/** The place of an exercise's name, on an entry from a line on. */
function exerciseFrom(lines, from) {
  const line = lines.findIndex((text, i) => i >= from && EXERCISE.test(text));
  return { line: Math.max(0, line), character: 4 };
}
