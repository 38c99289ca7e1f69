import { type Connection, TextDocuments } from "vscode-languageserver";
import { canonicalUri } from "../host/uri.ts";
import type { OpenDocument } from "../host/workspace.ts";
import { applyChanges, createDocument } from "../syntax/document/document.ts";
import type { Session } from "./session.ts";

/** The library's document store, over block documents: an edit copies no text. */
export function listenToDocuments(connection: Connection, tell: (what: (session: Session) => void) => void): void {
  const documents = new TextDocuments<OpenDocument>({
    create: (uri, _language, version, text) => ({
      uri,
      key: canonicalUri(uri),
      version,
      document: createDocument(text),
    }),
    update: (open, changes, version) => ({ ...open, version, document: applyChanges(open.document, changes) }),
  });
  documents.onDidChangeContent(({ document }) => tell(({ workspace }) => workspace.edited(document)));
  documents.onDidClose(({ document }) => tell((session) => closed(session, document)));
  documents.onDidOpen(() => tell(lookAgain));
  documents.onDidSave(() => tell(lookAgain));
  documents.listen(connection);
}

function closed({ client, connection, told, workspace }: Session, { uri, key }: OpenDocument): void {
  told.delete(key);
  workspace.closed(key);
  if (!client.pullsDiagnostics) connection.sendDiagnostics({ uri, diagnostics: [] }); // nothing stays underlined
}

/** An editor that tells nothing of changes on disk: opening and saving are the moments to look. */
function lookAgain({ client, isToldOfFiles, workspace }: Session): void {
  if (!isToldOfFiles && !client.readsFiles) workspace.lookAgain();
}
