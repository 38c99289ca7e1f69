import { beforeEach, expect, test, vi } from "vitest";

/** As much of the editor as is asked: the text that is in sight, and where its cursor goes. */
const editor = vi.hoisted(() => {
  class Uri {
    constructor(readonly text: string) {}
    static parse(text: string): Uri {
      return new Uri(text);
    }
    toString(): string {
      return this.text;
    }
  }
  const document = {
    uri: new Uri("file:///j/a.practice"),
    languageId: "practice-journal",
    lineCount: 9,
    lineAt: (line: number) => ({ range: { start: { line } } }),
  };
  return { Uri, document, active: undefined as unknown, told: [] as string[] };
});

vi.mock("vscode", async () => ({
  ...(await import("../support/english-editor.ts")),
  Uri: editor.Uri,
  ViewColumn: { One: 1 },
  Selection: class {
    constructor(readonly active: { readonly line: number }) {}
  },
  window: {
    get activeTextEditor() {
      return editor.active;
    },
    get visibleTextEditors() {
      return [{ document: editor.document }];
    },
    showTextDocument: async (
      { uri }: typeof editor.document,
      { selection }: { selection: { active: { line: number } } },
    ) => void editor.told.push(`line ${selection.active.line} of ${uri}`),
    showInformationMessage: async (message: string) => void editor.told.push(message),
  },
  workspace: {},
}));

vi.resetModules();
const { showPreview } = await import("../../client/commands/show-preview.ts");

const panels = {
  show: async (uri: unknown) => void editor.told.push(`preview of ${uri}`),
  showCursor: async (uri: unknown) => void editor.told.push(`preview of ${uri}, at its cursor`),
} as never;

beforeEach(() => {
  editor.told.length = 0;
  editor.active = { document: editor.document };
});

test("from above an entry the cursor goes to it first, so that the preview has its exercise in sight", async () => {
  await showPreview(panels, "file:///j/a.practice", 3);
  expect(editor.told).toEqual(["line 3 of file:///j/a.practice", "preview of file:///j/a.practice, at its cursor"]);
});

test("from a title bar, or by itself, the cursor stays", async () => {
  await showPreview(panels, new editor.Uri("file:///j/b.practice") as never);
  await showPreview(panels, undefined);
  expect(editor.told).toEqual(["preview of file:///j/b.practice", "preview of file:///j/a.practice"]);
});
