import type { PreviewFingers } from "../../../shared/preview.ts";
import { type FromPage, isPageState, isToPage, type PageState } from "../messages.ts";
import { PageView } from "./page-view.ts";

declare function acquireVsCodeApi(): {
  postMessage(message: FromPage): void;
  getState(): unknown;
  setState(state: PageState): void;
};

/** Milliseconds of rest after which the place in the page is remembered. */
const SCROLL_REST = 150;

const editor = acquireVsCodeApi();
const found = editor.getState();
const kept = isPageState(found) ? found : undefined;
let { asks, locked } = kept ?? { asks: { choice: null, most: null }, locked: false };
let journal: string | undefined;
let uri: string | undefined;
let resting: ReturnType<typeof setTimeout> | undefined;
let shown = 0;

const around = {
  openTables: new Set<string>(),
  allKeys: kept?.allKeys ?? false,
  reveal: ({ uri, line }: { readonly uri: string; readonly line: number }) =>
    editor.postMessage({ type: "reveal", uri, line }),
  isolate: ({ place: { uri, line } }: PreviewFingers, rank: number) =>
    editor.postMessage({ type: "isolate", uri, line, rank }),
  keep: remember,
  choose(choice: NonNullable<typeof asks.choice>) {
    ask({ choice, most: null });
  },
  askForMore(count: number) {
    ask({ ...asks, most: shown + count });
  },
  lock(stays: boolean) {
    locked = stays;
    editor.postMessage({ type: "lock", locked });
    remember();
  },
};
const view = new PageView(document.querySelector("main")!, around, locked);

window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
  if (!isToPage(data)) return;
  if (data.type === "unavailable") return view.complain(data.message);
  if (data.type === "cursor") return view.mark(data.underCursor, data.fingers);
  if (!view.show(data.figures)) return askForAll();
  shown = data.figures.moving.groups.reduce((count, { exercises }) => count + exercises.length, 0);
  if (journal === undefined) window.scrollTo(0, kept?.scroll ?? 0);
  else if (journal !== data.figures.journal) window.scrollTo(0, 0);
  journal = data.figures.journal;
  uri = data.uri;
  remember();
});
window.addEventListener("scroll", () => {
  clearTimeout(resting);
  resting = setTimeout(remember, SCROLL_REST);
});
askForAll();

function ask(wanted: typeof asks): void {
  asks = wanted;
  editor.postMessage({ type: "ask", asks });
  remember();
}

function askForAll(): void {
  editor.postMessage({ type: "ready", asks, locked });
}

function remember(): void {
  if (uri !== undefined) editor.setState({ uri, scroll: window.scrollY, asks, locked, allKeys: around.allKeys });
}
