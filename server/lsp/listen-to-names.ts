import {
  type CancellationToken,
  type Connection,
  LSPErrorCodes,
  ResponseError,
  type SymbolInformation,
  type WorkspaceSymbolParams,
} from "vscode-languageserver";
import type { Refusal } from "../features/explain/refusal.ts";
import { cancelled } from "./error-boundary.ts";
import type { Handlers } from "./host.ts";
import type { Answer, NoAnswer } from "./navigation.ts";
import type { Place } from "./session.ts";

/** The way every request about one document goes (see `Server`). */
type OnDocument = <Params extends { readonly textDocument: { readonly uri: string } }, Result>(
  method: string,
  handlerOf: (
    handlers: Handlers,
  ) => (place: Place, params: Params, token: CancellationToken) => Result | Promise<Result>,
  unknown: (handlers: Handlers) => Result,
) => (params: Params, token: CancellationToken) => Promise<Result>;

/** Answers what goes from a name to where it is. */
export function listenToNames(
  connection: Connection,
  onDocument: OnDocument,
  symbols: (params: WorkspaceSymbolParams, token: CancellationToken) => Answer<SymbolInformation[]>,
): void {
  const definition = onDocument(
    "textDocument/definition",
    (handlers) => handlers.definition,
    () => [],
  );
  connection.onDefinition(async (params, token) => answered(await definition(params, token)));
  const references = onDocument(
    "textDocument/references",
    (handlers) => handlers.references,
    () => [],
  );
  connection.onReferences(async (params, token) => answered(await references(params, token)));
  connection.onDocumentHighlight(
    onDocument(
      "textDocument/documentHighlight",
      (handlers) => handlers.highlights,
      () => [],
    ),
  );
  const prepare = onDocument(
    "textDocument/prepareRename",
    (handlers) => handlers.prepareRename,
    (handlers) => handlers.unknownFile,
  );
  connection.onPrepareRename(async (params, token) => allowed(answered(await prepare(params, token))));
  const rename = onDocument(
    "textDocument/rename",
    (handlers) => handlers.rename,
    (handlers) => handlers.unknownFile,
  );
  connection.onRenameRequest(async (params, token) => allowed(answered(await rename(params, token))));
  connection.onWorkspaceSymbol(async (params, token) => answered(await symbols(params, token)));
}

/** The client learns why there is no answer by the codes that the protocol has for that (3.17). */
function answered<T>(answer: T | NoAnswer): T {
  if (answer === "cancelled") cancelled();
  if (answer === "changed") throw new ResponseError(LSPErrorCodes.ContentModified, "The text has changed. Try again.");
  return answer as T;
}

/** A sentence that says why not is shown by the editor. */
function allowed<T extends object>(answer: T | Refusal): T {
  if ("ok" in answer && answer.ok === false) throw new ResponseError(LSPErrorCodes.RequestFailed, answer.reason);
  return answer as T;
}
