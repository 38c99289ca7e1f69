import { MeasuringClient } from "./client.mjs";

const TYPED = "  D minor melodic, thirds, 8ths at 72 clean";

export function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

/** Long enough for the server to read the history, which it does once it is quiet; in milliseconds. */
const SETTLED = 1_500;

/** One life of a server with one text: start, open, hover, type a line in the middle and one at the end, complete. */
export async function life(bundle, text) {
  const client = await MeasuringClient.start(bundle);
  const { time, count } = await client.open(text);
  const lines = text.split("\n");
  const places = [blankLineFrom(lines, lines.length >> 1), blankLineFrom(lines, lines.length - 30)];
  await pause(SETTLED);
  const hovers = [];
  for (let round = 0; round < 6; round++) {
    for (let i = 0; i < 20; i++) {
      const time = await client.hover(entryFrom(lines, places[0] + i * 50));
      if (round > 2) hovers.push(time); // once warm
    }
  }
  const keystrokes = [];
  const completions = [];
  for (const line of places) {
    for (let character = 0; character < TYPED.length; character++) {
      await pause();
      keystrokes.push(await client.type(TYPED[character], { line, character }));
    }
    for (let i = 0; i < 10; i++) {
      await pause();
      completions.push(await client.complete(i === 0 ? "," : "x", { line, character: TYPED.length + i }));
    }
  }
  const result = {
    start: client.startTime,
    first: time,
    keystroke: median(keystrokes),
    completion: median(completions),
    hover: median(hovers),
    memory: client.peakMemory(),
    count,
  };
  await client.stop();
  return result;
}

/** The lives of several servers in turn, each round in the opposite order of the one before; medians of every figure. */
export async function rounds(count, contenders) {
  const lives = new Map(contenders.map(({ name }) => [name, []]));
  for (let round = 0; round < count; round++) {
    const order = round % 2 ? [...contenders].reverse() : contenders;
    for (const { name, bundle, text } of order) lives.get(name).push(await life(bundle, text));
  }
  return Object.fromEntries([...lives].map(([name, all]) => [name, medians(all)]));
}

function medians(lives) {
  return Object.fromEntries(Object.keys(lives[0]).map((figure) => [figure, median(lives.map((life) => life[figure]))]));
}

function blankLineFrom(lines, from) {
  const found = lines.indexOf("", from);
  return found < 0 ? lines.length - 1 : found;
}

/** A fast typist's pause would make the benchmark long; this one lets the server settle. */
function pause(time = 3) {
  return new Promise((resolve) => setTimeout(resolve, time));
}

/** The place of an exercise's name, on an entry from a line on. */
function entryFrom(lines, from) {
  const line = lines.findIndex((text, i) => i >= from && /^ {2}[A-G][#b]? m/.test(text));
  return { line: Math.max(0, line), character: 4 };
}
