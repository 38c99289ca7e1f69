import { type FromPage, isPageState, isToPage, type PageState } from "../messages.ts";
import { FiguresView } from "./figures-view.ts";

declare function acquireVsCodeApi(): {
  postMessage(message: FromPage): void;
  getState(): unknown;
  setState(state: PageState): void;
};

/** Milliseconds of rest after which the place in the page is remembered. */
const SCROLL_REST = 150;

const editor = acquireVsCodeApi();
const view = new FiguresView(document.querySelector("main")!, (uri, line) =>
  editor.postMessage({ type: "reveal", uri, line }),
);
const kept = editor.getState();
let journal: string | undefined;
let uri: string | undefined;
let resting: ReturnType<typeof setTimeout> | undefined;

window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
  if (!isToPage(data)) return;
  if (data.type === "unavailable") return view.complain(data.message);
  view.show(data.figures);
  if (journal === undefined) window.scrollTo(0, isPageState(kept) ? kept.scroll : 0);
  else if (journal !== data.figures.journal) window.scrollTo(0, 0);
  journal = data.figures.journal;
  uri = data.uri;
  remember();
});
window.addEventListener("scroll", () => {
  clearTimeout(resting);
  resting = setTimeout(remember, SCROLL_REST);
});
editor.postMessage({ type: "ready" });

function remember(): void {
  if (uri !== undefined) editor.setState({ uri, scroll: window.scrollY });
}
