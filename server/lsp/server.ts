import {
  type CancellationToken,
  type Connection,
  type Disposable,
  ErrorCodes,
  type InitializeParams,
  type InitializeResult,
  ResponseError,
  type SemanticTokens,
} from "vscode-languageserver";
import type { PreviewMethod, PreviewParams } from "../../shared/protocol.ts";
import { readOptions } from "../host/settings.ts";
import { capabilitiesFor } from "./capabilities.ts";
import { clientOf } from "./client.ts";
import { clientReader, noReader, readerByScheme } from "./client-files.ts";
import { configurationChanged, startConfiguration } from "./configuration.ts";
import { listenToDocuments } from "./documents.ts";
import { changedFiles, foldersChanged, startWatching } from "./files.ts";
import { Rim, stopIfCancelled } from "./rim.ts";
import { type Host, type Place, Session } from "./session.ts";

type Handlers = typeof import("./handlers.ts");

/** When nobody has asked for diagnostics by then, the files are read all the same; in milliseconds. */
const WALK_AT_LATEST = 500;

/** Answers a client until it says `exit`. */
export function serve(connection: Connection, host: Host): void {
  new Server(connection, host).listen();
}

class Server {
  readonly #rim: Rim;
  #session: Session | undefined;
  #handlers: Promise<Handlers> | undefined;
  #announcing: Disposable | undefined;

  constructor(
    private readonly connection: Connection,
    private readonly host: Host,
  ) {
    this.#rim = new Rim(connection);
  }

