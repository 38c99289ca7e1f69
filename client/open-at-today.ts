import { Disposable, type ExtensionContext, Selection, TabInputText, type TextEditor, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { TodayMethod, TodayResult } from "../shared/protocol.ts";

/**
 * How long a text has been shown before its cursor is placed, in milliseconds: where an editor follows a link, it tells
 * of the text first, and a moment later of the selection.
 */
const SETTLING = 300;

/** Under it the addresses of journals with a tab are kept, so that those of a window that comes back are known. */
const KEPT = "shown";

/**
 * Puts the cursor where today is, or at the end, when a journal is first shown in a tab and nothing else has placed it.
 * A tab that comes back with its window keeps its cursor, and so does one that is shown again.
 */
export function openAtToday({ workspaceState }: ExtensionContext, client: BaseLanguageClient): Disposable {
  const shown = new Set(workspaceState.get<readonly string[]>(KEPT, []));
  const keep = () => void workspaceState.update(KEPT, [...shown]);
  const look = () => {
    for (const editor of window.visibleTextEditors) {
      const uri = editor.document.uri.toString();
      if (editor.document.languageId !== "practice-journal" || shown.has(uri) || !hasTab(editor)) continue;
      shown.add(uri);
      keep();
      void placeCursor(editor, client);
    }
  };
  const forget = () => {
    const open = new Set(
      window.tabGroups.all.flatMap(({ tabs }) => tabs.flatMap(({ input }) => addressOf(input) ?? [])),
    );
    for (const uri of shown) if (!open.has(uri)) shown.delete(uri);
    keep();
  };
  look();
  return Disposable.from(
    window.onDidChangeVisibleTextEditors(look),
    window.tabGroups.onDidChangeTabs(({ closed }) => {
      if (closed.length > 0) forget();
      look();
    }),
  );
}

/** A text beside its earlier version, or one that is peeked at, has none of its own. */
function hasTab({ document, viewColumn }: TextEditor): boolean {
  const group = window.tabGroups.all.find((each) => each.viewColumn === viewColumn);
  return group?.tabs.some(({ input }) => addressOf(input) === document.uri.toString()) ?? false;
}

function addressOf(input: unknown): string | undefined {
  return input instanceof TabInputText ? input.uri.toString() : undefined;
}

async function placeCursor(editor: TextEditor, client: BaseLanguageClient): Promise<void> {
  const { document } = editor;
  const { version } = document;
  const isUntouched = (): boolean =>
    editor.selection.isEmpty &&
    editor.selection.active.isEqual(TOP.active) &&
    document.version === version &&
    (editor.visibleRanges[0]?.start.line ?? 0) === 0;
  let isMoved = false;
  const moves = window.onDidChangeTextEditorSelection(({ textEditor, kind }) => {
    if (textEditor === editor && kind !== undefined) isMoved = true; // by a person: back to the top, perhaps
  });
  try {
    if (!isUntouched()) return;
    const method: TodayMethod = "daystave/today";
    const uri = client.code2ProtocolConverter.asUri(document.uri);
    const [place] = await Promise.all([
      client.sendRequest<TodayResult>(method, { textDocument: { uri } }),
      new Promise((settled) => setTimeout(settled, SETTLING)),
    ]);
    if (!place || isMoved || !isUntouched() || !window.visibleTextEditors.includes(editor)) return;
    editor.selection = new Selection(place.line, place.character, place.line, place.character);
    editor.revealRange(editor.selection);
  } catch {
    // It stays at the top: the client has logged why.
  } finally {
    moves.dispose();
  }
}

const TOP = new Selection(0, 0, 0, 0);
