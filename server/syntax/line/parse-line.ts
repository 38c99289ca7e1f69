import type { Vocabulary } from "../words/vocabulary.ts";
import { type Part, remarkText } from "./cut.ts";
import { dateWord } from "./day-line.ts";
import { isDeclaration, nearestDeclarationWord } from "./declaration-rule.ts";
import { declarationWordAt } from "./declaration-word.ts";
import { isEntry } from "./entry-rule.ts";
import type { Line, Remark } from "./line.ts";
import type { LineReader } from "./line-reader.ts";
import { parseEntry } from "./parse-entry.ts";

export interface LineContext {
  readonly vocabulary: Vocabulary;
  /** What was read before with this vocabulary: owned by whoever owns that. */
  readonly memo: LineReader;
  /** Above the first day. */
  readonly head: boolean;
}

/** Reads one line. Never fails: what cannot be read is an `unknown` item, a `prose` line, or a line of its own kind. */
export function parseLine(text: string, context: LineContext): Line {
  context.memo.read(text, 0, text.length);
  return lineRead(context.memo, text, context);
}

/** The line that a reader has just read. */
export function lineRead(reader: LineReader, text: string, context: LineContext): Line {
  const { kind, from } = reader;
  if (kind === "too long") return { type: "too long", length: text.length };
  if (kind === "blank") return { type: "blank" };
  if (kind === "conflict marker") return { type: "conflict marker", start: 0, end: text.length };
  const start = reader.start - from;
  if (kind === "remark") return { type: "remark", start, remark: { start, ...remarkText(text, start) } };
  const at = reader.cuts.remark - from;
  const remark: Remark | undefined = at < text.length ? { start: at, ...remarkText(text, at) } : undefined;
  const end = reader.contentEnd() - from;
  const parts = reader.parts();
  if (kind === "day") {
    const date = dateWord(text)!;
    return { type: "day", start: date.start, end, date: date.text, dateEnd: date.end, items: flat(parts), remark };
  }
  if (kind === "phase") return { type: "phase", start, end, items: flat(parts), remark };
  if (kind === "entry") return { ...parseEntry(text, start, end, parts, context), remark };
  if (end <= start) return { type: "prose", start: text.search(/\S/), end: text.trimEnd().length, remark };
  return kind === "open"
    ? readParts(text, start, end, parts, remark, context)
    : readSentence(text, start, end, remark, context);
}

/** A line that only the words of the whole tell. */
function readParts(
  text: string,
  start: number,
  end: number,
  parts: readonly Part[],
  remark: Remark | undefined,
  context: LineContext,
): Line {
  const frame = frameType(parts);
  if (frame) return { type: frame, start, end, items: flat(parts), remark };
  const declared = declarationWordAt(text, start, end);
  if (declared && isDeclaration(text, declared, end, context, parts)) {
    return { type: "declaration", start, end, word: declared.word, wordEnd: declared.end, remark };
  }
  if (isEntry(parts)) return { ...parseEntry(text, start, end, parts, context), remark };
  return readSentence(text, start, end, remark, context);
}

function readSentence(
  text: string,
  start: number,
  end: number,
  remark: Remark | undefined,
  context: LineContext,
): Line {
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

function flat(parts: readonly Part[]): Part["items"] {
  return parts.flatMap((part) => part.items);
}
