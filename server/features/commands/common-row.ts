/** Two rows as one: what both have in the same order stands once, and each row keeps its own order. */
export interface Joined<T> {
  readonly a?: T;
  readonly b?: T;
}

/** More comparisons than these would be felt. */
const MOST_COMPARED = 4_000_000;

/**
 * The shortest row in which both rows stand in their order (by their longest common row); where it is free, what is the
 * first row's alone stands before what is the second's. Very long rows that are alike only at their ends stand one
 * below the other.
 */
export function joinedRows<T>(a: readonly T[], b: readonly T[], same: (a: T, b: T) => boolean): readonly Joined<T>[] {
  const most = Math.min(a.length, b.length);
  let head = 0;
  while (head < most && same(a[head]!, b[head]!)) head++;
  let tail = 0;
  while (tail < most - head && same(a.at(-1 - tail)!, b.at(-1 - tail)!)) tail++;
  const both = (from: number, count: number, shift: number): Joined<T>[] =>
    Array.from({ length: count }, (_, i) => ({ a: a[from + i]!, b: b[from + i + shift]! }));
  return [
    ...both(0, head, 0),
    ...joinedMiddle(a.slice(head, a.length - tail), b.slice(head, b.length - tail), same),
    ...both(a.length - tail, tail, b.length - a.length),
  ];
}

function joinedMiddle<T>(a: readonly T[], b: readonly T[], same: (a: T, b: T) => boolean): readonly Joined<T>[] {
  if (a.length * b.length > MOST_COMPARED)
    return [...a.map((each) => ({ a: each })), ...b.map((each) => ({ b: each }))];
  const width = b.length + 1;
  // For each place in both rows how many are common from there on.
  const common = new Uint32Array((a.length + 1) * width);
  for (let i = a.length - 1; i >= 0; i--)
    for (let k = b.length - 1; k >= 0; k--)
      common[i * width + k] = same(a[i]!, b[k]!)
        ? common[(i + 1) * width + k + 1]! + 1
        : Math.max(common[(i + 1) * width + k]!, common[i * width + k + 1]!);
  const row: Joined<T>[] = [];
  let [i, k] = [0, 0];
  while (i < a.length && k < b.length) {
    if (same(a[i]!, b[k]!)) row.push({ a: a[i++]!, b: b[k++]! });
    else if (common[(i + 1) * width + k]! >= common[i * width + k + 1]!) row.push({ a: a[i++]! });
    else row.push({ b: b[k++]! });
  }
  return [...row, ...a.slice(i).map((each) => ({ a: each })), ...b.slice(k).map((each) => ({ b: each }))];
}
