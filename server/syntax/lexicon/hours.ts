// Words beside the hours of the clock, for expressions: common practice, no source; Dutch, Italian and Spanish from
// memory.

/** Behind an hour: `9 pm`, `22 Uhr`, `22 h`. */
export const UNITS_OF_HOURS = "[ap]\\.?m\\.?|o'clock|uhr|heures?|h|uur|hrs";

/** From one hour to another: `7.30 to 9.45`, `20 bis 22 Uhr`, `20h à 22h`. */
export const TO_THE_HOUR = "to|till?|until|bis|à|tot|alle|a las|a|hasta";

/** In the order of the clock, as the British say `half ten`. */
export const HOUR_NAMES: readonly string[] = "one two three four five six seven eight nine ten eleven twelve".split(
  " ",
);
