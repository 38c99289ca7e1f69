import { type ServerCapabilities, TextDocumentSyncKind } from "vscode-languageserver";
import type { ServerCommand } from "../../shared/protocol.ts";
import { TOKEN_MODIFIERS, TOKEN_TYPES } from "../features/colours/token-legend.ts";
import type { Client } from "./client.ts";

/** After these an editor asks for completions unasked. A space is not among them: prose is full of spaces. */
const TRIGGERS = ['"', ":", "#"];

/** Where it is typed, the line before it may be laid out. */
const LEAVES_LINE = "\n";

/** All that `commands.ts` runs; named here too, as this is answered without the core. */
const COMMANDS: Readonly<Record<ServerCommand, true>> = {
  "daystave.server.newDay": true,
  "daystave.server.newDayWithPhases": true,
  "daystave.server.writePlan": true,
  "daystave.server.repeatFaster": true,
  "daystave.server.repeatSlower": true,
  "daystave.server.writeNotes": true,
  "daystave.server.fingerChange": true,
  "daystave.server.goToLastTime": true,
  "daystave.server.keepBothSides": true,
  "daystave.server.declareTitle": true,
  "daystave.server.respell": true,
  "daystave.server.moveYear": true,
  "daystave.server.changeNames": true,
  "daystave.server.writeTempo": true,
};

export function capabilitiesFor(client: Client): ServerCapabilities {
  return {
    positionEncoding: "utf-16",
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental, save: { includeText: false } },
    diagnosticProvider: client.pullsDiagnostics
      ? { identifier: "daystave", interFileDependencies: true, workspaceDiagnostics: true }
      : undefined,
    completionProvider: { triggerCharacters: TRIGGERS, resolveProvider: true },
    hoverProvider: true,
    codeActionProvider: { codeActionKinds: ["quickfix", "source.fixAll", "refactor.rewrite"] },
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    renameProvider: client.preparesRenames ? { prepareProvider: true } : true,
    documentSymbolProvider: true,
    workspaceSymbolProvider: true,
    foldingRangeProvider: true,
    semanticTokensProvider: {
      legend: { tokenTypes: [...TOKEN_TYPES], tokenModifiers: [...TOKEN_MODIFIERS] },
      full: true,
      range: true,
    },
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: LEAVES_LINE },
    selectionRangeProvider: true,
    documentLinkProvider: { resolveProvider: false },
    codeLensProvider: { resolveProvider: false },
    inlayHintProvider: true,
    executeCommandProvider: client.appliesEdits ? { commands: Object.keys(COMMANDS) } : undefined,
    workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
  };
}