  listen(): void {
    const { connection } = this;
    const session = () => this.#current();
    connection.onInitialize(this.#rim.request("initialize", (params) => this.#initialize(params)));
    connection.onInitialized(this.#rim.notification("initialized", () => this.#start(session())));
    listenToDocuments(connection, session);
    this.#listenToFeatures();
    this.#listenToDiagnostics();
    connection.onDidChangeConfiguration(
      this.#rim.notification("workspace/didChangeConfiguration", (params) => configurationChanged(session(), params)),
    );
    connection.onDidChangeWatchedFiles(
      this.#rim.notification("workspace/didChangeWatchedFiles", changedFiles(session)),
    );
    const method: PreviewMethod = "daystave/preview";
    connection.onRequest(
      method,
      this.#rim.request(method, (params: unknown) => this.#preview(params)),
    );
    connection.listen();
  }

  #listenToFeatures(): void {
    const { connection } = this;
    connection.onHover(
      this.#onDocument(
        "textDocument/hover",
        (handlers) => handlers.hover,
        () => null,
      ),
    );
    connection.onCompletion(
      this.#onDocument(
        "textDocument/completion",
        (handlers) => handlers.completion,
        () => null,
      ),
    );
    connection.onCompletionResolve(
      this.#rim.request("completionItem/resolve", async (item) => {
        const { resolveUri, resolveCompletion } = await this.#load();
        const uri = resolveUri(item);
        const place = uri === undefined ? undefined : await this.#current().placeOf(uri);
        return place ? resolveCompletion(place, item) : item;
      }),
    );
    connection.onCodeAction(
      this.#onDocument(
        "textDocument/codeAction",
        (handlers) => handlers.codeActions,
        () => [],
      ),
    );
    connection.onDocumentSymbol(
      this.#onDocument(
        "textDocument/documentSymbol",
        (handlers) => handlers.symbols,
        () => [],
      ),
    );
    connection.onFoldingRanges(
      this.#onDocument(
        "textDocument/foldingRange",
        (handlers) => handlers.folding,
        () => [],
      ),
    );
    connection.onDocumentFormatting(
      this.#onDocument(
        "textDocument/formatting",
        (handlers) => handlers.format,
        () => [],
      ),
    );
    connection.onDocumentRangeFormatting(
      this.#onDocument(
        "textDocument/rangeFormatting",
        (handlers) => handlers.format,
        () => [],
      ),
    );
    const tokens = connection.languages.semanticTokens;
    tokens.on(
      this.#onDocument(
        "textDocument/semanticTokens/full",
        (handlers) => handlers.tokens,
        (): SemanticTokens => ({ data: [] }),
      ),
    );
    tokens.onRange(
      this.#onDocument(
        "textDocument/semanticTokens/range",
        (handlers) => handlers.tokens,
        (): SemanticTokens => ({ data: [] }),
      ),
    );
  }

  #listenToDiagnostics(): void {
    const { diagnostics } = this.connection.languages;
    const answer = this.#onDocument(
      "textDocument/diagnostic",
      (handlers) => handlers.documentDiagnostics,
      (handlers) => handlers.noDiagnostics(),
    );
    diagnostics.on(async (params, token) => {
      const report = await answer(params, token);
      setTimeout(() => this.#current().workspace.walk(), 0);
      return report;
    });
    diagnostics.onWorkspace(
      this.#rim.request("workspace/diagnostic", async (params, token, _progress, partial) => {
        const { workspaceDiagnostics } = await this.#load();
        return workspaceDiagnostics(this.#current(), params, token, partial);
      }),
    );
  }

  #initialize({ capabilities, initializationOptions, workspaceFolders, rootUri }: InitializeParams): InitializeResult {
    const { connection, host } = this;
    const options = readOptions(initializationOptions);
    const client = clientOf(capabilities, options.canReadFiles === true);
    const reader = readerByScheme(host.reader, client.readsFiles ? clientReader(connection) : noReader);
    const session = new Session(connection, client, reader, host.clock, options.timeZone ?? "");
    session.fixToday(options.today);
    session.applySettings(session.settings);
    session.workspace.setFolders(workspaceFolders?.map(({ uri }) => uri) ?? (rootUri ? [rootUri] : []));
    this.#session = session;
    return { capabilities: capabilitiesFor(client), serverInfo: { name: "Daystave" } };
  }

  async #start(session: Session): Promise<void> {
    const { pushDiagnostics, refreshDiagnostics } = await this.#load();
    if (session.client.pullsDiagnostics) refreshDiagnostics(session);
    else pushDiagnostics(session);
    setTimeout(() => session.workspace.walk(), WALK_AT_LATEST);
    if (session.client.hasFolders) {
      this.connection.workspace.onDidChangeWorkspaceFolders(
        this.#rim.notification("workspace/didChangeWorkspaceFolders", (change) => foldersChanged(session, change)),
      );
    }
    await Promise.all([startConfiguration(session), startWatching(session)]);
  }

  async #preview(params: unknown): Promise<unknown> {
    const { uri, version } = (params ?? {}) as Partial<PreviewParams>;
    if (typeof uri !== "string")
      throw new ResponseError(ErrorCodes.InvalidParams, "daystave/preview needs the uri of a document.");
    const { announceChanges, emptyPreview, preview } = await this.#load();
    const session = this.#current();
    this.#announcing ??= announceChanges(session);
    let place = await session.placeOf(uri);
    if (!place) await session.workspace.walk();
    place ??= await session.placeOf(uri);
    return place ? preview(place, { uri, version }) : emptyPreview(uri);
  }

  /** The way every request about one document goes: find the document, hand it to the feature's handler. */
  #onDocument<Params extends { readonly textDocument: { readonly uri: string } }, Result>(
    method: string,
    handlerOf: (handlers: Handlers) => (place: Place, params: Params) => Result,
    unknown: (handlers: Handlers) => Result,
  ): (params: Params, token: CancellationToken) => Promise<Result> {
    return this.#rim.request(method, async (params: Params, token: CancellationToken) => {
      const handlers = await this.#load();
      const place = await this.#current().placeOf(params.textDocument.uri);
      stopIfCancelled(token);
      return place ? handlerOf(handlers)(place, params) : unknown(handlers);
    });
  }

  #load(): Promise<Handlers> {
    this.#handlers ??= import("./handlers.ts");
    return this.#handlers;
  }

  #current(): Session {
    if (!this.#session)
      throw new ResponseError(ErrorCodes.ServerNotInitialized, "The first message must be initialize.");
    return this.#session;
  }
}
