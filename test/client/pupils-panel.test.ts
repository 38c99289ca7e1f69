import { beforeEach, expect, test, vi } from "vitest";
import type { FromPupils, ToPupils } from "../../client/pupils/messages.ts";
import { pupils } from "../../server/features/pupils/pupils.ts";
import type { PupilsParams, PupilsShown } from "../../shared/pupils.ts";
import { journalOf } from "../features/journal-text.ts";
import { day } from "../plan/written.ts";

/** As much of the editor as the panel asks of it. */
const editor = vi.hoisted(() => ({
  said: [] as string[],
  shown: [] as string[],
  made: [] as { panel: FakePanel; column: number }[],
}));

interface FakePanel {
  visible: boolean;
  readonly sent: ToPupils[];
  say(message: FromPupils): Promise<void>;
  close(): void;
}

vi.mock("vscode", async () => {
  const made = (column: number) => {
    let fromPage = async (_: unknown) => {};
    let gone = () => {};
    const sent: ToPupils[] = [];
    const panel = {
      visible: true,
      sent,
      say: (message: FromPupils) => fromPage(message),
      close: () => gone(),
      reveal: () => void editor.said.push("revealed"),
      dispose: () => {},
      onDidDispose: (listener: () => void) => {
        gone = listener;
      },
      onDidChangeViewState: () => {},
      webview: {
        html: "",
        cspSource: "here:",
        asWebviewUri: (uri: unknown) => uri,
        postMessage: (message: ToPupils) => sent.push(message),
        onDidReceiveMessage: (listener: typeof fromPage) => {
          fromPage = listener;
        },
      },
    };
    editor.made.push({ panel, column });
    return panel;
  };
  return {
    ...(await import("../support/english-editor.ts")),
    Uri: { parse: (text: string) => ({ toString: () => text }), joinPath: (_: unknown, path: string) => path },
    Selection: class {
      constructor(readonly active: { readonly line: number }) {}
    },
    ViewColumn: { One: 1, Beside: -2 },
    window: {
      visibleTextEditors: [],
      createWebviewPanel: (_type: string, _title: string, column: number) => made(column),
      showInformationMessage: async (text: string) => void editor.said.push(text),
      showTextDocument: async (document: { uri: string }, { selection }: { selection: { active: { line: number } } }) =>
        void editor.shown.push(`${document.uri} ${selection.active.line}`),
    },
    workspace: {
      openTextDocument: async (uri: unknown) => ({
        uri: String(uri),
        lineCount: 100,
        lineAt: (line: number) => ({ range: { start: { line } } }),
      }),
    },
  };
});

vi.resetModules(); // what both panels lean on may know the editor of another test
const { PupilsPanel } = await import("../../client/pupils/panel.ts");
const { JournalNews } = await import("../../client/journal-news.ts");

const ROW = pupils([journalOf("player Noor\n2026-03-02\nset C major\n")], () => day("2026-03-09"))[0]!;
const TWO: PupilsShown = { version: 1, pupils: [ROW, { ...ROW, key: "other", name: "Ben" }] };

/** A panel with its server, which answers what `answer.now` is. */
function withAnswer(first: unknown) {
  const answer = { now: first };
  const asked: PupilsParams[] = [];
  let changed = () => {};
  const client = {
    onNotification: (_: string, listener: () => void) => {
      changed = listener;
      return { dispose: () => {} };
    },
    onDidChangeState: () => ({ dispose: () => {} }),
    isRunning: () => true,
    sendRequest: async (_: string, params: PupilsParams) => {
      asked.push(params);
      if (answer.now instanceof Error) throw answer.now;
      return answer.now;
    },
  };
  const panel = new PupilsPanel("ext:" as never, client as never, new JournalNews(client as never));
  return { panel, asked, answer, changed: async () => changed() };
}

beforeEach(() => {
  for (const list of [editor.said, editor.shown, editor.made]) list.length = 0;
});

test("with two journals the page opens beside, shows them when it is ready, and opens once", async () => {
  const { panel } = withAnswer(TWO);
  await panel.show();
  expect(editor.made.map(({ column }) => column)).toEqual([-2]);
  const { panel: page } = editor.made[0]!;
  await page.say({ type: "ready" });
  expect(page.sent).toEqual([{ type: "pupils", shown: TWO }]);
  await panel.show();
  expect([editor.made.length, editor.said]).toEqual([1, ["revealed"]]);
});

test("with fewer it says so in one sentence, and opens nothing", async () => {
  await withAnswer({ ...TWO, pupils: [ROW] }).panel.show();
  expect(editor.made).toEqual([]);
  expect(editor.said).toEqual([
    "This page is for two journals or more in one workspace: each pupil has a folder with a journal.practice of its own.",
  ]);
});

test("it follows the journals, and sends nothing where nothing changed", async () => {
  const { panel, asked, answer, changed } = withAnswer(TWO);
  await panel.show();
  const { panel: page } = editor.made[0]!;
  await page.say({ type: "ready" });
  answer.now = { unchanged: true };
  await changed();
  await expect.poll(() => asked.at(-1)).toEqual({ version: 1 });
  answer.now = { ...TWO, version: 2 };
  await changed();
  await expect.poll(() => page.sent.length).toBe(2);
});

test("it says when the server cannot answer, and comes back", async () => {
  const { panel, answer, changed } = withAnswer(TWO);
  await panel.show();
  const { panel: page } = editor.made[0]!;
  answer.now = new Error("no server");
  await page.say({ type: "ready" });
  expect(page.sent.at(-1)!.type).toBe("unavailable");
  answer.now = TWO;
  await changed();
  await expect.poll(() => page.sent.at(-1)!.type).toBe("pupils");
});

test("it leads to lines that it shows, and to nothing else", async () => {
  const { panel } = withAnswer(TWO);
  await panel.show();
  const { panel: page } = editor.made[0]!;
  await page.say({ type: "ready" });
  const { uri, line } = ROW.set[0]!.place;
  await page.say({ type: "reveal", uri, line });
  await page.say({ type: "reveal", uri, line: 77 });
  await page.say({ type: "reveal", uri: "file:///etc/passwd", line: 0 });
  expect(editor.shown).toEqual([`${uri} ${line}`]);
});

test("once closed it asks nothing, and opens anew", async () => {
  const { panel, asked, changed } = withAnswer(TWO);
  await panel.show();
  editor.made[0]!.panel.close();
  const before = asked.length;
  await changed();
  expect(asked.length).toBe(before);
  await panel.show();
  expect(editor.made.length).toBe(2);
});
