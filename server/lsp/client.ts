import type { ClientCapabilities } from "vscode-languageserver";

/** What the client on the other side can do, as far as the server asks. */
export interface Client {
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly refreshesTokens: boolean;
  readonly hasConfiguration: boolean;
  readonly registersConfiguration: boolean;
  readonly watchesFiles: boolean;
  readonly hasFolders: boolean;
  readonly nestsSymbols: boolean;
  /** It leaves out further folds, and may tell the player so. */
  readonly mostFolds: number;
  readonly takesCodeActions: boolean;
  readonly preparesRenames: boolean;
  readonly takesVersionedEdits: boolean;
  /** Makes edits that the server asks for. */
  readonly appliesEdits: boolean;
  /** Opens a document at a place that the server names. */
  readonly showsDocuments: boolean;
  /** Answers `daystave/files`. */
  readonly readsFiles: boolean;
}

export function clientOf(capabilities: ClientCapabilities, readsFiles: boolean): Client {
  const { workspace, textDocument, window } = capabilities;
  return {
    pullsDiagnostics: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport === true,
    refreshesTokens: workspace?.semanticTokens?.refreshSupport === true,
    hasConfiguration: workspace?.configuration === true,
    registersConfiguration: workspace?.didChangeConfiguration?.dynamicRegistration === true,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    hasFolders: workspace?.workspaceFolders === true,
    nestsSymbols: textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    mostFolds: textDocument?.foldingRange?.rangeLimit ?? Number.POSITIVE_INFINITY,
    takesCodeActions: textDocument?.codeAction?.codeActionLiteralSupport !== undefined,
    preparesRenames: textDocument?.rename?.prepareSupport === true,
    takesVersionedEdits: workspace?.workspaceEdit?.documentChanges === true,
    appliesEdits: workspace?.applyEdit === true,
    showsDocuments: window?.showDocument?.support === true,
    readsFiles,
  };
}
