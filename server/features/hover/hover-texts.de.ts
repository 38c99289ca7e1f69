import type { hoverTexts as english } from "./hover-texts.ts";

export const hoverTexts: typeof english = {
  noSuchDate: "Dieses Datum gibt es nicht, deshalb zählen diese Zeilen nicht.",
  day: (week, weekday) => `**${week}**, ${weekday}.`,
  rest: "Ein Ruhetag.",
  minutesStated: (minutes) => `${inMinutes(minutes)}, wie angegeben.`,
  minutesSummed: (minutes) => `${inMinutes(minutes)}, zusammengezählt aus den Zeilen.`,
  noMinutes: "Es sind keine Minuten notiert.",

  titleTempo: (tempo, bpm, further) => `${inGerman(tempo)}: ${inGerman(bpm)} Schläge in der Minute${further}`,
  noteABeat: (tempo, bpm, further) =>
    `Bei ${inGerman(tempo)}, ein Ton pro Schlag, ${inGerman(bpm)} Töne in der Minute${further}`,
  noteValueTempo: (noteValue, tempo, notes, further) =>
    `${noteValue} bei ${inGerman(tempo)} sind ${inGerman(notes)} Töne in der Minute${further}`,
  tempoRange: (low, high) => ` ${inGerman(low)} bis ${inGerman(high)} ist ein Versuch, beim höchsten Tempo.`,
  notes: "Noten",

  degreesOverOctave: (degrees) => `Stufen über eine Oktave: ${degrees}`,
  nothingFits: "Nichts davon passt in diesen Umfang.",
  degrees: (way, degrees) => `Stufen, ${way}: ${degrees}`,
  rising: "aufwärts",
  patternNotes: (row) => `Töne: ${row}`,
  declaredPattern: (name, degrees, step) =>
    `${name}: ein Muster dieses Tagebuchs, ${degrees}, immer um ${step === 1 ? "eine Stufe" : `${step} Stufen`} verschoben.`,

  kept: "Bleibt stehen, wie es ist, und zählt nicht.",
  didYouMean: (offers) => `Meintest du ${offers.map((each) => `„${each}“`).join(" oder ")}?`,
  nothingToPlay: "Das lässt sich nicht spielen.",
  noteAfterColon: "Töne kommen nach einem Doppelpunkt, nach dem Gespielten: `C major: C D E F G A B C`.",
  closingQuote: "Das schließende Anführungszeichen fehlt.",
  noSuchPattern: 'Kein Muster hat diesen Namen: Leg es mit seinen Stufen fest, `pattern "…": 1 3 2 4`.',
  kindAfterTonic: "Die Art der Tonleiter oder des Akkords kommt gleich nach dem Grundton: `D minor`.",
  keptOutcome: "Bleibt stehen, wie es ist: Es sagt nicht, ob das Tempo erreicht wurde.",
  asOutcome:
    'Damit es zählt, leg es fest: `outcome "…": reached`, `nearly` oder `not`. Die Schnellkorrektur hier macht das.',
  asTerm:
    "Damit es zählt, leg es als Artikulation, Muster, Schwerpunkt oder Ergebnis fest. Die Schnellkorrektur hier macht das, oder macht eine Bemerkung daraus.",
  numberOfNothing: "Nichts sagt, was gezählt wird.",
  whatIsNumber: (typed) =>
    `Was bedeutet ${typed}? Schreib \`at ${typed}\` für ein Tempo, \`${typed} min\` für die Zeit, \`bars ${typed}\` für eine Stelle.`,
  whatIsRange: (typed) =>
    `Was bedeutet ${typed}? Schreib \`at ${typed}\` für ein Tempo, \`bars ${typed}\` für eine Stelle.`,

  likely: (scale, reason) => `Wahrscheinlich **${scale}**. ${reason}`,
  mayAlsoBe: "Es kann auch sein:",
};

function inMinutes(minutes: number): string {
  return `${minutes} ${minutes === 1 ? "Minute" : "Minuten"}`;
}

/** With a decimal comma. */
function inGerman(number: number | string): string {
  return String(number).replace(/(\d)\.(\d)/g, "$1,$2");
}
