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
import { PreviewPanel, TITLE } from "./panel.ts";

export const PREVIEW_TYPE = "daystave.preview";

/** The one preview at the side: opens it, brings it back after a restart, lets it follow the text and the server. */
export class PreviewPanels implements Disposable, WebviewPanelSerializer {
  readonly #extension: Uri;
  readonly #client: BaseLanguageClient;
  readonly #subscriptions: Disposable[];
  #current: PreviewPanel | undefined;

  constructor(extension: Uri, client: BaseLanguageClient, news: JournalNews) {
    this.#extension = extension;
    this.#client = client;
    this.#subscriptions = [
      news.listen((params) => this.#current?.changed(params)),
      client.onDidChangeState(() => {
        if (client.isRunning()) void this.#current?.serverStarted();
      }),
      window.onDidChangeActiveTextEditor((editor) => {
        if (editor && isJournal(editor.document)) void this.#current?.follow(editor.document.uri);
      }),
      // A text of another language that becomes a journal is closed and opened, and stays the active one.
      workspace.onDidOpenTextDocument((document) => {
        if (document === window.activeTextEditor?.document && isJournal(document))
          void this.#current?.follow(document.uri);
      }),
      window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
        if (isJournal(textEditor.document))
          this.#current?.cursorMoved(textEditor.document.uri, selections[0]!.active.line);
      }),
    ];
  }

  /** Shows the figures of a document's journal; the text keeps the cursor. */
  async show(document: Uri): Promise<void> {
    if (this.#current) {
      this.#current.reveal();
      await this.#current.show(document);
      return;
    }
    const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    this.#adopt(window.createWebviewPanel(PREVIEW_TYPE, TITLE, column), document);
  }

  /** Has the preview stay with the journal that it shows, or follow the text again. */
  stay(locked: boolean): void {
    this.#current?.stay(locked);
  }

  /** Called by the editor after a restart, with what the page had kept. */
  async deserializeWebviewPanel(panel: WebviewPanel, state: unknown): Promise<void> {
    const document = isPageState(state) ? Uri.parse(state.uri) : openJournal();
    if (document && !this.#current) this.#adopt(panel, document);
    else panel.dispose(); // nothing to show, or shown already
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
    this.#current?.dispose();
  }

  #adopt(panel: WebviewPanel, document: Uri): void {
    panel.webview.options = { enableScripts: true, localResourceRoots: [pageFolder(this.#extension)] };
    panel.iconPath = Uri.joinPath(this.#extension, "client/icon.svg");
    panel.onDidDispose(() => {
      this.#current = undefined;
    });
    this.#current = new PreviewPanel(panel, this.#extension, this.#client, document);
  }
}

/** Some open journal, for a page that had not kept which one it showed. */
function openJournal(): Uri | undefined {
  return workspace.textDocuments.find(isJournal)?.uri;
}

function isJournal({ languageId }: TextDocument): boolean {
  return languageId === "practice-journal";
}
