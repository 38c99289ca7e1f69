import type { ChartPalette } from "./look.ts";
import { type Attributes, element } from "./svg.ts";

/** How the parts of a bar are told apart: each lighter than the one before, and with lines or dots of its own. */
export interface PhaseFills {
  /** The patterns, to stand in the picture's `defs`. */
  readonly patterns: string;
  /** The paint of the phase at this place. */
  of(phase: number): Attributes;
}

/** How dark the ground of each is, and what is drawn on it in a square of six pixels. */
const FILLS = [
  { ground: 1, lines: "" },
  { ground: 0.55, lines: "M-1,1L1,-1M0,6L6,0M5,7L7,5" },
  { ground: 0.3, lines: "M0,1.5H6M0,4.5H6" },
  { ground: 0.12, lines: "M1.5,1.5h0M4.5,4.5h0" },
  { ground: 0, lines: "" },
] as const;

/** So many phases can be told apart. */
export const MOST_PHASES = FILLS.length;
const SQUARE = 6;

/** `id` begins the ids of the patterns. */
export function phaseFills(id: string, { amount }: ChartPalette): PhaseFills {
  const patterns = FILLS.map(({ ground, lines }, phase) =>
    lines === ""
      ? ""
      : element(
          "pattern",
          { id: `${id}-phase-${phase}`, width: SQUARE, height: SQUARE, patternUnits: "userSpaceOnUse" },
          element("rect", { width: SQUARE, height: SQUARE, fill: amount, "fill-opacity": ground }),
          element("path", { d: lines, fill: "none", stroke: amount, "stroke-width": 1.3, "stroke-linecap": "round" }),
        ),
  );
  return {
    patterns: patterns.join(""),
    of: (phase) => {
      const { ground, lines } = FILLS[phase % FILLS.length]!;
      const fill = lines !== "" ? `url(#${id}-phase-${phase % FILLS.length})` : ground === 0 ? "none" : amount;
      return { fill, stroke: amount, "stroke-width": 0.75 };
    },
  };
}
