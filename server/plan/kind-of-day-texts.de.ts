import { instrumentTexts } from "../music/instruments/instrument-texts.ts";
import type { kindOfDayTexts as english } from "./kind-of-day-texts.ts";

export const kindOfDayTexts: typeof english = {
  rest: "Heute ist ein Ruhetag.",
  tooShort: "Unter 5 Minuten braucht es keinen Plan: Spiel langsam etwas, das gut geht.",
  awayTooShort: "Fünf Minuten ohne Instrument, oder gar keine.",
  quietDay: "Am besten ein ruhiger Tag.",
  playedOfThem: (minutes) => `Davon hast du heute schon ${minutes} gespielt.`,
  thatWasTheTime: "Das war die Zeit für heute: Lass es dabei und ruh dich aus.",
  thatWasHalf: "Das war die Hälfte für heute: Lass es dabei und ruh dich aus.",
  limit: (minutes, instrument) =>
    `Höchstens ${minutes} Minuten am Tag auf diesem Instrument: ${instrumentTexts.name(instrument)}.`,
  limitUsed: (minutes, instrument, used) =>
    `Höchstens ${minutes} Minuten am Tag auf diesem Instrument (${instrumentTexts.name(instrument)}), davon sind ${used} verbraucht.`,
  afterAway: (time) => `Einer der ersten Tage nach ${time} Unterbrechung`,
  afterIllness: "Einer der ersten Tage nach einer Krankheit",
  firstDayBack: (back, time) => `${back}: ${time}, und nichts Schnelles.`,
  concertToday: "Das Konzert ist heute: kurz einspielen und nichts erzwingen.",
  concertTomorrow: "Das Konzert ist morgen: die halbe Zeit und nichts erzwingen.",
  concertAhead: (days) => `Das Konzert ist in ${days} Tagen: nichts über dem, was sicher ist.`,
  pushed: "Die letzten beiden Tage gingen über das Sichere hinaus: Heute muss nichts schneller werden.",
  daysOff: (days, time) =>
    `Nach ${days} ${days === 1 ? "Tag" : "Tagen"} ohne Üben ein leichter Einstieg: ${time}, und nichts über dem, was sicher ist.`,
  insteadOf: (minutes, wished) => `${minutes} Minuten statt ${wished}`,
  shortTime: "nur kurz",
};
