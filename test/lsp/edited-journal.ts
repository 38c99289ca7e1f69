import { vi } from "vitest";
import {
  DidChangeWatchedFilesNotification,
  DocumentSymbolRequest,
  FileChangeType,
  FoldingRangeRequest,
  HoverRequest,
  type ProtocolConnection,
  RegistrationRequest,
  SemanticTokensRequest,
  WorkspaceDiagnosticRequest,
} from "vscode-languageserver-protocol/node";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { FilesParams, FilesResult } from "../../shared/protocol.ts";
import { ROOT, replacedBy, type TypedEdit } from "../properties/edits.ts";
import type { TestClient } from "./client.ts";
import { startServerHere } from "./server-here.ts";

/** What a client may ask about one file. */
export const QUESTIONS = ["diagnostics", "folding", "symbols", "tokens", "hover", "preview"] as const;
export type Question = (typeof QUESTIONS)[number];

/** One step in the life of a journal that an editor shows. Places count around. */
export type EditorStep = { readonly uri: string } & (
  | { readonly type: "edit"; readonly edit: TypedEdit }
  | { readonly type: "undo" }
  /** Opens a closed file or closes an open one, saved or not. */
  | { readonly type: "toggle"; readonly saved: boolean }
  /** Another program writes a closed file, or deletes it; makes one that is gone. */
  | { readonly type: "written"; readonly edit: TypedEdit; readonly deleted: boolean }
  | { readonly type: "asked"; readonly question: Question; readonly at: number }
  /** Nobody types for a while. */
  | { readonly type: "pause" }
);

/** What depends on where the pointer or the cursor is. */
const AT_A_PLACE: readonly Question[] = ["hover", "preview"];
/** Where they are, by a number that is multiplied with these. */
const PLACES = [7919, 104_729, 611_953];
/** Longer texts are cut: nobody learns more from them. In UTF-16 units. */
const LONGEST = 3000;
/** Longer than anything in the server waits for quiet, in milliseconds. */
const PAUSE = 600;
/** Longer than the server waits for the last of several changes to files. */
const FILES_QUIET = 40;

/** Addresses with their texts. */
export interface State {
  readonly disk: readonly (readonly [string, string])[];
  readonly open: readonly (readonly [string, string])[];
}

/** A journal on a disk, an editor that holds some of its files open, and a server that hears of all that happens. */
export class EditedJournal {
  readonly #disk: Map<string, string>;
  readonly #open = new Map<string, TextDocument>();
  readonly #undo = new Map<string, string[]>();
  readonly #reads: string[] = [];
  #client!: TestClient;
  #edits = 0;

  private constructor(disk: State["disk"]) {
    this.#disk = new Map(disk);
  }

  static async start({ disk, open }: State): Promise<EditedJournal> {
    const journal = new EditedJournal(disk);
    journal.#client = await journal.#server();
    for (const [uri, text] of open) await journal.#openFile(uri, text);
    return journal;
  }

