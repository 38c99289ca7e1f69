import type { PreviewPlace } from "../../../shared/preview.ts";
import { type FromPupils, isPupilsState, isToPupils, type PupilsState } from "../messages.ts";
import { PupilsView } from "./pupils-view.ts";

declare function acquireVsCodeApi(): {
  postMessage(message: FromPupils): void;
  getState(): unknown;
  setState(state: PupilsState): void;
};

/** Milliseconds of rest after which the place in the page is remembered. */
const SCROLL_REST = 150;

const editor = acquireVsCodeApi();
const kept = editor.getState();
let isFirst = true;
let resting: ReturnType<typeof setTimeout> | undefined;

const reveal = ({ uri, line }: PreviewPlace) => editor.postMessage({ type: "reveal", uri, line });
const view = new PupilsView(document.querySelector("main")!, reveal);

window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
  if (!isToPupils(data)) return;
  if (data.type === "unavailable") return view.complain(data.message);
  view.show(data.shown);
  if (isFirst && isPupilsState(kept)) window.scrollTo(0, kept.scroll);
  isFirst = false;
});
window.addEventListener("scroll", () => {
  clearTimeout(resting);
  resting = setTimeout(() => editor.setState({ scroll: window.scrollY }), SCROLL_REST);
});
editor.postMessage({ type: "ready" });
