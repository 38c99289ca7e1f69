import type { setTexts as english } from "./set-texts.ts";

export const setTexts: typeof english = {
  played: (days) => `gespielt ${days}`,
  done: (days) => `erledigt ${days}`,
  playedOnDays: (count, last) => `gespielt an ${count} Tagen, zuletzt ${last}`,
  doneOnDays: (count, last) => `erledigt an ${count} Tagen, zuletzt ${last}`,
  setForOneDay: "aufgegeben für einen Tag",
  setForDays: (count) => `aufgegeben für ${count} Tage`,
  noDate: "ohne Datum",
};
