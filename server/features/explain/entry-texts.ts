/** Why there is no entry to do something with. */
export const entryTexts = {
  noEntry:
    "There is no entry on this line. Put the cursor on one below a day, such as D minor, thirds, 8ths at 60 clean, and try again.",
};
