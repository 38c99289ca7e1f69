/** Ways of playing in letters that mean them only beside others: `tg/sl/st`. Common practice, no source. */
export const BESIDE_ARTICULATIONS: ReadonlyMap<string, string> = new Map([
  ["s", "slurred"],
  ["t", "tongued"],
  ["st", "staccato"],
  ["l", "legato"],
]);
