/** Tempos by their ratios: so many per cent are as high everywhere. */
export interface TempoScale {
  /** The place of a tempo; of what lies outside, the end beside it. */
  y(tempo: number): number;
  /** The round tempos within the scale, about as many as asked for, slowest first. */
  round(about: number): readonly number[];
}

/** From the slowest tempo at `bottom` to the fastest at `top`, both in pixels; the slowest is above 0. */
export function tempoScale(
  [slowest, fastest]: readonly [number, number],
  { bottom, top }: { readonly bottom: number; readonly top: number },
): TempoScale {
  const [from, to] = [Math.log(slowest), Math.log(fastest)];
  return {
    y: (tempo) => {
      const within = Math.min(fastest, Math.max(slowest, tempo)); // a trend may go on below 0
      const part = (Math.log(within) - from) / (to - from);
      return bottom * (1 - part) + top * part;
    },
    round: (about) => {
      const decades = wholeInDecades(slowest, fastest);
      return decades.length * 2 < about ? evenlyApart(slowest, fastest, about) : decades;
    },
  };
}

/** 1 to 9, 10 to 90 and so on, as far as they lie within. */
function wholeInDecades(low: number, high: number): readonly number[] {
  const found: number[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power++)
    for (let digit = 1; digit < 10; digit++) {
      const value = power < 0 ? digit / 10 ** -power : digit * 10 ** power;
      if (value >= low && value <= high) found.push(value);
    }
  return found;
}

/** Between two steps of 1, 2, 5 and 10 the nearer one is taken, by their ratio: geometric means. */
const STEPS = [
  [Math.sqrt(50), 10],
  [Math.sqrt(10), 5],
  [Math.sqrt(2), 2],
] as const;

/** Multiples of 1, 2 or 5 times a power of ten, about as many as asked for. */
function evenlyApart(low: number, high: number, about: number): readonly number[] {
  const rough = (high - low) / about;
  const power = Math.floor(Math.log10(rough));
  const factor = STEPS.find(([least]) => rough / 10 ** power >= least)?.[1] ?? 1;
  // Parts are divided by, not multiplied: 0.1 has no exact number, 10 has.
  const [times, parts] = power < 0 ? [1, 10 ** -power / factor] : [factor * 10 ** power, 1];
  const first = Math.ceil((low * parts) / times);
  const last = Math.floor((high * parts) / times);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => ((first + i) * times) / parts);
}
