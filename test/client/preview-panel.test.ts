import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Uri } from "vscode";
import type { FromPage, ToPage } from "../../client/preview/messages.ts";
import type { PreviewFingers, PreviewHear, PreviewParams } from "../../shared/preview.ts";
import type { Sound, SoundParams } from "../../shared/sound.ts";
import type { PreviewStaff, StaffParams } from "../../shared/staff.ts";
import { previewOf } from "../features/preview/preview-asked.ts";

/** As much of the editor as the panel asks of it. */
const editor = vi.hoisted(() => ({
  cursor: 0,
  shown: [] as string[],
  stays: false,
  settings: {} as Record<string, boolean>,
}));

function uriOf(text: string): Uri {
  return { toString: () => text } as Uri;
}

vi.mock("vscode", async () => ({
  ...(await import("../support/english-editor.ts")),
  Uri: { parse: (text: string) => ({ toString: () => text }), joinPath: () => ({ toString: () => "ext:/" }) },
  Selection: class {
    constructor(readonly active: { readonly line: number }) {}
  },
  ViewColumn: { One: 1 },
  window: {
    get visibleTextEditors() {
      return ["j:/a.practice", "j:/b.practice", "other:/c.practice"].map((uri) => ({
        document: {
          uri: { toString: () => uri },
          lineCount: 100,
          lineAt: (line: number) => ({ range: { start: { line } } }),
        },
        selection: { active: { line: editor.cursor } },
      }));
    },
    showTextDocument: async (document: { uri: Uri }, { selection }: { selection: { active: { line: number } } }) =>
      void editor.shown.push(`${document.uri} ${selection.active.line}`),
  },
  workspace: {
    getConfiguration: () => ({ get: (name: string, usual: boolean) => editor.settings[name] ?? usual }),
  },
  commands: {
    executeCommand: async (command: string, _: string, value: boolean) => {
      if (command === "setContext") editor.stays = value;
    },
  },
}));

vi.resetModules(); // what both panels lean on may know the editor of another test
const { PreviewPanel } = await import("../../client/preview/panel.ts");

/** A day that has not begun, so that its plan is shown. */
const MORNING = previewOf("2026-03-02\n  D minor, 8ths at 60 clean\n2026-03-03\n  G major, 8ths at 60 clean\n");
const FIGURES = previewOf("2026-03-09\n  D minor, 8ths at 60 clean\n  G major, 8ths at 60 clean\n");

const FINGERS: PreviewFingers = {
  place: { uri: "j:/a.practice", line: 1 },
  steps: [{ name: "E5 to F5", movement: "2 fingers", fingerings: [], doubts: [] }],
  sentence: "",
  canIsolate: true,
};

const SHOWN_BY = { uri: "j:/a.practice", line: 1 };

const HEAR: PreviewHear = { place: { uri: "j:/a.practice", line: 1 }, lines: ["click at 60"], silent: "" };

/** A panel with its page and its server: what the one is sent, and what the other is asked. */
function open({ reading = false, figures = FIGURES, isBack = false, locked = false } = {}) {
  const sent: ToPage[] = [];
  const asked: PreviewParams[] = [];
  const ran: unknown[] = [];
  let fromPage = (_: FromPage): unknown => undefined;
  let state = () => {};
  let gone = () => {};
  let isClosed = false;
  const panel = {
    isInSight: true,
    active: true,
    get visible() {
      if (isClosed) throw new Error("Webview is disposed"); // as the editor does
      return this.isInSight;
    },
    title: "",
    webview: {
      html: "",
      cspSource: "here:",
      asWebviewUri: (uri: Uri) => uri,
      postMessage: (message: ToPage) => sent.push(message),
      onDidReceiveMessage: (listener: typeof fromPage) => {
        fromPage = listener;
      },
    },
    onDidChangeViewState: (listener: typeof state) => {
      state = listener;
    },
    onDidDispose: (listener: typeof gone) => {
      gone = listener;
    },
    dispose: () => {},
  };
  const client = {
    code2ProtocolConverter: { asUri: String },
    sendRequest: async (method: string, params: PreviewParams) => {
      if (method === "workspace/executeCommand") return void ran.push(params);
      if (method === "daystave/sound") return soundOf(params as unknown as SoundParams);
      if (method === "daystave/staff") return staffOf(params as unknown as StaffParams);
      asked.push(params);
      const journal = params.uri.split("/")[0]!;
      if (params.version === 1)
        return { unchanged: true, underCursor: `line ${params.cursor}`, shownBy: SHOWN_BY, fingers: null, hear: HEAR };
      return {
        journal,
        version: 1,
        underCursor: null,
        shownBy: null,
        fingers: FINGERS,
        hear: HEAR,
        ...figures,
        reading,
      };
    },
  };
  const document = uriOf("j:/a.practice");
  const preview = new PreviewPanel(panel as never, uriOf("ext:/"), client as never, { document, isBack, locked });
  return {
    preview,
    sent,
    asked,
    ran,
    panel,
    page: async (message: FromPage) => {
      await fromPage(message);
    },
    hide: () => {
      panel.isInSight = false;
      state();
      panel.isInSight = true;
    },
    close: () => {
      isClosed = true;
      gone();
    },
  };
}

