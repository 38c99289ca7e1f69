import { type ExtensionContext, Uri } from "vscode";
import { LanguageClient } from "vscode-languageclient/browser";
import { optionsAlone, startAlone } from "./client-alone.ts";

export async function activate(context: ExtensionContext): Promise<void> {
  const address = (path: string) => Uri.joinPath(context.extensionUri, path).toString(true);
  const worker = new Worker(address("dist/server/main.browser.js"));
  const client = new LanguageClient("daystave", "Daystave", worker, optionsAlone(address("dist/server/")));
  context.subscriptions.push(client);
  await startAlone(client);
}
