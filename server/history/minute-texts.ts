/** Minutes of practice. */
export const minuteTexts = {
  /** Of minutes that were shared out, not written. */
  about: (minutes: number) => `about ${minutes}`,
  /** `minutes` as they are shown. */
  count: (minutes: string, isOne: boolean) => `${minutes} ${isOne ? "minute" : "minutes"}`,
};
