import type * as lsp from "vscode-languageserver";
import type { JournalSymbol } from "../features/navigation/journal-symbols.ts";
import type { CompletionItem, Diagnostic, DocumentSymbol, Severity, TextEdit } from "../features/types.ts";

// Numbers of the protocol's specification (3.17), not the library's constants: the core is a bundle of its own, and
// would carry the whole library a second time.

export const SEVERITIES: Readonly<Record<Severity, lsp.DiagnosticSeverity>> = {
  error: 1,
  warning: 2,
  information: 3,
  hint: 4,
};

/** `CompletionItemKind`: the icons that come nearest to what the items are. */
export const COMPLETION_KINDS = {
  scale: 7, // Class
  pattern: 3, // Function
  term: 14, // Keyword
  name: 6, // Variable
  title: 18, // Reference
  date: 23, // Event
  claim: 12, // Value
  declaration: 10, // Property
  phase: 9, // Module
  snippet: 15,
} as const satisfies Record<CompletionItem["kind"], lsp.CompletionItemKind>;

/** `SymbolKind`. */
export const SYMBOL_KINDS = {
  day: 3, // Namespace
  session: 4, // Package
  phase: 5, // Class
  entry: 24, // Event
  declaration: 7, // Property
} as const satisfies Record<DocumentSymbol["kind"], lsp.SymbolKind>;

/** The same of what is found in a whole workspace. */
export const JOURNAL_SYMBOL_KINDS = {
  title: 19, // Object
  declaration: SYMBOL_KINDS.declaration,
  aim: 14, // Constant
  day: SYMBOL_KINDS.day,
} as const satisfies Record<JournalSymbol["kind"], lsp.SymbolKind>;

/** No `data` and no links: a thousand of these go over the wire at a keystroke. */
export function diagnostic({ code, severity, range, message }: Diagnostic): lsp.Diagnostic {
  return { range, severity: SEVERITIES[severity], code, source: "daystave", message };
}

/** `InsertTextFormat.Snippet`. */
const WITH_TAB_STOPS = 2;

/** @param takesSnippets whether the client knows tab stops */
export function completionItem(item: CompletionItem, uri: string, takesSnippets: boolean): lsp.CompletionItem {
  const snippet = takesSnippets ? item.snippet : undefined;
  return {
    label: item.label,
    kind: COMPLETION_KINDS[item.kind],
    detail: item.detail,
    sortText: item.sortText,
    filterText: item.filterText,
    insertTextFormat: snippet === undefined ? undefined : WITH_TAB_STOPS,
    textEdit: snippet === undefined ? textEdit(item.edit) : { range: item.edit.range, newText: snippet },
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
