/** Lines to hear. */
export const hearTexts = {
  heading: "To hear",
  aLine: "a line to hear",
  hear: "Hear it",
  hearLine: (line: string) => `Hear: ${line}`,
  stop: "Stop",
  goOn: (next: string) => `Go on ${next}`,
  was: (heard: string) => `That was ${heard}.`,
  sounds: (heard: string) => `Sounding ${heard}.`,
  writeTempo: (bpm: number) => `Write ${bpm} into today’s line`,
  loudness: "Loudness",
  caution: "Start quietly: loud sound harms the ears, in headphones above all.",
  unknown: "That cannot be heard just now.",
};
