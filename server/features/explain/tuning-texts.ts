/** How a tuning is told; intervals are named as the journal names notes, sizes are printed in cents. */
export const tuningTexts = {
  /** `told` is what there is to say of thirds and fifths. */
  line: (tuning: string, told: readonly string[]) => `Tuning (${tuning}), cents from pure: ${told.join("; ")}`,
  thirds: (spread: string) => `thirds ${spread}`,
  fifths: (spread: string) => `fifths ${spread}`,
  equal: "equal temperament",
  name: (a: number, temperament: string) => `A=${a}, ${temperament}`,
  justOn: (tonic: string) => `just on ${tonic}`,
  pure: "pure",
  narrow: "narrow",
  wide: "wide",
  wolf: "a wolf",
  /** Of one size; `ways` is how they depart, or nothing. */
  alike: (several: boolean, size: string, ways: readonly string[]) =>
    `${several ? "all " : ""}${size}${ways.length > 0 ? ` ${ways.join(", ")}` : ""}`,
  /** Of several sizes: the least, the most, the worst interval and how many more are as bad. */
  spread: (least: string, most: string, worst: string, more: number, ways: readonly string[]) =>
    `${least} to ${most}, worst ${worst}${more > 0 ? ` and ${more} more` : ""}${ways.length > 0 ? ` (${ways.join(", ")})` : ""}`,
  /** A declared pitch beside concert pitch; `cents` is how far above, less than nought below. */
  pitch: (name: string, a: number, cents: number, concert: number) =>
    `**${name}**: A4 at ${a} Hz${cents === 0 ? "" : `, ${Math.abs(cents)} cents ${cents < 0 ? "below" : "above"} ${concert} Hz`}.`,
  noWolf: "No fifth is a wolf.",
  wolfFifth: (interval: string, cents: string, way: string) => `${interval} (${cents} cents ${way})`,
  /** `listed` in one. */
  wolves: (count: number, listed: string) => `${count === 1 ? "Its wolf is" : "Its wolves are"} ${listed}.`,
};
