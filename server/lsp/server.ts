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
import type { ExportMethod, SheetMethod } from "../../shared/export.ts";
import { type Spoken, spokenIn } from "../../shared/languages.ts";
import type { PreviewMethod } from "../../shared/preview.ts";
import type { ChoicesMethod, PaletteMethod, PlanMinutesMethod, TodayMethod } from "../../shared/protocol.ts";
import type { PupilsMethod } from "../../shared/pupils.ts";
import type { SoundMethod } from "../../shared/sound.ts";
import type { StaffMethod } from "../../shared/staff.ts";
import { readOptions, readPalette } from "../host/settings.ts";
import { capabilitiesFor } from "./capabilities.ts";
import { clientOf } from "./client.ts";
import { configurationChanged, startConfiguration } from "./configuration.ts";
import { listenToDocuments } from "./documents.ts";
import { cancelled, ErrorBoundary } from "./error-boundary.ts";
import { changedFiles, foldersChanged, startWatching } from "./files.ts";
import { REFUSED, type Refusal } from "./gate.ts";
import type { Handlers, Host } from "./host.ts";
import { listenToNames } from "./listen-to-names.ts";
import type { Place, Session } from "./session.ts";

/** By then the answer to `initialize` was written, in milliseconds: loading the core would hold it up. */
const ANSWER_WRITTEN = 10;

/** When nobody has asked for diagnostics by then, the files are read all the same; in milliseconds. */
const WALK_AT_LATEST = 500;

const NO_COMMAND =
  "A command is one that the server names, with one argument: { textDocument: { uri }, position: { line, character } }.";

/** Answers a client until it says `exit`. */
export function serve(connection: Connection, host: Host): void {
  new Server(connection, host).listen();
}

class Server {
  readonly #boundary: ErrorBoundary;
  #open: (() => Promise<Session>) | undefined;
  #session: Promise<Session> | undefined;
  #handlers: Promise<Handlers> | undefined;
  #announcing: Disposable | undefined;
  #hasFolders = false;
  #bundles: string | undefined;
  #language: Spoken | undefined;

  constructor(
    private readonly connection: Connection,
    private readonly host: Host,
  ) {
    this.#boundary = new ErrorBoundary(connection);
  }

