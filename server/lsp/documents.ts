import { type Connection, TextDocuments } from "vscode-languageserver";
import { canonicalUri } from "../host/address.ts";
import type { OpenDocument } from "../host/workspace.ts";
import { applyChanges, createDocument } from "../syntax/document.ts";
import type { Session } from "./session.ts";

/** The library's document store, over block documents: an edit copies no text. */
export function listenToDocuments(connection: Connection, session: () => Session): void {
  const documents = new TextDocuments<OpenDocument>({
    create: (uri, _language, version, text) => ({
      uri,
      key: canonicalUri(uri),
      version,
      document: createDocument(text),
    }),
    update: (open, changes, version) => ({ ...open, version, document: applyChanges(open.document, changes) }),
  });
  documents.onDidChangeContent(({ document }) => session().workspace.edited(document));
  documents.onDidClose(({ document }) => {
    session().told.delete(document.key);
    session().workspace.closed(document.key);
  });
  documents.onDidOpen(() => lookAgain(session()));
  documents.onDidSave(() => lookAgain(session()));
  documents.listen(connection);
}

/** An editor that tells nothing of changes on disk: opening and saving are the moments to look. */
function lookAgain({ client, workspace }: Session): void {
  if (!client.watchesFiles && !client.readsFiles) workspace.lookAgain();
}
