import type { EntryLine } from "../../syntax/line/line.ts";
import { termType } from "../../syntax/words/term-types.ts";

/** Whether the words of an entry are all known in their places. */
export function isReadEntry({ subject, items }: Pick<EntryLine, "subject" | "items">): boolean {
  return (
    subject?.meaning.type !== "faulty subject" &&
    items.every(({ meaning }) => (meaning.type === "quoted" ? meaning.closed : termType(meaning.type) !== undefined))
  );
}
