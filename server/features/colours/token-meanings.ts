import { cutLine } from "../../syntax/line/cut.ts";
import type { DeclarationLine, EntryLine, Line } from "../../syntax/line/line.ts";
import { LineReader } from "../../syntax/line/line-reader.ts";
import { partsOf } from "../../syntax/line/parts.ts";
import type { Item, Meaning } from "../../syntax/words/meaning.ts";
import { type NoteReading, noteAt, parted } from "../../syntax/words/note-word.ts";
import { isQuote, tokenise } from "../../syntax/words/token.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import { separatorsOf } from "../explain/separators.ts";
import type { TokenType } from "./token-legend.ts";

/** A coloured stretch of one line: UTF-16 columns, the end excluded. */
export interface Token {
  readonly start: number;
  readonly end: number;
  readonly type: TokenType;
  /** A name, where it is declared. */
  readonly declares?: boolean;
}

interface Colouring {
  /** Of the words; none where a meaning is no meaning. */
  readonly type: TokenType | undefined;
  /** What stands out in it: the notes of a subject, or the word that opens free words. */
  readonly within?: "notes" | "first word";
}

/** How each meaning is coloured: the one table. */
export const COLOURING: Readonly<Record<Meaning["type"], Colouring>> = {
  // what is played
  scale: { type: "type", within: "notes" },
  chord: { type: "type", within: "notes" },
  chain: { type: "type", within: "notes" },
  several: { type: "type", within: "notes" },
  kind: { type: "type" },
  "part of a kind": { type: "type" },
  "chord kind": { type: "type" },
  "figure word": { type: "function" },
  note: { type: "variable" },
  "place word": { type: undefined },
  figure: { type: "function", within: "notes" },
  activity: { type: "function", within: "notes" },
  technique: { type: "function", within: "notes" },
  title: { type: "property" },
  quoted: { type: "string" },
  free: { type: "string", within: "first word" },
  // how
  pattern: { type: "function" },
  variant: { type: "function" },
  inversion: { type: "function" },
  direction: { type: "parameter" },
  span: { type: "parameter", within: "notes" },
  place: { type: "parameter" },
  articulation: { type: "decorator" },
  rhythm: { type: "decorator" },
  manner: { type: "decorator" },
  instrument: { type: "class" },
  with: { type: "parameter", within: "first word" },
  focus: { type: "parameter", within: "first word" },
  sore: { type: "parameter", within: "first word" },
  // figures
  "note value": { type: "number" },
  tempo: { type: "number" },
  goal: { type: "number", within: "first word" },
  "without click": { type: "number" },
  tries: { type: "number" },
  times: { type: "number" },
  amount: { type: "number" },
  signature: { type: "number" },
  steps: { type: "number" },
  number: { type: "number" },
  range: { type: "number" },
  clock: { type: "number" },
  date: { type: "number", within: "first word" },
  bars: { type: "number" },
  days: { type: "number" },
  // how it went, and what frames it
  outcome: { type: "enumMember" },
  done: { type: "keyword" },
  phase: { type: "keyword" },
  "line word": { type: "keyword" },
  weekday: { type: "keyword" },
  "last note": { type: "keyword", within: "notes" },
  // what cannot be read stays plain
  "faulty subject": { type: undefined },
  unknown: { type: undefined },
};

/** The tokens of one line, in order, none upon another. */
export function lineTokens(text: string, line: Line, vocabulary: Vocabulary): readonly Token[] {
  const tokens = ownTokens(text, line, vocabulary);
  if (line.remark) tokens.push({ start: line.remark.start, end: text.trimEnd().length, type: "comment" });
  return inOrder(tokens);
}

function ownTokens(text: string, line: Line, vocabulary: Vocabulary): Token[] {
  switch (line.type) {
    case "day": {
      const date: Token = { start: line.dateEnd - line.date.length, end: line.dateEnd, type: "namespace" };
      return [date, ...itemTokens(text, line.items, vocabulary.notes)];
    }
    case "session":
    case "phase":
    case "break":
    case "plan":
    case "rest":
    case "total":
      return itemTokens(text, line.items, vocabulary.notes);
    case "set":
    case "said":
    case "asked":
      return line.from > line.start ? [openingToken(text, line.start, line.from)] : [];
    case "entry":
      return entryTokens(text, line, vocabulary.notes);
    case "declaration":
      return declarationTokens(text, line, vocabulary);
    default:
      return [];
  }
}

/** `for next week:`, `ask:`: the words before what is set, said or asked. */
function openingToken(text: string, start: number, from: number): Token {
  return { start, end: start + text.slice(start, from).replace(/[\s:=–—-]+$/, "").length, type: "keyword" };
}

function entryTokens(text: string, { subject, items, claims }: EntryLine, notes: NoteReading): Token[] {
  const tokens = itemTokens(text, subject ? [subject, ...items] : items, notes);
  for (const claim of claims) {
    if (claim.type !== "notes") tokens.push({ start: claim.start, end: claim.end, type: "number" });
    else for (const { start, end, note } of claim.notes) if (note) tokens.push({ start, end, type: "variable" });
  }
  return tokens;
}

