import { expect, test } from "vitest";
import { CompletionItemKind, DiagnosticSeverity, SymbolKind } from "vscode-languageserver-protocol/node";
import { COMPLETION_KINDS, SEVERITIES, SYMBOL_KINDS } from "../../server/lsp/convert.ts";

// The protocol library's own constants are the truth.

test("the numbers are those of the protocol", () => {
  expect(SEVERITIES).toEqual({
    error: DiagnosticSeverity.Error,
    warning: DiagnosticSeverity.Warning,
    information: DiagnosticSeverity.Information,
    hint: DiagnosticSeverity.Hint,
  });
  expect(COMPLETION_KINDS).toEqual({
    scale: CompletionItemKind.Class,
    pattern: CompletionItemKind.Function,
    term: CompletionItemKind.Keyword,
    name: CompletionItemKind.Variable,
    title: CompletionItemKind.Reference,
    date: CompletionItemKind.Event,
    claim: CompletionItemKind.Value,
    declaration: CompletionItemKind.Property,
    phase: CompletionItemKind.Module,
    snippet: CompletionItemKind.Snippet,
  });
  expect(SYMBOL_KINDS).toEqual({
    day: SymbolKind.Namespace,
    session: SymbolKind.Package,
    phase: SymbolKind.Class,
    entry: SymbolKind.Event,
    declaration: SymbolKind.Property,
  });
});
