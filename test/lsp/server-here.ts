import { PassThrough } from "node:stream";
import {
  createConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import { diskReader } from "../../server/host/node/file-reader.ts";
import type { Clock } from "../../server/host/today.ts";
import { Gate } from "../../server/lsp/gate.ts";
import type { Handlers } from "../../server/lsp/host.ts";
import { serve } from "../../server/lsp/server.ts";
import { type StartOptions, TestClient } from "./client.ts";

interface HostOptions {
  readonly clock?: Clock;
  /** It does unless said otherwise. */
  readonly readsDisk?: boolean;
  /** The core is there when this settles. */
  readonly coreAfter?: Promise<void>;
  /** In place of some of the core's handlers. */
  readonly handlers?: Partial<Handlers>;
}

/**
 * The server in the test's own process, where its clock can be set and its core held back. A test that does not ask
 * for the process starts this one: it says the same, without the half second that a process takes.
 */
export async function startServerHere(
  options: StartOptions = {},
  { clock = Date.now, readsDisk = true, coreAfter, handlers: others }: HostOptions = {},
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
  serve(connection, { reader: readsDisk ? diskReader : undefined, notation: async () => undefined, clock, handlers });
  const client = new TestClient(new StreamMessageReader(toClient), new StreamMessageWriter(toServer));
  // As an editor that says it can. A test may answer otherwise.
  client.connection.onRequest("workspace/diagnostic/refresh", () => null);
  await client.initialize(options);
  return client;
}
