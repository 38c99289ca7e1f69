import { type ExtensionContext, Uri } from "vscode";

/** Editors in a browser: the language server runs in a web worker and asks this side for every file. */
export async function activate(context: ExtensionContext): Promise<{ readonly host: "web" }> {
  const worker = new Worker(Uri.joinPath(context.extensionUri, "dist/server/main.browser.js").toString(true));
  performance.mark("daystave/didStartServer");
  context.subscriptions.push({ dispose: () => worker.terminate() });
  // While the worker starts, the language client's code is run: it takes about as long.
  const { startWebClient } = await import("./start-web-client.ts");
  await startWebClient(context, worker);
  return { host: "web" };
}
