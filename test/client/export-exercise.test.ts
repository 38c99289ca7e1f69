import { beforeEach, describe, expect, test, vi } from "vitest";

/** As much of the editor as is asked: the journal that is open, what somebody chooses, and what is written. */
const editor = vi.hoisted(() => ({
  isOpen: true,
  chosen: undefined as string | undefined,
  target: undefined as string | undefined,
  refuses: false,
  offered: [] as string[],
  written: [] as { readonly path: string; readonly bytes: Uint8Array }[],
  said: [] as string[],
  opened: [] as string[],
}));

vi.mock("vscode", async () => {
  class Uri {
    constructor(readonly path: string) {}
    get scheme(): string {
      return this.path.slice(0, this.path.indexOf(":"));
    }
    toString(): string {
      return this.path;
    }
    static joinPath(base: Uri, name: string): Uri {
      return new Uri(name === ".." ? base.path.replace(/\/[^/]*$/, "") : `${base.path}/${name}`);
    }
  }
  const document = { uri: new Uri("file:/j/a.practice"), languageId: "practice-journal" };
  const journal = { document, selection: { active: { line: 3, character: 7 } } };
  const say = async (text: string, ...answers: readonly string[]) => {
    editor.said.push(text);
    return answers[0];
  };
  return {
    ...(await import("../support/english-editor.ts")),
    Uri,
    env: { openExternal: async (uri: Uri) => void editor.opened.push(uri.path) },
    workspace: {
      fs: {
        writeFile: async ({ path }: Uri, bytes: Uint8Array) => {
          if (editor.refuses) throw new Error("No room is left.");
          editor.written.push({ path, bytes });
        },
      },
    },
    window: {
      get activeTextEditor() {
        return editor.isOpen ? journal : undefined;
      },
      get visibleTextEditors() {
        return editor.isOpen ? [journal] : [];
      },
      showQuickPick: async (choices: readonly { readonly label: string }[]) =>
        choices.find(({ label }) => label === editor.chosen),
      showSaveDialog: async ({ defaultUri }: { readonly defaultUri: Uri }) => {
        editor.offered.push(defaultUri.path);
        return editor.target === undefined ? undefined : new Uri(editor.target);
      },
      showInformationMessage: say,
      showErrorMessage: say,
    },
  };
});

vi.resetModules(); // other tests have the same modules with an editor of theirs
const { exportExercise } = await import("../../client/commands/export-exercise.ts");
const { printSheet } = await import("../../client/commands/print-sheet.ts");

beforeEach(() => {
  const nothing = { offered: [], written: [], said: [], opened: [] };
  Object.assign(editor, { isOpen: true, chosen: undefined, target: undefined, refuses: false, ...nothing });
});

/** Runs a command with a server that gives an answer, or none; what it was asked. */
async function run(command: typeof exportExercise, answer: unknown): Promise<unknown[]> {
  const asked: unknown[] = [];
  const client = {
    code2ProtocolConverter: { asUri: String },
    sendRequest: async (method: string, params: unknown) => {
      asked.push([method, params]);
      if (answer === undefined) throw new Error("gone");
      return answer;
    },
  };
  await command(client as never);
  return asked;
}

const FILE = { ok: true, name: "D minor", base64: "TVRoZP8A" };

describe("an exercise", () => {
  test("is written where somebody says, byte by byte", async () => {
    Object.assign(editor, { chosen: "MIDI", target: "file:/j/mine.mid" });
    const asked = await run(exportExercise, FILE);
    const textDocument = { uri: "file:/j/a.practice" };
    expect(asked).toEqual([["daystave/export", { textDocument, position: { line: 3, character: 0 }, format: "midi" }]]);
    expect(editor.offered).toEqual(["file:/j/D minor.mid"]);
    expect(editor.written).toEqual([
      { path: "file:/j/mine.mid", bytes: Uint8Array.from([0x4d, 0x54, 0x68, 0x64, 0xff, 0]) },
    ]);
    expect(editor.said).toEqual([]);
  });

  test("as MusicXML has that ending", async () => {
    editor.chosen = "MusicXML";
    await run(exportExercise, FILE);
    expect(editor.offered).toEqual(["file:/j/D minor.musicxml"]);
  });

  test("is not asked for, or not written, where somebody goes away", async () => {
    expect(await run(exportExercise, FILE)).toEqual([]);
    editor.chosen = "MIDI";
    await run(exportExercise, FILE);
    expect([editor.written, editor.said]).toEqual([[], []]);
  });

  test("that cannot be: a sentence says why", async () => {
    editor.chosen = "MIDI";
    await run(exportExercise, { ok: false, reason: "Only a scale." });
    await run(exportExercise, undefined);
    editor.isOpen = false;
    await run(exportExercise, FILE);
    expect(editor.said).toEqual([
      "Only a scale.",
      expect.stringMatching(/^Daystave could not do that/),
      expect.stringMatching(/^Open a practice journal first/),
    ]);
    expect(editor.offered).toEqual([]);
  });

  test("that cannot be written: that is said", async () => {
    Object.assign(editor, { chosen: "MIDI", target: "file:/j/mine.mid", refuses: true });
    await run(exportExercise, FILE);
    expect(editor.said).toEqual(["The file was not written. No room is left."]);
  });
});

describe("a sheet", () => {
  const SHEET = { name: "Plan for 8 March 2026", html: "<!doctype html>é" };

  test("is saved as a page, which a browser may open", async () => {
    Object.assign(editor, { chosen: "This Week", target: "file:/j/week.html" });
    expect(await run(printSheet, SHEET)).toEqual([
      ["daystave/sheet", { textDocument: { uri: "file:/j/a.practice" }, of: "week" }],
    ]);
    expect(editor.offered).toEqual(["file:/j/Plan for 8 March 2026.html"]);
    expect(new TextDecoder().decode(editor.written[0]!.bytes)).toBe(SHEET.html);
    expect(editor.opened).toEqual(["file:/j/week.html"]);
  });

  test("in a browser's own files is saved, and not opened", async () => {
    Object.assign(editor, { chosen: "Today", target: "memfs:/week.html" });
    await run(printSheet, SHEET);
    expect([editor.written.length, editor.opened, editor.said]).toEqual([1, [], []]);
  });

  test("is not asked for without a journal, nor written without a place", async () => {
    expect(await run(printSheet, SHEET)).toEqual([]);
    editor.chosen = "Today";
    await run(printSheet, SHEET);
    await run(printSheet, null);
    expect(editor.written).toEqual([]);
    expect(editor.said).toEqual([expect.stringMatching(/^Daystave could not do that/)]);
  });
});
