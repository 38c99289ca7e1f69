/** A tempo in beats a minute as it is written, to one decimal. */
export function figure(bpm: number): string {
  return String(Math.round(bpm * 10) / 10);
}