  listen(): void {
    const { connection } = this;
    const boundary = this.#boundary;
    connection.onRequest(REFUSED, ({ code, message }: Refusal) => {
      throw new ResponseError(code, message);
    });
    connection.onNotification(REFUSED, ({ message }: Refusal) => connection.console.warn(message));
    connection.onInitialize(boundary.request("initialize", (params) => this.#initialize(params)));
    connection.onInitialized(boundary.notification("initialized", () => this.#start()));
    listenToDocuments(connection, (what) => this.#tell("textDocument/didOpen, didChange, didSave or didClose", what));
    this.#listenToFeatures();
    this.#listenToLines();
    this.#listenToDiagnostics();
    listenToNames(
      connection,
      (method, handlerOf, unknown) => this.#onDocument(method, handlerOf, unknown),
      this.#boundary.request("workspace/symbol", async (params, token) => {
        const { workspaceSymbols } = await this.#load();
        return workspaceSymbols(await this.#current(), params, token);
      }),
    );
    connection.onDidChangeConfiguration((params) =>
      this.#tell("workspace/didChangeConfiguration", (session) => configurationChanged(session, params)),
    );
    connection.onDidChangeWatchedFiles(changedFiles((what) => this.#tell("workspace/didChangeWatchedFiles", what)));
    const palette: PaletteMethod = "daystave/palette";
    connection.onNotification(palette, (params: unknown) =>
      this.#tell(palette, (session) => {
        session.palette = readPalette(params);
      }),
    );
    const method: PreviewMethod = "daystave/preview";
    connection.onRequest(
      method,
      boundary.request(method, (params: unknown) => this.#preview(params)),
    );
    const pupils: PupilsMethod = "daystave/pupils";
    connection.onRequest(
      pupils,
      boundary.request(pupils, (params: unknown) => this.#pupils(params)),
    );
    const sound: SoundMethod = "daystave/sound";
    connection.onRequest(
      sound,
      boundary.request(sound, (params: unknown) => this.#sound(params)),
    );
    this.#listenToOwn();
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
      this.#boundary.request("completionItem/resolve", async (item) => {
        const { resolveUri, resolveCompletion } = await this.#load();
        const uri = resolveUri(item);
        const place = uri === undefined ? undefined : await (await this.#current()).placeOf(uri);
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
    connection.onExecuteCommand(
      this.#boundary.request("workspace/executeCommand", async (params) => {
        const { runCommand } = await this.#load();
        const answer = await runCommand(await this.#current(), params);
        if (answer === undefined) throw new ResponseError(ErrorCodes.InvalidParams, NO_COMMAND);
        return answer;
      }),
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

  /** What is shown or done beside the words of a line. */
  #listenToLines(): void {
    const { connection } = this;
    connection.onDocumentOnTypeFormatting(
      this.#onDocument(
        "textDocument/onTypeFormatting",
        (handlers) => handlers.formatLeftLine,
        () => [],
      ),
    );
    connection.onSelectionRanges(
      this.#onDocument(
        "textDocument/selectionRange",
        (handlers) => handlers.selections,
        () => null,
      ),
    );
    connection.onDocumentLinks(
      this.#onDocument(
        "textDocument/documentLink",
        (handlers) => handlers.links,
        () => [],
      ),
    );
    connection.onCodeLens(
      this.#onDocument(
        "textDocument/codeLens",
        (handlers) => handlers.lenses,
        () => [],
      ),
    );
    connection.languages.inlayHint.on(
      this.#onDocument(
        "textDocument/inlayHint",
        (handlers) => handlers.hints,
        () => [],
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
      setTimeout(() => this.#tell("the walk", ({ workspace }) => workspace.walk()), 0);
      return report;
    });
    diagnostics.onWorkspace(
      this.#boundary.request("workspace/diagnostic", async (params, token, _progress, partial) => {
        const { workspaceDiagnostics } = await this.#load();
        return (await workspaceDiagnostics(await this.#current(), params, token, partial)) ?? cancelled();
      }),
    );
  }

  /** Answers without the core, which is loaded while the client is busy with the answer. */
  #initialize(params: InitializeParams): InitializeResult {
    const options = readOptions(params.initializationOptions);
    const client = clientOf(params.capabilities, options);
    this.#bundles = options.bundles;
    this.#language = spokenIn(params.locale);
    this.#hasFolders = client.hasFolders;
    this.#open = async () => {
      const { openSession, pushDiagnostics, refreshDiagnostics, refreshShown, warmHistory } = await this.#load();
      const session = openSession(this.connection, client, this.host, params);
      if (client.pullsDiagnostics) refreshDiagnostics(session);
      else pushDiagnostics(session); // before anything can change: the first document may be open already
      refreshShown(session);
      warmHistory(session);
      return session;
    };
    setTimeout(() => this.#load(), ANSWER_WRITTEN);
    return { capabilities: capabilitiesFor(client), serverInfo: { name: "Daystave" } };
  }

  async #start(): Promise<void> {
    // Before anything is waited for: the library drops what nobody listens to.
    if (this.#hasFolders) {
      this.connection.workspace.onDidChangeWorkspaceFolders((change) =>
        this.#tell("workspace/didChangeWorkspaceFolders", (session) => foldersChanged(session, change)),
      );
    }
    const session = await this.#current();
    setTimeout(() => session.workspace.walk(), WALK_AT_LATEST);
    await Promise.all([startConfiguration(session), startWatching(session)]);
  }

  async #preview(value: unknown): Promise<unknown> {
    const { announceChanges, emptyPreview, preview, readPreviewParams } = await this.#load();
    const params = readPreviewParams(value);
    if (!params) throw new ResponseError(ErrorCodes.InvalidParams, "daystave/preview needs the uri of a document.");
    const session = await this.#current();
    this.#announcing ??= announceChanges(session);
    let place = await session.placeOf(params.uri);
    if (!place) await session.workspace.walk();
    place ??= (await session.placeOf(params.uri)) ?? session.placeOfMissing(params.uri);
    return place ? preview(place, params) : emptyPreview(session, params);
  }

  /** Once all files are read: how many journals there are bears on the answer. */
  async #pupils(value: unknown): Promise<unknown> {
    const { announceChanges, pupils, readPupilsParams } = await this.#load();
    const session = await this.#current();
    this.#announcing ??= announceChanges(session);
    await session.workspace.walk();
    return pupils(session, readPupilsParams(value));
  }

