import type { CompletionItem, CompletionList, CompletionParams } from "vscode-languageserver";
import { completionsAt, explainCompletion } from "../features/completion/completion.ts";
import { completionItem } from "./convert.ts";
import type { Place } from "./session.ts";

export function completion({ session, journal, uri }: Place, { position }: CompletionParams): CompletionList {
  const { takesSnippets } = session.client;
  const items = completionsAt(journal, uri, position, session.dayOf(uri), { snippets: takesSnippets });
  // Alternatives and ranks depend on the whole of what was typed, and an answer costs about a millisecond.
  return { isIncomplete: true, items: items.map((item) => completionItem(item, uri, takesSnippets)) };
}

export function resolveCompletion({ session, journal, uri }: Place, item: CompletionItem): CompletionItem {
  const value = explainCompletion(journal, item.data as ResolveData, session.settingsOf(uri).explain);
  return value === undefined ? item : { ...item, documentation: { kind: "markdown", value } };
}

interface ResolveData {
  readonly uri: string;
  readonly topic: string;
  readonly key: string;
}

/** Where an item came from; undefined when there is nothing to look up. */
export function resolveUri({ data }: CompletionItem): string | undefined {
  const { uri, topic, key } = (typeof data === "object" && data !== null ? data : {}) as Partial<ResolveData>;
  return typeof topic === "string" && typeof key === "string" && typeof uri === "string" ? uri : undefined;
}
