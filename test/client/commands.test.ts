import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { manifest } from "../support/manifest.ts";

const { contributes } = JSON.parse(readFileSync("package.json", "utf8"));
const menus: Record<string, { command: string; when?: string }[]> = contributes.menus;
const commands: string[] = contributes.commands.map(({ command }: { command: string }) => command);

/** Begin a text of its own, and so are at hand everywhere. */
const NEW_JOURNAL = "daystave.newJournal";
const OPEN_SAMPLE = "daystave.openSample";
/** Commands of the preview's own menu. */
const OF_PREVIEW = ["daystave.stayWithJournal", "daystave.followText"];

/** Commands that change no text of a journal. */
const LOOKING = ["daystave.goToLastTime", "daystave.showPreview", "daystave.exportExercise", "daystave.printSheet"];

/** Goes by all journals of the workspace, whichever file is open. */
const SHOW_PUPILS = "daystave.showPupils";

test("each command is in the palette, and under one name", () => {
  // What no entry there narrows down is in the palette always.
  const narrowed = menus["commandPalette"]!.map(({ command }) => command);
  expect([...narrowed, NEW_JOURNAL, OPEN_SAMPLE].sort()).toEqual([...commands].sort());
  const titles = manifest.contributes.commands.map(({ category, title }) => `${category}: ${title}`);
  expect(new Set(titles).size).toBe(commands.length);
});

test("wherever they stand, it is in journals alone, and what writes in those that can be written", () => {
  const { "file/newFile": newFile, ...inJournals } = menus;
  expect(newFile!.map(({ command, when }) => [command, when])).toEqual([[NEW_JOURNAL, undefined]]);
  for (const { command, when } of Object.values(inJournals).flat()) {
    if (OF_PREVIEW.includes(command) || command === SHOW_PUPILS) continue;
    const writing = LOOKING.includes(command) ? "" : " && !editorReadonly";
    expect([command, when]).toEqual([command, `editorLangId == practice-journal${writing}`]);
  }
});

test("that of pupils is at hand wherever a folder is open", () => {
  const found = Object.entries(menus).flatMap(([menu, entries]) =>
    entries.filter(({ command }) => command === SHOW_PUPILS).map(({ when }) => [menu, when]),
  );
  expect(found).toEqual([["commandPalette", "workspaceFolderCount > 0"]]);
});

test("the preview's own menu has it stay with its journal, or follow the editor again", () => {
  const places = Object.values(menus)
    .flat()
    .filter(({ command }) => OF_PREVIEW.includes(command));
  for (const { command, when } of places) {
    const stays = command === "daystave.followText" ? "" : "!";
    expect(when).toBe(`activeWebviewPanelId == daystave.preview && ${stays}daystave.previewStays`);
  }
  expect(menus["editor/title"]!.map(({ command }) => command)).toEqual(expect.arrayContaining(OF_PREVIEW));
});
