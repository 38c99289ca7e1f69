/** The classes of the words that tell what kind of line stands there. */
export type SignClass =
  | "sentence-sign"
  | "intention"
  | "filler"
  | "practice-verb"
  | "title-kind"
  | "title-number"
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
