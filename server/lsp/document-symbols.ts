import type { DocumentSymbol, DocumentSymbolParams, SymbolInformation } from "vscode-languageserver";
import { documentSymbols } from "../features/outline/document-symbols.ts";
import { documentSymbol, symbolInformation } from "./convert.ts";
import type { Place } from "./session.ts";

export function symbols(
  { session, journal, uri }: Place,
  { textDocument }: DocumentSymbolParams,
): DocumentSymbol[] | SymbolInformation[] {
  const found = documentSymbols(journal, uri);
  return session.client.nestsSymbols
    ? found.map(documentSymbol)
    : found.flatMap((symbol) => symbolInformation(symbol, textDocument.uri));
}
