import { type ExtensionContext, Uri } from "vscode";
import { LanguageClient, TransportKind } from "vscode-languageclient/node";
import { optionsAlone, startAlone } from "./client-alone.ts";

export async function activate(context: ExtensionContext): Promise<void> {
  const module = Uri.joinPath(context.extensionUri, "dist/server/main.js").fsPath;
  const client = new LanguageClient("daystave", "Daystave", { module, transport: TransportKind.ipc }, optionsAlone());
  context.subscriptions.push(client);
  await startAlone(client);
}
