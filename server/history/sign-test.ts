/**
 * The sign test: how likely chance alone, either way as likely, gives so uneven a count or a more uneven one, both
 * ways taken together. Exact up to 53 in all.
 *
 * W. J. Conover, "Practical Nonparametric Statistics", chapter 3 (from memory).
 *
 * @param fewer how many go the rarer way
 * @param count how many go either way
 */
export function signTest(fewer: number, count: number): number {
  let ways = 1;
  let sum = 0;
  for (let k = 0; k <= fewer; k++) {
    sum += ways;
    ways = (ways * (count - k)) / (k + 1);
  }
  return Math.min(1, (2 * sum) / 2 ** count);
}
