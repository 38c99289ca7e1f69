import { type ExtensionContext, Uri } from "vscode";
import { LanguageClient } from "vscode-languageclient/browser";
import { CLIENT_ID, CLIENT_NAME, clientOptions, startDaystave } from "./start.ts";

/** Editors in a browser: the language server runs in a web worker and asks this side for every file. */
export async function activate(context: ExtensionContext): Promise<{ readonly host: "web" }> {
  const worker = new Worker(Uri.joinPath(context.extensionUri, "dist/server/main.browser.js").toString(true));
  context.subscriptions.push({ dispose: () => worker.terminate() });
  await startDaystave(context, new LanguageClient(CLIENT_ID, CLIENT_NAME, worker, clientOptions(context)));
  return { host: "web" };
}
