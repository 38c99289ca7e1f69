import {
  type Disposable,
  type TextDocument,
  Uri,
  ViewColumn,
  type WebviewPanel,
  type WebviewPanelSerializer,
  window,
  workspace,
} from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { JournalNews } from "../journal-news.ts";
import { pageFolder } from "./html.ts";
import { isPageState } from "./messages.ts";
import { type PanelStart, PreviewPanel, TITLE } from "./panel.ts";

export const PREVIEW_TYPE = "daystave.preview";

/**
 * The previews at the side: opens them, brings them back after a restart, lets them follow the text and the server. One
 * shows whichever journal is looked at; each of the others stays with its own.
 */
export class PreviewPanels implements Disposable, WebviewPanelSerializer {
  readonly #extension: Uri;
  readonly #client: BaseLanguageClient;
  readonly #subscriptions: Disposable[];
  /** The one that was opened last, last. */
  readonly #open = new Set<PreviewPanel>();

  constructor(extension: Uri, client: BaseLanguageClient, news: JournalNews) {
    this.#extension = extension;
    this.#client = client;
    this.#subscriptions = [
      news.listen((params) => this.#each((panel) => panel.changed(params))),
      client.onDidChangeState(() => {
        if (client.isRunning()) this.#each((panel) => panel.serverStarted());
      }),
      window.onDidChangeActiveTextEditor((editor) => {
        if (editor && isJournal(editor.document)) this.#each((panel) => panel.follow(editor.document.uri));
      }),
      // A text of another language that becomes a journal is closed and opened, and stays the active one.
      workspace.onDidOpenTextDocument((document) => {
        if (document === window.activeTextEditor?.document && isJournal(document))
          this.#each((panel) => panel.follow(document.uri));
      }),
      window.onDidChangeTextEditorSelection(({ textEditor: { document }, selections }) => {
        if (isJournal(document)) this.#each((panel) => panel.cursorMoved(document.uri, selections[0]!.active.line));
      }),
      window.onDidChangeTextEditorVisibleRanges(({ textEditor }) => {
        if (isJournal(textEditor.document)) this.#each((panel) => panel.scrolled(textEditor));
      }),
    ];
  }

  /**
   * Shows the figures of a document's journal; the text keeps the cursor. One that stays with that journal is enough;
   * else it is the one that follows, or a new one.
   */
  async show(document: Uri): Promise<void> {
    const panel = await this.#showing(document);
    if (panel) return panel.reveal();
    const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    this.#adopt(window.createWebviewPanel(PREVIEW_TYPE, TITLE, column), { document, isBack: false, locked: false });
  }

  /** The same, with what stands at the cursor in sight. */
  async showCursor(document: Uri): Promise<void> {
    await this.show(document);
    await (await this.#showing(document))?.showCursor();
  }

  /** Has the preview that has the focus stay with the journal that it shows, or follow the text again. */
  stay(locked: boolean): void {
    const panel = [...this.#open].find(({ isActive }) => isActive) ?? [...this.#open].at(-1);
    panel?.stay(locked);
  }

  /** Called by the editor after a restart, with what the page had kept, once the page is in sight. */
  async deserializeWebviewPanel(panel: WebviewPanel, state: unknown): Promise<void> {
    const document = isPageState(state) ? Uri.parse(state.uri) : openJournal();
    const locked = isPageState(state) && state.locked;
    const isDouble = !locked && [...this.#open].some(({ isLocked }) => !isLocked);
    if (document && !isDouble) this.#adopt(panel, { document, isBack: true, locked });
    else panel.dispose(); // nothing to show, or shown already
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
    for (const panel of this.#open) panel.dispose();
  }

  /** The preview that shows a document's journal, or does so now. */
  async #showing(document: Uri): Promise<PreviewPanel | undefined> {
    const all = [...this.#open];
    for (const panel of all.filter(({ isLocked }) => isLocked)) if (await panel.follow(document)) return panel;
    const following = all.find(({ isLocked }) => !isLocked);
    await following?.show(document);
    return following;
  }

  #each(tell: (panel: PreviewPanel) => unknown): void {
    for (const panel of this.#open) void tell(panel);
  }

  #adopt(panel: WebviewPanel, start: PanelStart): void {
    panel.webview.options = { enableScripts: true, localResourceRoots: [pageFolder(this.#extension)] };
    panel.iconPath = Uri.joinPath(this.#extension, "client/icon.svg");
    const preview = new PreviewPanel(panel, this.#extension, this.#client, start);
    this.#open.add(preview);
    panel.onDidDispose(() => this.#open.delete(preview));
  }
}

/** Some open journal, for a page that had not kept which one it showed. */
function openJournal(): Uri | undefined {
  return workspace.textDocuments.find(isJournal)?.uri;
}

function isJournal({ languageId }: TextDocument): boolean {
  return languageId === "practice-journal";
}
