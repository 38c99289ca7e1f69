import type {
  DocumentFormattingParams,
  DocumentOnTypeFormattingParams,
  DocumentRangeFormattingParams,
  TextEdit,
} from "vscode-languageserver";
import { formatEdits, leftLineEdits } from "../features/layout/formatting.ts";
import { textEdit } from "./convert.ts";
import type { Place } from "./session.ts";

/** The layout is the format's own: tab size and the like have no say. */
export function format(
  { journal, uri }: Place,
  params: DocumentFormattingParams | DocumentRangeFormattingParams,
): TextEdit[] {
  return formatEdits(journal, uri, "range" in params ? params.range : undefined).map(textEdit);
}

/** Where a line end was typed: of the line before the cursor's, white space alone. */
export function formatLeftLine({ journal, uri }: Place, { position, ch }: DocumentOnTypeFormattingParams): TextEdit[] {
  return ch === "\n" ? leftLineEdits(journal, uri, position.line - 1).map(textEdit) : [];
}
