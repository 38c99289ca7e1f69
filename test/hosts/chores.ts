import type { Page } from "playwright-core";

// What is done to a window between its tests. A person's ways, the palette and the mouse, took longer there than many a test:
// here the window runs commands at once. What a test itself does goes by keyboard and mouse.

/** Closes the active editor and saves nothing; takes the notices away; opens the window's own files again. */
export type Chore = "close" | "clear" | "open";
/** Has a window do one. */
export type DoChore = (page: Page, chore: Chore) => Promise<void>;

interface Command {
  readonly command: string;
  readonly args?: readonly unknown[];
}
export type Chores = Readonly<Record<Chore, readonly Command[]>>;

export interface Address {
  readonly scheme: string;
  readonly authority: string;
  readonly path: string;
}

/** Of the first line, from 1: a cursor that stands behind the very beginning is not taken to today by the extension. */
const AT_THE_TOP = { startLineNumber: 1, startColumn: 2 };

/** As the command has it. */
const ACTIVE_GROUP = -1;

/** @param asOpened whether the cursor is left where the extension puts it; else it stands at the top */
export function choresWith(files: readonly Address[], asOpened: boolean): Chores {
  const options = { pinned: true, ...(asOpened ? {} : { selection: AT_THE_TOP }) };
  return {
    close: [{ command: "workbench.action.revertAndCloseActiveEditor" }],
    clear: [{ command: "notifications.clearAll" }],
    open: files.map((address) => ({ command: "_workbench.open", args: [address, [ACTIVE_GROUP, options]] })),
  };
}

/** In a window of ours, whose page runs commands for whoever asks. */
export function byCommand(chores: Chores): DoChore {
  return (page, chore) =>
    page.evaluate((commands) => {
      const { runCommand } = globalThis as unknown as { runCommand(id: string, args: object): Promise<void> };
      return runCommand("runCommands", { commands });
    }, chores[chore]);
}

const KEYS: Readonly<Record<Chore, string>> = { close: "F9", clear: "F10", open: "F11" };

/** In a window that another program serves, which has been given these keys. */
export const byKey: DoChore = (page, chore) => page.keyboard.press(`Control+Alt+${KEYS[chore]}`);

/** What stands in the editor's own file of keys. */
export function keysFor(chores: Chores): string {
  const keys = Object.entries(KEYS).map(([chore, key]) => ({
    key: `ctrl+alt+${key.toLowerCase()}`,
    command: "runCommands",
    args: { commands: chores[chore as Chore] },
  }));
  return JSON.stringify(keys);
}
