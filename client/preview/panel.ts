import { Selection, type TextDocument, Uri, ViewColumn, type WebviewPanel, window, workspace } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type {
  ChangedParams,
  PreviewFigures,
  PreviewMethod,
  PreviewParams,
  PreviewUnchanged,
} from "../../shared/preview.ts";
import { runAt } from "../at-cursor.ts";
import { pageHtml } from "./html.ts";
import {
  type FromPage,
  hashesIn,
  isFigures,
  isFromPage,
  isUnchanged,
  type PageAsks,
  placesIn,
  type ToPage,
} from "./messages.ts";

const UNAVAILABLE =
  "The figures cannot be read just now. They come back with the next change to the journal; the output named Daystave says why.";

const GONE = "The file of that line cannot be opened: it may have been moved or deleted.";

/** The title until the journal's name is known. */
export const TITLE = "Practice Preview";

/** How long the cursor must rest before its exercise is looked for, in milliseconds. */
const CURSOR_REST = 120;

/** The editor's side of one preview: asks the server while the page is visible, and takes the reader to a line. */
export class PreviewPanel {
  readonly #panel: WebviewPanel;
  readonly #client: BaseLanguageClient;
  #document: Uri;
  /** The line of the document that the cursor is on. */
  #cursor: number | undefined;
  #asks: PageAsks = { choice: null, most: null };
  /** Stays with its journal when another one is looked at. */
  #locked = false;
  /** What the page shows; undefined while it shows nothing, as after it was hidden. */
  #shown: PreviewFigures | undefined;
  /** Counts the questions, so that a late answer to an earlier one is dropped. */
  #asked = 0;
  #resting: ReturnType<typeof setTimeout> | undefined;
  /** A panel that is closed may be asked nothing, not even whether it is in sight. */
  #closed = false;
  /** The answer for a page that wants nothing of its own, asked for while the page is still being set up. */
  #early: Promise<unknown> | undefined;
  /** The last that the server said of a change while that answer was waiting. */
  #news: ChangedParams | undefined;

  constructor(panel: WebviewPanel, extension: Uri, client: BaseLanguageClient, document: Uri) {
    this.#panel = panel;
    this.#client = client;
    this.#document = document;
    this.#cursor = cursorIn(document);
    panel.webview.onDidReceiveMessage((message: unknown) => this.#receive(message));
    panel.onDidDispose(() => {
      this.#closed = true;
      clearTimeout(this.#resting);
    });
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#shown = undefined; // the page is gone until it says that it is ready again
    });
    panel.webview.html = pageHtml(panel.webview, extension);
    this.#early = this.#ask({ uri: document.toString(), cursor: this.#cursor });
  }

