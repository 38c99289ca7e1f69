import { createConnection, ProposedFeatures } from "vscode-languageserver/node";
import { diskReader } from "./host/node/file-reader.ts";
import { loadBundle, loadBundleIfThere } from "./host/node/load-bundle.ts";
import { endWhenAnswersFail } from "./host/node/stdout-failure.ts";
import { keepYoungGenerationSmall } from "./host/node/young-generation.ts";
import { Gate } from "./lsp/gate.ts";
import type { Handlers } from "./lsp/host.ts";
import { serve } from "./lsp/server.ts";
import type { StaffDrawer } from "./notation/staff-look.ts";

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
  // The extension's package is without the command line, and so without the core that both share.
  handlers: async (_, language) => {
    if (language !== undefined) loadBundleIfThere(`texts.${language}.js`); // the core finds them when it is loaded
    return loadBundleIfThere<Handlers>("core.js") ?? loadBundle<Handlers>("handlers.js");
  },
  notation: async () => loadBundleIfThere<StaffDrawer>("notation.js"),
});
