import { expect, test } from "vitest";
import type { CancellationToken, TextDocument } from "vscode";
import { tokensOfFile } from "../../client/semantic-tokens.ts";

/** What is given for a file of so many lines, whose server would answer. */
async function tokens(lineCount: number): Promise<string | undefined> {
  const answer = () => Promise.resolve("all tokens");
  const document = { lineCount } as TextDocument;
  return (await tokensOfFile(document, {} as CancellationToken, answer as never)) as string | undefined;
}

test("a file of years has no tokens as a whole: the editor asks for those in sight besides", async () => {
  expect(await tokens(5_000)).toBe("all tokens");
  expect(await tokens(5_001)).toBeUndefined();
});
