/** The classes of the words that tell what kind of line stands there. */
export type SignClass =
  | "sentence-sign"
  | "intention"
  | "filler"
  | "practice-verb"
  | "title-kind"
  | "title-number"
  /** A title ends before it: what is said of the piece begins there. */
  | "title-end"
  /** A title does not end in it. */
  | "title-joint"
  /** Leads to a title, behind a word that says it was practised: `worked on the Gavotte`. */
  | "title-lead"
  /** Where a piece comes from, and no place in it: `Giga from the green book`. */
  | "title-origin"
  /** Behind a scale it makes a sentence of the line: `D minor is hard`. */
  | "verb-behind"
  /** What stands before an amount and says when, or how long: `after 10 min`. */
  | "before-time"
  | "heading"
  | "rest"
  /** A word of rest that begins sentences as well: `off to the shops`. */
  | "rest-or-sentence"
  /** By its meaning: an `arm or leg` is apart from what one breathes, speaks and sings with, and so is an `ear`. */
  | "body-part"
  /**
   * By its meaning: `hurts` by itself; `sore` beside a part of the body, as the word has other meanings; `tight` hurts
   * beside a part of the body, but not in a clause about rhythm. No reason to stop are `tense` beside a part of the
   * body, `tired` by itself, and `cold` beside a part of the body.
   */
  | "body-trouble"
  /** Words that end so are trouble of the body, whatever part they name: `rugpijn`. */
  | "body-trouble-ending"
  /** What is tight beside it is the playing: `tight on the beat`. */
  | "rhythm"
  /**
   * Takes the trouble back, as what says that something went well does: `wrist pain better`. By the meaning `free` it
   * names the trouble itself: `pain free`.
   */
  | "eased"
  | "total"
  | "beside-total"
  /** Behind an amount: what was counted in it follows, or what was not: `1h20 incl lesson`, `45' of which scales`. */
  | "counted-with"
  /** Behind an amount: a few words on how it was follow: `45 minutes and lips still alive`. */
  | "goes-on"
  /** A total beside it is of more than a day: `week 5h20`. */
  | "longer-time"
  /** One plays with others there, or has set aside the time: the hours of the clock beside it are minutes. */
  | "meeting"
  /** Of such a thing: it did not take place then. */
  | "called-off"
  | "set-work"
  /** Sets work only with a sign behind it: it begins other lines as well. `bring` does so behind `lesson:`, too. */
  | "set-work-with-sign"
  /** By the meaning `said` also a heading: `said:`. */
  | "teacher-verb"
  /** `my teacher`, `die Lehrerin`. */
  | "before-teacher"
  | "teacher"
  | "title"
  | "question"
  | "same-as-above"
  | "negation"
  | "not-a-tempo-after"
  | "repetitions"
  | "instrument"
  | "scope";

/**
 * The words of one language: of each class, by what they mean in it, as `"a | b | c"`. A word may stand in several
 * classes. Classes of one meaning name it once more.
 */
export type SignTable = Readonly<Partial<Record<SignClass, Readonly<Record<string, string>>>>>;