/** The declaration word, the name that it declares, and what is said of it. */
function declarationTokens(text: string, line: DeclarationLine, vocabulary: Vocabulary): Token[] {
  const tokens: Token[] = [{ start: line.start, end: line.wordEnd, type: "keyword" }];
  const named = declaredName(text, line);
  if (named) tokens.push({ ...named, type: "property", declares: true });
  const short = named && line.word === "piece" ? shortName(text, named.end, line.end) : undefined;
  if (short) tokens.push({ ...short.as, type: "keyword" }, { ...short.name, type: "property", declares: true });
  const body = text.slice(0, line.end);
  const { cuts } = cutLine(body, short?.name.end ?? named?.end ?? line.wordEnd);
  const parts = partsOf(body, cuts, { vocabulary, memo: new LineReader(vocabulary) });
  return [
    ...tokens,
    ...itemTokens(
      body,
      parts.flatMap((part) => part.items),
      vocabulary.notes,
    ),
  ];
}

interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** A player's name, or the quoted one; `aim` and `set` declare no name, and neither does a movement of a piece. */
function declaredName(text: string, { word, wordEnd, end }: DeclarationLine): Stretch | undefined {
  if (word === "aim" || word === "set" || word === "movement") return undefined;
  const first = tokenise(text.slice(wordEnd, end), wordEnd)[0];
  if (word === "player") return first && { start: first.start, end };
  return first?.quote?.closed ? { start: first.start, end: first.end } : undefined;
}

/** `as Ground`, before the colon. */
function shortName(
  text: string,
  from: number,
  to: number,
): { readonly as: Stretch; readonly name: Stretch } | undefined {
  const match = /^(\s*)as(\s+)((?:["“„«][^"“”„«»]+["“”»]|[^:,"“”„«»])+)/i.exec(text.slice(from, to));
  if (!match) return undefined;
  const as = { start: from + match[1]!.length, end: from + match[1]!.length + 2 };
  const start = as.end + match[2]!.length;
  return { as, name: { start, end: start + match[3]!.trimEnd().length } };
}

function itemTokens(text: string, items: readonly Item[], notes: NoteReading): Token[] {
  return items.flatMap((item) => tokensOf(text, item, notes));
}

function tokensOf(text: string, { start, end, meaning }: Item, notes: NoteReading): Token[] {
  const { type, within } = COLOURING[meaning.type];
  if (!type) return [];
  if (meaning.type === "title" && isQuote(text[start]!)) return [{ start, end, type: "string" }];
  if (within === "first word") return withFirstWord(text, { start, end }, type);
  const named = within === "notes" && namesNotes(meaning);
  return named ? withNotes(text, { start, end }, type, notes) : [{ start, end, type }];
}

/** `a twelfth` and `copying a part` hold a letter that is no note. */
function namesNotes(meaning: Meaning): boolean {
  if (meaning.type === "span") return meaning.reach.type === "between";
  if (meaning.type === "technique") return meaning.notes !== undefined;
  return meaning.type !== "activity" || meaning.scale !== undefined;
}

function withFirstWord(text: string, { start, end }: Stretch, type: TokenType): Token[] {
  const length = text.slice(start, end).search(/\s/);
  if (length < 0) return [{ start, end, type: "keyword" }];
  const next = start + length + text.slice(start + length, end).search(/\S/);
  return [
    { start, end: start + length, type: "keyword" },
    { start: next, end, type },
  ];
}

/** The notes in a subject stand out from its other words; so do a scale's name in quotes, and the `>` of a chain. */
function withNotes(text: string, { start, end }: Stretch, type: TokenType, notes: NoteReading): Token[] {
  const { cuts } = cutLine(text.slice(0, end), start);
  const found: Token[] = [];
  for (const { column, sign } of separatorsOf(text, cuts))
    if (sign === ">") found.push({ start: column, end: column + 1, type: "operator" });
  for (const cut of cuts) found.push(...wordTokens(text, cut, type, notes));
  return joined(inOrder(found), type);
}

function wordTokens(text: string, { start, end }: Stretch, type: TokenType, notes: NoteReading): Token[] {
  const words = parted(tokenise(text.slice(start, end), start), notes);
  const found: Token[] = [];
  for (let i = 0; i < words.length; ) {
    const note = noteAt(words, i, notes);
    const own = note ? "variable" : words[i]!.quote ? "string" : type;
    found.push({ start: words[i]!.start, end: words[i + (note?.length ?? 1) - 1]!.end, type: own });
    i += note?.length ?? 1;
  }
  return found;
}

/** Words of one colour side by side are one token. */
function joined(tokens: readonly Token[], type: TokenType): Token[] {
  const result: Token[] = [];
  for (const token of tokens) {
    const before = result.at(-1);
    if (before?.type === type && token.type === type) result[result.length - 1] = { ...before, end: token.end };
    else result.push(token);
  }
  return result;
}

/** Sorted; of two that overlap the earlier stays. */
function inOrder(tokens: readonly Token[]): readonly Token[] {
  const sorted = [...tokens].sort((a, b) => a.start - b.start || b.end - a.end);
  const result: Token[] = [];
  for (const token of sorted) {
    if (token.end > token.start && token.start >= (result.at(-1)?.end ?? 0)) result.push(token);
  }
  return result;
}
