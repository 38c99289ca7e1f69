import * as lsp from "vscode-languageserver";
import type { CompletionItem, Diagnostic, DocumentSymbol, Severity, TextEdit } from "../features/types.ts";

const SEVERITIES: Readonly<Record<Severity, lsp.DiagnosticSeverity>> = {
  error: lsp.DiagnosticSeverity.Error,
  warning: lsp.DiagnosticSeverity.Warning,
  information: lsp.DiagnosticSeverity.Information,
  hint: lsp.DiagnosticSeverity.Hint,
};

/** The icons that editors have come nearest to what the items are. */
const COMPLETION_KINDS: Readonly<Record<CompletionItem["kind"], lsp.CompletionItemKind>> = {
  scale: lsp.CompletionItemKind.Class,
  pattern: lsp.CompletionItemKind.Function,
  term: lsp.CompletionItemKind.Keyword,
  name: lsp.CompletionItemKind.Variable,
  title: lsp.CompletionItemKind.Reference,
  date: lsp.CompletionItemKind.Event,
  claim: lsp.CompletionItemKind.Value,
  declaration: lsp.CompletionItemKind.Property,
  phase: lsp.CompletionItemKind.Module,
};

const SYMBOL_KINDS: Readonly<Record<DocumentSymbol["kind"], lsp.SymbolKind>> = {
  day: lsp.SymbolKind.Namespace,
  session: lsp.SymbolKind.Package,
  phase: lsp.SymbolKind.Class,
  entry: lsp.SymbolKind.Event,
  declaration: lsp.SymbolKind.Property,
};

/** No `data` and no links: a thousand of these go over the wire at a keystroke. */
export function diagnostic({ code, severity, range, message }: Diagnostic): lsp.Diagnostic {
  return { range, severity: SEVERITIES[severity], code, source: "daystave", message };
}

export function completionItem(item: CompletionItem, uri: string): lsp.CompletionItem {
  return {
    label: item.label,
    kind: COMPLETION_KINDS[item.kind],
    detail: item.detail,
    sortText: item.sortText,
    filterText: item.filterText,
    textEdit: textEdit(item.edit),
    data: item.resolve && { ...item.resolve, uri },
  };
}

export function documentSymbol(symbol: DocumentSymbol): lsp.DocumentSymbol {
  return {
    name: symbol.name,
    detail: symbol.detail,
    kind: SYMBOL_KINDS[symbol.kind],
    range: symbol.range,
    selectionRange: symbol.selection,
    children: symbol.children.map(documentSymbol),
  };
}

/** For clients that take no tree: every symbol by itself, with the name of the one it stands in. */
export function symbolInformation(
  symbol: DocumentSymbol,
  uri: string,
  containerName?: string,
): lsp.SymbolInformation[] {
  const own = {
    name: symbol.name,
    kind: SYMBOL_KINDS[symbol.kind],
    location: { uri, range: symbol.range },
    containerName,
  };
  return [own, ...symbol.children.flatMap((child) => symbolInformation(child, uri, symbol.name))];
}

export function textEdit({ range, newText }: TextEdit): lsp.TextEdit {
  return { range, newText };
}
