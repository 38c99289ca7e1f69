import { type ExtensionContext, Uri } from "vscode";
import { LanguageClient, TransportKind } from "vscode-languageclient/node";
import { SMALL_YOUNG_GENERATION } from "../shared/young-generation.ts";
import { CLIENT_ID, CLIENT_NAME, clientOptions, startDaystave } from "./start.ts";

/** Desktop and remote editors: the language server runs in Node and reads `file:` journals itself. */
export async function activate(context: ExtensionContext): Promise<{ readonly host: "node" }> {
  const module = Uri.joinPath(context.extensionUri, "dist/server/main.js").fsPath;
  const client = new LanguageClient(
    CLIENT_ID,
    CLIENT_NAME,
    { module, transport: TransportKind.ipc, options: { execArgv: [SMALL_YOUNG_GENERATION] } },
    clientOptions(context),
  );
  await startDaystave(context, client);
  return { host: "node" };
}
