import { type Disposable, l10n, Uri, ViewColumn, type WebviewPanel, type WebviewPanelSerializer, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type { PupilsMethod, PupilsParams, PupilsShown } from "../../shared/pupils.ts";
import type { JournalNews } from "../journal-news.ts";
import { pageFolder, pageHtml } from "../preview/html.ts";
import { revealLine } from "../preview/reveal-line.ts";
import { isFromPupils, isPupilsShown, isPupilsUnchanged, placesOf, type ToPupils } from "./messages.ts";

export const PUPILS_TYPE = "daystave.pupils";

const TITLE = l10n.t("Pupils");
const UNAVAILABLE = l10n.t(
  "Daystave cannot read the journals just now; see the Daystave output for why. The page comes back with the next change.",
);
const TOO_FEW = l10n.t(
  "This page is for two journals or more in one workspace: each pupil has a folder with a journal.practice of its own.",
);

/** The one page of pupils: opens it, brings it back after a restart, has it follow the journals, leads to a line. */
export class PupilsPanel implements Disposable, WebviewPanelSerializer {
  readonly #extension: Uri;
  readonly #client: BaseLanguageClient;
  readonly #subscriptions: Disposable[];
  #panel: WebviewPanel | undefined;
  /** What the page shows; undefined while it shows nothing, as after it was hidden. */
  #shown: PupilsShown | undefined;
  /** Counts the questions, so that a late answer to an earlier one is dropped. */
  #asked = 0;

  constructor(extension: Uri, client: BaseLanguageClient, news: JournalNews) {
    this.#extension = extension;
    this.#client = client;
    this.#subscriptions = [
      news.listen(() => this.#refresh()),
      client.onDidChangeState(() => {
        this.#shown = undefined; // another server counts versions afresh
        if (client.isRunning()) void this.#refresh();
      }),
    ];
  }

  /** Opens the page beside the text, or says why there is none. */
  async show(): Promise<void> {
    const answer = await this.#ask({});
    if (!isPupilsShown(answer)) return void window.showInformationMessage(UNAVAILABLE);
    if (answer.pupils.length < 2) return void window.showInformationMessage(TOO_FEW);
    if (this.#panel) return this.#panel.reveal();
    this.#adopt(window.createWebviewPanel(PUPILS_TYPE, TITLE, ViewColumn.Beside));
  }

  /** Called by the editor after a restart. */
  async deserializeWebviewPanel(panel: WebviewPanel): Promise<void> {
    if (this.#panel)
      panel.dispose(); // shown already
    else this.#adopt(panel);
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
    this.#panel?.dispose();
  }

  #adopt(panel: WebviewPanel): void {
    this.#panel = panel;
    panel.webview.options = { enableScripts: true, localResourceRoots: [pageFolder(this.#extension)] };
    panel.iconPath = Uri.joinPath(this.#extension, "client/icon.svg");
    panel.onDidDispose(() => {
      this.#panel = undefined;
      this.#shown = undefined;
    });
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#shown = undefined; // the page is gone until it says that it is ready again
    });
    panel.webview.onDidReceiveMessage((message: unknown) => this.#receive(message));
    panel.webview.html = pageHtml(panel.webview, this.#extension, "pupils");
  }

  async #receive(message: unknown): Promise<void> {
    if (!isFromPupils(message)) return;
    if (message.type === "reveal") return this.#reveal(message.uri, message.line);
    this.#shown = undefined;
    await this.#refresh();
  }

  async #refresh(): Promise<void> {
    if (!this.#panel?.visible) return;
    this.#asked += 1;
    const question = this.#asked;
    const answer = await this.#ask(this.#shown ? { version: this.#shown.version } : {});
    if (question !== this.#asked || !this.#panel?.visible || isPupilsUnchanged(answer)) return;
    this.#shown = isPupilsShown(answer) ? answer : undefined;
    this.#post(this.#shown ? { type: "pupils", shown: this.#shown } : { type: "unavailable", message: UNAVAILABLE });
  }

  /** Undefined where the server cannot answer; the client has logged why. */
  #ask(params: PupilsParams): Promise<unknown> {
    const method: PupilsMethod = "daystave/pupils";
    return this.#client.sendRequest<unknown>(method, params).catch(() => undefined);
  }

  #post(message: ToPupils): void {
    void this.#panel?.webview.postMessage(message);
  }

  /** Only to places that the page was given: it cannot make the editor open anything else. */
  async #reveal(uri: string, line: number): Promise<void> {
    if (!this.#shown || !placesOf(this.#shown).some((place) => place.uri === uri && place.line === line)) return;
    await revealLine(Uri.parse(uri), line);
  }
}
