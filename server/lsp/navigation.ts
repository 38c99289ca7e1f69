import type {
  CancellationToken,
  DefinitionParams,
  DocumentHighlight,
  DocumentHighlightParams,
  Location,
  PrepareRenameParams,
  Range,
  ReferenceParams,
  RenameParams,
  SymbolInformation,
  WorkspaceEdit,
  WorkspaceSymbolParams,
} from "vscode-languageserver";
import type { Refusal } from "../features/explain/refusal.ts";
import { definitionsAt } from "../features/navigation/definition.ts";
import { highlightsAt } from "../features/navigation/highlights.ts";
import { journalSymbols } from "../features/navigation/journal-symbols.ts";
import type { Location as Found } from "../features/navigation/named.ts";
import { renameableAt } from "../features/navigation/prepare-rename.ts";
import { referencesAt } from "../features/navigation/references.ts";
import { renameAt } from "../features/navigation/rename.ts";
import { JOURNAL_SYMBOL_KINDS, textEdit } from "./convert.ts";
import { inSlices } from "./in-slices.ts";
import type { Place, Session } from "./session.ts";
import { workspaceEditOf } from "./workspace-edit.ts";

/** Why there is no answer: the client has cancelled, or the text changed while one was worked out. */
export type NoAnswer = "cancelled" | "changed";

/** What a request that may go through a whole journal comes to. */
export type Answer<T> = Promise<T | NoAnswer>;

export async function definition(place: Place, { position }: DefinitionParams, token: CancellationToken) {
  const { session, uri } = place;
  return located(session, await worked(place, token, (journal) => definitionsAt(journal, uri, position)));
}

export async function references(place: Place, { position, context }: ReferenceParams, token: CancellationToken) {
  const { session, uri } = place;
  return located(session, await worked(place, token, (journal) => referencesAt(journal, uri, position, context)));
}

/** `DocumentHighlightKind` (3.17): Read is 2, Write 3. */
export function highlights({ journal, uri }: Place, { position }: DocumentHighlightParams): DocumentHighlight[] {
  return highlightsAt(journal, uri, position).map(({ range, declares }) => ({ range, kind: declares ? 3 : 2 }));
}

/** The place of the name under the cursor, and what to change. */
export async function prepareRename(
  place: Place,
  { position }: PrepareRenameParams,
  token: CancellationToken,
): Answer<{ range: Range; placeholder: string } | Refusal> {
  const found = await worked(place, token, (journal) => renameableAt(journal, place.uri, position));
  if (typeof found === "string" || !found.ok) return found;
  return { range: found.range, placeholder: found.called };
}

export async function rename(
  place: Place,
  { position, newName }: RenameParams,
  token: CancellationToken,
): Answer<WorkspaceEdit | Refusal> {
  const { session, uri } = place;
  const answer = await worked(place, token, (journal) => renameAt(journal, uri, position, newName));
  if (typeof answer === "string" || !answer.ok) return answer;
  return workspaceEditOf(
    session,
    answer.files.map(({ uri: key, edits }) => ({ key, uri: spelled(session, key), edits: edits.map(textEdit) })),
  );
}

export async function workspaceSymbols(
  session: Session,
  { query }: WorkspaceSymbolParams,
  token: CancellationToken,
): Answer<SymbolInformation[]> {
  await session.workspace.walk();
  const found = await inSlices(journalSymbols([...session.workspace.journals], query), token);
  if (found === undefined) return "cancelled";
  return found.map(({ name, kind, uri, range, container }) => ({
    name,
    kind: JOURNAL_SYMBOL_KINDS[kind],
    location: { uri: spelled(session, uri), range },
    containerName: container,
  }));
}

/**
 * Goes through the journal as it stands once all files are read, in slices between which other messages are answered.
 * An edit that comes in between makes the answer one about another text.
 */
async function worked<T>(
  { session, journal: known, uri }: Place,
  token: CancellationToken,
  stepsOf: (journal: Place["journal"]) => Generator<void, T>,
): Answer<T> {
  const { workspace } = session;
  await workspace.walk();
  const journal = workspace.journalOf(uri) ?? known;
  const answer = await inSlices(stepsOf(journal), token, () => workspace.journalOf(uri) !== journal);
  if (token.isCancellationRequested) return "cancelled";
  return answer ?? "changed";
}

function located(session: Session, found: readonly Found[] | NoAnswer): Location[] | NoAnswer {
  return typeof found === "string" ? found : found.map(({ uri, range }) => ({ uri: spelled(session, uri), range }));
}

/** As the editor spells it, where the file is open. */
function spelled({ workspace }: Session, key: string): string {
  return workspace.openDocument(key)?.uri ?? key;
}
