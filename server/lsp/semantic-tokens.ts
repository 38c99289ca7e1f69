import type { SemanticTokens, SemanticTokensParams, SemanticTokensRangeParams } from "vscode-languageserver";
import { semanticTokens } from "../features/colours/semantic-tokens.ts";
import type { Place } from "./session.ts";

export function tokens(
  { journal, uri }: Place,
  params: SemanticTokensParams | SemanticTokensRangeParams,
): SemanticTokens {
  return { data: semanticTokens(journal, uri, "range" in params ? params.range : undefined) };
}
