import type { BaseLanguageClient, LanguageClientOptions } from "vscode-languageclient";

// An extension that has the language client alone, for the same server: what ours is timed beside.

/** What it tells the client, with the marks by which the probe leaves out the wait for the server. */
export function optionsAlone(bundles?: string): LanguageClientOptions {
  return {
    documentSelector: [{ language: "practice-journal" }],
    initializationOptions: () => {
      performance.mark("daystave/willWaitForServer");
      return { bundles };
    },
  };
}

/** Starts it; 2 is the library's `State.Running`, which differs between its bundles in nothing. */
export async function startAlone(client: BaseLanguageClient): Promise<void> {
  client.onDidChangeState(({ newState }) => {
    if (newState === 2) performance.mark("daystave/didWaitForServer");
  });
  await client.start();
}
