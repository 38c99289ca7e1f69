import type { ExtensionContext } from "vscode";
import { ServerProcesses } from "./server-processes.ts";

/** Desktop and remote editors: the language server runs in Node and reads `file:` journals itself. */
export async function activate(context: ExtensionContext): Promise<{ readonly host: "node" }> {
  const servers = new ServerProcesses(context.extensionUri);
  context.subscriptions.push(servers);
  // While the process starts, the language client's code is run: it takes about as long.
  const { startNodeClient } = await import("./start-node-client.ts");
  await startNodeClient(context, servers);
  return { host: "node" };
}
