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
  /** Behind a scale it makes a sentence of the line: `D minor is hard`. */
  | "verb-behind"
  /** What stands before an amount and says when, or how long: `after 10 min`. */
  | "before-time"
  | "heading"
  | "rest"
  | "body-part"
  | "body-trouble"
  | "total"
  | "beside-total"
  | "set-work"
  | "teacher-verb"
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
