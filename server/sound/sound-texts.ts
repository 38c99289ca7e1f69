/** What is said of lines that are to be heard. Lines themselves, such as `click at 60`, have words of their own. */
export const soundTexts = {
  howToBegin: "Begin with what is to sound: click at 60, drone on D, play through at 60, or compare F# against D.",
  barsOfAClick: "Of a click say how many bars have it and how many have none: click at 60, 2 bars on, 2 off.",
  notesMissing: "Say on which notes, up to four of them, or on which degree: drone on D A, drone on the fifth.",
  twoNotes: "Say which note against which: compare F# against D, compare the third against the first.",
  temposMissing: "Say at which tempos, up to eight of them: at 52, 60.",
  notHeard: (words: string) => `Nothing here is heard of “${words}”: say tempos, a note value, bars, or minutes.`,
  uneven: "These note values do not fill a beat, or a bar, evenly: name others, or the beat, as in click eighth=120.",
  nothingToPlay: "Only a scale or an arpeggio can be played, and this line has none.",
  noSuchBars: "The exercise has no such bars.",
  noDegrees: "Name the notes: this line has no key from which degrees could be told.",
  notFaster: (bpm: number) => `Nothing sounds faster than ${bpm} today.`,
  /** What sounds, one thing after the other. */
  at: (bpm: number) => `at ${bpm}`,
  drone: "drone",
  asTuned: "as tuned",
  pure: "pure",
};
