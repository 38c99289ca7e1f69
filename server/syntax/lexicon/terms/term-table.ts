/** A fraction of a whole note. */
type Value = `${number}/${number}`;

/** The words of one language for how notes are played and counted, as `"a | b | c"`, by what they mean. */
export interface TermTable {
  readonly noteValues: Readonly<Partial<Record<Value, string>>>;
  readonly directions: Readonly<
    Partial<Record<"up" | "down" | "up and down" | "down and up" | "back and forth", string>>
  >;
  readonly rhythms: Readonly<Partial<Record<"even" | "dotted" | "reverse dotted" | "swung" | "inégal", string>>>;
  /** By the ids of `music/patterns`. */
  readonly patterns: Readonly<Record<string, string>>;
  /** What stands before a number: `groups of 3`. */
  readonly groups: string;
  /** Without a metronome. */
  readonly slow: string;
  readonly manners: Readonly<Record<string, string>>;
  readonly octave: string;
  /** Notes of a span: `five notes`. */
  readonly degrees: string;
  readonly fullRange: string;
  readonly twelfth: string;
  /** Two, three and four, for spans. */
  readonly numbers: string;
  readonly minutes: string;
  readonly hours: string;
  readonly amounts: Readonly<Partial<Record<15 | 30 | 45 | 60 | 90, string>>>;
  readonly each: string;
  readonly about: string;
}
