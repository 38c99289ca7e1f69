import { type ExtensionContext, Uri } from "vscode";
import { LanguageClient } from "vscode-languageclient/browser";
import { CLIENT_ID, CLIENT_NAME, clientOptions, startDaystave } from "./start.ts";

/** Editors in a browser: the language server runs in a web worker and asks this side for every file. */
export async function activate(context: ExtensionContext): Promise<{ readonly host: "web" }> {
  const bundle = (file: string) => Uri.joinPath(context.extensionUri, "dist/server", file).toString(true);
  const worker = new Worker(bundle("main.browser.js"));
  context.subscriptions.push({ dispose: () => worker.terminate() });
  await startDaystave(
    context,
    new LanguageClient(CLIENT_ID, CLIENT_NAME, worker, clientOptions(context, bundle("notation.js"))),
  );
  return { host: "web" };
}