/** Likewise: nothing sounds. */
function soundOf({ uri, line, text }: SoundParams): Sound {
  return { ok: false, reason: `${uri} ${line} ${text}` };
}

/** A server that says what it was asked. */
function staffOf({ textDocument, position, width }: StaffParams): PreviewStaff {
  const text = `${textDocument.uri} ${position.line} ${width}`;
  return { svg: "<svg/>", text, notes: [], fingered: false, sentence: "" };
}

const ASKS = { choice: null, most: null, open: null, plan: null };
const READY: FromPage = { type: "ready", asks: ASKS, locked: false };

beforeEach(() => {
  vi.useFakeTimers();
  editor.cursor = 1;
  editor.shown = [];
  editor.settings = {};
});
afterEach(() => vi.useRealTimers());

test("a page that is ready is sent all figures, and the panel is called after the journal", async () => {
  const { page, sent, asked, panel } = open();
  await page(READY);
  expect(asked).toEqual([{ uri: "j:/a.practice", cursor: 1 }]);
  expect(sent.map(({ type }) => type)).toEqual(["figures"]);
  expect(panel.title).toBe("Practice: journal");
});

test("news of its journal asks for what changed: the hashes that the page has are told", async () => {
  const { page, asked, preview } = open();
  await page(READY);
  await preview.changed({ journal: "j:", version: 1 });
  expect(asked).toHaveLength(1);
  await preview.changed({ journal: "other:", version: 5 });
  expect(asked).toHaveLength(1);
  await preview.changed({ journal: "j:", version: 2 });
  const hashes = FIGURES.exercises!.recent.map(({ hash }) => hash);
  expect(asked[1]).toEqual({ uri: "j:/a.practice", known: hashes, cursor: 1 });
});

test("figures of files that are still being read are asked for again when they are read, whatever their version", async () => {
  const { page, asked, preview } = open({ reading: true });
  await page(READY);
  await preview.changed({ journal: "j:", version: 1 });
  expect(asked).toHaveLength(2);
});

test("what is asked for while the page is set up is shown unless it is out of date by then, or the page wants something else", async () => {
  const upToDate = open();
  await upToDate.preview.changed({ journal: "j:", version: 1 });
  await upToDate.page(READY);
  expect(upToDate.asked).toHaveLength(1);
  expect(upToDate.sent.map(({ type }) => type)).toEqual(["figures"]);

  const outOfDate = open();
  await outOfDate.preview.changed({ journal: "j:", version: 2 });
  expect(outOfDate.asked).toHaveLength(1);
  await outOfDate.page(READY);
  expect(outOfDate.asked).toHaveLength(2);
  expect(outOfDate.sent.map(({ type }) => type)).toEqual(["figures"]);

  const choosing = open();
  const choice = { span: 4, instrument: null } as const;
  await choosing.page({ ...READY, asks: { ...ASKS, choice } });
  expect(choosing.asked.map((each) => each.choice)).toEqual([undefined, choice]);
  expect(choosing.sent.map(({ type }) => type)).toEqual(["figures"]);
});

test("a server in the place of one that died is asked whatever its version: it counts afresh", async () => {
  const { page, asked, sent, preview } = open();
  await page(READY);
  await preview.serverStarted();
  expect(asked[1]).not.toHaveProperty("version");
  expect(sent.map(({ type }) => type)).toEqual(["figures", "figures"]);
});

