/**
 * A number of 32 bits for a text: FNV-1a (G. Fowler, L. C. Noll, K.-P. Vo), over the text's UTF-16 units, which for
 * ASCII are its bytes.
 */
export function fnv1a(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return hash >>> 0;
}

/**
 * Draws numbers of 32 bits, the same ones for the same seed on every machine: xorshift with the shifts 13, 17 and 5
 * (G. Marsaglia, Journal of Statistical Software 8/14, 2003). A seed of 0 would draw nothing but 0, so 1 stands for it.
 */
export function xorshift32(seed: number): () => number {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state >>> 0;
  };
}

/** The values in an order that is drawn (R. A. Fisher and F. Yates, 1938). */
export function shuffled<T>(values: readonly T[], draw: () => number): T[] {
  const order = [...values];
  for (let last = order.length - 1; last > 0; last--) {
    const chosen = Math.floor((draw() / 2 ** 32) * (last + 1));
    [order[last], order[chosen]] = [order[chosen]!, order[last]!];
  }
  return order;
}
