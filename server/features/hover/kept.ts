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
import { hoverTexts } from "./hover-texts.ts";

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
      return `${hoverTexts.kept} ${meant.length > 0 ? hoverTexts.didYouMean(meant) : hoverTexts.nothingToPlay}`;
    }
    case "number":
    case "range":
      return `${hoverTexts.kept} ${numberSentence(meaning.type, typed)}`;
    case "note":
      return `${hoverTexts.kept} ${hoverTexts.noteAfterColon}`;
    case "quoted":
      if (!meaning.closed) return `${hoverTexts.kept} ${hoverTexts.closingQuote}`;
      return `${hoverTexts.kept} ${hoverTexts.noSuchPattern}`;
    case "unknown": {
      if (!/[\p{L}\p{N}]/u.test(typed)) return undefined;
      if (bodyOf(typed, vocabulary) === "hurts") return explainTerm({ type: "sore", words: typed }, vocabulary);
      const [near] = nearestTo(typed, TERM_TYPES, { vocabulary });
      const meant = near === undefined ? "" : ` ${hoverTexts.didYouMean([escapedExtract(near)])}`;
      const isSaid = saidOfAttempts(entry.source.items).some((said) => said.includes(item));
      return isSaid
        ? `${hoverTexts.keptOutcome}${meant} ${hoverTexts.asOutcome}`
        : `${hoverTexts.kept}${meant} ${hoverTexts.asTerm}`;
    }
    default:
      return `${hoverTexts.kept} ${hoverTexts.kindAfterTonic}`;
  }
}

function numberSentence(type: "number" | "range", typed: string): string {
  if (!/^\d+(?:\s?[-–]\s?\d+)?$/.test(typed)) return hoverTexts.numberOfNothing;
  return type === "number" ? hoverTexts.whatIsNumber(typed) : hoverTexts.whatIsRange(typed);
}
