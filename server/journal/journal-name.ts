import type { Journal } from "./journal.ts";

/** Who plays, or else the last part of the journal's address, such as the name of its folder. */
export function nameOfJournal(journal: Journal): string {
  const player = journal.addresses.map((uri) => journal.conventions(uri).player).find((name) => name !== undefined);
  return player ?? namesIn(journal.root).at(-1) ?? "";
}

/** As people sort: 2 before 10, and Åse beside Asta. */
export function orderOfNames(): (a: string, b: string) => number {
  return new Intl.Collator("en", { numeric: true }).compare;
}

/**
 * The names in an address, decoded: folders, and last what it is of. Without its scheme, as `untitled:Untitled-1` has
 * no slash.
 */
export function namesIn(uri: string): readonly string[] {
  const path = uri.replace(/^[a-z][a-z0-9+.-]*:/i, "");
  return path
    .split("/")
    .filter((name) => name !== "")
    .map(decoded);
}

function decoded(name: string): string {
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}
