const COUNTS = ["No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight"];

/** What a term on a line means, in Markdown. */
export const termTexts = {
  rhythm: (signs: string) => `Long (L) and short (S) notes in this order, again and again: ${signs}.`,
  times: (count: number) =>
    `Played ${count === 1 ? "once" : `${count} times`}: how often you played the line, not tries.`,
  amount: (minutes: number, about: boolean, each: boolean) =>
    `${about ? "About " : ""}${minutes} minutes${each ? " each" : ""}.`,
  impossibleAmount: "Not a possible time.",
  focus: (words: string) => `What is listened for: ${words}.`,
  sore: (words: string) =>
    `Something hurts: ${words}. Rest it, and tell your teacher; see a doctor if it lasts or comes back.`,
  with: (words: string) => `With ${words}.`,
  manner: (id: string) => `How it was played: ${id}.`,
  technique: "A technique: it counts like an exercise, by its name.",
  declaredPhase: (id: string) => `A phase that this journal declares: ${id}.`,
  weekday: (name: string) => `${name}.`,
  /** What the articulation is of, where it is not of the whole exercise. */
  halfOnly: (way: "up" | "down") => ` Here for the way ${way} only.`,
  /** For words that no table explains one by one. */
  verdicts: {
    reached: "It went well; the tempo counts as reached.",
    nearly: "Not quite; the tempo does not count as reached.",
    not: "It did not go well; the tempo does not count as reached.",
  },
  /** A slur by its groups: `2+1`. */
  slur: (groups: readonly string[]) => {
    const parts = groups.map((size) => (size === "1" ? "one tongued" : `${size} slurred`)).join(", ");
    return `${parts.charAt(0).toUpperCase()}${parts.slice(1)}, again and again.`;
  },
  declaredArticulation: (id: string) => `An articulation that this journal declares: ${id}.`,
  tonguedWith: (syllable: string) => `Each note tongued with ${syllable}.`,
  tonguedInTurn: (syllables: string) => `Tongued with the syllables ${syllables} in turn.`,
  beatsToNote: (beats: number) => `${COUNTS[beats] ?? beats} quarter beats to a note.`,
  notesToBeat: (notes: number) => `${COUNTS[notes] ?? notes} ${notes === 1 ? "note" : "notes"} to a quarter beat.`,
  firstNotes: (count: number) => `The first ${count} notes.`,
  oneOctave: "From a tonic to the next.",
  octaves: (count: number) => `${count} octaves, from the lowest tonic.`,
  between: "As far as the notes lie between these two.",
  tries: (count: number, got: number) => {
    const attempts = count === 1 ? "One attempt" : `${count} attempts`;
    if (got === count) return `${attempts}${count === 1 ? "" : ", all"} with this outcome.`;
    return `${attempts}, ${got} of them with this outcome; a tempo counts as reached from half of them on.`;
  },
  metronome: (below: string | undefined, above: string | undefined) =>
    below === undefined
      ? `metronome: ${above} above, nothing below`
      : `metronome: ${below} below, ${above === undefined ? "nothing" : above} above`,
  letterAloneIsMajor: "A letter alone means major.",
  /** `minor` as the journal says it, which leaves the kind unsaid. */
  minorAlone: (minor: string) => `\`${minor}\` alone means natural minor.`,
  directions: {
    up: "up",
    down: "down",
    "up and down": "up and down",
    "down and up": "down and up",
    "back and forth": "back and forth",
  },
  inLeaps: "in leaps",
  inOrderOf: (date: string) => `in the order of ${date}`,
};
