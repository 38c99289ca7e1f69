import type { staffTexts as english } from "./staff-texts.ts";

export const staffTexts: typeof english = {
  heading: "In Noten",
  nothing: "Der Cursor steht auf keiner Tonleiter und keinem Arpeggio.",
  hint: "Wähle einen Ton mit einem Klick oder den Pfeiltasten.",
  notes: (staff) => `Töne im Notensystem. ${staff}`,
  showFingerings: "Griffe zeigen",
  hideFingerings: "Griffe ausblenden",
  note: (place, count, what) => `Ton ${place} von ${count}: ${what}.`,
  fingering: (chart, words) => `Griff ${chart}: ${words}.`,
  hardestChanges: "Schwerste Griffwechsel dieser Zeile:",
  practiseAlone: (change) => `${change}: für sich allein üben`,
};
