import { expect, test, vi } from "vitest";
import type { CancellationToken, TextDocument } from "vscode";

class CancellationError extends Error {}
vi.mock("vscode", () => ({ CancellationError }));

const { tokensOfFile } = await import("../../client/semantic-tokens.ts");

/** What is given for a file of so many lines, whose server would answer. */
function tokens(lineCount: number): unknown {
  return tokensOfFile({ lineCount } as TextDocument, {} as CancellationToken, (() => "all tokens") as never);
}

test("for a file of years the whole is called off: the editor asks for what is in sight besides", () => {
  expect(tokens(5_000)).toBe("all tokens");
  expect(() => tokens(5_001)).toThrow(CancellationError);
});
