/** What is said of the body: the usual cautions, as sentences. They hold no mark of Markdown. */
export const careTexts = {
  noted: (when: string, words: string) => `${when} you noted “${words}”`,
  notedInRemark: (when: string, words: string) => `in a remark ${when} you noted “${words}”`,
  earsToday: (noted: string) =>
    `${noted}. Ringing or dull hearing after playing: keep quiet for the rest of the day. If it is still there tomorrow, see a doctor.`,
  earsAfter: (noted: string) =>
    `${noted}. Ringing or dull hearing after playing: keep quiet today too. If it is still there, see a doctor.`,
  hurts: (noted: string) =>
    `${noted}. If something hurts, stop and rest, and tell your teacher; see a doctor who knows musicians if it stays, comes back, wakes you, or brings numbness or weakness.`,
  sparingEars: (noted: string, time: string) =>
    `${noted}. If you play: ${time}, softly, with pauses, away from loud players; ask about protection for your ears.`,
  stillInEars: "If it is still there, or comes back, no playing: see a doctor.",
  sparing: (noted: string, time: string) =>
    `${noted}. Rest is a full answer. If you play: ${time}, nothing fast, as long a pause as you played, and stop at the first sign.`,
  stillThere: "If it is still there, no playing: tell your teacher and see a doctor.",
  easing: (noted: string, time: string) =>
    `${noted}. Today ${time}, and nothing above what is steady. If it comes back, stop and rest, and tell your teacher; see a doctor if it stays.`,
  withoutTempo: (noted: string) => `Written without a tempo: ${noted}.`,
  notAbove: (bpm: number, why: string) => `Not above ${bpm} today: ${why}.`,
  isBack: "it is one of the first days back",
  doubted: (bpm: number) =>
    `${bpm} is far above what you played before. Check its digits; once you reach it on a second day, it counts.`,
  longSitting: (minutes: number, when: string) =>
    `${minutes} minutes ${when}: were there pauses? Short sittings with pauses are what teachers advise.`,
  /** Two numbers of minutes: `120 to 165`. */
  range: (least: number, most: number) => `${least} to ${most}`,
  fullWeek: (minutes: number, before: string) =>
    `This week has ${minutes} minutes; your weeks before had ${before}. More pauses than usual, please.`,
};
