import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

const { contributes } = JSON.parse(readFileSync("package.json", "utf8"));
const menus: Record<string, { command: string; when?: string }[]> = contributes.menus;
const commands: string[] = contributes.commands.map(({ command }: { command: string }) => command);

/** Commands that change no text. */
const LOOKING = ["daystave.goToLastTime", "daystave.showPreview"];

test("each command is in the palette, and under one name", () => {
  expect(menus["commandPalette"]!.map(({ command }) => command).sort()).toEqual([...commands].sort());
  const titles = contributes.commands.map(({ category, title }: Record<string, string>) => `${category}: ${title}`);
  expect(new Set(titles).size).toBe(commands.length);
});

test("wherever they stand, it is in journals alone, and what writes in those that can be written", () => {
  for (const { command, when } of Object.values(menus).flat()) {
    const writing = LOOKING.includes(command) ? "" : " && !editorReadonly";
    expect([command, when]).toEqual([command, `editorLangId == practice-journal${writing}`]);
  }
});

test("no key is bound: each that is likely is taken by the editor somewhere", () => {
  expect(contributes.keybindings).toBeUndefined();
});