test("a page that was hidden knows nothing any more", async () => {
  const { page, asked, hide } = open();
  await page(READY);
  hide();
  await page(READY);
  expect(asked[1]).toEqual({ uri: "j:/a.practice", cursor: 1 });
});

test("a panel that is closed meanwhile is asked nothing more, and asks nothing", async () => {
  const early = open();
  const shown = early.page(READY);
  early.close();
  await shown;
  expect(early.sent).toEqual([]);

  const later = open();
  await later.page(READY);
  const refreshed = later.preview.serverStarted();
  later.preview.cursorMoved(uriOf("j:/a.practice"), 2);
  later.close();
  await refreshed;
  await vi.runAllTimersAsync();
  expect(later.sent.map(({ type }) => type)).toEqual(["figures"]);
  expect(later.asked).toHaveLength(2);
});

test("once the cursor rests on another line, the exercise there is marked", async () => {
  const { page, sent, asked, preview } = open();
  await page(READY);
  for (const line of [2, 3, 4]) preview.cursorMoved(uriOf("j:/a.practice"), line);
  preview.cursorMoved(uriOf("other:/c.practice"), 9);
  await vi.runAllTimersAsync();
  expect(asked.slice(1).map(({ cursor, version }) => [cursor, version])).toEqual([[4, 1]]);
  expect(sent.slice(1)).toEqual([
    { type: "cursor", underCursor: "line 4", fingers: null, hear: HEAR },
    { type: "bring", key: "line 4", place: SHOWN_BY },
  ]);
});

test("a staff is that of the line that the cursor is on, as wide as the page says; the last question is answered", async () => {
  const { page, sent, preview } = open();
  await page(READY);
  preview.cursorMoved(uriOf("j:/a.practice"), 4);
  await vi.runAllTimersAsync();
  const early = page({ type: "staff", width: 300, fingerings: false });
  await Promise.all([early, page({ type: "staff", width: 480, fingerings: false })]);
  const staves = sent.flatMap((message) => (message.type === "staff" ? [message.staff?.text] : []));
  expect(staves).toEqual(["j:/a.practice 4 480"]);
});

test("what is chosen in the page is asked for, and goes on being asked for", async () => {
  const { page, asked, preview } = open();
  await page(READY);
  const choice = { span: 52, instrument: null } as const;
  const plan = { minutes: 45, shownOn: null };
  await page({ type: "ask", asks: { choice, most: 400, open: "key", plan } });
  expect(asked[1]).toMatchObject({ choice, most: 400, open: "key", plan });
  expect(asked[1]).not.toHaveProperty("version");
  await preview.changed({ journal: "j:", version: 2 });
  expect(asked[2]).toMatchObject({ choice, most: 400 });
});

test("it follows the reader to another journal, unless it is to stay with its own", async () => {
  const { page, sent, asked, preview } = open();
  await page(READY);
  await preview.follow(uriOf("other:/c.practice"));
  expect(sent.at(-1)).toMatchObject({ type: "figures", uri: "other:/c.practice" });
  preview.stay(true);
  expect([sent.at(-1), editor.stays]).toEqual([{ type: "lock", locked: true }, true]);
  await preview.follow(uriOf("j:/a.practice"));
  expect(sent.at(-1)).toMatchObject({ type: "lock" });
  await preview.changed({ journal: "other:", version: 2 });
  expect(asked.at(-1)!.uri).toBe("other:/c.practice");
});

test("with its journal it stays when another file of the same one is looked at, and goes where it is asked to", async () => {
  const { page, sent, preview } = open();
  await page({ ...READY, locked: true });
  await preview.follow(uriOf("j:/b.practice"));
  expect(sent.at(-1)).toMatchObject({ type: "figures", uri: "j:/b.practice" });
  await preview.show(uriOf("other:/c.practice"));
  expect(sent.at(-1)).toMatchObject({ type: "figures", uri: "other:/c.practice" });
});

test("it leads to the lines that the page was given, and to no other", async () => {
  const { page } = open();
  await page({ type: "reveal", uri: "file:///journal/week.practice", line: 1 });
  await page(READY);
  await page({ type: "reveal", uri: "other:/c.practice", line: 1 });
  expect(editor.shown).toEqual([]);
});