  /** Messages of our own about one document. */
  #listenToOwn(): void {
    const nothing = () => null;
    this.#answers("daystave/today" satisfies TodayMethod, ({ today }) => today, nothing);
    this.#answers("daystave/staff" satisfies StaffMethod, ({ staff }) => staff, nothing);
    this.#answers("daystave/planMinutes" satisfies PlanMinutesMethod, ({ planMinutes }) => planMinutes, nothing);
    this.#answers("daystave/export" satisfies ExportMethod, ({ exportExercise }) => exportExercise, nothing);
    this.#answers("daystave/sheet" satisfies SheetMethod, ({ sheet }) => sheet, nothing);
    this.#answers(
      "daystave/choices" satisfies ChoicesMethod,
      ({ choices }) => choices,
      () => [],
    );
  }

  /** Null where nobody knows the document. */
  async #sound(value: unknown): Promise<unknown> {
    const { readSoundParams, sound } = await this.#load();
    const params = readSoundParams(value);
    if (!params) throw new ResponseError(ErrorCodes.InvalidParams, "daystave/sound needs a uri, a line and a text.");
    const place = await (await this.#current()).placeOf(params.uri);
    return place ? sound(place, params) : null;
  }

  #answers<Params extends { readonly textDocument: { readonly uri: string } }>(
    method: string,
    handlerOf: (handlers: Handlers) => (place: Place, params: Params) => unknown,
    unknown: () => unknown,
  ): void {
    this.connection.onRequest(method, this.#onDocument(method, handlerOf, unknown));
  }

  /** The way every request about one document goes: find the document, hand it to the feature's handler. */
  #onDocument<Params extends { readonly textDocument: { readonly uri: string } }, Result>(
    method: string,
    handlerOf: (
      handlers: Handlers,
    ) => (place: Place, params: Params, token: CancellationToken) => Result | Promise<Result>,
    unknown: (handlers: Handlers) => Result,
  ): (params: Params, token: CancellationToken) => Promise<Result> {
    return this.#boundary.request(method, async (params: Params, token: CancellationToken) => {
      const handlers = await this.#load();
      const place = await (await this.#current()).placeOf(params.textDocument.uri);
      if (token.isCancellationRequested) cancelled();
      return place ? handlerOf(handlers)(place, params, token) : unknown(handlers);
    });
  }

  /** Does something with the session in the order in which messages came. */
  #tell(name: string, what: (session: Session) => void | Promise<void>): Promise<void> {
    return this.#boundary.notification(name, async () => what(await this.#current()))();
  }

  #load(): Promise<Handlers> {
    this.#handlers ??= this.host.handlers(this.#bundles, this.#language);
    return this.#handlers;
  }

  #current(): Promise<Session> {
    this.#session ??= this.#open?.();
    return (
      this.#session ??
      Promise.reject(new ResponseError(ErrorCodes.ServerNotInitialized, "The first message must be initialize."))
    );
  }
}
