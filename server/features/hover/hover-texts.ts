/** What is said of a day, of a term and of what was kept as written. */
export const hoverTexts = {
  noSuchDate: "There is no such date, so these lines are not counted.",
  day: (week: string, weekday: string) => `**${week}**, ${weekday}.`,
  rest: "A day of rest.",
  minutesStated: (minutes: number) => `${minutes} minutes, as stated.`,
  minutesSummed: (minutes: number) => `${minutes} minutes, summed from its lines.`,
  noMinutes: "No minutes are noted.",

  /** A tempo of a title; `further` is what the metronome has beside it. */
  titleTempo: (tempo: string, bpm: number, further: string) => `${tempo}: ${bpm} beats a minute${further}`,
  noteABeat: (tempo: string, bpm: number, further: string) =>
    `At ${tempo}, one note a beat, ${bpm} notes a minute${further}`,
  noteValueTempo: (noteValue: string, tempo: string, notes: number, further: string) =>
    `${noteValue} at ${tempo} are ${notes} notes a minute${further}`,
  tempoRange: (low: number, high: number) => ` ${low} to ${high} is one attempt, at the top.`,
  notes: "notes",

  degreesOverOctave: (degrees: string) => `Degrees over an octave: ${degrees}`,
  nothingFits: "None of it fits in this span.",
  degrees: (way: string, degrees: string) => `Degrees, ${way}: ${degrees}`,
  rising: "rising",
  patternNotes: (row: string) => `Notes: ${row}`,
  declaredPattern: (name: string, degrees: string, step: number) =>
    `${name}: a pattern of this journal, ${degrees}, moved by ${step === 1 ? "a step" : `${step} steps`} at a time.`,

  kept: "Kept as written, not counted.",
  didYouMean: (offers: readonly string[]) => `Did you mean ${offers.join(" or ")}?`,
  nothingToPlay: "It is not something to play.",
  noteAfterColon: "Notes go after a colon, after the subject: `C major: C D E F G A B C`.",
  closingQuote: "The closing quote is missing.",
  noSuchPattern: 'No pattern has this name: declare it with its degrees, `pattern "…": 1 3 2 4`.',
  kindAfterTonic: "A kind of scale or chord goes right after its tonic: `D minor`.",
  keptOutcome: "Kept as written: it does not say whether the tempo was reached.",
  asOutcome: 'To have it counted, declare it: `outcome "…": reached`, `nearly` or `not`. A quick fix here does that.',
  asTerm:
    "To have it counted, declare it as an articulation, a pattern, a focus or an outcome. A quick fix here does that, or makes it a remark.",
  numberOfNothing: "Nothing says what it counts.",
  whatIsNumber: (typed: string) =>
    `What is ${typed}? Write \`at ${typed}\` for a tempo, \`${typed} min\` for time, \`bars ${typed}\` for a place.`,
  whatIsRange: (typed: string) => `What is ${typed}? Write \`at ${typed}\` for a tempo, \`bars ${typed}\` for a place.`,

  likely: (scale: string, reason: string) => `Likely **${scale}**. ${reason}`,
  mayAlsoBe: "It may also be:",
};
