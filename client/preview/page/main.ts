import type { PreviewFigures, PreviewFingers, PreviewPlace } from "../../../shared/preview.ts";
import { type FromPage, isPageState, isToPage, type PageState, type ToPage } from "../messages.ts";
import { PageView } from "./page-view.ts";
import { bringIntoSight, Scrolling } from "./scrolling.ts";
import type { StaffAsk } from "./staff.ts";

declare function acquireVsCodeApi(): {
  postMessage(message: FromPage): void;
  getState(): unknown;
  setState(state: PageState): void;
};

/** Begins the names of unfolded rows that the server is asked for. */
const EXERCISE = "exercise ";

const NOTHING_ASKED: PageState["asks"] = { choice: null, most: null, open: null, plan: null };

const editor = acquireVsCodeApi();
const found = editor.getState();
const kept = isPageState(found) ? found : undefined;
let { asks, locked } = kept ?? { asks: NOTHING_ASKED, locked: false };
let journal: string | undefined;
let uri: string | undefined;
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
const scrolling = new Scrolling(remember, ({ uri, line }) => editor.postMessage({ type: "scrolled", uri, line }));

window.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
  if (isToPage(data)) scrolling.quietly(() => take(data));
});
askForAll();

function take(data: ToPage): void {
  if (data.type === "unavailable") view.complain(data.message);
  else if (data.type === "cursor") view.mark(data);
  else if (data.type === "sound") view.sound(data.text, data.sound);
  else if (data.type === "staff") view.showStaff(data.staff);
  else if (data.type === "bring") bring(data.key, data.place);
  else if (data.type === "figures") show(data.uri, data.figures);
  else {
    locked = data.locked;
    remember();
  }
}

function bring(key: string | null, place: PreviewPlace): void {
  const found = view.find(key, place);
  if (found) bringIntoSight(found);
}

function show(shownUri: string, figures: PreviewFigures): void {
  if (!view.show(figures)) {
    askForAll();
    return;
  }
  const { exercises } = figures;
  shown = exercises ? exercises.recent.length + exercises.earlier.length : 0;
  if (journal === undefined) window.scrollTo(0, kept?.scroll ?? 0);
  else if (journal !== figures.journal) window.scrollTo(0, 0);
  journal = figures.journal;
  uri = shownUri;
  remember();
}

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
