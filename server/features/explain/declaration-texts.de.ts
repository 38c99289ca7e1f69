import type { declarationTexts as english } from "./declaration-texts.ts";

export const declarationTexts: typeof english = {
  purposes: {
    player: "Wessen Tagebuch das ist.",
    instrument: "Was gespielt wird; das erste gilt, wenn ein Eintrag keines nennt.",
    pitch: "Der Kammerton A4 in Hertz, und wenn nötig die Stimmung.",
    names: "Die Sprache der Tonnamen.",
    shared:
      "Tonnamen, Kammerton, Notenwert, Muster, Tonleitern, Artikulationen, Ergebnisse und Phasen, die hier festgelegt sind, gelten auch in den Tagebüchern der Ordner darunter.",
    "share body":
      "Was dieses Tagebuch über den Körper sagt, sieht auch eine Lehrkraft, die es mit `daystave pupils` liest. Ohne diese Zeile sieht sie es nicht.",
    "hide notes":
      "Tonnamen bleiben verborgen, bis du danach fragst: für alle, die nach Gehör oder nach den Vorzeichen spielen.",
    "note value": "Der Notenwert, in dem Tempi gezählt werden, wenn ein Eintrag keinen nennt.",
    "usual articulation": "Die Artikulation, die gilt, wenn ein Eintrag keine nennt.",
    piece: "Ein Stück, das du gerade übst, mit Tonart, Takten, Ziel und Terminen.",
    study: "Eine Etüde, die du gerade übst, ebenso.",
    movement: "Ein Satz eines Stücks, mit eigener Tonart und eigenem Ziel.",
    concert: "Ein Tag, bis zu dem Stücke fertig sein sollen.",
    aim: "Was erreicht werden soll, und bis wann.",
    set: "Was eine Lehrkraft aufgegeben hat.",
    pattern: "Ein eigenes Muster dieses Tagebuchs, in Stufen: 1 ist der erste Ton, 8 die Oktave.",
    scale: "Eine eigene Tonleiter dieses Tagebuchs, in Stufen oder in Cent.",
    focus: "Etwas, worauf du hören möchtest; es wird nach `focus` angeboten.",
    phase: "Eine eigene Phase dieses Tagebuchs.",
    activity: "Eine eigene Tätigkeit dieses Tagebuchs.",
    articulation: "Eine eigene Artikulation dieses Tagebuchs: `single`, `slurred`, `mixed` oder `multiple`.",
    outcome: "Eigene Wörter dieses Tagebuchs dafür, wie es ging: `reached`, `nearly` oder `not`.",
  },
};
