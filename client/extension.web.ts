import { type ExtensionContext, Uri } from "vscode";
import { LanguageClient } from "vscode-languageclient/browser";
import { CLIENT_ID, CLIENT_NAME, clientOptions, startDaystave } from "./start.ts";

/** Editors in a browser: the language server runs in a web worker and asks this side for every file. */
export async function activate(context: ExtensionContext): Promise<{ readonly host: "web" }> {
  const address = (path: string) => Uri.joinPath(context.extensionUri, path).toString(true);
  const worker = new Worker(address("dist/server/main.browser.js"));
  context.subscriptions.push({ dispose: () => worker.terminate() });
  await startDaystave(
    context,
    new LanguageClient(CLIENT_ID, CLIENT_NAME, worker, clientOptions(context, address("dist/server/"))),
  );
  return { host: "web" };
}
