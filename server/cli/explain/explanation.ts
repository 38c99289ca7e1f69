import type { Severity } from "../../checks/codes.ts";

/** What the format reference says of a code. */
export interface Explanation {
  /** A small journal that raises it, read as on `EXAMPLE_DAY`. */
  readonly example: string;
  readonly why: string;
  readonly whatToDo: string;
  /** Further paragraphs. */
  readonly further?: string;
}

/** What is known of a code, as `--json` prints it. */
export interface Explained extends Required<Omit<Explanation, "further">> {
  readonly code: string;
  readonly severity: Severity;
  readonly meaning: string;
  readonly found: readonly FoundInExample[];
  readonly further: string | null;
}

/** Lines and columns count from 1. */
export interface FoundInExample {
  readonly line: number;
  readonly column: number;
  readonly message: string;
  readonly fixes: readonly { readonly title: string; readonly safe: boolean }[];
}
