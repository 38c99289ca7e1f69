import { afterEach, beforeEach, expect, test, vi } from "vitest";

/** As much of the editor as is asked: texts that are shown, their tabs, and who listens. */
const editor = vi.hoisted(() => {
  class TabInputText {
    constructor(readonly uri: { toString(): string }) {}
  }
  class Selection {
    readonly active: { line: number; character: number; isEqual(other: { line: number; character: number }): boolean };
    readonly isEmpty: boolean;
    constructor(line: number, character: number, toLine = line, toCharacter = character) {
      this.isEmpty = line === toLine && character === toCharacter;
      this.active = {
        line,
        character,
        isEqual: (other) => other.line === line && other.character === character,
      };
    }
  }
  return {
    TabInputText,
    Selection,
    shown: [] as ReturnType<typeof Object>[],
    tabs: [] as { input: unknown }[],
    onVisible: () => {},
    onTabs: (_: { closed: readonly unknown[] }) => {},
    onSelection: (_: { textEditor: unknown; kind?: number }) => {},
  };
});

vi.mock("vscode", () => ({
  TabInputText: editor.TabInputText,
  Selection: editor.Selection,
  Disposable: { from: () => ({ dispose() {} }) },
  window: {
    get visibleTextEditors() {
      return editor.shown;
    },
    tabGroups: {
      get all() {
        return [{ viewColumn: 1, tabs: editor.tabs }];
      },
      onDidChangeTabs: (listener: typeof editor.onTabs) => {
        editor.onTabs = listener;
      },
    },
    onDidChangeVisibleTextEditors: (listener: typeof editor.onVisible) => {
      editor.onVisible = listener;
    },
    onDidChangeTextEditorSelection: (listener: typeof editor.onSelection) => {
      editor.onSelection = listener;
      return { dispose() {} };
    },
  },
}));

const { openAtToday } = await import("../../client/open-at-today.ts");

/** What the window keeps from one start to the next. */
let kept: readonly string[] = [];
/** What is done while the server is asked. */
let meanwhile = () => {};

afterEach(() => void vi.useRealTimers());
beforeEach(() => {
  vi.useFakeTimers();
  kept = [];
  editor.shown = [];
  editor.tabs = [];
  meanwhile = () => {};
});

function start(): void {
  const workspaceState = {
    get: () => kept,
    update: async (_: string, value: readonly string[]) => {
      kept = value;
    },
  };
  const client = {
    code2ProtocolConverter: { asUri: String },
    sendRequest: async () => {
      meanwhile();
      return { line: 7, character: 2 };
    },
  };
  openAtToday({ workspaceState } as never, client as never);
}

interface Shown {
  selection: { readonly active: { readonly line: number } };
  readonly document: { version: number };
  visibleRanges: { start: { line: number } }[];
}

/** A text comes into sight, with a tab of its own or without. */
async function show(name: string, { line = 0, tab = true, language = "practice-journal", tell = true } = {}) {
  const uri = { toString: () => `file:///${name}` };
  const text: Shown & Record<string, unknown> = {
    document: { uri, languageId: language, version: 1 } as never,
    selection: new editor.Selection(line, 0),
    visibleRanges: [{ start: { line: 0 } }],
    viewColumn: 1,
    revealRange() {},
  };
  if (tab) editor.tabs = [...editor.tabs, { input: new editor.TabInputText(uri) }];
  editor.shown = [text];
  if (tell) editor.onVisible();
  await later();
  return text;
}

/** What was asked is answered, and the text has been in sight for a while. */
async function later(): Promise<void> {
  await vi.advanceTimersByTimeAsync(1_000);
}

const lineOf = (text: Shown): number => text.selection.active.line;

test("a journal that is first shown in a tab opens where the server says", async () => {
  start();
  expect(lineOf(await show("a.practice"))).toBe(7);
  expect(lineOf(await show("b.practice"))).toBe(7);
});

test("also the one whose coming into sight started the extension", async () => {
  const text = await show("a.practice", { tell: false });
  start();
  await later();
  expect(lineOf(text)).toBe(7);
});

test("where a link or an earlier time placed the cursor it stays", async () => {
  start();
  expect(lineOf(await show("a.practice", { line: 3 }))).toBe(3);
});

test("nor is a link overtaken whose place is told a moment after the text", async () => {
  start();
  setTimeout(() => {
    (editor.shown[0] as Shown).selection = new editor.Selection(3, 0);
  }, 100);
  expect(lineOf(await show("a.practice"))).toBe(3);
});

test("shown again it stays, until its tab was closed", async () => {
  start();
  await show("a.practice");
  const again = await show("a.practice", { tab: false });
  expect(lineOf(again)).toBe(0);
  const closed = editor.tabs;
  editor.tabs = [];
  editor.shown = [];
  editor.onTabs({ closed });
  expect(lineOf(await show("a.practice"))).toBe(7);
});

test("a tab that comes back with its window keeps its cursor, at the top as well", async () => {
  start();
  await show("a.practice");
  editor.tabs = [];
  const restored = await show("a.practice", { tell: false });
  start(); // the window was loaded anew
  await later();
  expect(lineOf(restored)).toBe(0);
});

test("what is no journal, and what has no tab of its own, is left alone", async () => {
  start();
  expect(lineOf(await show("a.txt", { language: "plaintext" }))).toBe(0);
  expect(lineOf(await show("a.practice", { tab: false }))).toBe(0);
});

test("while the server is asked, whatever the player does counts more", async () => {
  start();
  const doing: ((text: Shown) => void)[] = [
    (text) => {
      text.selection = new editor.Selection(1, 0);
    },
    (text) => {
      text.document.version++;
    },
    (text) => {
      text.visibleRanges = [{ start: { line: 20 } }];
    },
    (text) => editor.onSelection({ textEditor: text, kind: 1 }), // with a key or the mouse, to where it was
    () => {
      editor.shown = [];
    },
  ];
  for (const [i, act] of doing.entries()) {
    meanwhile = () => act(editor.shown[0] as Shown);
    expect(lineOf(await show(`${i}.practice`))).toBeLessThan(2);
  }
});
