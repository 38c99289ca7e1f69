import type { declarationTexts as english } from "./declaration-texts.ts";

export const declarationTexts: typeof english = {
  nameInQuotes: (word) => `setz den Namen nach \`${word}\` in Anführungszeichen`,
  noName: "zwischen den Anführungszeichen steht kein Name",
  unclosed: "nach dem Namen fehlt das schließende Anführungszeichen",
  dateAfter: (word) => `nach \`${word}\` kommt ein Datum, das es gibt, in der Form Jahr-Monat-Tag`,

  onlyInstrument: "schreib nur den Namen des Instruments",
  fingeringOfRecorder: "schreib nur den Namen des Instruments: Griffweisen gibt es nur bei Blockflöten",
  oneFingering: "nenn nur eine Griffweise: Das ist schon die zweite",
  fingering:
    "nach dem Namen einer Blockflöte kann ihre Griffweise kommen: `baroque fingering`, `english fingering` oder `german fingering`",
  halfHoles: "nach dem Umfang können nur die Doppellöcher kommen, mit ihren Oktaven: `half holes D#4`",
  whichInstrument: "schreib, welches Instrument es ist: Dieser Name passt auf mehrere",
  unknownInstrument:
    'dieses Instrument ist nicht bekannt: Um es festzulegen, setz seinen Namen in Anführungszeichen und gib den Umfang an, `instrument "my flute": D4 to B5`',
  range: "gib den Umfang an, vom tiefsten bis zum höchsten Ton, mit ihren Oktaven: `D4 to B5`",
  lowestFirst: "schreib zuerst den tiefsten Ton, dann den höchsten",
  limit: "schreib es so: `at most 15 min a day`, wenn du willst mit `until` und einem Datum",

  nothingMore: "in diese Zeile gehört sonst nichts",
  nothingMoreAfter: (word) => `nach \`${word}\` kommt nichts mehr`,
  verdict: "schreib nach dem Doppelpunkt, ob das Tempo zählt: `reached`, `nearly` oder `not`",
  tonguing: (known) => `schreib hier eines von diesen: ${known.map((each) => `\`${each}\``).join(", ")}`,

  movementNumber: 'schreib die Nummer des Satzes nach den Titel: `movement "Sonata" 2 "Allegro"`',
  noPiece: (title) => `ein Stück „${title}“ gibt es noch nicht: Leg es zuerst fest`,
  aboutPiece:
    "zu einem Stück passen seine Tonart, `96 bars`, `goal quarter=84`, `from DATE`, `due DATE`, `range G4 to F6`, `last note D` und Vorzeichen",
  aboutConcert: 'zu einem Konzert gehören sein Tag und seine Stücke: `on DATE: "TITLE", "TITLE"`',
  concertDay: "schreib, wann das Konzert ist: `on 2026-05-09`",
  aim: "schreib, was dein Ziel ist: `aim D minor, thirds, 8ths at 96 by 2026-04-30`",
  set: "schreib, was aufgegeben ist: eine Tonleiter, ein Stück oder beliebige Wörter in Anführungszeichen",

  player: "schreib einen Namen nach `player`",
  pitchBetween: (lowest, highest) => `A kann ${lowest} bis ${highest} Hertz haben`,
  nothingAfterTemperament: "nach der Stimmung kommt nichts mehr",
  commaBeforeTemperament: "setz ein Komma vor die Stimmung",
  pitch: "gib den Kammerton A in Hertz an: `pitch A=440`",
  names: (known) => `wähle eine Sprache der Tonnamen: ${known.map((each) => `\`${each}\``).join(", ")}`,
  noteValue: "wähle einen Notenwert: `quarters`, `8ths`, `triplets`, `16ths`",
  articulation: "wähle eine Artikulation: `slurred`, `tongued`, `staccato`, `t-k`",
};
