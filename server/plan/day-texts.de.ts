import type { dayTexts as english } from "./day-texts.ts";

export const dayTexts: typeof english = {
  on: (date) => `am ${date}`,
  weekOf: (monday) => `der Woche vom ${monday}`,
  today: "heute",
  yesterday: "gestern",
  tomorrow: "morgen",
  daysAgo: (days) => `vor ${days} Tagen`,
  inDays: (days) => `in ${days} Tagen`,
  days: (count) => `${count} ${count === 1 ? "Tag" : "Tage"}`,
  weeksAway: (count) => `${count} ${count === 1 ? "Woche" : "Wochen"}`,
  monthsAway: (count) => `${count} ${count === 1 ? "Monat" : "Monaten"}`,
  yearsAway: (count) => `${count} ${count === 1 ? "Jahr" : "Jahren"}`,
  forToday: "für heute",
  forDay: (date) => `für ${date}`,
  wasFor: (date) => `war für ${date}`,
  numbers: ["kein", "ein", "zwei", "drei", "vier", "fünf", "sechs", "sieben", "acht", "neun", "zehn", "elf", "zwölf"],
};
