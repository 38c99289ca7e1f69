import { commands, l10n, type TextEditor, Uri, type WebviewPanel, window } from "vscode";
import type { BaseLanguageClient } from "vscode-languageclient";
import type {
  ChangedParams,
  PreviewFigures,
  PreviewMethod,
  PreviewParams,
  PreviewPlace,
  PreviewUnchanged,
} from "../../shared/preview.ts";
import type { SoundMethod, SoundParams } from "../../shared/sound.ts";
import type { StaffMethod, StaffParams } from "../../shared/staff.ts";
import { runAt } from "../at-cursor.ts";
import { pageHtml } from "./html.ts";
import {
  type FromPage,
  hashesIn,
  isFigures,
  isFromPage,
  isStaff,
  isUnchanged,
  type PageAsks,
  placesIn,
  type ToPage,
} from "./messages.ts";
import { revealLine } from "./reveal-line.ts";
import { ScrollSync, type ShownForLine } from "./scroll-sync.ts";
import { isSound } from "./sound-shape.ts";

const UNAVAILABLE = l10n.t(
  "Daystave cannot read the journal just now; see the Daystave output for why. The page comes back with the next change.",
);

/** The title until the journal's name is known. */
export const TITLE = l10n.t("Practice Preview");

/** In a condition of the manifest: whether the preview that has the focus stays with its journal. */
const STAYS = "daystave.previewStays";

/** How long the cursor must rest before its exercise is looked for, in milliseconds. */
const CURSOR_REST = 120;

/** How a preview begins. */
export interface PanelStart {
  readonly document: Uri;
  /** Whether it comes back with its window, to where it was. */
  readonly isBack: boolean;
  /** Whether it stays with the journal of that document. */
  readonly locked: boolean;
}

/** The editor's side of one preview: asks the server while the page is visible, and takes the reader to a line. */
export class PreviewPanel {
  readonly #panel: WebviewPanel;
  readonly #client: BaseLanguageClient;
  readonly #scroll: ScrollSync;
  #document: Uri;
  /** The line of the document that the cursor is on. */
  #cursor: number | undefined;
  #asks: PageAsks = { choice: null, most: null, open: null, plan: null };
  /** Stays with its journal when another one is looked at. */
  #locked: boolean;
  /** The journal that was shown last, also while the page is hidden. */
  #journal: string | undefined;
  /** What the page shows; undefined while it shows nothing, as after it was hidden. */
  #shown: PreviewFigures | undefined;
  /** Counts the questions, so that a late answer to an earlier one is dropped. */
  #asked = 0;
  #staffsAsked = 0;
  #resting: ReturnType<typeof setTimeout> | undefined;
  /** A panel that is closed may be asked nothing, not even whether it is in sight. */
  #closed = false;
  /** The answer for a page that wants nothing of its own, asked for while the page is still being set up. */
  #early: Promise<unknown> | undefined;
  /** The last that the server said of a change while that answer was waiting. */
  #news: ChangedParams | undefined;

  constructor(panel: WebviewPanel, extension: Uri, client: BaseLanguageClient, start: PanelStart) {
    const { document, locked } = start;
    this.#panel = panel;
    this.#client = client;
    this.#document = document;
    this.#locked = locked;
    this.#cursor = cursorIn(document);
    this.#scroll = new ScrollSync(this.#around(), start);
    panel.webview.onDidReceiveMessage((message: unknown) => this.#receive(message));
    panel.onDidDispose(() => {
      this.#closed = true;
      clearTimeout(this.#resting);
      this.#scroll.dispose();
    });
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#shown = undefined; // the page is gone until it says that it is ready again
      this.#tellWhetherItStays();
    });
    panel.webview.html = pageHtml(panel.webview, extension, "preview");
    this.#early = this.#ask({ uri: document.toString(), cursor: this.#cursor });
  }

