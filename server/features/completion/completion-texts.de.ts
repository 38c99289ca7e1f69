import { numberTexts } from "../../music/notes/number-texts.de.ts";
import type { completionTexts as english } from "./completion-texts.ts";

export const completionTexts: typeof english = {
  today: "heute",
  tomorrow: "morgen",
  todayWithPhases: "heute, mit den Phasen der letzten Übeeinheit",
  usualLine: "eine Zeile, wie du sie schreibst",
  asLastDeclared: "wie du es zuletzt festgelegt hast",
  theNotes: "die Töne",
  theNotesOf: (way) => `die Töne, ${way}`,
  signature: "Vorzeichen",
  readUpward: "aufwärts gelesen",
  set: "aufgegeben",
  setOn: (date) => `aufgegeben am ${date}`,
  aim: "Ziel",
  workBy: (work, date) => `${work}, bis ${date}`,
  naturalMinor: (signature) => `natürliches Moll, ${signature}`,
  oneBeatASecond: "ein Schlag pro Sekunde",
  lastReached: (date) => `zuletzt erreicht am ${date}`,
  lastReachedAt: (tempo, date) => `zuletzt ${numberTexts.decimal(tempo)} erreicht, am ${date}`,
  notchUp: "eine Metronomstufe schneller",
  notchDown: "eine Metronomstufe langsamer",
  tempoBefore: "das Tempo davor",
  youLastReached: (tempo, ago) => `Zuletzt hast du ${numberTexts.decimal(tempo)} erreicht, ${ago}.`,
};
