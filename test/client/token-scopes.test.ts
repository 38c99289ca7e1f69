import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { TOKEN_MODIFIERS, TOKEN_TYPES } from "../../server/features/colours/token-legend.ts";

const { contributes } = JSON.parse(readFileSync("package.json", "utf8"));
const [{ language, scopes }]: [{ language: string; scopes: Record<string, string[]> }] =
  contributes.semanticTokenScopes;

/** The names that scopes begin with by convention: TextMate manual, "Naming Conventions" (12.4). */
const ROOTS = "comment constant entity invalid keyword markup meta storage string support variable".split(" ");

test("every type and every modifier of a token falls back to scopes that themes know", () => {
  expect(language).toBe(contributes.languages[0].id);
  const selectors = Object.keys(scopes).map((selector) => selector.split("."));
  expect(selectors.filter(({ length }) => length === 1).flat()).toEqual([...TOKEN_TYPES]);
  const modified = selectors.filter(({ length }) => length > 1);
  expect(modified.flatMap(([, ...modifiers]) => modifiers)).toEqual([...TOKEN_MODIFIERS]);
  expect(modified.every(([type]) => type === "*" || TOKEN_TYPES.includes(type as (typeof TOKEN_TYPES)[number]))).toBe(
    true,
  );
});

test("they are standard ones", () => {
  for (const [selector, names] of Object.entries(scopes)) {
    expect(names.length, selector).toBeGreaterThan(0);
    for (const name of names) expect([selector, ROOTS.includes(name.split(".")[0]!)]).toEqual([selector, true]);
  }
});

test("the modifier that is our own is told to the editor", () => {
  // Those of the protocol are known there: Language Server Protocol 3.17, `SemanticTokenModifiers`.
  const standard =
    "declaration definition readonly static deprecated abstract async modification documentation defaultLibrary";
  const own = TOKEN_MODIFIERS.filter((modifier) => !standard.split(" ").includes(modifier));
  expect(contributes.semanticTokenModifiers.map(({ id }: { id: string }) => id)).toEqual(own);
});
