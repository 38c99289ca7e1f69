import type { CompletionItem, TextEdit } from "../types.ts";
import { completes, isSamePhrase, type Typing } from "./typing.ts";

/** Something that may be offered, before it is known whether it completes what is typed. */
export interface Candidate {
  readonly label: string;
  /** Other ways to say it: whoever begins to type one gets that one. */
  readonly alternatives?: readonly string[];
  /** What else may be typed to find it; the label is put in. */
  readonly aliases?: readonly string[];
  readonly kind: CompletionItem["kind"];
  readonly detail?: string;
  /** How well it fits the place: 0 is what comes next, 9 the least. */
  readonly fit: number;
  /** What it is counted by: see `Usage.score`. */
  readonly usage?: string;
  /** Added to what it is counted by. */
  readonly bonus?: number;
  /** What is put in, where it is not the label. */
  readonly insert?: string;
  /** The same with tab stops. */
  readonly snippet?: string;
  /** Of two candidates with one identity only the first that is found is offered. */
  readonly identity?: string;
  readonly resolve?: { readonly topic: string; readonly key: string };
}

/** How often and how lately something was used; 0 for never. */
export type Score = (usage: string) => number;

interface Form {
  /** What is shown and put in: the label, or the alternative that is being typed. */
  readonly form: string;
  /** What the typed text is the beginning of. */
  readonly found: string;
}

interface Offered extends Form {
  readonly candidate: Candidate;
  readonly start: number;
  readonly typed: string;
}

/** More than any place has, but for a journal with hundreds of titles. */
const MOST_ITEMS = 500;
const HIGHEST_SCORE = 9999;

/** What is shown of a candidate, and what the typed text is the beginning of; undefined where it completes nothing. */
export function formOf(
  candidate: Pick<Candidate, "label" | "alternatives" | "aliases">,
  typed: string,
): Form | undefined {
  const { label, alternatives, aliases } = candidate;
  if (completes(label, typed)) return { form: label, found: label };
  const form = alternatives?.find((each) => completes(each, typed));
  if (form !== undefined) return { form, found: form };
  const found = aliases?.find((each) => completes(each, typed));
  return found === undefined ? undefined : { form: label, found };
}

/** The candidates that complete what is typed from a column on; what stands there in full is none. */
export function completing(candidates: readonly Candidate[], { text, typedTo }: Typing, start: number): Offered[] {
  const typed = text.slice(start, typedTo);
  return candidates.flatMap((candidate): Offered[] => {
    const found = formOf(candidate, typed);
    return found && !isSamePhrase(found.found, typed) ? [{ candidate, start, typed, ...found }] : [];
  });
}

/** Offers as items: what fits first, then what was used most and latest, then in the order given. */
export function ranked(offers: readonly Offered[], typing: Typing, line: number, score: Score): CompletionItem[] {
  const seen = new Set<string>();
  const items: CompletionItem[] = [];
  for (const [order, offer] of offers.entries()) {
    const { candidate, form } = offer;
    const identity = candidate.identity ?? form.toLowerCase();
    if (seen.has(identity) || seen.has(form)) continue;
    seen.add(identity).add(form);
    items.push(itemOf(offer, typing, line, rankOf(candidate, score, order)));
  }
  return items.sort((a, b) => (a.sortText < b.sortText ? -1 : 1)).slice(0, MOST_ITEMS);
}

/** Three figures in a row: the fit, what is missing to the highest score, the order given. */
function rankOf({ fit, usage, bonus = 0 }: Candidate, score: Score, order: number): string {
  const used = Math.min(HIGHEST_SCORE, Math.round(100 * ((usage === undefined ? 0 : score(usage)) + bonus)));
  return `${fit}${String(HIGHEST_SCORE - used).padStart(4, "0")}${String(order).padStart(4, "0")}`;
}

function itemOf(
  { candidate, start, typed, form, found }: Offered,
  typing: Typing,
  line: number,
  sortText: string,
): CompletionItem {
  const { label, kind, insert, snippet, resolve } = candidate;
  const detail = candidate.detail ?? (form === label ? undefined : label);
  const filterText = isQuoted(typed) ? typed[0] + found.replace(/^"/, "") : inCaseOf(typed, found);
  return {
    label: form,
    kind,
    ...(detail ? { detail } : {}),
    sortText,
    ...(filterText === form ? {} : { filterText }),
    edit: editOf(form === label ? (insert ?? label) : form, typing, line, start, typed),
    ...(snippet ? { snippet } : {}),
    ...(resolve ? { resolve } : {}),
  };
}

/**
 * Editors put further up what has its capitals where they were typed: `h-Moll` is as near as `H-Dur` to who typed `H`.
 */
function inCaseOf(typed: string, found: string): string {
  const start = found.slice(0, typed.length);
  return start.toLowerCase() === typed.toLowerCase() ? typed + found.slice(typed.length) : found;
}

function isQuoted(typed: string): boolean {
  return /^["“„«]/.test(typed);
}

const CLOSING: Readonly<Record<string, string>> = { "“": "”", "„": "“", "«": "»" };

function editOf(offered: string, typing: Typing, line: number, start: number, typed: string): TextEdit {
  const close = CLOSING[typed[0] ?? ""];
  const newText = close ? offered.replace(/^"([^"]*)"/, `${typed[0]}$1${close}`) : offered;
  const range = { start: { line, character: start }, end: { line, character: endOf(offered, typing, start) } };
  return { range, newText };
}

/** Words behind the cursor that the offered phrase has too are replaced with it. */
function endOf(offered: string, { text, end, cursor, remark }: Typing, start: number): number {
  if (start === cursor) return cursor;
  const further = /^[^,:>→]*/.exec(text.slice(end, remark))![0];
  for (const word of further.matchAll(/\S+(?=\s|$)/g)) {
    const at = end + word.index + word[0].length;
    if (isSamePhrase(text.slice(start, at), offered)) return at;
  }
  return end;
}
