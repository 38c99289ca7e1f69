import type { DocumentFormattingParams, DocumentRangeFormattingParams, TextEdit } from "vscode-languageserver";
import { formatEdits } from "../features/layout/formatting.ts";
import { textEdit } from "./convert.ts";
import type { Place } from "./session.ts";

/** The layout is the format's own: tab size and the like have no say. */
export function format(
  { journal, uri }: Place,
  params: DocumentFormattingParams | DocumentRangeFormattingParams,
): TextEdit[] {
  return formatEdits(journal, uri, "range" in params ? params.range : undefined).map(textEdit);
}
