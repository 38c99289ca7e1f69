const ORDINALS = [
  ...["first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"],
  ...["eleventh", "twelfth"],
];

/** How numbers are said. */
export const numberTexts = {
  /** Which degree, note or step it is, before its noun; from 1. */
  ordinal: (place: number) => ORDINALS[place - 1] ?? `${place}th`,
  /** A number as it is printed, from its digits with a point. */
  decimal: (digits: string | number) => String(digits),
};
