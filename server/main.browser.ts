import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createConnection,
  ProposedFeatures,
} from "vscode-languageserver/browser";
import { Gate } from "./lsp/gate.ts";
import type { Handlers } from "./lsp/host.ts";
import { serve } from "./lsp/server.ts";
import type { StaffDrawer } from "./notation/staff-look.ts";

/** What a worker has once it has run the bundles of the core and of what draws staves. */
interface Bundles {
  importScripts(address: string): void;
  readonly daystaveHandlers: Handlers;
  readonly daystaveNotation: StaffDrawer;
}

// In a web worker: the client talks to us by messages, and reads every file for us.
const worker = self as unknown as ConstructorParameters<typeof BrowserMessageReader>[0];
const scope = globalThis as unknown as Bundles;
const connection = createConnection(
  ProposedFeatures.all,
  new BrowserMessageReader(worker),
  new BrowserMessageWriter(worker),
  { messageStrategy: new Gate() },
);
serve(connection, {
  reader: undefined,
  clock: Date.now,
  handlers: async (bundles, language) => {
    if (bundles === undefined) throw new Error("The client does not say where the bundles of the server are.");
    // The core finds them when it is loaded.
    if (language !== undefined) scope.importScripts(`${bundles}texts.${language}.js`);
    scope.importScripts(`${bundles}handlers.js`);
    return scope.daystaveHandlers;
  },
  notation: async (bundles) => {
    if (bundles === undefined) return undefined;
    scope.importScripts(`${bundles}notation.js`);
    return scope.daystaveNotation;
  },
});
