import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import type { TextEditor, Uri } from "vscode";

/** As much of the editor as is asked: its settings, its texts in sight, and where they are scrolled to. */
const editor = vi.hoisted(() => ({
  settings: {} as Record<string, boolean>,
  texts: [] as unknown[],
  scrolled: [] as string[],
}));

vi.mock("vscode", () => ({
  Uri: { parse: (text: string) => ({ toString: () => text }) },
  Range: class {
    readonly start: { readonly line: number };
    constructor(line: number) {
      this.start = { line };
    }
  },
  TextEditorRevealType: { InCenter: 1 },
  window: {
    get visibleTextEditors() {
      return editor.texts;
    },
  },
  workspace: {
    getConfiguration: () => ({ get: (name: string, usual: boolean) => editor.settings[name] ?? usual }),
  },
}));

vi.resetModules();
const { ScrollSync } = await import("../../client/preview/scroll-sync.ts");

const URI_A = "j:/a.practice";
/** Every tenth line is a day, the others are exercises: of the same name in each tens. */
const lineText = (line: number) => (line % 10 === 0 ? "2026-03-02 Mon" : `  exercise ${Math.floor(line / 10)}`);

/** A text of 200 lines of which twenty are in sight. */
function text({ top = 0, cursor = 0, uri = URI_A } = {}) {
  const shown = {
    document: { uri: { toString: () => uri }, lineCount: 200, lineAt: (line: number) => ({ text: lineText(line) }) },
    selection: { active: { line: cursor } },
    visibleRanges: [{ start: { line: top }, end: { line: top + 19 } }],
    revealRange: ({ start }: { readonly start: { readonly line: number } }) => {
      editor.scrolled.push(`${uri} ${start.line}`);
      shown.scrollTo(start.line - 10);
    },
    scrollTo: (line: number) => {
      shown.visibleRanges = [{ start: { line }, end: { line: line + 19 } }];
    },
  };
  editor.texts.push(shown);
  return shown as typeof shown & TextEditor;
}

const shownFor = (line: number) =>
  line % 10 === 0
    ? { underCursor: null, shownBy: { uri: URI_A, line } }
    : { underCursor: `exercise ${Math.floor(line / 10)}`, shownBy: { uri: URI_A, line: 190 } };

function sync({ isBack = false } = {}) {
  const brought: string[] = [];
  const looked: number[] = [];
  const made = new ScrollSync(
    {
      document: { toString: () => URI_A } as Uri,
      shows: ({ underCursor }) => underCursor !== null,
      bring: ({ underCursor }) => brought.push(underCursor!),
      shownFor: async (line) => {
        looked.push(line);
        return shownFor(line);
      },
    },
    { isBack },
  );
  return { sync: made, brought, looked };
}

beforeEach(() => {
  vi.useFakeTimers();
  editor.settings = {};
  editor.texts = [];
  editor.scrolled = [];
});
afterEach(() => vi.useRealTimers());

describe("the page goes after the text", () => {
  test("to the exercise of the cursor, once: typing on a line, or on another of the same exercise, leaves the page", () => {
    const { sync: scroll, brought } = sync();
    for (const line of [1, 1, 2, 15, 3]) scroll.cursorShown(shownFor(line));
    expect(brought).toEqual(["exercise 0", "exercise 1", "exercise 0"]);
  });

  test("not to a day, and not at all where the setting says so", () => {
    const { sync: scroll, brought } = sync();
    scroll.cursorShown(shownFor(10));
    editor.settings["scrollWithEditor"] = false;
    scroll.cursorShown(shownFor(11));
    expect(brought).toEqual([]);
  });

  test("where somebody asked for it, whatever the setting says and wherever the page is", () => {
    const { sync: scroll, brought } = sync();
    scroll.cursorShown(shownFor(11));
    editor.settings["scrollWithEditor"] = false;
    scroll.want();
    scroll.cursorShown(shownFor(11));
    expect(brought).toEqual(["exercise 1", "exercise 1"]);
  });

  test("one that comes back with its window stays where it was until the cursor moves", () => {
    const { sync: scroll, brought } = sync({ isBack: true });
    scroll.cursorShown(shownFor(11));
    scroll.cursorShown(shownFor(11));
    expect(brought).toEqual([]);
    scroll.cursorShown(shownFor(21));
    expect(brought).toEqual(["exercise 2"]);
  });

  test("a text that is scrolled: to what is in its middle, once it rests, and back with the cursor", async () => {
    const { sync: scroll, brought, looked } = sync();
    const shown = text({ cursor: 1 });
    scroll.cursorShown(shownFor(1));
    for (const top of [30, 60, 90]) {
      shown.scrollTo(top);
      scroll.textScrolled(shown);
    }
    await vi.runAllTimersAsync();
    expect(looked).toEqual([99]); // in the middle is 100, a day
    expect(brought).toEqual(["exercise 0", "exercise 9"]);
    scroll.cursorShown(shownFor(1)); // figures that changed
    expect(brought).toHaveLength(2);
    shown.scrollTo(0);
    scroll.textScrolled(shown);
    await vi.runAllTimersAsync();
    expect(brought).toEqual(["exercise 0", "exercise 9", "exercise 0"]);
  });
});

describe("the text goes after the page", () => {
  test("only where the setting says so", () => {
    const { sync: scroll } = sync();
    text();
    scroll.pageScrolled({ uri: URI_A, line: 150 });
    expect(editor.scrolled).toEqual([]);
    editor.settings["scrollEditor"] = true;
    scroll.pageScrolled({ uri: URI_A, line: 150 });
    expect(editor.scrolled).toEqual([`${URI_A} 150`]);
  });

  test("not where the line is in sight already, nor to a text that is not, nor beyond its end", () => {
    editor.settings["scrollEditor"] = true;
    const { sync: scroll } = sync();
    text();
    for (const line of [5, 200]) scroll.pageScrolled({ uri: URI_A, line });
    scroll.pageScrolled({ uri: "j:/b.practice", line: 150 });
    expect(editor.scrolled).toEqual([]);
  });

  test("and the page does not go after that again: but after the reader who scrolls the text next", async () => {
    editor.settings["scrollEditor"] = true;
    const { sync: scroll, brought } = sync();
    const shown = text();
    scroll.pageScrolled({ uri: URI_A, line: 155 });
    scroll.textScrolled(shown);
    await vi.runAllTimersAsync();
    expect(brought).toEqual([]);
    shown.scrollTo(60);
    scroll.textScrolled(shown);
    await vi.runAllTimersAsync();
    expect(brought).toEqual(["exercise 6"]); // of 69, as 70 is a day
  });
});
