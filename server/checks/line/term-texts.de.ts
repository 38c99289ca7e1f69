import { listTexts } from "../list-texts.ts";
import type { termTexts as english } from "./term-texts.ts";

export const termTexts: typeof english = {
  subjectFirst: "Am Anfang steht, was du spielst: eine Tonleiter, Töne oder ein Titel in Anführungszeichen",
  termHere: "Hierher passen ein Muster, eine Artikulation, ein Tempo oder wie es ging",
  instrumentAfterOn: "Nach `on` kommt ein Instrument",
  atMostTwoSigns: "Ein Ton hat höchstens zwei Kreuze oder zwei b",

  unknown: (typed, expected) => `„${typed}“ kenne ich nicht. ${expected}.`,
  misplaced: (typed, rule) => `„${typed}“ gehört nicht hierher: ${rule}.`,
  oneSubject: "In dieser Zeile steht schon, was du spielst; beginn eine neue",
  rules: {
    kind: "Die Art der Tonleiter kommt gleich nach dem Grundton, wie in `D minor`",
    "part of a kind": "Die Art der Tonleiter kommt gleich nach dem Grundton, wie in `D harmonic minor`",
    "chord kind": "Ein Akkord kommt gleich nach dem Grundton, wie in `D minor arpeggio`",
    weekday: "Ein Wochentag steht in der Zeile mit dem Datum",
    clock: "Eine Uhrzeit steht in einer Zeile mit `session`",
    phase: "Eine Phase steht in einer eigenen Zeile",
    "line word": "Das steht in einer eigenen Zeile",
    date: "Ein Datum beginnt einen Tag oder steht in einer Festlegung",
    goal: "Ein Ziel steht in der Festlegung eines Stücks",
    bars: "Takte schreibt man wie in `bars 17-32`",
    days: "Tage gehören zu etwas Aufgegebenem, mit `set`",
    "last note": "Das steht in der Festlegung eines Stücks",
  },
  inversions: "Umkehrungen gehören zu Arpeggien und Akkorden",
  notes: "Töne kommen nach einem Doppelpunkt, wie in `D minor: D E F G A Bb C D`",

  loneDash: "Setz hier ein Komma: Ein Strich allein sagt nichts.",
  writeComma: "Ein Komma schreiben",
  asTitle: "Als Titel in Anführungszeichen setzen",
  colonBeforeNotes: (subject, notes) => `Setz einen Doppelpunkt vor die Töne: \`${subject}: ${notes}\`.`,
  putColon: "Einen Doppelpunkt vor die Töne setzen",
  twoInversions: "Ein Dreiklang hat nur zwei Umkehrungen: Für eine dritte braucht es einen Vierklang.",
  whatIs: (number) =>
    `Was ist ${number}? Schreib \`at ${number}\` für ein Tempo, \`${number} min\` für eine Dauer, \`bars ${number}\` für eine Stelle.`,
  whichInstrument: (name, meant) => `Welches Instrument ist „${name}“: ${meant}?`,
  noPattern: (name) => `Ein Muster „${name}“ gibt es noch nicht.`,
  declarePattern: (name) => ` Leg es mit seinen Stufen fest: \`pattern "${name}": 1 3 2 4\`.`,
  variantAlone: (variant, patterns) =>
    `„${variant}“ ist eine Form eines Musters; schreib dazu, von welchem: ${patterns}.`,
  noVariant: (pattern, variant, has) =>
    `„${pattern}“ gibt es nicht als „${variant}“, ${has.length ? `nur als ${listTexts.and(has.map((each) => `„${each}“`))}` : "nur in einer Form"}.`,

  twice: (first, second) =>
    `„${first}“ steht schon in dieser Zeile. Schreib „${second}“ in eine eigene Zeile oder streich eines von beiden.`,
  outcomeAfterTempo: (right) => `Wie es ging, kommt nach dem Tempo: „${right}“.`,
  sayHowItWent: (tries) => `Schreib vor „${tries}“, wie es ging, etwa \`clean ${tries}\`.`,
  tempoOutside: (tempo, slowest, fastest) =>
    `„${tempo}“ liegt nicht zwischen ${slowest} und ${fastest} Schlägen in der Minute. Eine Ziffer zu viel oder zu wenig?`,
};