  get #isInSight(): boolean {
    return !this.#closed && this.#panel.visible;
  }

  reveal(): void {
    this.#panel.reveal(undefined, true);
  }

  /** Shows the journal of a document that was asked for, which may be the same one. */
  async show(document: Uri): Promise<void> {
    if (document.toString() === this.#document.toString()) return;
    this.#document = document;
    this.#cursor = cursorIn(document);
    await this.#refresh({ uri: document.toString() });
  }

  /** Another document is looked at: its journal is shown, unless the page stays with its own. */
  async follow(document: Uri): Promise<void> {
    if (!this.#locked || !this.#shown) return this.show(document);
    const uri = document.toString();
    const answer = await this.#ask({ uri, cursor: cursorIn(document) });
    if (this.#closed || !isFigures(answer) || answer.journal !== this.#shown?.journal) return;
    this.#document = document;
    this.#cursor = cursorIn(document);
    this.#showFigures(uri, answer);
  }

  /** The cursor went to another place; once it rests, the exercise there is marked. */
  cursorMoved(document: Uri, line: number): void {
    if (document.toString() !== this.#document.toString() || line === this.#cursor) return;
    this.#cursor = line;
    clearTimeout(this.#resting);
    this.#resting = setTimeout(() => this.#refresh(this.#again()), CURSOR_REST);
  }

  /** The server says that a journal's figures may have changed. */
  async changed(news: ChangedParams): Promise<void> {
    this.#news = news;
    if (this.#early) return; // seen to when the page is there
    const { journal, version } = news;
    const shown = this.#shown;
    const same = shown?.journal === journal;
    if (same && shown.version === version) return;
    // With nothing to show the server may not have known the document yet: then any journal's news may be ours.
    if (!same && shown && shown.version > 0) return;
    // Without a version: the document's journal may be another one now.
    await this.#refresh({ uri: this.#document.toString() });
  }

  /**
   * A server is there, perhaps in the place of one that died: it counts versions afresh, and tells nothing until it is
   * asked.
   */
  async serverStarted(): Promise<void> {
    await this.#refresh({ uri: this.#document.toString() });
  }

  dispose(): void {
    this.#panel.dispose();
  }

  async #receive(message: unknown): Promise<void> {
    if (!isFromPage(message)) return;
    if (message.type === "reveal") return this.#revealLine(message.uri, message.line);
    if (message.type === "isolate") return this.#isolate(message);
    if (message.type === "lock") {
      this.#locked = message.locked;
      return;
    }
    this.#asks = message.asks;
    if (message.type === "ready") {
      this.#locked = message.locked;
      this.#shown = undefined;
      if (await this.#showEarly()) return;
    }
    await this.#refresh({ uri: this.#document.toString() });
  }

  /**
   * Shows what was asked for before the page was there. False where there is no such answer, or not what the page wants
   * now.
   */
  async #showEarly(): Promise<boolean> {
    const early = this.#early;
    this.#early = undefined;
    if (!early || this.#asks.choice !== null || this.#asks.most !== null) return false;
    this.#asked += 1;
    const question = this.#asked;
    const answer = await early;
    // Another question is on its way, or the page is gone.
    if (question !== this.#asked || !this.#isInSight) return true;
    const news = this.#news;
    if (!isFigures(answer) || (news && (news.journal !== answer.journal || news.version !== answer.version)))
      return false;
    this.#showFigures(this.#document.toString(), answer);
    return true;
  }

  /** The question to the figures that are shown already: what changed of them? */
  #again(): PreviewParams {
    return { uri: this.#document.toString(), ...(this.#shown ? { version: this.#shown.version } : {}) };
  }

  async #refresh(params: PreviewParams): Promise<void> {
    if (!this.#isInSight) return;
    this.#early = undefined; // whatever asks now knows more
    this.#asked += 1;
    const question = this.#asked;
    const answer = await this.#ask({ ...params, cursor: this.#cursor });
    if (question !== this.#asked || !this.#isInSight) return;
    if (isUnchanged(answer)) return this.#showCursor(answer);
    if (isFigures(answer)) return this.#showFigures(params.uri, answer);
    this.#shown = undefined;
    this.#post({ type: "unavailable", message: UNAVAILABLE });
  }

  /** Undefined where the server cannot answer; the client has logged why. */
  async #ask(params: PreviewParams): Promise<unknown> {
    const method: PreviewMethod = "daystave/preview";
    const { choice, most } = this.#asks;
    const whole: PreviewParams = {
      ...params,
      ...(choice === null ? {} : { choice }),
      ...(most === null ? {} : { most }),
      ...(this.#shown ? { known: hashesIn(this.#shown) } : {}),
    };
    return this.#client.sendRequest<unknown>(method, whole).catch(() => undefined);
  }

  #showFigures(uri: string, figures: PreviewFigures): void {
    this.#shown = figures;
    this.#panel.title = `Practice: ${figures.name}`;
    this.#post({ type: "figures", uri, figures });
  }

  #showCursor({ underCursor, fingers }: PreviewUnchanged): void {
    if (this.#shown) this.#shown = { ...this.#shown, underCursor, fingers };
    this.#post({ type: "cursor", underCursor, fingers });
  }

  #post(message: ToPage): void {
    void this.#panel.webview.postMessage(message);
  }

  /** Only a step that the page was given: it cannot make the editor write anything else. */
  async #isolate({ uri, line, rank }: Extract<FromPage, { readonly type: "isolate" }>): Promise<void> {
    const fingers = this.#shown?.fingers;
    if (!fingers?.canIsolate || fingers.place.uri !== uri || fingers.place.line !== line) return;
    if (rank >= fingers.steps.length) return;
    await runAt(this.#client, "daystave.server.isolateStep", Uri.parse(uri), { line, character: 0 }, rank);
  }

  /** Only to places that the page was given: it cannot make the editor open anything else. */
  async #revealLine(place: string, line: number): Promise<void> {
    if (!this.#shown || !placesIn(this.#shown).some((each) => each.uri === place && each.line === line)) return;
    const uri = Uri.parse(place);
    const open = window.visibleTextEditors.find((editor) => editor.document.uri.toString() === uri.toString());
    const document = open?.document ?? (await openDocument(uri));
    if (!document) return void window.showInformationMessage(GONE);
    const { range } = document.lineAt(Math.min(line, document.lineCount - 1));
    await window.showTextDocument(document, {
      viewColumn: open?.viewColumn ?? ViewColumn.One,
      selection: new Selection(range.start, range.start),
    });
  }
}

/** Undefined for a file that is gone: the figures may not have followed yet. */
async function openDocument(uri: Uri): Promise<TextDocument | undefined> {
  try {
    return await workspace.openTextDocument(uri);
  } catch {
    return undefined;
  }
}

/** The line of the cursor in a document that is in sight. */
function cursorIn(document: Uri): number | undefined {
  const editor = window.visibleTextEditors.find((each) => each.document.uri.toString() === document.toString());
  return editor?.selection.active.line;
}
