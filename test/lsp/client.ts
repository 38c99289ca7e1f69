import { type ChildProcess, spawn } from "node:child_process";
import { pathToFileURL } from "node:url";
import { onTestFinished } from "vitest";
import {
  type ClientCapabilities,
  createProtocolConnection,
  type Diagnostic,
  DidChangeTextDocumentNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  type DocumentDiagnosticReport,
  DocumentDiagnosticRequest,
  ExitNotification,
  InitializedNotification,
  InitializeRequest,
  type InitializeResult,
  LogMessageNotification,
  type MessageReader,
  type MessageWriter,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  type PublishDiagnosticsParams,
  type Range,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver-protocol/node";
import { bundleServer } from "./server-bundle.ts";

/** An editor that pulls diagnostics, as current ones do. */
export const PULLING: ClientCapabilities = {
  workspace: {
    diagnostics: { refreshSupport: true },
    workspaceFolders: true,
    workspaceEdit: { documentChanges: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
  },
  textDocument: {
    diagnostic: {},
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ["quickfix", "source"] } } },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
  },
};

/** An editor that takes diagnostics only as they come, as older ones do, and offers nothing else. */
export const PUSHED: ClientCapabilities = { textDocument: { publishDiagnostics: { versionSupport: true } } };

export interface StartOptions {
  readonly capabilities?: ClientCapabilities;
  /** Paths of workspace folders. */
  readonly folders?: readonly string[];
  /** URIs of workspace folders, for what is no path. */
  readonly folderUris?: readonly string[];
  readonly options?: unknown;
  readonly environment?: NodeJS.ProcessEnv;
  /** The language of the editor: `de`. */
  readonly locale?: string;
  /** Called before `initialize` is sent. */
  readonly prepare?: (connection: ProtocolConnection) => void;
}

let bundle: Promise<string> | undefined;

/** The built server as a process of its own, spoken to over stdio. It ends with the test. */
export async function startServer({ environment, ...options }: StartOptions = {}): Promise<TestClient> {
  bundle ??= bundleServer("node");
  const server = spawn(process.execPath, [await bundle, "--stdio"], { env: { ...process.env, ...environment } });
  onTestFinished(() => void server.kill());
  const client = new TestClient(
    new StreamMessageReader(server.stdout!),
    new StreamMessageWriter(server.stdin!),
    server,
  );
  await client.initialize(options);
  return client;
}

/** The editor's side of the protocol: opens and edits documents, and keeps what the server sends unasked. */
export class TestClient {
  readonly connection: ProtocolConnection;
  readonly log: string[] = [];
  readonly pushed: PublishDiagnosticsParams[] = [];
  initialized!: InitializeResult;
  readonly #versions = new Map<string, number>();
  #waiting: (() => void)[] = [];

  constructor(
    reader: MessageReader,
    writer: MessageWriter,
    readonly server?: ChildProcess,
  ) {
    this.connection = createProtocolConnection(reader, writer);
    this.connection.onNotification(LogMessageNotification.type, ({ message }) =>
      this.#note(() => this.log.push(message)),
    );
    this.connection.onNotification(PublishDiagnosticsNotification.type, (params) =>
      this.#note(() => this.pushed.push(params)),
    );
  }

  async initialize({
    capabilities = PULLING,
    folders = [],
    folderUris = folders.map(uriOf),
    options,
    locale,
    prepare,
  }: StartOptions): Promise<void> {
    prepare?.(this.connection);
    this.connection.listen();
    this.initialized = await this.connection.sendRequest(InitializeRequest.type, {
      processId: process.pid,
      rootUri: folderUris[0] ?? null,
      workspaceFolders: folderUris.map((uri) => ({ uri, name: uri })),
      capabilities,
      ...(locale === undefined ? {} : { locale }),
      initializationOptions: options,
    });
    await this.connection.sendNotification(InitializedNotification.type, {});
  }

  async open(uri: string, text: string): Promise<void> {
    this.#versions.set(uri, 1);
    await this.connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: { uri, languageId: "practice-journal", version: 1, text },
    });
  }

  /** Without a range the whole text is replaced. */
  async edit(uri: string, text: string, range?: Range): Promise<void> {
    const version = this.#versions.get(uri)! + 1;
    this.#versions.set(uri, version);
    await this.connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri, version },
      contentChanges: [range ? { range, text } : { text }],
    });
  }

  async close(uri: string): Promise<void> {
    await this.connection.sendNotification(DidCloseTextDocumentNotification.type, { textDocument: { uri } });
  }

  pull(uri: string, previousResultId?: string): Promise<DocumentDiagnosticReport> {
    return this.connection.sendRequest(DocumentDiagnosticRequest.type, { textDocument: { uri }, previousResultId });
  }

  /** The codes of a document's diagnostics, pulled. */
  async codes(uri: string): Promise<string[]> {
    const report = await this.pull(uri);
    return report.kind === "full" ? codesOf(report.items) : [];
  }

  /** The first value that is not undefined, looked for again whenever the server has sent something. */
  async until<Value>(look: () => Value | undefined): Promise<Value> {
    for (;;) {
      const found = look();
      if (found !== undefined) return found;
      await new Promise<void>((resolve) => this.#waiting.push(resolve));
    }
  }

  /** For handlers that a test registers itself: lets `until` look again. */
  readonly noticed = (): void => this.#note(() => {});

  /** Says goodbye as the protocol wants it; the server's exit code. */
  async stop(): Promise<number | null> {
    const ended = new Promise<number | null>((resolve) => this.server!.once("exit", resolve));
    await this.connection.sendRequest(ShutdownRequest.type);
    await this.connection.sendNotification(ExitNotification.type);
    return ended;
  }

  #note(keep: () => void): void {
    keep();
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const resolve of waiting) resolve();
  }
}

export function codesOf(diagnostics: readonly Diagnostic[]): string[] {
  return diagnostics.map(({ code }) => String(code));
}

export function uriOf(path: string): string {
  return pathToFileURL(path).href;
}
