import { Selection, Uri, ViewColumn, type WebviewPanel, window, workspace } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type {
  ChangedParams,
  PreviewFigures,
  PreviewMethod,
  PreviewParams,
  PreviewResult,
} from "../../shared/protocol.ts";
import { pageHtml } from "./html.ts";
import { isFromPage, type ToPage } from "./messages.ts";

const UNAVAILABLE =
  "The figures cannot be read just now. They come back with the next change to the journal; the output named Daystave says why.";

/** The editor's side of one preview: asks the server while the page is visible, and takes the reader to a line. */
export class PreviewPanel {
  readonly #panel: WebviewPanel;
  readonly #client: BaseLanguageClient;
  #document: Uri;
  /** What the page shows; undefined while it shows nothing, as after it was hidden. */
  #shown: PreviewFigures | undefined;
  /** Counts the questions, so that a late answer to an earlier one is dropped. */
  #asked = 0;

  constructor(panel: WebviewPanel, extension: Uri, client: BaseLanguageClient, document: Uri) {
    this.#panel = panel;
    this.#client = client;
    this.#document = document;
    panel.webview.onDidReceiveMessage((message: unknown) => this.#receive(message));
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#shown = undefined; // the page is gone until it says that it is ready again
    });
    panel.webview.html = pageHtml(panel.webview, extension);
  }

  reveal(): void {
    this.#panel.reveal(undefined, true);
  }

  /** Shows the journal of another document, which may be the same one. */
  async follow(document: Uri): Promise<void> {
    if (document.toString() === this.#document.toString()) return;
    this.#document = document;
    await this.#refresh({ uri: document.toString() });
  }

  /** The server says that a journal's figures may have changed. */
  async changed({ journal, version }: ChangedParams): Promise<void> {
    const shown = this.#shown;
    const same = shown?.journal === journal;
    if (same && shown.version === version) return;
    // With nothing to show the server may not have known the document yet: then any journal's news may be ours.
    if (!same && shown && shown.rows.length > 0) return;
    await this.#refresh({ uri: this.#document.toString(), version: same ? shown.version : undefined });
  }

  dispose(): void {
    this.#panel.dispose();
  }

  async #receive(message: unknown): Promise<void> {
    if (!isFromPage(message)) return;
    if (message.type === "ready") await this.#refresh({ uri: this.#document.toString() });
    else await this.#revealLine(message.uri, message.line);
  }

  async #refresh(params: PreviewParams): Promise<void> {
    if (!this.#panel.visible) return;
    this.#asked += 1;
    const question = this.#asked;
    const method: PreviewMethod = "daystave/preview";
    const answer = await this.#client.sendRequest<PreviewResult>(method, params).catch(() => undefined); // the client has logged why
    if (question !== this.#asked || !this.#panel.visible) return;
    if (answer && "unchanged" in answer) return;
    this.#shown = answer;
    if (!answer) return this.#post({ type: "unavailable", message: UNAVAILABLE });
    this.#post({ type: "figures", uri: params.uri, figures: answer });
  }

  #post(message: ToPage): void {
    void this.#panel.webview.postMessage(message);
  }

  /** Only to places that the page was given: it cannot make the editor open anything else. */
  async #revealLine(place: string, line: number): Promise<void> {
    if (!this.#shown?.rows.some((row) => row.uri === place && row.line === line)) return;
    const uri = Uri.parse(place);
    const open = window.visibleTextEditors.find((editor) => editor.document.uri.toString() === uri.toString());
    const document = open?.document ?? (await workspace.openTextDocument(uri));
    const { range } = document.lineAt(Math.min(line, document.lineCount - 1));
    await window.showTextDocument(document, {
      viewColumn: open?.viewColumn ?? ViewColumn.One,
      selection: new Selection(range.start, range.start),
    });
  }
}
