import { phraseKey } from "../words/fold.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import type { Line } from "./line.ts";
import { type LineContext, parseLine } from "./parse-line.ts";

/** What a line is to those around it: it frames those below it, or is a remark, or blank, or nothing of that. */
export type LineSort = "day" | "session" | "phase" | "remark" | "blank" | "other";

/** The sort of a line that was read. */
export function sortOf({ type }: Line): LineSort {
  const framing = type === "day" || type === "session" || type === "phase";
  return framing || type === "remark" || type === "blank" ? type : "other";
}

/** Texts that are kept; a journal with more different ones reads them again. */
const MOST = 20_000;

/**
 * Tells the sorts of lines as reading them in full does (test/properties/line-sorts.test.ts), and reads no more of most of
 * them than their opening. It lasts as long as the words that it was made for.
 */
export class LineSorts {
  private readonly openings: readonly string[];
  private readonly opening: RegExp;
  private readonly read = new Map<string, LineSort>();

  constructor(private readonly context: Omit<LineContext, "head">) {
    this.openings = openingsOf(context.vocabulary);
    this.opening = new RegExp(`^\\s*(?:$|[^a-z\\s]|${this.openings.map(spread).join("|")})`, "i");
  }

  /** The sort of a line below a day. */
  of(text: string): LineSort {
    if (!this.mayMatter(text)) return "other";
    const known = this.read.get(text);
    if (known) return known;
    if (this.read.size >= MOST) this.read.clear();
    const sort = sortOf(parseLine(text, { ...this.context, head: false }));
    this.read.set(text, sort);
    return sort;
  }

  /** Whether a line opens with a word that may frame others, or with no letter. */
  private mayMatter(text: string): boolean {
    if (ASCII.test(text)) return this.opening.test(text);
    if (!LETTER_FIRST.test(text)) return true;
    const key = phraseKey(text);
    return this.openings.some((opening) => key.startsWith(opening));
  }
}

const ASCII = /^[\x00-\x7F]*$/;
const LETTER_FIRST = /^[\s\uFEFF]*\p{L}/u;

/** The keys of all phrases that a session or a phase begins with. */
function openingsOf({ own, declared }: Vocabulary): readonly string[] {
  const words = own.flatMap(({ words, meaning }) =>
    meaning.type === "phase" || (meaning.type === "line word" && meaning.id === "session") ? words : [],
  );
  return [...new Set([...words, ...declared.phases].map(phraseKey))].filter((key) => key !== "");
}

/** A key with whatever spaces and hyphens may stand in a phrase. */
function spread(key: string): string {
  return Array.from(key, (letter) => letter.replace(/[^\p{L}\d]/u, "\\$&")).join("[\\s-]*");
}
