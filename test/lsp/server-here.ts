import { PassThrough } from "node:stream";
import {
  createConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import type { Clock } from "../../server/host/today.ts";
import { Gate } from "../../server/lsp/gate.ts";
import type { Handlers } from "../../server/lsp/host.ts";
import { serve } from "../../server/lsp/server.ts";
import { type StartOptions, TestClient } from "./client.ts";

interface HostOptions {
  readonly clock?: Clock;
  /** The core is there when this settles. */
  readonly coreAfter?: Promise<void>;
  /** In place of some of the core's handlers. */
  readonly handlers?: Partial<Handlers>;
}

/** The server in the test's own process, where its clock can be set and its core held back. It reads no files. */
export async function startServerHere(
  { clock = Date.now, coreAfter, handlers: others }: HostOptions,
  options: StartOptions,
): Promise<TestClient> {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const connection = createConnection(
    ProposedFeatures.all,
    new StreamMessageReader(toServer),
    new StreamMessageWriter(toClient),
    { messageStrategy: new Gate() },
  );
  const handlers = async (): Promise<Handlers> => {
    await coreAfter;
    return { ...(await import("../../server/lsp/handlers.ts")), ...others };
  };
  serve(connection, { reader: undefined, notation: async () => undefined, clock, handlers });
  const client = new TestClient(new StreamMessageReader(toClient), new StreamMessageWriter(toServer));
  await client.initialize(options);
  return client;
}
