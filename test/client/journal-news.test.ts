import { expect, test } from "vitest";
import { JournalNews } from "../../client/journal-news.ts";
import type { ChangedParams } from "../../shared/preview.ts";

test("all who listen are told, though a client keeps one listener; who is disposed of no more", () => {
  let kept: ((news: ChangedParams) => void) | undefined;
  const client = {
    onNotification: (_: string, listener: (news: ChangedParams) => void) => {
      kept = listener; // as vscode-jsonrpc has it: the last one alone
      return { dispose: () => (kept = undefined) };
    },
  };
  const told: string[] = [];
  const news = new JournalNews(client as never);
  const first = news.listen(({ journal }) => told.push(`first ${journal}`));
  news.listen(({ journal }) => told.push(`second ${journal}`));
  kept!({ journal: "a", version: 1 } as ChangedParams);
  first.dispose();
  kept!({ journal: "b", version: 2 } as ChangedParams);
  expect(told).toEqual(["first a", "second a", "second b"]);
  news.dispose();
  expect(kept).toBeUndefined();
});
