import type { ExtensionContext } from "vscode";
import { LanguageClient } from "vscode-languageclient/browser";
import { CLIENT_ID, CLIENT_NAME, clientOptions, startDaystave } from "./start.ts";

/** Ends once the server in the worker has answered. */
export function startWebClient(context: ExtensionContext, worker: Worker): Promise<void> {
  return startDaystave(context, new LanguageClient(CLIENT_ID, CLIENT_NAME, worker, clientOptions(context)));
}
