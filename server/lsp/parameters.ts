/**
 * What a parameter must be: a text, a whole number from 0, anything, a list, or an object with these fields, of which
 * those with a `?` may be missing or null.
 */
type Shape = "text" | "number" | "anything" | readonly [Shape] | { readonly [field: string]: Shape };

const DOCUMENT: Shape = { textDocument: { uri: "text" } };
const POSITION: Shape = { line: "number", character: "number" };
const RANGE: Shape = { start: POSITION, end: POSITION };
const FOLDERS: Shape = [{ uri: "text" }];

/** What the server reads of each message (Language Server Protocol 3.17), as far as it could not do without. */
const PARAMETERS: Readonly<Record<string, Shape>> = {
  initialize: { capabilities: {}, "rootUri?": "text", "workspaceFolders?": FOLDERS },
  "textDocument/didOpen": { textDocument: { uri: "text", languageId: "text", version: "number", text: "text" } },
  "textDocument/didChange": {
    textDocument: { uri: "text", version: "number" },
    contentChanges: [{ text: "text", "range?": RANGE }],
  },
  "textDocument/didClose": DOCUMENT,
  "textDocument/didSave": DOCUMENT,
  "textDocument/hover": { ...DOCUMENT, position: POSITION },
  "textDocument/completion": { ...DOCUMENT, position: POSITION },
  "completionItem/resolve": { label: "text" },
  "textDocument/codeAction": { ...DOCUMENT, range: RANGE, context: { "only?": ["text"] } },
  "textDocument/documentSymbol": DOCUMENT,
  "textDocument/foldingRange": DOCUMENT,
  "textDocument/formatting": DOCUMENT,
  "textDocument/rangeFormatting": { ...DOCUMENT, range: RANGE },
  "textDocument/onTypeFormatting": { ...DOCUMENT, position: POSITION, ch: "text" },
  "textDocument/selectionRange": { ...DOCUMENT, positions: [POSITION] },
  "textDocument/documentLink": DOCUMENT,
  "textDocument/codeLens": DOCUMENT,
  "textDocument/inlayHint": { ...DOCUMENT, range: RANGE },
  "textDocument/semanticTokens/full": DOCUMENT,
  "textDocument/semanticTokens/range": { ...DOCUMENT, range: RANGE },
  "textDocument/diagnostic": DOCUMENT,
  "textDocument/definition": { ...DOCUMENT, position: POSITION },
  "textDocument/references": { ...DOCUMENT, position: POSITION, context: {} },
  "textDocument/documentHighlight": { ...DOCUMENT, position: POSITION },
  "textDocument/prepareRename": { ...DOCUMENT, position: POSITION },
  "textDocument/rename": { ...DOCUMENT, position: POSITION, newName: "text" },
  "workspace/symbol": { query: "text" },
  "daystave/staff": { ...DOCUMENT, position: POSITION, width: "number" },
  "daystave/export": { ...DOCUMENT, position: POSITION, format: "text" },
  "daystave/sheet": { ...DOCUMENT, of: "text" },
  "daystave/choices": { ...DOCUMENT, of: "text" },
  "workspace/diagnostic": { previousResultIds: [{ uri: "text", value: "text" }] },
  "workspace/executeCommand": { command: "text", "arguments?": ["anything"] },
  "workspace/didChangeConfiguration": {},
  "workspace/didChangeWatchedFiles": { changes: [{ uri: "text" }] },
  "workspace/didChangeWorkspaceFolders": { event: { added: FOLDERS, removed: FOLDERS } },
};

/** What is wrong with a message's parameters, in a sentence; undefined where the server can read them. */
export function wrongParameters(method: string, params: unknown): string | undefined {
  const shape = Object.hasOwn(PARAMETERS, method) ? PARAMETERS[method] : undefined;
  const fault = shape && faultIn(params, shape, "");
  return fault && `${method} needs ${fault.path || "parameters"}: ${fault.needs}.`;
}

interface ShapeFault {
  /** As `textDocument.uri`; empty for the parameters themselves. */
  readonly path: string;
  readonly needs: string;
}

function faultIn(value: unknown, shape: Shape, path: string): ShapeFault | undefined {
  if (shape === "anything") return undefined;
  if (shape === "text") return typeof value === "string" ? undefined : { path, needs: "a string" };
  if (shape === "number")
    return Number.isInteger(value) && (value as number) >= 0 ? undefined : { path, needs: "a whole number from 0" };
  if (isList(shape)) {
    if (!Array.isArray(value)) return { path, needs: "a list" };
    return firstOf(value.map((each, i) => () => faultIn(each, shape[0], `${path}[${i}]`)));
  }
  if (typeof value !== "object" || value === null || Array.isArray(value)) return { path, needs: "an object" };
  const fields = value as Readonly<Record<string, unknown>>;
  return firstOf(
    Object.entries(shape).map(([key, each]) => () => {
      const name = key.replace(/\?$/, "");
      const field = fields[name];
      if (name !== key && (field === undefined || field === null)) return undefined;
      return faultIn(field, each, path === "" ? name : `${path}.${name}`);
    }),
  );
}

function isList(shape: Shape): shape is readonly [Shape] {
  return Array.isArray(shape);
}

function firstOf(looks: readonly (() => ShapeFault | undefined)[]): ShapeFault | undefined {
  for (const look of looks) {
    const fault = look();
    if (fault) return fault;
  }
  return undefined;
}
