import { recordsOfBlock } from "../../../server/history/attempts.ts";
import type { AttemptRecord } from "../../../server/history/record.ts";
import { isoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import type { Plan, PlanLine } from "../../../server/plan/plan.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { normal, randomFrom } from "../../history/random.ts";
import { doneDay, planFor } from "../planned.ts";
import { day } from "../written.ts";

/** An invented player who does the plan of a day, or takes the day off. How real players do: no source, an assumption. */
export interface PlanPlayer {
  readonly name: string;
  /** The head of the journal: an instrument, two pieces, three aims. */
  readonly head: readonly string[];
  readonly wanted: readonly Wanted[];
}

/** What a player wants to come round again: what a record of it looks like. */
export interface Wanted {
  readonly name: string;
  readonly what: "aim" | "piece" | "key" | "neighbour";
  readonly is: (record: AttemptRecord) => boolean;
}

export interface Course {
  readonly player: PlanPlayer;
  /** The share of days on which the plan is done. */
  readonly share: number;
  readonly minutes: number;
  readonly seed: number;
}

const FIRST = day("2026-01-05");
const DAYS = 84;
/** Quarters a minute that are reached as often as not in the first week, and the gain of a week. */
const LEVEL = 66;
const GAIN = 0.01;
const SWING = 0.05;
/** How often what was slow is tried with the metronome. */
const TRIED = 0.4;

/** The longest time in days between two plays of each thing, or to the first one, or from the last to the end. */
export function longestGaps(course: Course): ReadonlyMap<Wanted, number> {
  const { player, share, minutes, seed } = course;
  const random = randomFrom(seed);
  const last = new Map(player.wanted.map((each) => [each, FIRST - 1]));
  const longest = new Map(player.wanted.map((each) => [each, 0]));
  const HEAD = "file:///j/journal.practice";
  let journal = new Journal("file:///j", new Map([[HEAD, createDocument(player.head.join("\n"))]]));
  for (let on = FIRST; on < FIRST + DAYS; on++) {
    const isDone = random() < share;
    const plan = isDone ? planFor(journal, on, { minutes }) : undefined;
    const uri = `file:///j/${isoDate(on)}.practice`;
    if (plan) journal = journal.with(uri, createDocument(written(plan, on, random)));
    const played = plan ? playedIn(journal, uri, plan) : [];
    for (const each of player.wanted) {
      if (played.some(each.is)) last.set(each, on);
      longest.set(each, Math.max(longest.get(each)!, on - last.get(each)!));
    }
  }
  return longest;
}

/** The day as the player writes it. */
function written(plan: Plan, on: number, random: () => number): string {
  const level = LEVEL * (1 + (GAIN * (on - FIRST)) / 7);
  const went = (_: PlanLine, bpm: number): string => {
    if (bpm > level * Math.exp(SWING * normal(random))) return "slips";
    return random() < 0.5 ? "clean 5 in a row" : "clean";
  };
  return doneDay(plan, went)
    .map((line) => {
      if (!/, slow,/.test(line) || random() >= TRIED) return line;
      const at = / bars? /.test(line) ? "at" : "8ths at";
      return /long tones|five notes|from the top|notes /.test(line)
        ? line
        : line.replace(", slow,", `, ${at} ${52 + 2 * Math.floor(4 * random())} clean,`).replace(/, clean$/, "");
    })
    .join("\n");
}

/** What was played, but for warming up. */
function playedIn(journal: Journal, uri: string, { lines }: Plan): readonly AttemptRecord[] {
  const block = journal.files.get(uri)!.blocks.at(-1)!;
  const warmUps = lines.filter(({ phase }) => phase === "warm-up").map(({ text }) => text.split(",")[0]!);
  return recordsOfBlock(journal, uri, block).filter(({ line, block: { lines: texts } }) => {
    return !warmUps.some((text) => texts[line]!.trim().startsWith(text) && /long tones|five notes/.test(texts[line]!));
  });
}
