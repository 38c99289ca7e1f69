/** What a numbered place counts; its texts begin with it. */
export type PlaceNoun =
  | "bars"
  | "lines"
  | "page"
  | "mvt"
  | "var"
  | "letter"
  | "section"
  | "verse"
  | "phrase"
  | "strain"
  | "part";

/** The words of one language for where in a piece, each list as `"a | b | c"`. */
export interface PlaceTable {
  /** What stands before a number or a letter, or behind an ordinal: `bars 17`, `17th bar`. */
  readonly numbered: Readonly<Partial<Record<PlaceNoun, string>>>;
  /** The same in a letter or two: with a point, or close to the number, as they mean other things, too. */
  readonly short: Readonly<Partial<Record<PlaceNoun, string>>>;
  /** The first, the second and so on, those that mean the same side by side as `a/b`. */
  readonly ordinals: string;
  /** What may stand in an ordinal's place: `last`. */
  readonly likeOrdinals: string;
  /** What only an ordinal tells which: `half`. */
  readonly parts: string;
  /** What may stand before a place's words and says nothing: `the`. */
  readonly articles: string;
  readonly from: string;
  readonly to: string;
  /** From a bar on. */
  readonly onwards: string;
  /** What stands behind `to`. */
  readonly end: string;
  readonly before: string;
  readonly after: string;
  /** All of the piece, from its beginning on. */
  readonly whole: string;
  /** Other places by their name alone. */
  readonly named: string;
}
