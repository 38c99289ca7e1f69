import type { Conventions } from "./conventions.ts";
import type { Entry } from "./model.ts";

/**
 * Whether the names of an entry's notes stay out of what is shown unasked: by its own term, or in the whole journal.
 */
export function notesHidden({ source }: Pick<Entry, "source">, { hidesNotes }: Conventions): boolean {
  return hidesNotes || source.items.some(({ meaning }) => meaning.type === "manner" && meaning.id === "hide notes");
}
