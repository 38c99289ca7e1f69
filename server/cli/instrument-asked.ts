import { listTexts } from "../checks/list-texts.ts";
import { instrumentsMeant } from "../journal/instrument-names.ts";
import { phraseKey } from "../syntax/words/fold.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";
import { offer } from "./nearest.ts";
import { printable } from "./printable.ts";

export type InstrumentAsked =
  | { readonly ok: true; readonly id: string }
  | { readonly ok: false; readonly reason: string };

/** The instrument that somebody names, by any of its names; those that were probably meant, where it is not known. */
export function instrumentAsked(name: string, vocabulary: Vocabulary): InstrumentAsked {
  for (const meaning of vocabulary.meanings(phraseKey(name)) ?? [])
    if (meaning.type === "instrument") return { ok: true, id: meaning.id };
  const meant = instrumentsMeant(name, vocabulary);
  const said = printable(name);
  if (meant.length > 1) return { ok: false, reason: `Which instrument is “${said}”: ${listTexts.or(meant)}?` };
  return { ok: false, reason: `I do not know the instrument “${said}”.${offer(meant[0])}` };
}
