import type { Choice, ChoicesParams, ChoicesResult } from "../../shared/protocol.ts";
import { type LanguageOfNames, otherNames } from "../features/commands/change-names.ts";
import { yearsToMove } from "../features/commands/move-year.ts";
import { serverTexts } from "./server-texts.ts";
import type { Place } from "./session.ts";

export type { ChoicesParams };

/** What there is to choose from before a command runs. */
export async function choices({ session, uri }: Place, { textDocument, of }: ChoicesParams): Promise<ChoicesResult> {
  await session.workspace.walk(); // other files of the journal bear on it
  const place = await session.placeOf(textDocument.uri);
  if (!place) return [];
  if (of === "names") return otherNames(place.journal).map(languageChoice);
  if (of !== "years") return [];
  return yearsToMove(place.journal, uri, session.dayOf(uri)).map(({ year, days }) => ({
    value: String(year),
    label: String(year),
    description: serverTexts.days(days),
  }));
}

function languageChoice({ id, examples }: LanguageOfNames): Choice {
  return { value: id, label: serverTexts.languages[id], description: examples.join(", ") };
}
