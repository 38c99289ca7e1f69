import type { DocumentSymbol, SymbolInformation } from "vscode";
import type { Middleware } from "vscode-languageclient";

/** Joins what stands on both sides of it, and is not seen. */
const WORD_JOINER = "\u2060";

/**
 * Shows names as they are typed: the editor's list of symbols would draw the icon of that name where `$(name)` stands.
 */
export const symbolsAsText: Middleware["provideDocumentSymbols"] = async (document, token, next) => {
  const symbols = await next(document, token);
  for (const symbol of symbols ?? []) showAsText(symbol);
  return symbols;
};

/** The same where symbols of all files are looked for. */
export const foundSymbolsAsText: Middleware["provideWorkspaceSymbols"] = async (query, token, next) => {
  const symbols = await next(query, token);
  for (const symbol of symbols ?? []) {
    symbol.name = withoutIcons(symbol.name);
    symbol.containerName = withoutIcons(symbol.containerName);
  }
  return symbols;
};

function showAsText(symbol: SymbolInformation | DocumentSymbol): void {
  symbol.name = withoutIcons(symbol.name);
  if (!("children" in symbol)) return;
  symbol.detail = withoutIcons(symbol.detail);
  for (const child of symbol.children) showAsText(child);
}

function withoutIcons(text: string): string {
  return text.replaceAll("$(", `$${WORD_JOINER}(`);
}
