import type { careTexts as english } from "./care-texts.ts";

export const careTexts: typeof english = {
  noted: (when, words) => `${when} hast du „${words}“ notiert`,
  notedInRemark: (when, words) => `${when} hast du in einer Bemerkung „${words}“ notiert`,
  earsToday: (noted) =>
    `${noted}. Klingeln in den Ohren oder dumpfes Hören nach dem Spielen: den Rest des Tages Ruhe. Ist es morgen noch da, lass es ärztlich abklären.`,
  earsAfter: (noted) =>
    `${noted}. Klingeln in den Ohren oder dumpfes Hören nach dem Spielen: auch heute Ruhe. Ist es noch da, lass es ärztlich abklären.`,
  hurts: (noted) =>
    `${noted}. Wenn etwas wehtut, hör auf, ruh dich aus und sag es deiner Lehrkraft. Bleibt es, kommt es wieder, weckt es dich oder kommen Taubheit oder Schwäche dazu, lass es ärztlich abklären, am besten in einer Musikersprechstunde.`,
  sparingEars: (noted, time) =>
    `${noted}. Wenn du spielst: ${time}, leise, mit Pausen, nicht neben lauten Instrumenten; frag nach einem Gehörschutz.`,
  stillInEars: "Ist es noch da oder kommt es wieder, spiel nicht und lass es ärztlich abklären.",
  sparing: (noted, time) =>
    `${noted}. Ausruhen ist völlig in Ordnung. Wenn du spielst: ${time}, nichts Schnelles, die Pausen so lang wie das Spielen, und beim ersten Anzeichen aufhören.`,
  stillThere: "Ist es noch da, spiel nicht, sag es deiner Lehrkraft und lass es ärztlich abklären.",
  easing: (noted, time) =>
    `${noted}. Heute ${time}, und nichts über dem, was sicher geht. Kommt es wieder, hör auf, ruh dich aus und sag es deiner Lehrkraft; bleibt es, lass es ärztlich abklären.`,
  withoutTempo: (noted) => `Ohne Tempo geschrieben: ${noted}.`,
  notAbove: (bpm, why) => `Heute nicht über ${bpm}: ${why}.`,
  isBack: "es ist einer der ersten Tage nach einer Unterbrechung",
  doubted: (bpm) =>
    `${bpm} liegt weit über dem, was du bisher gespielt hast. Prüf die Ziffern; sobald du es an einem zweiten Tag erreichst, zählt es.`,
  longSitting: (minutes, when) =>
    `${minutes} Minuten ${when}: Gab es Pausen? Lehrkräfte raten zu kurzen Einheiten mit Pausen.`,
  range: (least, most) => `${least} bis ${most}`,
  fullWeek: (minutes, before) =>
    `Diese Woche hat ${minutes} Minuten, die Wochen davor hatten ${before}. Bitte mehr Pausen als sonst.`,
};
