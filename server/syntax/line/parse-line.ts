import type { Item } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { cutLine, isRemarkMark, remarkText } from "./cut.ts";
import { dateWord } from "./day-line.ts";
import { declarationWordAt, isDeclaration, nearestDeclarationWord } from "./declaration-word.ts";
import { isEntry } from "./entry-rule.ts";
import type { Line, Remark } from "./line.ts";
import { parseEntry } from "./parse-entry.ts";
import { type Part, type PartMemo, partsOf } from "./parts.ts";

/** Longer lines are not read: one error says so. In UTF-16 units. */
export const LONGEST_LINE = 4096;

const CONFLICT = /^(?:<{7}|>{7}|={7}|\|{7})(?:\s|$)/;
const BULLET = /^[\s\uFEFF]*(?:[-*•]\s+)?/;

export interface LineContext {
  readonly vocabulary: Vocabulary;
  /** Parts read before, by their text: owned by whoever owns the vocabulary. */
  readonly memo: PartMemo;
  /** Above the first day. */
  readonly head: boolean;
}

/** Reads one line. Never fails: what cannot be read is an `unknown` item, a `prose` line, or a line of its own kind. */
export function parseLine(text: string, context: LineContext): Line {
  if (text.length > LONGEST_LINE) return { type: "too long", length: text.length };
  const first = text.search(/[^\s\uFEFF]/);
  if (first < 0) return { type: "blank" };
  if (CONFLICT.test(text)) return { type: "conflict marker", start: 0, end: text.length };
  const date = dateWord(text);
  const start = date ? date.end : BULLET.exec(text)![0].length;
  if (!date && isRemarkMark(text, start))
    return { type: "remark", start, remark: { start, ...remarkText(text, start) } };
  const { cuts, remark: remarkAt } = cutLine(text, date ? date.end : first);
  const remark: Remark | undefined =
    remarkAt < text.length ? { start: remarkAt, ...remarkText(text, remarkAt) } : undefined;
  const parts = partsOf(
    text,
    cuts.length ? [{ ...cuts[0]!, start: Math.max(start, cuts[0]!.start) }, ...cuts.slice(1)] : cuts,
    context,
  );
  const end = text.slice(0, remarkAt).trimEnd().length;
  if (date)
    return { type: "day", start: date.start, end, date: date.text, dateEnd: date.end, items: flat(parts), remark };
  return readParts(text, start, end, parts, remark, context);
}

function readParts(
  text: string,
  start: number,
  end: number,
  parts: readonly Part[],
  remark: Remark | undefined,
  context: LineContext,
): Line {
  if (end <= start) return { type: "prose", start: text.search(/\S/), end: text.trimEnd().length, remark };
  const frame = frameType(parts);
  if (frame) return { type: frame, start, end, items: flat(parts), remark };
  const declared = declarationWordAt(text, start, end);
  if (declared && isDeclaration(text, declared, end, context, parts)) {
    return { type: "declaration", start, end, word: declared.word, wordEnd: declared.end, remark };
  }
  if (isEntry(parts)) return { ...parseEntry(text, start, end, parts, context), remark };
  const near = context.head ? nearestDeclarationWord(text, start, end, context.vocabulary) : undefined;
  return near ? { type: "near declaration", start, end, ...near, remark } : { type: "prose", start, end, remark };
}

/** A line that frames others: its first part opens with its word and is known throughout. */
function frameType(parts: readonly Part[]): "session" | "phase" | "break" | "plan" | "rest" | undefined {
  const items = parts[0]?.items ?? [];
  const opening = items[0]?.meaning;
  if (!opening || items.some((item) => item.meaning.type === "unknown" || item.meaning.type === "note"))
    return undefined;
  if (opening.type === "phase") return "phase";
  return opening.type === "line word" ? opening.id : undefined;
}

function flat(parts: readonly Part[]): readonly Item[] {
  return parts.flatMap((part) => part.items);
}
