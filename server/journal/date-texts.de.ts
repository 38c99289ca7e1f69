import type { dateTexts as english } from "./date-texts.ts";

export const dateTexts: typeof english = {
  months: [
    "Januar",
    "Februar",
    "März",
    "April",
    "Mai",
    "Juni",
    "Juli",
    "August",
    "September",
    "Oktober",
    "November",
    "Dezember",
  ],
  shortMonths: ["Jan.", "Feb.", "März", "Apr.", "Mai", "Juni", "Juli", "Aug.", "Sept.", "Okt.", "Nov.", "Dez."],
  weekdays: ["Montag", "Dienstag", "Mittwoch", "Donnerstag", "Freitag", "Samstag", "Sonntag"],
  shortWeekdays: ["Mo", "Di", "Mi", "Do", "Fr", "Sa", "So"],
  today: "heute",
  yesterday: "gestern",
  dayOfMonth: (day) => `${day}.`,
  fromTo: (first, last) => `${first} bis ${last}`,
};
