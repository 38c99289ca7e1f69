import type { Item, MeaningOf, SingleSubject } from "../words/meaning.ts";
import type { Part } from "./cut.ts";
import { columnsFrom } from "./keys-in-row.ts";
import { type PartContext, readPartOnce } from "./parts.ts";

interface Trills {
  readonly subject: Item<MeaningOf<"several">>;
  readonly items: readonly Item[];
}

/**
 * `trill e''/f'', g#'/a'`: parts behind a trill that are no more than pairs of notes are trills as well, and behind
 * `trills from above` they tell which. Undefined where none follows.
 */
export function furtherTrills(
  { start, end, meaning }: Item,
  parts: readonly Part[],
  context: PartContext,
  text: string,
): Trills | undefined {
  const isTrill = meaning.type === "figure" && meaning.figure === "trill";
  const isByName = meaning.type === "technique" && meaning.name === "trill";
  if (!(isTrill || isByName) || parts[0]!.items.length > 1) return undefined;
  const subjects: SingleSubject[] = isTrill ? [meaning] : [];
  const at = isTrill ? [{ start, end }] : [];
  let taken = 1;
  for (; parts[taken]?.after === ","; taken++) {
    const part = parts[taken]!;
    const pairs = trillsIn(text.slice(part.start, part.end), context);
    if (pairs.length === 0) break;
    for (const pair of pairs) {
      subjects.push(pair);
      at.push({ start: part.start, end: part.end });
    }
  }
  if (taken === 1) return undefined;
  const subject = { type: "several", subjects, at: columnsFrom(start, at) } as const;
  return {
    subject: { start, end: parts[taken - 1]!.end, meaning: subject },
    items: parts.slice(taken).flatMap(({ items }) => items),
  };
}

/** The trills that words are behind the word for them; none where there is more, or no sign joins their notes. */
function trillsIn(words: string, context: PartContext): readonly MeaningOf<"figure">[] {
  if (!/[/–-]/.test(words)) return [];
  const [only, more] = readPartOnce(`trill ${words}`, context);
  if (!only || more) return [];
  const { meaning } = only;
  const trills = meaning.type === "several" ? meaning.subjects : [meaning];
  return trills.filter((each) => each.type === "figure" && each.notes.length === 2) as readonly MeaningOf<"figure">[];
}
