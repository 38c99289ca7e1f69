import type { Degree } from "../notes/degree.ts";
import type { ScaleKind } from "./kind.ts";
import { degreesOf } from "./scale.ts";

/** How steps are written: tone and semitone, whole and half, plain semitones, or cents. */
export type StepStyle = "TS" | "WH" | "digits" | "cents";

/** The distances between neighbours, in semitones, from the first note to the octave: all of them add up to 12. */
export function stepsBetween(degrees: readonly Degree[]): number[] {
  return degrees.map(({ semitones }, index) => (degrees[index + 1]?.semitones ?? 12) - semitones);
}

/** The steps of a scale in semitones, the last one reaching the octave; of the falling form too, read upward. */
export function stepsOf(kind: ScaleKind, direction: "up" | "down" = "up"): number[] {
  return stepsBetween(degreesOf(kind, direction));
}

/** Cents from each note to the next, up to the octave; a hundred to the semitone where a scale has none of its own. */
export function centsOf({ degrees }: Pick<ScaleKind, "degrees">): number[] {
  const above = degrees.map(({ cents, semitones }) => cents ?? 100 * semitones);
  return above.map((cents, index) => Number(((above[index + 1] ?? 1200) - cents).toFixed(4)));
}

/** Steps as they were written, in semitones, or in cents where that is the style. */
export interface WrittenSteps {
  readonly steps: readonly number[];
  readonly style: StepStyle;
  /** How three semitones are called, where they are. */
  readonly three?: string;
  readonly lower: boolean;
  /** `TTSTTTS`, without spaces. */
  readonly joined: boolean;
  /** `T-T-S`: what parts them. */
  readonly between: string;
}

/** Letters and numbers to semitones, in each way of writing. */
const SEMITONES: Readonly<Record<Exclude<StepStyle, "cents">, Readonly<Record<string, number>>>> = {
  TS: { T: 2, S: 1, A: 3, "3": 3 },
  WH: { W: 2, H: 1, A: 3, "3": 3 },
  digits: { "1": 1, "2": 2, "3": 3, "4": 4, "5": 5, "6": 6, "7": 7, "8": 8, "9": 9 },
};

/** Intervals by their names, which may stand among letters and numbers. */
const INTERVALS: Readonly<Record<string, number>> = {
  m2: 1,
  M2: 2,
  A2: 3,
  "+2": 3,
  "3S": 3,
  "3H": 3,
  "3s": 3,
  "3h": 3,
  m3: 3,
  M3: 4,
  min3: 3,
};

const CENTS = /^(?:cents?\s+)?(\d{1,4}(?:\.\d{1,4})?(?:[\s,|–-]+\d{1,4}(?:\.\d{1,4})?)+)(?:\s*cents?)?$/iu;
const PARTING = /[\s,|–-]+/u;

/**
 * Reads `T T S T T T S`, `ttsttts`, `W-W-H-W-W-W-H`, `2 2 1 2 2 2 1`, `T T m3 T m3`, in semitones; three are `A`
 * (augmented second), `3`, `3S` or `m3`. Numbers above twelve are cents: `150 150 200`. Spaces, commas, hyphens and
 * bars part them. Mixed ways of writing, or anything else, is undefined.
 */
export function readSteps(words: string): WrittenSteps | undefined {
  const text = words.trim();
  const tokens = text.split(PARTING).filter((token) => token !== "");
  const cents = CENTS.exec(text)?.[1]?.split(PARTING).map(Number);
  if (cents && (/cent/iu.test(text) || cents.some((value) => value > 12)))
    return { steps: cents, style: "cents", lower: false, joined: false, between: " " };
  const between = PARTING.exec(text)?.[0].replace(/\s+/gu, " ") ?? " ";
  const marks = tokens.flatMap((token) => marksIn(token, tokens.length));
  if (marks.length === 0) return undefined;
  const style = (["TS", "WH", "digits"] as const).find((each) => {
    return marks.every((mark) => mark in INTERVALS || mark.toUpperCase() in SEMITONES[each]);
  });
  if (!style) return undefined;
  const steps = marks.map((mark) => INTERVALS[mark] ?? SEMITONES[style][mark.toUpperCase()]!);
  const three = marks.find((mark, i) => steps[i] === 3 && (mark !== "3" || style !== "digits"));
  const lower = /[a-z]/u.test(text) && !/[TSWHA]/u.test(text);
  return { steps, style, ...(three ? { three } : {}), lower, joined: tokens.length === 1 && marks.length > 1, between };
}

/** `m3` is one step; `TTS` three, with an interval's name among them. */
function marksIn(token: string, tokens: number): readonly string[] {
  if (tokens > 1 && token in INTERVALS) return [token];
  return token.match(/min3|[mM][23]|A2|\+2|./gsu) ?? [];
}

/** The steps as words, with spaces. A step that a style has no letter for stays a number. */
export function printSteps(steps: readonly number[], style: StepStyle): string {
  const letters = { TS: ["S", "T", "A"], WH: ["H", "W", "A"], digits: [], cents: [] }[style];
  return steps.map((step) => letters[step - 1] ?? String(step)).join(" ");
}

/** The steps in the style in which others were written. */
export function printLike(steps: readonly number[], { style, three, lower, joined, between }: WrittenSteps): string {
  const words = printSteps(steps, style)
    .split(" ")
    .map((word, i) => (steps[i] === 3 && three !== undefined ? three : lower ? word.toLowerCase() : word));
  return words.join(joined ? "" : between);
}
