import { instrumentOf } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";

/** The instrument that an entry means where it names none, as records have it; null where a journal declares none. */
export function usualInstrument(journal: Journal): string | null {
  const [first] = journal.addresses;
  if (first === undefined) return null;
  const conventions = journal.conventions(first);
  return instrumentOf(conventions.instrument, conventions)?.id ?? conventions.instrument ?? null;
}
