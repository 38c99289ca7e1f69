import { CODES } from "../../checks/codes.ts";
import { nearestTo } from "../../checks/line/entry-terms.ts";
import { bodyOf } from "../../journal/body-said.ts";
import { saidOfAttempts } from "../../journal/conditions.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { TERM_TYPES } from "../../syntax/words/term-types.ts";
import { explainTerm } from "../explain/explain.ts";
import { isKept } from "../explain/kept-words.ts";
import { escapedExtract } from "../explain/markdown.ts";
import type { EntryAt } from "./entry.ts";

const KEPT = "Kept as written, not counted.";

/** What was kept as typed because nothing came of it, and how to have it counted; undefined for all other terms. */
export function keptHover({ journal, entry, text }: EntryAt, item: Item): string | undefined {
  const { vocabulary } = journal;
  const { meaning } = item;
  const typed = text.slice(item.start, item.end);
  if (!isKept(item, vocabulary)) return undefined;
  switch (meaning.type) {
    case "faulty subject": {
      if (CODES[meaning.code] !== "hint") return undefined; // it is underlined, and says so itself
      const meant = meaning.offers.filter((offer) => !offer.includes("\n")).map((offer) => escapedExtract(offer));
      return `${KEPT} ${meant.length > 0 ? `Did you mean ${meant.join(" or ")}?` : "It is not something to play."}`;
    }
    case "number":
    case "range":
      return `${KEPT} ${numberSentence(meaning.type, typed)}`;
    case "note":
      return `${KEPT} Notes go after a colon, after the subject: \`C major: C D E F G A B C\`.`;
    case "quoted":
      if (!meaning.closed) return `${KEPT} The closing quote is missing.`;
      return `${KEPT} No pattern has this name: declare it with its degrees, \`pattern "…": 1 3 2 4\`.`;
    case "unknown": {
      if (!/[\p{L}\p{N}]/u.test(typed)) return undefined;
      if (bodyOf(typed, vocabulary) === "hurts") return explainTerm({ type: "sore", words: typed }, vocabulary);
      const [near] = nearestTo(typed, TERM_TYPES, { vocabulary });
      const meant = near === undefined ? "" : ` Did you mean ${escapedExtract(near)}?`;
      const isSaid = saidOfAttempts(entry.source.items).some((said) => said.includes(item));
      return isSaid ? `${KEPT_OUTCOME}${meant} ${AS_OUTCOME}` : `${KEPT}${meant} ${AS_TERM}`;
    }
    default:
      return `${KEPT} A kind of scale or chord goes right after its tonic: \`D minor\`.`;
  }
}

const KEPT_OUTCOME = "Kept as written: it does not say whether the tempo was reached.";
const AS_OUTCOME =
  'To have it counted, declare it: `outcome "…": reached`, `nearly` or `not`. A quick fix here does that.';
const AS_TERM =
  "To have it counted, declare it as an articulation, a pattern, a focus or an outcome. A quick fix here does that, or makes it a remark.";

function numberSentence(type: "number" | "range", typed: string): string {
  if (!/^\d+(?:\s?[-–]\s?\d+)?$/.test(typed)) return "Nothing says what it counts.";
  return type === "number"
    ? `What is ${typed}? Write \`at ${typed}\` for a tempo, \`${typed} min\` for time, \`bars ${typed}\` for a place.`
    : `What is ${typed}? Write \`at ${typed}\` for a tempo, \`bars ${typed}\` for a place.`;
}
