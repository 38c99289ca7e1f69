import type { PreviewLine, PreviewPlace } from "../../../shared/preview.ts";
import type { AttemptRecord } from "../../history/record.ts";
import type { Journal } from "../../journal/journal.ts";
import { placeOf } from "./text.ts";

/** One line of a part, of which only what there is need be said. */
export function line(
  text: string,
  place: PreviewPlace,
  day: string,
  more: Partial<Omit<PreviewLine, "text" | "place" | "day">> = {},
): PreviewLine {
  return { text, behind: "", facts: [], below: "", ...more, day, place };
}

export function placeOfRecord(journal: Journal, { uri, block, line }: AttemptRecord): PreviewPlace {
  return placeOf(journal, uri, block, line);
}
