/** What is said of the words of an entry. What is `typed` is as it stands in the line. */
export const termTexts = {
  /** What can go in a place, in a sentence without its stop: */
  subjectFirst: "A scale, notes, or a title in quotes comes first",
  termHere: "A pattern, articulation, tempo or outcome can go here",
  instrumentAfterOn: "After `on` comes an instrument",
  atMostTwoSigns: "A note has at most two sharps or flats",

  unknown: (typed: string, expected: string) => `I do not know "${typed}". ${expected}.`,
  misplaced: (typed: string, rule: string) => `"${typed}" does not go here: ${rule}.`,
  /** Of a second thing to play. */
  oneSubject: "this line already has something to play; start a new line",
  /** Where other known words go, by the type of what they mean. */
  rules: {
    kind: "a kind of scale comes right after its tonic, as in `D minor`",
    "part of a kind": "a kind of scale comes right after its tonic, as in `D harmonic minor`",
    "chord kind": "a chord comes right after its root, as in `D minor arpeggio`",
    weekday: "a weekday goes on a day line",
    clock: "a time of day goes on a `session` line",
    phase: "a phase goes on a line of its own",
    "line word": "it goes on a line of its own",
    date: "a date opens a day, or goes in a declaration",
    goal: "a goal goes in a piece's declaration",
    bars: "bars are written as in `bars 17-32`",
    days: "days go with work that is `set`",
    "last note": "it goes in a piece's declaration",
  },
  inversions: "inversions belong to arpeggios and chords",
  notes: "notes come after a colon, as in `D minor: D E F G A Bb C D`",

  loneDash: "Put a comma here: a dash alone says nothing.",
  writeComma: "Write a comma",
  asTitle: "Put it in quotes, as a title",
  colonBeforeNotes: (subject: string, notes: string) => `Put a colon before the notes: \`${subject}: ${notes}\`.`,
  putColon: "Put a colon before the notes",
  twoInversions: "A triad has only two inversions: a third needs a chord of four notes.",
  whatIs: (number: string) =>
    `What is ${number}? Write \`at ${number}\` for a tempo, \`${number} min\` for time, \`bars ${number}\` for a place.`,
  whichInstrument: (name: string, meant: string) => `Which instrument is "${name}": ${meant}?`,
  noPattern: (name: string) => `There is no pattern "${name}" yet.`,
  declarePattern: (name: string) => ` Declare it with its degrees: \`pattern "${name}": 1 3 2 4\`.`,
  variantAlone: (variant: string, patterns: string) =>
    `"${variant}" is a way of playing a pattern; name one: ${patterns}.`,
  /** @param has the forms that the pattern has besides, if any */
  noVariant: (pattern: string, variant: string, has: readonly string[]) =>
    `${pattern} has no ${variant} form: ${has.length ? `it has ${has.join(" and ")}` : "it has only one form"}.`,

  twice: (first: string, second: string) =>
    `"${first}" is already on this line. Put "${second}" on a line of its own, or take one out.`,
  outcomeAfterTempo: (right: string) => `How it went comes after the tempo: "${right}".`,
  sayHowItWent: (tries: string) => `Say how it went before "${tries}", as in \`clean ${tries}\`.`,
  tempoOutside: (tempo: string, slowest: number, fastest: number) =>
    `"${tempo}" is outside ${slowest} to ${fastest} beats a minute. A digit too many, or too few?`,
};
