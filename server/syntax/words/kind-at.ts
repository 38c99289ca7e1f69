import { phraseKey } from "./fold.ts";
import type { MeaningOf } from "./meaning.ts";
import type { Found, Words } from "./words.ts";

/** A kind, or what can only be a part of one kind: `harmonic`, `Dur` in an English journal, `Moll harmonisch`. */
export function kindAt(words: Words, i: number): Found<MeaningOf<"kind">> | undefined {
  const kind = words.phrase(i, "kind");
  if (kind) return kind;
  const part = words.phrase(i, "part of a kind");
  if (part?.meaning.offers.length !== 1) return undefined;
  const end = i + part.length;
  if (words.is(end, "on", "of")) return undefined; // `A harmonic on D` is no scale
  const further = words.phrase(end, "part of a kind");
  const isMinor = part.meaning.offers[0] === "minor" && further?.meaning.offers[0]?.endsWith(" minor");
  if (!isMinor && further?.meaning.offers.length === 1) return undefined;
  if (words.phrase(end, "kind")) return undefined; // `D harmonic major` is another scale
  const offer = isMinor ? further!.meaning.offers[0]! : part.meaning.offers[0]!;
  const meaning = words.vocabulary.meanings(phraseKey(offer))?.find((each) => each.type === "kind");
  return meaning && { length: part.length + (isMinor ? further!.length : 0), meaning };
}
