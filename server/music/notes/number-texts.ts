/** How numbers are said. */
export const numberTexts = {
  /** A number as it is printed, from its digits with a point. */
  decimal: (digits: string | number) => String(digits),
};
