/** Why nothing sounds on a day without the instrument. */
export const silentTexts = {
  silent: "Nothing sounds today: yesterday or today you noted that something hurts. Rest is a full answer.",
};
