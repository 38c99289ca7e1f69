import { PassThrough } from "node:stream";
import {
  createConnection,
  ProposedFeatures,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import type { Clock } from "../../server/host/today.ts";
import type { Handlers } from "../../server/lsp/host.ts";
import { serve } from "../../server/lsp/server.ts";
import { type StartOptions, TestClient } from "./client.ts";

interface HostOptions {
  readonly clock?: Clock;
  /** The core is there when this settles. */
  readonly coreAfter?: Promise<void>;
}

/** The server in the test's own process, where its clock can be set and its core held back. It reads no files. */
export async function startServerHere(
  { clock = Date.now, coreAfter }: HostOptions,
  options: StartOptions,
): Promise<TestClient> {
  const [toServer, toClient] = [new PassThrough(), new PassThrough()];
  const connection = createConnection(
    ProposedFeatures.all,
    new StreamMessageReader(toServer),
    new StreamMessageWriter(toClient),
  );
  const handlers = async (): Promise<Handlers> => {
    await coreAfter;
    return import("../../server/lsp/handlers.ts");
  };
  serve(connection, { reader: undefined, clock, handlers });
  const client = new TestClient(new StreamMessageReader(toClient), new StreamMessageWriter(toServer));
  await client.initialize(options);
  return client;
}