  get state(): State {
    return {
      disk: [...this.#disk],
      open: Array.from(this.#open.values(), (document) => [document.uri, document.getText()]),
    };
  }

  /** How many edits the server was told of. */
  get edits(): number {
    return this.#edits;
  }

  /** What the server logged: a message that it could not handle is told there. */
  get log(): readonly string[] {
    return this.#client.log;
  }

  async take(step: EditorStep): Promise<void> {
    const { uri } = step;
    const document = this.#open.get(uri);
    if (step.type === "edit") await (document ? this.#edit(document, step.edit) : this.#openFile(uri));
    else if (step.type === "undo" && document) await this.#undone(document);
    else if (step.type === "toggle") await (document ? this.#close(document, step.saved) : this.#openFile(uri));
    else if (step.type === "written" && !document) await this.#write(uri, step.edit, step.deleted);
    else if (step.type === "asked") await answer(this.#client, step.question, uri, this.#placeIn(uri, step.at));
    else if (step.type === "pause") await passed(PAUSE);
  }

  /**
   * Where the server tells something else of any file than one that was started this moment; undefined where nowhere.
   *
   * @param at where it is hovered, as a number that counts around
   */
  async differsFromFresh(at: number): Promise<string | undefined> {
    const fresh = await this.#server();
    for (const document of this.#open.values()) await settled(fresh.open(document.uri, document.getText()));
    const [told, expected] = [await this.#told(this.#client, at), await this.#told(fresh, at)];
    return difference(told, expected);
  }

  /** The preview comes first: it has the history read, without which diagnostics say what they knew before. */
  async #told(client: TestClient, at: number): Promise<unknown> {
    const told: Record<string, unknown> = {};
    const uris = [...new Set([...this.#disk.keys(), ...this.#open.keys()])].sort();
    await settled(client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds: [] }));
    for (const question of ["preview", ...QUESTIONS] as const) {
      const places = AT_A_PLACE.includes(question) ? PLACES : PLACES.slice(0, 1);
      for (const uri of uris)
        for (const place of places.map((each) => this.#placeIn(uri, at * each)))
          told[`${question} ${uri} ${JSON.stringify(place)}`] = await answer(client, question, uri, place);
    }
    return told;
  }

  #placeIn(uri: string, at: number): Place {
    const document = this.#open.get(uri) ?? documentOf(uri, this.#disk.get(uri) ?? "");
    return document.positionAt(at % (document.getText().length + 1));
  }

  async #edit(document: TextDocument, edit: TypedEdit): Promise<void> {
    const text = document.getText();
    const longest = text.length > LONGEST;
    const { start, end, text: typed } = longest ? { start: 0, end: LONGEST / 2, text: "" } : replacedBy(text, edit);
    await this.#change(document, start, end, typed);
  }

  async #undone(document: TextDocument): Promise<void> {
    const before = this.#undo.get(document.uri)?.pop();
    if (before === undefined) return;
    const text = document.getText();
    let [start, same] = [0, 0];
    const shorter = Math.min(text.length, before.length);
    while (start < shorter && text[start] === before[start]) start++;
    while (same < shorter - start && text.at(-1 - same) === before.at(-1 - same)) same++;
    await this.#change(document, start, text.length - same, before.slice(start, before.length - same));
    this.#undo.get(document.uri)?.pop();
  }

  /** The editor's own document library says what the text is then: it puts no place between CR and LF. */
  async #change(document: TextDocument, from: number, to: number, text: string): Promise<void> {
    const range = { start: document.positionAt(from), end: document.positionAt(to) };
    const stack = this.#undo.get(document.uri) ?? this.#undo.set(document.uri, []).get(document.uri)!;
    stack.push(document.getText());
    this.#edits++;
    TextDocument.update(document, [{ range, text }], document.version + 1);
    await settled(this.#client.edit(document.uri, text, range));
  }

  async #openFile(uri: string, text = this.#disk.get(uri) ?? ""): Promise<void> {
    const document = documentOf(uri, text);
    this.#open.set(uri, document);
    await settled(this.#client.open(uri, document.getText()));
  }

  async #close(document: TextDocument, saved: boolean): Promise<void> {
    const { uri } = document;
    if (saved) this.#disk.set(uri, document.getText());
    this.#open.delete(uri);
    this.#undo.delete(uri);
    await this.#readAgain(uri, this.#client.close(uri));
  }

  async #write(uri: string, edit: TypedEdit, deleted: boolean): Promise<void> {
    const text = this.#disk.get(uri) ?? "";
    const { start, end, text: typed } = replacedBy(text, edit);
    if (deleted && this.#disk.has(uri)) this.#disk.delete(uri);
    else this.#disk.set(uri, text.slice(0, start) + typed + text.slice(end));
    const told = this.#client.connection.sendNotification(DidChangeWatchedFilesNotification.type, {
      changes: [{ uri, type: this.#disk.has(uri) ? FileChangeType.Changed : FileChangeType.Deleted }],
    });
    await this.#readAgain(
      uri,
      told.then(() => passed(FILES_QUIET)),
    );
  }

  /** Until the server has read a file that no editor holds open. */
  async #readAgain(uri: string, sent: Promise<void>): Promise<void> {
    this.#reads.length = 0;
    await settled(sent);
    while (!this.#reads.includes(uri)) await passed(1);
    await passed(0);
  }

  #server(): Promise<TestClient> {
    return settled(
      startServerHere(
        {
          folderUris: [ROOT],
          options: { today: "2026-06-01", canReadFiles: true },
          prepare: (connection) => this.#answerQuestions(connection),
        },
        { readsDisk: false },
      ),
    );
  }

  #answerQuestions(connection: ProtocolConnection): void {
    connection.onRequest(RegistrationRequest.type, () => {});
    connection.onRequest("workspace/diagnostic/refresh", () => null);
    connection.onRequest<FilesResult, void>("daystave/files", ({ kind, uri }: FilesParams) => {
      if (kind === "read") this.#reads.push(uri);
      return kind === "list" ? { uris: [...this.#disk.keys()].sort() } : { text: this.#disk.get(uri) ?? null };
    });
  }
}

interface Place {
  readonly line: number;
  readonly character: number;
}

function documentOf(uri: string, text: string): TextDocument {
  return TextDocument.create(uri, "practice-journal", 1, text);
}

async function answer({ connection }: TestClient, question: Question, uri: string, position: Place): Promise<unknown> {
  const textDocument = { uri };
  switch (question) {
    case "diagnostics":
      return itemsOf(await settled(connection.sendRequest("textDocument/diagnostic", { textDocument })));
    case "folding":
      return settled(connection.sendRequest(FoldingRangeRequest.type, { textDocument }));
    case "symbols":
      return settled(connection.sendRequest(DocumentSymbolRequest.type, { textDocument }));
    case "tokens":
      return settled(connection.sendRequest(SemanticTokensRequest.type, { textDocument }));
    case "hover":
      return settled(connection.sendRequest(HoverRequest.type, { textDocument, position }));
    case "preview":
      return withoutVersion(await settled(connection.sendRequest("daystave/preview", { uri, cursor: position.line })));
  }
}

/** Where two answers differ first, and what stands there in each. */
function difference(told: unknown, expected: unknown, path = ""): string | undefined {
  if (JSON.stringify(told) === JSON.stringify(expected)) return undefined;
  const [a, b] = [told, expected] as [Record<string, unknown>, Record<string, unknown>];
  const nested = [told, expected].every((each) => typeof each === "object" && each !== null);
  if (!nested || Object.keys(a).join() !== Object.keys(b).join())
    return `${path}\n  told:  ${JSON.stringify(told)}\n  fresh: ${JSON.stringify(expected)}`;
  for (const key of Object.keys(a)) {
    const found = difference(a[key], b[key], `${path} > ${key}`);
    if (found) return found;
  }
  return undefined;
}

/** Result ids count what one server has told. */
function itemsOf(report: unknown): unknown {
  return (report as { readonly items: unknown }).items;
}

function withoutVersion(preview: unknown): unknown {
  return { ...(preview as object), version: undefined };
}

/**
 * Timers stand still (`vi.useFakeTimers`), so that the same seed gives the same run on any machine; they go on only
 * while nothing else happens that an answer could come of.
 */
async function settled<T>(promise: PromiseLike<T>): Promise<T> {
  let done = false;
  const mark = () => {
    done = true;
  };
  promise.then(mark, mark);
  for (let turns = 1; !done; turns++) {
    await new Promise((resolve) => setImmediate(resolve));
    if (turns % 100 === 0) vi.advanceTimersByTime(1);
  }
  return promise;
}

async function passed(milliseconds: number): Promise<void> {
  for (let turns = 0; turns < 10; turns++) await new Promise((resolve) => setImmediate(resolve));
  vi.advanceTimersByTime(milliseconds);
  for (let turns = 0; turns < 10; turns++) await new Promise((resolve) => setImmediate(resolve));
}
