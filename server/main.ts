import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { diskReader } from "./host/node/file-reader.ts";
import { loadBundle, loadBundleIfThere } from "./host/node/load-bundle.ts";
import { endWhenAnswersFail } from "./host/node/stdout-failure.ts";
import { keepYoungGenerationSmall } from "./host/node/young-generation.ts";
import { Gate } from "./lsp/gate.ts";
import type { Handlers } from "./lsp/host.ts";
import { serve } from "./lsp/server.ts";
import type { StaffDrawer } from "./notation/staff-look.ts";

/** Of `core.ts`, what the server takes. */
interface WholeCore {
  handlers(): Promise<Handlers>;
}

keepYoungGenerationSmall();
// The command line says how the client talks to us: --stdio, --node-ipc, --socket=PORT or --pipe=NAME.
if (process.argv.includes("--stdio")) endWhenAnswersFail();
const connection = createConnection(ProposedFeatures.all, { messageStrategy: new Gate() });
const goOn = (error: unknown) =>
  connection.console.error(`Daystave goes on after an error: ${error instanceof Error ? error.stack : String(error)}`);
process.on("uncaughtException", goOn);
process.on("unhandledRejection", goOn);
serve(connection, {
  reader: diskReader,
  clock: Date.now,
  handlers: async (_, language) => {
    if (language !== undefined) loadBundleIfThere(`texts.${language}.js`); // the core finds them when it is loaded
    // A package with the command line has one core for both.
    return loadBundleIfThere<Handlers>("handlers.js") ?? loadBundle<WholeCore>("core.js").handlers();
  },
  notation: async () => loadBundleIfThere<StaffDrawer>("notation.js"),
});
