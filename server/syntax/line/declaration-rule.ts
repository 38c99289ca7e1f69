import { fold, phraseKey } from "../words/fold.ts";
import type { Item, MeaningOf } from "../words/meaning.ts";
import { isQuote } from "../words/token.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { cutLine, type Part } from "./cut.ts";
import { DECLARATION_WORDS, type DeclarationWord } from "./declaration-word.ts";
import { isEntry } from "./entry-rule.ts";
import { type PartContext, partsOf, readPartOnce } from "./parts.ts";

/** Those whose name stands in quotes. */
const QUOTED = [
  "piece",
  "study",
  "movement",
  "concert",
  "pattern",
  "scale",
  "focus",
  "phase",
  "activity",
  "articulation",
  "outcome",
];

/** What an aim or set work has beside the terms of an entry. */
const DATED: readonly Item["meaning"]["type"][] = ["date", "days"];

interface Context extends PartContext {
  readonly head: boolean;
}

/** Whether the line declares something, rather than being a sentence or an entry that begins with the same word. */
export function isDeclaration(
  text: string,
  { word, end: wordEnd }: DeclarationWord,
  end: number,
  context: Context,
  parts: readonly Part[],
): boolean {
  const body = text.slice(wordEnd, end).trim();
  if (isQuote(body[0] ?? "")) return true;
  if (word === "shared") return context.head && body === "";
  if (word === "share body") return body === ""; // with anything more it is no consent
  if (word === "aim" || word === "set")
    return context.head ? !isSentence(body) : opensEntry(text, wordEnd, end, context);
  if (!context.head) return !QUOTED.includes(word) && hasItsShape(word, body, context);
  return !isSentence(body) && !(word === "focus" && isEntry(parts));
}

/** Ends as a sentence does: a note to oneself that happens to begin with a declaration word. */
function isSentence(body: string): boolean {
  return /[.!?…]$/.test(body) && /\s/.test(body);
}

function opensEntry(text: string, from: number, end: number, context: Context): boolean {
  const parts = partsOf(text.slice(0, end), cutLine(text.slice(0, end), from).cuts, context);
  return isEntry(
    parts.map((part) => ({ ...part, items: part.items.filter(({ meaning }) => !DATED.includes(meaning.type)) })),
  );
}

/** Below a day a declaration without quotes is told from prose by what follows its word. */
function hasItsShape(word: string, body: string, { vocabulary, memo }: Context): boolean {
  const items = (): readonly Item[] => readPartOnce(body, { vocabulary, memo });
  switch (word) {
    case "player":
      return /^\p{Lu}[\p{L}'’-]*(?:\s\p{Lu}[\p{L}'’-]*){0,2}$/u.test(body);
    case "instrument":
      return [items()[0]?.meaning, ...(vocabulary.meanings(phraseKey(body)) ?? [])].some(
        (meaning) => meaning?.type === "instrument",
      );
    case "pitch":
      return /^[A-G]?\s*=?\s*\d/.test(body);
    case "names":
      return /^\p{L}+$/u.test(body);
    case "hide notes":
      return body === "";
    case "note value":
      return items()[0]?.meaning.type === "note value";
    case "usual articulation":
      return items()[0]?.meaning.type === "articulation";
    default:
      return false;
  }
}

/** A declaration that is misspelt is likelier at the beginning of a line. */
const PLACES: readonly Item["meaning"]["type"][] = ["place", "place word"];

/** The declaration word that the first word of a line in the head was meant to be. */
export function nearestDeclarationWord(
  text: string,
  start: number,
  end: number,
  vocabulary: Vocabulary,
): { readonly word: Item<MeaningOf<"unknown">>; readonly nearest: string } | undefined {
  const match = /^[\p{L}'’]+(?=[\s:"“„«]|$)/u.exec(text.slice(start, end));
  const known = vocabulary.meanings(match ? fold(match[0]) : "");
  if (!match || known?.some(({ type }) => !PLACES.includes(type)) || isSentence(text.slice(start, end)))
    return undefined;
  const nearest = match[0].length >= 3 ? vocabulary.nearest(match[0], DECLARATION_WORDS) : undefined;
  if (nearest === undefined || Math.abs(nearest.length - match[0].length) > 2) return undefined;
  return { word: { start, end: start + match[0].length, meaning: { type: "unknown", words: match[0] } }, nearest };
}
