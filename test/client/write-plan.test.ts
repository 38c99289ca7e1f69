import { beforeEach, expect, test, vi } from "vitest";

/** As much of the editor as is asked: the journal that is open, and what somebody answers. */
const editor = vi.hoisted(() => ({
  isOpen: true,
  answer: undefined as string | undefined,
  asked: [] as { value: string; validateInput: (text: string) => string | undefined }[],
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
      showInputBox: async (box: (typeof editor.asked)[number]) => {
        editor.asked.push(box);
        return editor.answer;
      },
      showInformationMessage: async () => undefined,
    },
  };
});

vi.resetModules(); // other tests have the same modules with an editor of theirs
const { writePlan } = await import("../../client/commands/write-plan.ts");

beforeEach(() => {
  Object.assign(editor, { isOpen: true, answer: undefined, asked: [] });
});

/** Runs the command: what the server is asked to do. It answers how long a plan would be for, or that there is none. */
async function run(minutes: number | null, kept = new Map<string, unknown>()) {
  const ran: unknown[] = [];
  const client = {
    code2ProtocolConverter: { asUri: String },
    sendRequest: async (method: string, params: { arguments?: readonly unknown[] }) => {
      if (method === "daystave/planMinutes") return minutes;
      ran.push(params.arguments?.slice(1));
      return null;
    },
  };
  const workspaceState = {
    get: (key: string) => kept.get(key),
    update: async (key: string, value: unknown) => void kept.set(key, value),
  };
  await writePlan(client as never, { workspaceState } as never);
  return ran;
}

test("it asks once how long; what is usual is offered, the next time the last answer", async () => {
  const kept = new Map<string, unknown>();
  editor.answer = "45";
  expect(await run(20, kept)).toEqual([[45]]);
  editor.answer = " 30 min";
  expect(await run(20, kept)).toEqual([[30]]);
  expect(editor.asked.map(({ value }) => value)).toEqual(["20", "45"]);
});

test("nothing is written where the question is left", async () => {
  expect(await run(20)).toEqual([]);
  expect(editor.asked).toHaveLength(1);
});

test("an answer that is not minutes is told so", async () => {
  await run(20);
  const [{ validateInput }] = editor.asked as [(typeof editor.asked)[number]];
  for (const right of ["5", "45", " 90 ", "30 min", "30 minutes", "30 Minuten", "600"])
    expect(validateInput(right)).toBeUndefined();
  for (const wrong of ["", "0", "-5", "7.5", "601", "an hour"])
    expect(validateInput(wrong)).toBe("A whole number of minutes, up to 600.");
});

test("where there is nothing to ask the server says why, or goes there", async () => {
  expect(await run(null)).toEqual([[]]);
  expect(editor.asked).toEqual([]);
});

test("without a journal nothing is asked", async () => {
  editor.isOpen = false;
  expect(await run(20)).toEqual([]);
  expect(editor.asked).toEqual([]);
});
