import type { Journal } from "../../journal/journal.ts";
import { titleIndex } from "../../journal/titles/journal-titles.ts";
import { readPart } from "../../syntax/line/part.ts";
import { nameKey, phraseKey } from "../../syntax/words/fold.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { plainText } from "../../syntax/words/plain-text.ts";
import { tokenise } from "../../syntax/words/token.ts";
import { type Refusal, refusal } from "../explain/refusal.ts";
import { declaredMentions } from "./declarations.ts";
import { isCalled, type Name, type NameKind } from "./named.ts";
import { renameTexts } from "./rename-texts.ts";

const LONGEST_NAME = 60;

/** These are always written in quotes, or after their own word. */
const ALWAYS_MARKED: readonly NameKind[] = ["pattern", "scale", "concert", "temperament", "set work", "focus"];

/** A new name as it was typed: with quotes around it or without. */
export function nameTyped(typed: string): string {
  const words = typed.trim();
  const [token, more] = tokenise(words);
  const inner = token?.quote?.closed && !more ? token.text : words;
  return inner.trim().replace(/[^\S\r\n]+/g, " ");
}

/**
 * Why a thing cannot be called so; undefined where nothing speaks against it before its lines are looked at.
 *
 * @param called what it is called now: the name, or the short name of a title
 */
export function faultOfName(journal: Journal, name: Name, called: string, after: string): Refusal | undefined {
  if (!/\p{L}/u.test(after)) return NO_LETTER;
  if (/["“”„«»‟]/.test(after) || plainText(after) !== after) return NO_NAME;
  if ([...after].length > LONGEST_NAME) return TOO_LONG;
  if (isCalled(after, called)) return undefined;
  if (isTaken(journal, name, after)) return TAKEN;
  return !ALWAYS_MARKED.includes(name.kind) && isReadOtherwise(journal, after) ? READ_OTHERWISE : undefined;
}

const NO_LETTER = refusal(renameTexts.noLetter);
const NO_NAME = refusal(renameTexts.oneLineNoQuotes);
const TOO_LONG = refusal(renameTexts.tooLong(LONGEST_NAME));
const TAKEN = refusal(renameTexts.taken);
const READ_OTHERWISE = refusal(renameTexts.readOtherwise);

function isTaken(journal: Journal, { kind, key }: Name, after: string): boolean {
  if (kind === "title") {
    const whole = titleIndex(journal).named(after);
    const other =
      journal.vocabulary.title(after) ?? (whole !== undefined && isCalled(whole, after) ? whole : undefined);
    if (other !== undefined && nameKey(other) !== key) return true;
  }
  const { patterns, scales } = journal.vocabulary.declared;
  const lent = kind === "pattern" ? patterns : kind === "scale" ? scales : [];
  if (lent.some((each) => isCalled(each, after))) return true;
  return declaredMentions(journal).some(({ mention }) => mention.kind === kind && isCalled(mention.name, after));
}

/** Whether all of the words mean something by themselves. */
function isReadOtherwise({ vocabulary }: Journal, after: string): boolean {
  if (vocabulary.meanings(phraseKey(after))?.some(({ type }) => type !== "title")) return true;
  const items = readPart(after, vocabulary);
  return items.length > 0 && items.every(({ meaning }: Item) => meaning.type !== "unknown" && meaning.type !== "title");
}
