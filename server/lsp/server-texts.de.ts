import type { serverTexts as english } from "./server-texts.ts";

export const serverTexts: typeof english = {
  edits: {
    newDay: "Neuer Tag",
    newDayWithPhases: "Neuer Tag mit Phasen",
    writePlan: "Plan für heute schreiben",
    repeatFaster: "Eintrag schneller wiederholen",
    repeatSlower: "Eintrag langsamer wiederholen",
    writeNotes: "Töne ausschreiben",
    fingerChange: "Schwersten Griffwechsel üben",
    keepBothSides: "Beide Seiten einer Zusammenführung behalten",
    declareTitle: "Titel festlegen",
    respell: "Töne umschreiben",
    moveYear: "Ein Jahr in eine eigene Datei verschieben",
    changeNames: "Tonnamen ändern",
    writeTempo: "Gespieltes Tempo schreiben",
    goToLastTime: "Zum vorigen Mal gehen",
  },
  unknownFile: "Öffne diese Datei als Übetagebuch oder öffne ihren Ordner: Daystave kennt sie nicht.",
  makesNoFiles: "Dieser Editor kann für Daystave keine neue Datei anlegen, deshalb wurde nichts verschoben.",
  changed: "Der Text hat sich inzwischen geändert und blieb, wie er ist. Bitte versuch es noch einmal.",
  noTempo: "Es wurde kein Tempo gespielt, das sich schreiben ließe.",
  line: (line, file) => `Zeile ${line} von ${file}`,
  unknownTimeZone: (name) =>
    `„${name}“ ist keine bekannte Zeitzone; eine Zeitzone schreibt man wie Europe/Oslo. Bis dahin gilt als heute der Tag dieses Computers.`,
  days: (count) => `${count} ${count === 1 ? "Tag" : "Tage"}`,
  languages: {
    english: "Englisch",
    german: "Deutsch",
    dutch: "Niederländisch",
    french: "Französisch",
    italian: "Italienisch",
    spanish: "Spanisch",
  },
};
