/** Words that an editor shows within a line and that are not in the text. */
export interface HintOnLine {
  /** UTF-16 column. */
  readonly at: number;
  readonly label: string;
  /** A sentence. */
  readonly tooltip?: string;
}
