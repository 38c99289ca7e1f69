import type { ClientCapabilities } from "vscode-languageserver";
import type { InitialisationOptions } from "../../shared/protocol.ts";

/** What the client on the other side can do, as far as the server asks. */
export interface Client {
  readonly pullsDiagnostics: boolean;
  readonly refreshesDiagnostics: boolean;
  readonly refreshesTokens: boolean;
  readonly refreshesLenses: boolean;
  readonly refreshesHints: boolean;
  readonly hasConfiguration: boolean;
  readonly registersConfiguration: boolean;
  readonly watchesFiles: boolean;
  readonly hasFolders: boolean;
  readonly nestsSymbols: boolean;
  /** It leaves out further folds, and may tell the player so. */
  readonly mostFolds: number;
  readonly takesCodeActions: boolean;
  readonly preparesRenames: boolean;
  /** Knows tab stops in what a completion puts in. */
  readonly takesSnippets: boolean;
  readonly takesVersionedEdits: boolean;
  /** Makes edits that the server asks for. */
  readonly appliesEdits: boolean;
  /** Makes files among the edits that the server asks for. */
  readonly createsFiles: boolean;
  /** Opens a document at a place that the server names. */
  readonly showsDocuments: boolean;
  /** Answers `daystave/files`. */
  readonly readsFiles: boolean;
  /** Has the command that shows the preview. */
  readonly showsPreview: boolean;
}

/** @param can what the initialisation options say besides */
export function clientOf(
  capabilities: ClientCapabilities,
  can: Pick<InitialisationOptions, "canReadFiles" | "canShowPreview">,
): Client {
  const { workspace, textDocument, window } = capabilities;
  return {
    pullsDiagnostics: textDocument?.diagnostic !== undefined,
    refreshesDiagnostics: workspace?.diagnostics?.refreshSupport === true,
    refreshesTokens: workspace?.semanticTokens?.refreshSupport === true,
    refreshesLenses: workspace?.codeLens?.refreshSupport === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport === true,
    hasConfiguration: workspace?.configuration === true,
    registersConfiguration: workspace?.didChangeConfiguration?.dynamicRegistration === true,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    hasFolders: workspace?.workspaceFolders === true,
    nestsSymbols: textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    mostFolds: textDocument?.foldingRange?.rangeLimit ?? Number.POSITIVE_INFINITY,
    takesSnippets: textDocument?.completion?.completionItem?.snippetSupport === true,
    takesCodeActions: textDocument?.codeAction?.codeActionLiteralSupport !== undefined,
    preparesRenames: textDocument?.rename?.prepareSupport === true,
    takesVersionedEdits: workspace?.workspaceEdit?.documentChanges === true,
    appliesEdits: workspace?.applyEdit === true,
    createsFiles: workspace?.workspaceEdit?.resourceOperations?.includes("create") === true,
    showsDocuments: window?.showDocument?.support === true,
    readsFiles: can.canReadFiles === true,
    showsPreview: can.canShowPreview === true,
  };
}
