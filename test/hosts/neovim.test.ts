import { describe, expect, test } from "vitest";
import { EVERYTHING, inEditor, recipeIn, versionOf } from "./other-editor.ts";

const HERE = import.meta.dirname;
/** Such as `NVIM v0.10.4`. */
const VERSION = versionOf("nvim");
const BEFORE_0_8 = /^NVIM v0\.[0-7]\./.test(VERSION ?? "") ? ["--cmd", `luafile ${HERE}/neovim-0.7.lua`] : [];

describe.skipIf(!VERSION)(`Neovim, ${VERSION ?? "which is not installed"}`, () => {
  test("with our recipe checks, mends, explains and completes", async () => {
    const script = ["-c", `luafile ${HERE}/neovim.lua`];
    const asked = (file: string) => [...BEFORE_0_8, "-u", file, "-i", "NONE", ...script, "2026/week.practice"];
    expect(await inEditor("nvim", recipeIn("lua"), (file) => ["--headless", ...asked(file)])).toEqual(EVERYTHING);
  });
});
