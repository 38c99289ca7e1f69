/** What a strip of a piece's bars shows, in sentences. */
export const pieceStripTexts = {
  tooManyBars: (bars: number, most: number) =>
    `Bar ${bars} is further than a strip can show, which ends at bar ${most}. Is there a digit too many in it?`,
  barsUnknown: "The number of bars is not known. Say how many it has where it is declared, such as `96 bars`.",
  bars: (count: number) => `${count} ${count === 1 ? "bar" : "bars"}.`,
  barsWanted: (count: number, tempo: number) => `${count} ${count === 1 ? "bar" : "bars"}, wanted at ${tempo}.`,
  noneWorked: "None worked yet.",
  /** Where a stretch of bars is. */
  bar: (bar: number) => `bar ${bar}`,
  fromTo: (from: number, to: number) => `bars ${from}–${to}`,
  /** By the place in `RECENCIES`. */
  recencies: ["within 7 days", "within 4 weeks", "within 12 weeks", "longer ago"],
  worked: (where: string, tempo: number, recency: string) => `${where}: ${tempo}, worked ${recency}`,
  workedWithoutTempo: (where: string, recency: string) => `${where}: no tempo reached, worked ${recency}`,
  andMore: (stretches: string, more: number) => `${stretches}; and ${more} more`,
};
