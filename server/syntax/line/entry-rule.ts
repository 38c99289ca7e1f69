import type { Item, Meaning } from "../words/meaning.ts";
import type { Part } from "./parts.ts";

const SUBJECTS: readonly Meaning["type"][] = ["scale", "chord", "figure", "title", "quoted", "free", "faulty subject"];
const KIND_WORDS: readonly Meaning["type"][] = ["scale", "chord", "kind", "chord kind", "faulty subject"];
/** Known to other lines than entries, or to no line by themselves. */
const NO_TERMS: readonly Meaning["type"][] = [
  "unknown",
  "weekday",
  "clock",
  "date",
  "days",
  "goal",
  "line word",
  "last note",
  "part of a kind",
  "phase",
];

/**
 * Entry or prose: a line is an entry when every word of its first part is known; or when its first part opens with a
 * title, a figure or a tonic and kind, or holds a kind word, and a later part is all known; or when a later part is a
 * tempo, a place or an amount.
 */
export function isEntry(parts: readonly Part[]): boolean {
  const [first, ...later] = parts;
  if (!first?.items.length) return false;
  if (isKnown(first.items)) return true;
  const opens =
    SUBJECTS.includes(first.items[0]!.meaning.type) ||
    first.items.some((item) => KIND_WORDS.includes(item.meaning.type));
  if (opens && later.some((part) => part.items.length > 0 && isKnown(part.items))) return true;
  return later.some(
    (part) => isKnown(part.items) && ["tempo", "place", "amount"].includes(part.items[0]?.meaning.type ?? ""),
  );
}

function isKnown(items: readonly Item[]): boolean {
  let counts = false;
  return (
    items.length > 0 &&
    items.every((item, i) => {
      counts ||= item.meaning.type === "tempo" || item.meaning.type === "place";
      return isKnownItem(item, items[i + 1], items.length === 1, counts);
    })
  );
}

/** `counts`: a tempo or a place stands before, which a bare number goes on with. */
function isKnownItem({ meaning }: Item, next: Item | undefined, alone: boolean, counts: boolean): boolean {
  if (meaning.type === "note") return !meaning.lower || alone;
  if (meaning.type === "number" || meaning.type === "range") return counts;
  if (!NO_TERMS.includes(meaning.type)) return true;
  if (meaning.type !== "unknown" || !next) return false;
  // readable, and mended by a fix: a dash where a comma belongs, `thirds in D minor`, `C and G major`
  return meaning.words === "-" || (/^(?:in|and|&)$/i.test(meaning.words) && KIND_WORDS.includes(next.meaning.type));
}
