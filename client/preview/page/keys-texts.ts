/** The table of keys. */
export const keysTexts = {
  caption: "Days of practice by kind and key signature",
  /** Behind a tonic: ` major`. */
  ofKind: (kind: string) => ` ${kind}`,
  /** What is read out behind the number of days, which is left out where there are none. */
  days: (days: number): string => (days === 0 ? "no days" : days === 1 ? " day" : " days"),
  hiddenLeft: (left: number) => `← ${moreKeys(left)} at the left`,
  hiddenRight: (right: number) => `${moreKeys(right)} at the right →`,
  hiddenOnBothSides: (left: number, right: number) => `← ${moreKeys(left)} at the left, ${right} at the right →`,
  also: "Also",
  showOthers: "Show the other keys",
  foldOthers: "Fold the other keys away",
};

function moreKeys(count: number): string {
  return `${count} more key${count === 1 ? "" : "s"}`;
}
