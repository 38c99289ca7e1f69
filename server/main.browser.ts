import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from "vscode-languageserver/browser";
import { Gate } from "./lsp/gate.ts";
import { serve } from "./lsp/server.ts";
import type { StaffDrawer } from "./notation/staff-look.ts";

/** What a worker has once it has run the bundle that draws staves. */
interface NotationWorker {
  importScripts(address: string): void;
  readonly daystaveNotation?: StaffDrawer;
}

// In a web worker: the client talks to us by messages, and reads every file for us.
const worker = self as unknown as ConstructorParameters<typeof BrowserMessageReader>[0] & NotationWorker;
const connection = createConnection(
  ProposedFeatures.all,
  new BrowserMessageReader(worker),
  new BrowserMessageWriter(worker),
  { messageStrategy: new Gate() },
);
serve(connection, {
  reader: undefined,
  clock: Date.now,
  handlers: () => import("./lsp/handlers.ts"),
  notation: async (address) => {
    if (address !== undefined) worker.importScripts(address);
    return worker.daystaveNotation;
  },
});
