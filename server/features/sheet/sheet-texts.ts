/** Sheets to print. */
export const sheetTexts = {
  /** ISO 639-1, of the page. */
  language: "en",
  exercises: (days: string) => `Exercises, ${days}`,
  planFor: (date: string, year: number) => `Plan for ${date} ${year}`,
  /** Before a title: who plays. */
  ofPlayer: (name: string, title: string) => `${name}: ${title}`,
  scales: "Scales and arpeggios",
  pieces: "Pieces",
  nothing: "No scale, arpeggio or piece is written in these days.",
  set: (words: string) => `Set: “${words}”.`,
  pause: "A pause",
  /** A part with its minutes. */
  part: (heading: string, minutes: number) => `${heading}, ${minutes} min`,
  minutes: (minutes: number) => `${minutes} min`,
  hidden: "Its notes are hidden, as the journal asks.",
  /** Beside room for a pencil. */
  tempo: "tempo",
  howItWent: "how it went",
};