test("the exercise at the cursor is marked and not brought into sight where the setting says so, unless asked for", async () => {
  editor.settings["scrollWithEditor"] = false;
  const { page, sent, preview } = open();
  await page(READY);
  preview.cursorMoved(uriOf("j:/a.practice"), 4);
  await vi.runAllTimersAsync();
  expect(sent.map(({ type }) => type)).toEqual(["figures", "cursor"]);
  await preview.showCursor();
  expect(sent.slice(2).map(({ type }) => type)).toEqual(["cursor", "bring"]);
});

test("one that stays with its journal does so while it is hidden, too, and says so in its title", async () => {
  const { page, asked, preview, hide, panel } = open();
  await page(READY);
  preview.stay(true);
  expect(panel.title).toBe("Practice: journal (stays)");
  hide();
  expect(await preview.follow(uriOf("other:/c.practice"))).toBe(false);
  expect(await preview.follow(uriOf("j:/b.practice"))).toBe(true);
  await page({ ...READY, locked: true });
  expect(asked.at(-1)!.uri).toBe("j:/b.practice");
});

test("one that comes back to stay does not go elsewhere before its page is there", async () => {
  const { page, asked, preview } = open({ isBack: true, locked: true });
  expect(await preview.follow(uriOf("other:/c.practice"))).toBe(false);
  await page({ ...READY, locked: true });
  expect(asked.map(({ uri }) => uri)).toEqual(["j:/a.practice"]);
});

test("it has a step put into the journal that the page was given, and no other", async () => {
  const { page, ran, preview } = open();
  const isolate = { type: "isolate", uri: "j:/a.practice", line: 1, rank: 0 } as const;
  await page(isolate); // before anything was given
  await page(READY);
  for (const other of [{ uri: "other:/c.practice" }, { line: 2 }, { rank: 1 }]) await page({ ...isolate, ...other });
  expect(ran).toEqual([]);
  await page(isolate);
  const at = { textDocument: { uri: "j:/a.practice" }, position: { line: 1, character: 0 } };
  expect(ran).toEqual([{ command: "daystave.server.fingerChange", arguments: [at, 0] }]);
  preview.cursorMoved(uriOf("j:/a.practice"), 4); // a line without steps
  await vi.runAllTimersAsync();
  await page(isolate);
  expect(ran).toHaveLength(1);
});

test("it has the plan written that the page was given, for as long as was asked last, and no other", async () => {
  const morning = open({ figures: MORNING });
  await morning.page({ type: "writePlan" }); // before anything was given
  expect(morning.ran).toEqual([]);
  await morning.page(READY);
  await morning.page({ type: "writePlan" });
  const at = { textDocument: { uri: "j:/a.practice" }, position: { line: 0, character: 0 } };
  const command = "daystave.server.writePlan";
  expect(morning.ran).toEqual([{ command, arguments: [at, 20, null] }]);
  const asking = morning.page({ type: "ask", asks: { ...ASKS, plan: { minutes: 45, shownOn: null } } });
  await morning.page({ type: "writePlan" }); // while the answer is on its way
  await asking;
  expect(morning.ran[1]).toEqual({ command, arguments: [at, 45, null] });

  const begun = open();
  await begun.page(READY);
  await begun.page({ type: "writePlan" });
  expect(begun.ran).toEqual([]);
});

test("a line of words is heard beside the line that the page was given, and its tempo written there alone", async () => {
  const { sent, ran, page } = open();
  await page(READY);
  const heard = async (place: PreviewHear["place"]) => {
    await page({ type: "hear", place, text: "click at 60" });
    const last = sent.at(-1);
    return last?.type === "sound" && last.sound && !last.sound.ok ? last.sound.reason : undefined;
  };
  expect(await heard(HEAR.place)).toBe("j:/a.practice 1 click at 60");
  expect(await heard({ uri: "j:/other.practice", line: 7 })).toBe("j:/a.practice -1 click at 60");
  expect(await heard(null)).toBe("j:/a.practice -1 click at 60");
  await page({ type: "writeTempo", uri: "j:/a.practice", line: 7, bpm: 60 });
  expect(ran).toEqual([]);
  await page({ type: "writeTempo", uri: "j:/a.practice", line: 1, bpm: 60 });
  expect(ran).toEqual([
    {
      command: "daystave.server.writeTempo",
      arguments: [{ textDocument: { uri: "j:/a.practice" }, position: { line: 1, character: 0 } }, 60],
    },
  ]);
});
