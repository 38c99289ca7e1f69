import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { EVERYTHING, inEditor, recipeIn, versionOf } from "./other-editor.ts";

const VERSION = versionOf("emacs");
/** Part of Emacs from 29 on, a package before. */
const HAS_EGLOT = spawnSync("emacs", ["--batch", "--eval", "(require 'eglot)"]).status === 0;
const missing = VERSION ? "which has no Eglot" : "which is not installed";

describe.skipIf(!HAS_EGLOT)(`Emacs, ${HAS_EGLOT ? VERSION : missing}`, () => {
  test("with our recipe checks, mends, explains and completes", async () => {
    const script = `${import.meta.dirname}/emacs.el`;
    expect(await inEditor("emacs", recipeIn("elisp"), (file) => ["--batch", "-l", file, "-l", script])).toEqual(
      EVERYTHING,
    );
  });
});
