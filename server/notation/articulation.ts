import type { NoteSign, Stretch } from "./staff.ts";

/** What of an articulation is drawn. */
export interface DrawnArticulation {
  readonly slurs: readonly Stretch[];
  readonly signs: readonly NoteSign[];
}

const NOTHING: DrawnArticulation = { slurs: [], signs: [] };

/** The signs of articulations by their English names. Common practice, no source. */
const SIGNS: Readonly<Record<string, readonly NoteSign[]>> = {
  staccato: ["dot"],
  "finger staccato": ["dot"],
  spiccato: ["dot"],
  staccatissimo: ["wedge"],
  martelé: ["wedge"],
  portato: ["dot", "line"],
  tenuto: ["line"],
  louré: ["line"],
  marcato: ["accent"],
};

/** Articulations under one slur. */
const ALL_SLURRED: readonly string[] = ["slurred", "legato bowing", "legatissimo"];

/**
 * The slurs and signs of an articulation, as a journal's conditions have it: `slurred`, `slur 2+1+1`, `staccato`,
 * `slurred up, tongued down`. What has no sign, as `tongued` or syllables, is drawn as plain notes; of several for the
 * same notes, which is no one way, nothing is drawn.
 *
 * @param falling of each note whether it belongs to the half that goes down
 */
export function drawnArticulation(text: string | undefined, falling: readonly boolean[]): DrawnArticulation {
  if (text === undefined || falling.length === 0) return NOTHING;
  const said = text.split(", ").map(halfOf);
  const whole = { from: 0, to: falling.length - 1 };
  const [only, ...others] = said;
  if (others.length === 0 && only!.half === undefined)
    return { slurs: slursOver(only!.id, whole), signs: SIGNS[only!.id] ?? [] };
  if (said.some(({ half }) => half === undefined)) return NOTHING;
  return {
    slurs: said.flatMap(({ id, half }) => runsOf(falling, half === "down").flatMap((run) => slursOver(id, run))),
    signs: [],
  };
}

function halfOf(text: string): { readonly id: string; readonly half?: "up" | "down" } {
  const half = / (up|down)$/.exec(text)?.[1] as "up" | "down" | undefined;
  return half ? { id: text.slice(0, -half.length - 1), half } : { id: text };
}

/** Each run of notes of one half. */
function runsOf(falling: readonly boolean[], wanted: boolean): readonly Stretch[] {
  const runs: Stretch[] = [];
  let from = 0;
  for (let i = 1; i <= falling.length; i++) {
    if (i < falling.length && falling[i] === falling[from]) continue;
    if (falling[from] === wanted) runs.push({ from, to: i - 1 });
    from = i;
  }
  return runs;
}

function slursOver(id: string, { from, to }: Stretch): readonly Stretch[] {
  if (ALL_SLURRED.includes(id)) return to > from ? [{ from, to }] : [];
  const sizes = /^slur ([\d+]+)$/.exec(id)?.[1]?.split("+").map(Number);
  if (!sizes || sizes.some((size) => size < 1)) return [];
  const slurs: Stretch[] = [];
  let at = from;
  for (let i = 0; at <= to; i++) {
    const size = sizes[i % sizes.length]!;
    const end = Math.min(to, at + size - 1);
    if (end > at) slurs.push({ from: at, to: end });
    at += size;
  }
  return slurs;
}
