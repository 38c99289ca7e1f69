import type { Position } from "../syntax/document/document.ts";

/** Plain results, with absolute lines and UTF-16 columns from 0. Only `lsp/` turns them into protocol types. */
export interface Range {
  readonly start: Position;
  readonly end: Position;
}

export interface TextEdit {
  readonly range: Range;
  readonly newText: string;
}

export type Severity = "error" | "warning" | "information" | "hint";

export interface Fix {
  readonly title: string;
  /** Cannot lose meaning: `check --fix` and `source.fixAll` apply it unasked. */
  readonly safe: boolean;
  readonly edits: readonly TextEdit[];
}

export interface Diagnostic {
  readonly code: string;
  readonly severity: Severity;
  readonly range: Range;
  readonly message: string;
  readonly fixes: readonly Fix[];
}

export interface CompletionItem {
  readonly label: string;
  readonly kind:
    | "scale"
    | "pattern"
    | "term"
    | "name"
    | "title"
    | "date"
    | "claim"
    | "declaration"
    | "phase"
    | "snippet";
  /** Beside the label: a few words at most. */
  readonly detail?: string;
  /** Ranks by plain string order. */
  readonly sortText: string;
  readonly filterText?: string;
  readonly edit: TextEdit;
  /** What is put in where an editor takes tab stops, in the syntax of the protocol (3.17, "Snippet Syntax"). */
  readonly snippet?: string;
  /** What `resolveCompletion` needs to explain the item; plain JSON. */
  readonly resolve?: { readonly topic: string; readonly key: string };
}

/** Markdown in which everything from the journal is escaped. */
export interface Hover {
  readonly range: Range;
  readonly markdown: string;
}

export interface CodeAction {
  readonly title: string;
  readonly kind: "quickfix" | "source.fixAll" | "refactor.rewrite";
  /** The file that is edited, canonical, where that may be another than the one asked about. */
  readonly uri?: string;
  readonly edits: readonly TextEdit[];
  readonly preferred: boolean;
  /** The codes of the diagnostics that it mends. */
  readonly diagnostics: readonly Diagnostic[];
}

export interface DocumentSymbol {
  readonly name: string;
  readonly detail?: string;
  readonly kind: "day" | "session" | "phase" | "entry" | "declaration";
  readonly range: Range;
  readonly selection: Range;
  readonly children: readonly DocumentSymbol[];
}

export interface FoldingRange {
  readonly startLine: number;
  readonly endLine: number;
}

/** What the player set. Null and undefined mean the default. */
export interface Settings {
  readonly explain?: "signature" | "steps" | "both" | "none" | null;
}
