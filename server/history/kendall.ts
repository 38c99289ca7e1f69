/** How many pairs of figures go up less how many go down, and how far that swings by chance. */
export interface KendallTest {
  /** Kendall's S; a pair of equal figures counts for nothing. */
  readonly s: number;
  /** The variance of S where there is no trend, corrected for ties. */
  readonly variance: number;
  /** S, a step nearer to nought, in standard deviations; 0 where the variance is. */
  readonly z: number;
}

/**
 * The Mann–Kendall test of figures in the order of time, by the normal approximation with the correction for
 * continuity. V = (n(n−1)(2n+5) − Σ t(t−1)(2t+5)) / 18 over the groups of t equal figures.
 *
 * Mann, H. B. (1945), "Nonparametric tests against trend", Econometrica 13, 245–259; Kendall, M. G., "Rank Correlation
 * Methods".
 */
export function mannKendall(figures: readonly number[]): KendallTest {
  const ranks = ranksOf(figures);
  let s = 0;
  for (let i = 0; i < ranks.length; i++)
    for (let j = i + 1; j < ranks.length; j++) s += Math.sign(ranks[j]! - ranks[i]!);
  const variance = kendallVariance(ranks);
  return { s, variance, z: variance > 0 ? (Math.sign(s) * Math.max(Math.abs(s) - 1, 0)) / Math.sqrt(variance) : 0 };
}

/** The variance of Kendall's S of values in pairs, corrected for ties in either: Sen (1968), equation 2.6. */
export function kendallVariance(...values: readonly (readonly number[])[]): number {
  const ties = values.reduce((sum, each) => sum + tieWeight(each), 0);
  return (pairWeight(values[0]?.length ?? 0) - ties) / 18;
}

/** From 0 up. */
function pairWeight(size: number): number {
  return size * Math.max(size - 1, 0) * (2 * size + 5);
}

function tieWeight(values: readonly number[]): number {
  const sizes = new Map<number, number>();
  for (const value of values) sizes.set(value, (sizes.get(value) ?? 0) + 1);
  let sum = 0;
  for (const size of sizes.values()) sum += pairWeight(size);
  return sum;
}

/** Figures that differ by less than a double can hold of a tempo are equal, in whichever unit they are told. */
const EQUAL = 1e-9;

/** Each figure's place among the different ones, from 0. */
function ranksOf(figures: readonly number[]): number[] {
  const rising = [...new Set(figures)].sort((a, b) => a - b);
  const ranks = new Map<number, number>();
  let rank = 0;
  for (const [i, figure] of rising.entries()) {
    if (i > 0 && figure - rising[i - 1]! > EQUAL * Math.abs(figure)) rank++;
    ranks.set(figure, rank);
  }
  return figures.map((figure) => ranks.get(figure)!);
}
