/**
 * A report as it is read, part by part, whether as Markdown or as HTML. Texts are plain: whoever writes them out makes
 * them safe.
 */
export interface Page {
  readonly title: string;
  /** Who plays. */
  readonly name: string;
  readonly parts: readonly Part[];
}

export interface Part {
  readonly heading: string;
  readonly blocks: readonly PartBlock[];
}

export type PartBlock =
  | { readonly type: "sentence"; readonly text: string }
  | { readonly type: "list"; readonly name?: string; readonly items: readonly Item[] }
  | { readonly type: "table"; readonly table: Table }
  | { readonly type: "exercises"; readonly exercises: readonly ExerciseBlock[] }
  /** Charts as SVG, for HTML alone: what they show stands beside them. */
  | { readonly type: "pictures"; readonly pictures: readonly Picture[] }
  /** Lines of a journal, unchanged. */
  | { readonly type: "lines"; readonly lines: readonly string[] };

export interface Item {
  /** A date. */
  readonly day?: string;
  readonly text: string;
  /** What is said of it; may be empty. */
  readonly below?: string;
}

export interface Table {
  /** Names it to those who cannot see what it stands below. */
  readonly caption: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** The last row has sums. */
  readonly sums: boolean;
  /** So many columns on the left are words, the others numbers. */
  readonly words: number;
}

export interface ExerciseBlock {
  readonly name: string;
  /** How it is played; may be empty. */
  readonly way: string;
  readonly sentences: readonly string[];
  readonly chart?: { readonly svg: string; readonly table: Table };
}

export interface Picture {
  readonly name: string;
  readonly svg: string;
}

/** In place of parts where there are none. */
export const NOTHING_WRITTEN = "Nothing is written in these days.";
