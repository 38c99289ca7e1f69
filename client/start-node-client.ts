import type { ExtensionContext } from "vscode";
import { LanguageClient } from "vscode-languageclient/node";
import type { ServerProcesses } from "./server-processes.ts";
import { CLIENT_ID, CLIENT_NAME, clientOptions, startDaystave } from "./start.ts";

/** Ends once the server in one of the processes has answered. */
export function startNodeClient(context: ExtensionContext, servers: ServerProcesses): Promise<void> {
  const server = async () => servers.take();
  return startDaystave(context, new LanguageClient(CLIENT_ID, CLIENT_NAME, server, clientOptions(context)));
}
