import type { Declared } from "../../journal/declarations/declared.ts";
import type { Journal } from "../../journal/journal.ts";

/** What the heads of a journal's files declare, the marker's first. */
export function headDeclarations(journal: Journal): readonly Declared[] {
  return journal.addresses.flatMap((uri) => {
    const head = journal.files.get(uri)!.blocks[0]!;
    if (head.day) return [];
    return journal.model(head).declarations.flatMap(({ declaration: { declared } }) => (declared ? [declared] : []));
  });
}
