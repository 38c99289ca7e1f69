/** What is said of the minutes of a day. */
export const minutesTexts = {
  /** Of the parts of a whole that add up to more than it. */
  entriesExceed: (sum: number, whole: number) => exceed("entries", sum, whole),
  partsExceed: (sum: number, whole: number) => exceed("parts", sum, whole),
  sittingsExceed: (sum: number, whole: number) => exceed("sittings", sum, whole),
  longStretch: (minutes: number) =>
    `About ${minutes} minutes with no break noted: were there pauses? \`break, 10 min\` notes one. If something hurts, stop and rest, and tell your teacher; see a doctor if it lasts or comes back.`,
};

function exceed(parts: string, sum: number, whole: number): string {
  return `The ${parts} below add up to ${sum} minutes, more than the ${whole} here.`;
}
