import { join } from "node:path";
import { createRegistry } from "vscode-tmgrammar-test/dist/common/index.js";

export const SCOPE = "source.practice";
export const GRAMMAR = join(import.meta.dirname, "../../syntaxes/practice-journal.tmLanguage.json");

export const registry = createRegistry([{ path: GRAMMAR, scopeName: SCOPE, language: "practice-journal" }]);
export const grammar = (await registry.loadGrammar(SCOPE))!;

/** The scopes over each stretch of a line that begins a file. */
export function tokens(line: string): { text: string; scopes: string[] }[] {
  const { tokens } = grammar.tokenizeLine(line, null);
  return tokens.map(({ startIndex, endIndex, scopes }) => ({ text: line.slice(startIndex, endIndex), scopes }));
}
