import { describe, expect, test } from "vitest";
import { EVERYTHING, inEditor, recipeIn, versionOf } from "./other-editor.ts";

const HERE = import.meta.dirname;
/** Such as `NVIM v0.10.4`. */
const VERSION = versionOf("nvim");
const BEFORE_0_8 = /^NVIM v0\.[0-7]\./.test(VERSION ?? "") ? ["--cmd", `luafile ${HERE}/neovim-0.7.lua`] : [];

describe.skipIf(!VERSION)(`Neovim, ${VERSION ?? "which is not installed"}`, () => {
  test("with our recipe checks, mends, explains, completes and has keys", async () => {
    const script = ["-c", `luafile ${HERE}/neovim.lua`];
    const asked = (file: string) => [...BEFORE_0_8, "-u", file, "-i", "NONE", ...script, "2026/week.practice"];
    expect(await inEditor("nvim", recipeIn("lua"), (file) => ["--headless", ...asked(file)])).toEqual(EVERYTHING);
  });

  test("says in a sentence that it is too old where it is, and goes on", async () => {
    const older = ["--cmd", "lua vim.lsp.start = nil"]; // which came with 0.8
    const open = (file: string) => [
      "--headless",
      ...older,
      "-u",
      file,
      "-i",
      "NONE",
      "-c",
      "quitall!",
      "2026/week.practice",
    ];
    const { failure: said } = (await inEditor("nvim", recipeIn("lua"), open)) as { readonly failure: string };
    expect(said.trim()).toBe("Daystave needs Neovim 0.8 or newer. The rest of your configuration is not affected.");
  });
});
