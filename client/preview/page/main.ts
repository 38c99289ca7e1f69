import type { PreviewFingers, PreviewPlace } from "../../../shared/preview.ts";
import { type FromPage, isPageState, isToPage, type PageState } from "../messages.ts";
import { PageView } from "./page-view.ts";
import type { StaffAsk } from "./staff.ts";

declare function acquireVsCodeApi(): {
  postMessage(message: FromPage): void;
  getState(): unknown;
  setState(state: PageState): void;
};

/** Milliseconds of rest after which the place in the page is remembered. */
const SCROLL_REST = 150;
/** Begins the names of unfolded rows that the server is asked for. */
const EXERCISE = "exercise ";

const NOTHING_ASKED: PageState["asks"] = { choice: null, most: null, open: null, plan: null };

const editor = acquireVsCodeApi();
const found = editor.getState();
const kept = isPageState(found) ? found : undefined;
let { asks, locked } = kept ?? { asks: NOTHING_ASKED, locked: false };
let journal: string | undefined;
let uri: string | undefined;
let resting: ReturnType<typeof setTimeout> | undefined;
let shown = 0;

const around = {
  unfolded: new Set<string>(kept?.unfolded),
  open: kept?.open ?? null,
  reveal: ({ uri, line }: PreviewPlace) => editor.postMessage({ type: "reveal", uri, line }),
  isolate: ({ place: { uri, line } }: PreviewFingers, rank: number) =>
    editor.postMessage({ type: "isolate", uri, line, rank }),
  keep() {
    const open = around.open?.startsWith(EXERCISE) ? around.open.slice(EXERCISE.length) : null;
    if (open !== asks.open) ask({ ...asks, open });
    remember();
  },
  choose(choice: NonNullable<typeof asks.choice>) {
    ask({ ...asks, choice, most: null });
  },
  askForPlan(plan: NonNullable<typeof asks.plan>) {
    ask({ ...asks, plan });
  },
  planAsked: () => asks.plan,
  hear: (place: PreviewPlace | null, text: string) => editor.postMessage({ type: "hear", place, text }),
  writeTempo: ({ uri, line }: PreviewPlace, bpm: number) => editor.postMessage({ type: "writeTempo", uri, line, bpm }),
  writePlan: () => editor.postMessage({ type: "writePlan" }),
  askForStaff: ({ width, fingerings }: StaffAsk) => editor.postMessage({ type: "staff", width, fingerings }),
  askForMore(count: number) {
    ask({ ...asks, most: shown + count });
  },
};
const view = new PageView(document.querySelector("main")!, around);

window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
  if (!isToPage(data)) return;
  if (data.type === "unavailable") return view.complain(data.message);
  if (data.type === "cursor") return view.mark(data);
  if (data.type === "sound") return view.sound(data.text, data.sound);
  if (data.type === "staff") return view.showStaff(data.staff);
  if (data.type === "lock") {
    locked = data.locked;
    return remember();
  }
  if (!view.show(data.figures)) return askForAll();
  const { exercises } = data.figures;
  shown = exercises ? exercises.recent.length + exercises.earlier.length : 0;
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
  if (uri === undefined) return;
  const { open, unfolded } = around;
  editor.setState({ uri, scroll: window.scrollY, asks, locked, open, unfolded: [...unfolded] });
}
