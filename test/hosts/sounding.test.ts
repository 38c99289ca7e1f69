import { build } from "esbuild";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { soundAt } from "../../server/features/sound/sound.ts";
import type { Passage } from "../../shared/sound.ts";
import { journalOf, URI } from "../features/journal-text.ts";
import { TODAY } from "../features/marked-text.ts";

// What the page plays is rendered offline, and measured in the samples alone: frequencies by zero crossings, onsets by the
// first sample that is not silent. Frequencies are held against those of equal temperament from A4 = 440 Hz (ISO 16).

const RATE = 48_000;

/** Samples of a rendered passage, all its rounds. */
interface Rendered {
  /** Seconds at which a sound begins after silence. */
  readonly onsets: readonly number[];
  /** Hertz, over the steady part of the first sound of a tone. */
  readonly hertz: number;
  readonly peak: number;
}

let browser: Browser | undefined;
let page: Page;
beforeAll(async () => {
  const executablePath = findChromium();
  if (!executablePath && process.env.CI) throw new Error("The tests of sound need a Chromium.");
  if (!executablePath) return;
  browser = await chromium.launch({ executablePath, args: [...launchArguments] });
  page = await browser.newPage();
  const options = { bundle: true, write: false, format: "iife", globalName: "sounding" } as const;
  const { outputFiles } = await build({ ...options, entryPoints: ["client/preview/page/sounding.ts"] });
  await page.addScriptTag({ content: `${outputFiles[0]!.text}; window.sounding = sounding;` });
});
beforeEach(({ skip }) => skip(!browser, "no Chromium"));
afterAll(() => browser?.close());

function passageOf(entry: string, text: string, head = ""): Passage {
  const journal = journalOf(`${head}\n2026-03-08\n  ${entry}`);
  const sound = soundAt(journal, URI, journal.files.get(URI)!.lineCount - 1, { text, today: TODAY });
  if (!sound.ok) throw new Error(sound.reason);
  return sound.passages[0]!;
}

function rendered(passage: Passage): Promise<Rendered> {
  return page.evaluate(render, { passage, rate: RATE });
}

/** Runs in the page. */
async function render({ passage, rate }: { passage: Passage; rate: number }): Promise<Rendered> {
  const length = Math.ceil(passage.rounds * passage.round * rate);
  const context = new OfflineAudioContext(1, length, rate);
  const { schedule } = (window as unknown as { sounding: typeof import("../../client/preview/page/sounding.ts") })
    .sounding;
  for (let index = 0; index < passage.rounds; index++)
    schedule(context, context.destination, { passage, index, from: 0 });
  const samples = (await context.startRendering()).getChannelData(0);
  const onsets: number[] = [];
  let silent = rate; // as if it had been silent before
  let peak = 0;
  for (const [i, sample] of samples.entries()) {
    peak = Math.max(peak, Math.abs(sample));
    if (Math.abs(sample) < 1e-5) silent++;
    else {
      if (silent > rate / 200) onsets.push(i / rate);
      silent = 0;
    }
  }
  // Rising crossings of the steady part; where between two samples is told by a straight line.
  const first = passage.tones[0]!;
  const [from, to] = [(first.at + 0.1 * first.length) * rate, (first.at + 0.9 * first.length) * rate];
  const crossings: number[] = [];
  for (let i = Math.ceil(from); i < to; i++) {
    const [a, b] = [samples[i]!, samples[i + 1]!];
    if (a < 0 && b >= 0) crossings.push(i + a / (a - b));
  }
  const periods = crossings.length - 1;
  return { onsets, hertz: (periods * rate) / (crossings.at(-1)! - crossings[0]!), peak };
}

const cents = (a: number, b: number): number => 1200 * Math.log2(a / b);

describe("clicks, rendered", () => {
  test.each([40, 63, 97, 208])(
    "at %d each begins within a millisecond of its time, over a whole minute",
    async (bpm) => {
      const { onsets, peak } = await rendered(passageOf("D minor", `click at ${bpm}`));
      expect(onsets).toHaveLength(bpm);
      for (const [i, onset] of onsets.entries()) expect(Math.abs(onset - (60 * i) / bpm)).toBeLessThan(0.001);
      expect(peak).toBeLessThanOrEqual(1);
    },
  );

  test("and those within the beat", async () => {
    const { onsets } = await rendered(passageOf("D minor", "click at 72 in triplets"));
    expect(onsets).toHaveLength(3 * 72);
    for (const [i, onset] of onsets.entries()) expect(Math.abs(onset - (20 * i) / 72)).toBeLessThan(0.001);
  });
});

describe("tones, rendered", () => {
  test.each([
    ["C4", 60],
    ["F#5", 78],
    ["Bb2", 46],
    ["A6", 93],
  ])("a drone on %s is within half a cent", async (note, midi) => {
    const { hertz, peak } = await rendered(passageOf("D minor", `drone on ${note}`));
    expect(Math.abs(cents(hertz, 440 * 2 ** ((midi - 69) / 12)))).toBeLessThan(0.5);
    expect(peak).toBeLessThanOrEqual(1);
  });

  test("at another pitch", async () => {
    const { hertz } = await rendered(passageOf("D minor", "drone on A4", "pitch A=415"));
    expect(Math.abs(cents(hertz, 415))).toBeLessThan(0.5);
  });

  test("an exercise: its first note, and each where the tempo has it", async () => {
    const { onsets, hertz } = await rendered(passageOf("C major, tongued, up, 8ths", "play at 60"));
    expect(onsets).toHaveLength(8);
    for (const [i, onset] of onsets.entries()) expect(Math.abs(onset - i / 2)).toBeLessThan(0.001);
    expect(Math.abs(cents(hertz, 440 * 2 ** ((60 - 69) / 12)))).toBeLessThan(0.5);
  });

  test("four tones together are no louder than one", async () => {
    expect((await rendered(passageOf("D minor", "drone on D F A C"))).peak).toBeLessThanOrEqual(1);
  });
});
