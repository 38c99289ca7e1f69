import {
  createConnection,
  DocumentDiagnosticReportKind,
  ProposedFeatures,
  TextDocumentSyncKind,
  TextDocuments,
} from "vscode-languageserver/node";
import { TextDocument } from "vscode-languageserver-textdocument";

// What a language server costs that does nothing: the library, its document store, and empty answers.
const connection = createConnection(ProposedFeatures.all);
new TextDocuments(TextDocument).listen(connection);
connection.onInitialize(() => ({
  capabilities: {
    textDocumentSync: TextDocumentSyncKind.Incremental,
    diagnosticProvider: { interFileDependencies: true, workspaceDiagnostics: false },
    completionProvider: {},
    hoverProvider: true,
  },
}));
connection.languages.diagnostics.on(() => ({ kind: DocumentDiagnosticReportKind.Full, items: [] }));
connection.onCompletion(() => []);
connection.onHover(() => null);
connection.listen();
