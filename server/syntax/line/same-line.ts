import { LEADS_ON } from "../lexicon/note-leads.ts";
import type { Item, Meaning, SubjectMeaning } from "../words/meaning.ts";
import type { Part } from "./cut.ts";
import { cutLine } from "./cut.ts";
import { evidenceIn } from "./entry-evidence.ts";
import type { EntryLine, SameWords } from "./line.ts";
import { LineWords } from "./line-words.ts";
import { parseEntry } from "./parse-entry.ts";
import { type PartContext, partsOf } from "./parts.ts";
import { hasTempo } from "./tempo-evidence.ts";

/** `same`, `ditto`, `nochmal` at the beginning of a line; undefined where none stands there. */
export function sameWords(words: LineWords): SameWords | undefined {
  const from = LEADS_ON.has(words.typed(0).toLowerCase()) && words.before(1) === "" ? 1 : 0;
  const length = words.lengthOf(from, "same-as-above");
  if (length === 0) return undefined;
  const [start, end] = [words.words[from]!.start, words.words[from + length - 1]!.end];
  return { start, end, terms: words.meaningOf(from, "same-as-above") === "same" };
}

/** What says that it was played again, and how. */
const SAYS_HOW: readonly Meaning["type"][] = [
  "pattern",
  "variant",
  "inversion",
  "articulation",
  "note value",
  "span",
  "rhythm",
  "direction",
  "without click",
  "manner",
  "amount",
];
const SAYS_MORE: readonly Meaning["type"][] = ["tempo", "outcome", "tries", "times", "place", "number", "range"];
/** Words that nothing was made of, where only terms say that it is practice. */
const MOST_STRANGE = 2;
/** Where a tempo stands apart. */
const MOST_STRANGE_BEFORE_TEMPO = 3;

/**
 * A line that begins with `same`, as an entry whose subject the entry above it tells; with a subject of its own one
 * whose terms are told there. Undefined where the words go on as a sentence does.
 *
 * @param above what the entry above practises, where that is known: a bare number goes by it
 */
export function parseSame(
  text: string,
  same: SameWords,
  end: number,
  context: PartContext,
  above?: SubjectMeaning,
): EntryLine | undefined {
  const behind = same.end + /^[\s,:;–—-]*/.exec(text.slice(same.end, end))![0].length;
  const isSigned = /[,:;–—-]/.test(text.slice(same.end, behind));
  const all = partsFrom(text, behind, end, context);
  const from = tonicBehindLead(all)?.start ?? behind;
  const parts = from === behind ? all : partsFrom(text, from, end, context);
  const words = new LineWords(text, from, end, parts, context.vocabulary);
  if (evidenceIn(words)?.subject?.meaning.type === "title") return undefined;
  const carried = above && { start: same.start, end: same.end, meaning: above };
  const line = parseEntry(text, same.start, end, parts, context, carried);
  const stands = above ? true : line.subject ? same.terms && !isSentence(words) : goesOn(words, isSigned);
  return stands ? { ...line, same } : undefined;
}

/**
 * `Bars 9 to 12 of it separately, 50 then 56`: a place, and how it went there, of the piece above. Undefined for other
 * lines and sentences.
 */
export function placeAbove(words: LineWords, context: PartContext): EntryLine | undefined {
  if (words.found(0)?.meaning.type !== "place" || !(words.has("tempo", "outcome", "tries", "times") || hasTempo(words)))
    return undefined;
  if (!words.hasNumberedPlace && strange(words, words.count) > 0) return undefined; // `Head office at 10`
  const { text, start, end } = words;
  return parseSame(text, { start, end: start, terms: true }, end, context);
}

function partsFrom(text: string, from: number, end: number, context: PartContext): readonly Part[] {
  return partsOf(text, cutLine(text.slice(0, end), from).cuts, context);
}

/** `in G`: the same on another tonic. */
function tonicBehindLead([first]: readonly Part[]): Item | undefined {
  const [lead, note] = first?.items ?? [];
  const isLead = lead?.meaning.type === "unknown" && /^(?:in|on|from)$/i.test(lead.meaning.words);
  return isLead && note?.meaning.type === "note" && !note.meaning.lower ? note : undefined;
}

function goesOn(words: LineWords, isSigned: boolean): boolean {
  if (words.count === 0 || isSentence(words)) return false;
  const opening = strangeBefore(words);
  const isCounted = hasTempo(words);
  if (opening > (isCounted ? MOST_STRANGE_BEFORE_TEMPO : isSigned ? MOST_STRANGE : 0)) return false;
  if (isCounted) return true;
  if (words.has(...SAYS_MORE)) return true;
  return words.has(...SAYS_HOW) && strange(words, words.count) <= MOST_STRANGE;
}

function isSentence(words: LineWords): boolean {
  if (words.first(0, Math.min(4, words.count), "intention") >= 0) return true;
  return !words.has("tempo") && words.first(0, words.firstStop, "sentence-sign") >= 0;
}

/** Words that nothing was made of in front of the first thing found. */
function strangeBefore(words: LineWords): number {
  let to = 0;
  while (to < words.count && !words.found(to)) to++;
  return strange(words, to);
}

function strange(words: LineWords, to: number): number {
  let count = 0;
  for (let i = 0; i < to; i++) if (!words.found(i) && !words.is(i, "filler")) count++;
  return count;
}
