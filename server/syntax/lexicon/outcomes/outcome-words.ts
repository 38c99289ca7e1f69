/** The words of one language for how it went; in each text phrases are set apart by `|`. */
export interface OutcomeWords {
  /** The tempo was reached. */
  readonly reached: string;
  /** It was not, by little. */
  readonly nearly: string;
  readonly not: string;
  /** Words that may stand in a phrase, and change nothing. */
  readonly intensifiers: string;
  /** Words beside which a phrase means something only where the table has it with them. */
  readonly negations: string;
}
