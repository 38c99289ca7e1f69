import type { minutesTexts as english } from "./minutes-texts.ts";

export const minutesTexts: typeof english = {
  entriesExceed: (sum, whole) => exceed("Die Einträge", sum, whole),
  partsExceed: (sum, whole) => exceed("Die Teile", sum, whole),
  sittingsExceed: (sum, whole) => exceed("Die Übeeinheiten", sum, whole),
  longStretch: (minutes) =>
    `Etwa ${minutes} Minuten, und keine Pause notiert: Gab es welche? \`break, 10 min\` notiert eine. Wenn etwas wehtut, hör auf, ruh dich aus und sag es deiner Lehrkraft; bleibt es oder kommt es wieder, lass es ärztlich abklären.`,
};

function exceed(parts: string, sum: number, whole: number): string {
  return `${parts} darunter ergeben zusammen ${sum} Minuten, mehr als die ${whole} hier.`;
}