  get #isInSight(): boolean {
    return !this.#closed && this.#panel.visible;
  }

  /** Whether it has the focus. */
  get isActive(): boolean {
    return !this.#closed && this.#panel.active;
  }

  get isLocked(): boolean {
    return this.#locked;
  }

  reveal(): void {
    this.#panel.reveal(undefined, true);
  }

  /** Has what stands at the cursor in sight, whatever was scrolled meanwhile. */
  async showCursor(): Promise<void> {
    this.#scroll.want();
    await this.#refresh(this.#again());
  }

  /** Shows the journal of a document that was asked for, which may be the same one. */
  async show(document: Uri): Promise<void> {
    if (document.toString() === this.#document.toString()) return;
    this.#document = document;
    this.#cursor = cursorIn(document);
    await this.#refresh({ uri: document.toString() });
  }

  /**
   * Another document is looked at: its journal is shown, unless the page stays with its own.
   *
   * @returns whether the document belongs to what it shows
   */
  async follow(document: Uri): Promise<boolean> {
    const uri = document.toString();
    if (uri === this.#document.toString()) return true;
    if (!this.#locked) {
      await this.show(document);
      return true;
    }
    // One that came back and has shown nothing yet stays with what it came back with.
    const answer = this.#journal === undefined ? undefined : await this.#ask({ uri, cursor: cursorIn(document) });
    if (this.#closed || !isFigures(answer) || answer.journal !== this.#journal) return false;
    this.#document = document;
    this.#cursor = cursorIn(document);
    if (this.#isInSight) this.#showFigures(uri, answer);
    return true;
  }

  /** A text was scrolled. */
  scrolled(editor: TextEditor): void {
    const goesWith = editor.document.uri.toString() === this.#document.toString();
    if (goesWith && this.#isInSight && this.#shown) this.#scroll.textScrolled(editor);
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
    if (same && shown.version === version && !shown.reading) return;
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

  /** Whether the page stays with its journal when another one is looked at. */
  stay(locked: boolean): void {
    this.#lock(locked);
    this.#post({ type: "lock", locked });
  }

  #lock(locked: boolean): void {
    this.#locked = locked;
    this.#name();
    this.#tellWhetherItStays();
  }

  #tellWhetherItStays(): void {
    if (this.isActive) void commands.executeCommand("setContext", STAYS, this.#locked);
  }

  #name(): void {
    if (!this.#shown) return;
    const { name } = this.#shown;
    this.#panel.title = this.#locked ? l10n.t("Practice: {0} (stays)", name) : l10n.t("Practice: {0}", name);
  }

  dispose(): void {
    this.#panel.dispose();
  }

  async #receive(message: unknown): Promise<void> {
    if (!isFromPage(message)) return;
    if (message.type === "reveal") return this.#revealLine(message.uri, message.line);
    if (message.type === "isolate") return this.#isolate(message);
    if (message.type === "writePlan") return this.#writePlan();
    if (message.type === "hear") return this.#hear(message);
    if (message.type === "writeTempo") return this.#writeTempo(message);
    if (message.type === "staff") return this.#showStaff(message);
    if (message.type === "scrolled") return this.#pageScrolled(message);
    this.#asks = message.asks;
    if (message.type === "ready") {
      this.#lock(message.locked);
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
    if (!early || Object.values(this.#asks).some((each) => each !== null)) return false;
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
    const { choice, most, open, plan } = this.#asks;
    const whole: PreviewParams = {
      ...params,
      ...(choice === null ? {} : { choice }),
      ...(most === null ? {} : { most }),
      ...(open === null ? {} : { open }),
      ...(plan === null ? {} : { plan }),
      ...(this.#shown ? { known: hashesIn(this.#shown) } : {}),
    };
    return this.#client.sendRequest<unknown>(method, whole).catch(() => undefined);
  }

  #showFigures(uri: string, figures: PreviewFigures): void {
    this.#shown = figures;
    this.#journal = figures.journal;
    this.#name();
    this.#post({ type: "figures", uri, figures });
    this.#scroll.cursorShown(figures);
  }

  #showCursor({ underCursor, shownBy, fingers, hear }: PreviewUnchanged): void {
    if (this.#shown) this.#shown = { ...this.#shown, underCursor, shownBy, fingers, hear };
    this.#post({ type: "cursor", underCursor, fingers, hear });
    this.#scroll.cursorShown({ underCursor, shownBy });
  }

  /** What the scrolling asks of this preview. */
  #around(): ConstructorParameters<typeof ScrollSync>[0] {
    const document = () => this.#document;
    return {
      get document() {
        return document();
      },
      shows: ({ underCursor, shownBy }) => underCursor !== null || (shownBy !== null && this.#leadsTo(shownBy)),
      bring: ({ underCursor: key, shownBy }) => shownBy && this.#post({ type: "bring", key, place: shownBy }),
      shownFor: (line) => this.#shownFor(line),
    };
  }

  async #shownFor(line: number): Promise<ShownForLine | undefined> {
    const answer = this.#shown ? await this.#ask({ ...this.#again(), cursor: line }) : undefined;
    return this.#isInSight && (isFigures(answer) || isUnchanged(answer)) ? answer : undefined;
  }

  #leadsTo({ uri, line }: PreviewPlace): boolean {
    return this.#shown !== undefined && placesIn(this.#shown).some((each) => each.uri === uri && each.line === line);
  }

  /** Only where the page leads to: it cannot make a text scroll anywhere else. */
  #pageScrolled(place: PreviewPlace): void {
    if (this.#leadsTo(place)) this.#scroll.pageScrolled(place);
  }

  /** The staff of the exercise under the cursor; of several questions the last is answered. */
  async #showStaff({ width, fingerings }: Extract<FromPage, { readonly type: "staff" }>): Promise<void> {
    this.#staffsAsked += 1;
    const question = this.#staffsAsked;
    const method: StaffMethod = "daystave/staff";
    const position = { line: this.#cursor ?? 0, character: 0 };
    const params: StaffParams = { textDocument: { uri: this.#document.toString() }, position, width, fingerings };
    const answer =
      this.#cursor === undefined
        ? null
        : await this.#client.sendRequest<unknown>(method, params).catch(() => undefined);
    if (question !== this.#staffsAsked || !this.#isInSight) return;
    this.#post({ type: "staff", staff: isStaff(answer) ? answer : null });
  }

  #post(message: ToPage): void {
    void this.#panel.webview.postMessage(message);
  }

  /** Only a finger change that the page was given: it cannot make the editor write anything else. */
  async #isolate({ uri, line, rank }: Extract<FromPage, { readonly type: "isolate" }>): Promise<void> {
    const fingers = this.#shown?.fingers;
    if (!fingers?.canIsolate || fingers.place.uri !== uri || fingers.place.line !== line) return;
    if (rank >= fingers.steps.length) return;
    await runAt(this.#client, "daystave.server.fingerChange", Uri.parse(uri), { line, character: 0 }, rank);
  }

  /** Only the plan that the page was given, of so many minutes, for the instrument that was chosen. */
  async #writePlan(): Promise<void> {
    const { today, choice } = this.#shown ?? {};
    if (!today?.plan || today.plan.stretches.length === 0) return;
    // Minutes that were typed just now may still be on their way to the server.
    const asked = [this.#asks.plan?.minutes ?? today.plan.minutes, choice?.instrument ?? null];
    await runAt(this.#client, "daystave.server.writePlan", this.#document, { line: 0, character: 0 }, ...asked);
  }

  /** Beside a line that the page was given, or none. */
  async #hear({ place, text }: Extract<FromPage, { readonly type: "hear" }>): Promise<void> {
    const method: SoundMethod = "daystave/sound";
    const { uri, line } = place && this.#isToHear(place) ? place : { uri: this.#document.toString(), line: -1 };
    const params: SoundParams = { uri, line, text };
    const answer = await this.#client.sendRequest<unknown>(method, params).catch(() => undefined);
    this.#post({ type: "sound", text, sound: isSound(answer) ? answer : null });
  }

  async #writeTempo({ uri, line, bpm }: Extract<FromPage, { readonly type: "writeTempo" }>): Promise<void> {
    if (this.#isToHear({ uri, line }))
      await runAt(this.#client, "daystave.server.writeTempo", Uri.parse(uri), { line, character: 0 }, bpm);
  }

  #isToHear({ uri, line }: PreviewPlace): boolean {
    const place = this.#shown?.hear.place;
    return place?.uri === uri && place.line === line;
  }

  /** Only to places that the page was given: it cannot make the editor open anything else. */
  async #revealLine(place: string, line: number): Promise<void> {
    if (this.#leadsTo({ uri: place, line })) await revealLine(Uri.parse(place), line);
  }
}

/** The line of the cursor in a document that is in sight. */
function cursorIn(document: Uri): number | undefined {
  const editor = window.visibleTextEditors.find((each) => each.document.uri.toString() === document.toString());
  return editor?.selection.active.line;
}
