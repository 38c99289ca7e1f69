/** What is wrong with a declaration, as clauses: what goes there instead. Journal text in them is in backquotes. */
export const declarationTexts = {
  nameInQuotes: (word: string) => `put the name after \`${word}\` in quotes`,
  noName: "there is no name between the quotes",
  unclosed: "the closing quote is missing after the name",
  dateAfter: (word: string) => `after \`${word}\` comes a date that exists, in the form year-month-day`,

  onlyInstrument: "write only the instrument's name",
  fingeringOfRecorder: "write only the instrument's name: fingerings are for recorders",
  oneFingering: "name one fingering: this is the second",
  fingering:
    "after the name of a recorder may come its fingering: `baroque fingering`, `english fingering` or `german fingering`",
  halfHoles: "after the range only its half holes may come, with their octaves: `half holes D#4`",
  whichInstrument: "say which instrument: this name could be any of several",
  unknownInstrument:
    'this instrument is not known: to declare it, put its name in quotes and give its range, `instrument "my flute": D4 to B5`',
  range: "give its range, lowest note to highest with their octaves: `D4 to B5`",
  lowestFirst: "put the lowest note first, then the highest",
  limit: "say it as `at most 15 min a day`, perhaps with `until` and a date",

  nothingMore: "nothing more goes on this line",
  nothingMoreAfter: (word: string) => `nothing more goes after \`${word}\``,
  verdict: "say after the colon whether the tempo counts: `reached`, `nearly` or `not`",
  tonguing: (known: readonly string[]) => `write one of ${known.join(", ")} here`,

  movementNumber: 'put the number of the movement after the title: `movement "Sonata" 2 "Allegro"`',
  noPiece: (title: string) => `there is no piece "${title}" yet: declare it first`,
  aboutPiece:
    "about a piece you may say its key, `96 bars`, `goal quarter=84`, `from DATE`, `due DATE`, `range G4 to F6`, `last note D` and a signature",
  aboutConcert: 'about a concert say its day and its pieces: `on DATE: "TITLE", "TITLE"`',
  concertDay: "say when the concert is: `on 2026-05-09`",
  aim: "say what you aim at: `aim D minor, thirds, 8ths at 96 by 2026-04-30`",
  set: "say what is set: a scale or a piece, or any words in quotes",

  player: "write a name after `player`",
  pitchBetween: (lowest: number, highest: number) => `A can be ${lowest} to ${highest} hertz`,
  nothingAfterTemperament: "nothing more goes after the temperament",
  commaBeforeTemperament: "put a comma before the temperament",
  pitch: "give the pitch of A in hertz: `pitch A=440`",
  names: (known: readonly string[]) => `choose a language of note names: ${known.join(", ")}`,
  noteValue: "choose a note value: `quarters`, `8ths`, `triplets`, `16ths`",
  articulation: "choose an articulation: `slurred`, `tongued`, `staccato`, `t-k`",
};
