import { beforeEach, expect, test, vi } from "vitest";

/** As much of the editor as is asked: the journal that is open, and what somebody chooses. */
const editor = vi.hoisted(() => ({
  isOpen: true,
  chooses: undefined as string | undefined,
  offered: [] as string[][],
  said: [] as string[],
}));

vi.mock("vscode", async () => {
  class Uri {
    toString(): string {
      return "j:/a.practice";
    }
  }
  const document = { uri: new Uri(), languageId: "practice-journal" };
  const journal = { document, selection: { active: { line: 3, character: 0 } } };
  return {
    ...(await import("../support/english-editor.ts")),
    Uri,
    window: {
      get activeTextEditor() {
        return editor.isOpen ? journal : undefined;
      },
      get visibleTextEditors() {
        return editor.isOpen ? [journal] : [];
      },
      showQuickPick: async (choices: readonly { label: string }[], { title }: { title: string }) => {
        editor.offered.push([title, ...choices.map(({ label }) => label)]);
        return choices.find(({ label }) => label === editor.chooses);
      },
      showInformationMessage: async (message: string) => void editor.said.push(message),
    },
  };
});

vi.resetModules(); // other tests have the same modules with an editor of theirs
const { moveYear } = await import("../../client/commands/move-year.ts");
const { changeNames } = await import("../../client/commands/change-names.ts");

beforeEach(() => {
  Object.assign(editor, { isOpen: true, chooses: undefined, offered: [], said: [] });
});

/** Runs a command: what the server is asked to do. It answers with these choices, or cannot be asked. */
async function run(command: typeof moveYear, choices: readonly { value: string; label: string }[] | undefined) {
  const ran: unknown[] = [];
  const client = {
    code2ProtocolConverter: { asUri: String },
    sendRequest: async (method: string, params: { command?: string; arguments?: readonly unknown[] }) => {
      if (method === "daystave/choices") return choices ?? Promise.reject(new Error("no server"));
      ran.push([params.command, ...params.arguments!.slice(1)]);
      return null;
    },
  };
  await command(client as never);
  return ran;
}

const YEARS = ["2024", "2025"].map((year) => ({ value: year, label: year }));

test("what is chosen goes to the server", async () => {
  editor.chooses = "2025";
  expect(await run(moveYear, YEARS)).toEqual([["daystave.server.moveYear", "2025"]]);
  editor.chooses = "German";
  expect(await run(changeNames, [{ value: "german", label: "German" }])).toEqual([
    ["daystave.server.changeNames", "german"],
  ]);
  expect(editor.offered).toEqual([
    ["Move which year?", "2024", "2025"],
    ["Names of notes in which language?", "German"],
  ]);
});

test("nothing is done where nothing is chosen", async () => {
  expect(await run(moveYear, YEARS)).toEqual([]);
});

test("where there is nothing to choose the server says why", async () => {
  expect(await run(moveYear, [])).toEqual([["daystave.server.moveYear"]]);
  expect(await run(moveYear, undefined)).toEqual([["daystave.server.moveYear"]]);
  expect(editor.offered).toEqual([]);
});

test("without a journal nothing is asked, and a sentence says so", async () => {
  editor.isOpen = false;
  expect(await run(moveYear, YEARS)).toEqual([]);
  expect(editor.offered).toEqual([]);
  expect(editor.said).toHaveLength(1);
});
