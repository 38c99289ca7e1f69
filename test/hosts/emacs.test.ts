import { spawnSync } from "node:child_process";
import { describe, expect, test } from "vitest";
import { EVERYTHING, inEditor, recipeIn, versionOf } from "./other-editor.ts";

const VERSION = versionOf("emacs");
/** Part of Emacs from 29 on, a package before. */
const HAS_EGLOT = spawnSync("emacs", ["--batch", "--eval", "(require 'eglot)"]).status === 0;
const missing = VERSION ? "which has no Eglot" : "which is not installed";

describe.skipIf(!HAS_EGLOT)(`Emacs, ${HAS_EGLOT ? VERSION : missing}`, () => {
  test("with our recipe checks, mends, explains, completes and has keys", async () => {
    const script = `${import.meta.dirname}/emacs.el`;
    expect(await inEditor("emacs", recipeIn("elisp"), (file) => ["--batch", "-l", file, "-l", script])).toEqual(
      EVERYTHING,
    );
  });

  test("says in a sentence what is missing where there is no Eglot", async () => {
    const without =
      "(define-advice require (:around (load name &rest more)) (and (not (eq name 'eglot)) (apply load name more)))";
    const open = (file: string) => [
      "--batch",
      "--eval",
      without,
      "-l",
      file,
      "2026/week.practice",
      "--eval",
      "(princ major-mode)",
    ];
    const { failure: said } = (await inEditor("emacs", recipeIn("elisp"), open)) as { readonly failure: string };
    expect(said).toContain("Daystave needs Emacs 29 or newer, or the package `eglot'.");
    expect(said).toContain("practice-journal-mode");
    expect(said).not.toMatch(/error/i);
  });
});
