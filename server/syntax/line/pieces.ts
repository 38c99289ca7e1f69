import { BoundedMemo } from "../words/bounded-memo.ts";
import type { Item, Meaning } from "../words/meaning.ts";
import { FASTEST, JOINTS, SLOWEST } from "../words/tempo-words.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { MINUTES } from "./cut-words.ts";
import { declarationWordAt } from "./declaration-word.ts";
import { knownOf } from "./entry-rule.ts";
import { LineCuts } from "./line-cuts.ts";
import { countsElse, isNumber } from "./numbers.ts";
import { firstOfPart, readPart } from "./part.ts";
import { holds, itemsOf, moved, type Piece, pieceOf, type SplitPiece } from "./piece.ts";

/**
 * The pieces that were read with one vocabulary: each text once, and of those that begin with a number (`at 60 clean`,
 * `12 min`) once for whatever number. It is bounded by bytes and by use, and dropped with the vocabulary.
 */
export class PieceTable {
  private readonly texts = new BoundedMemo<Piece>(MOST_BYTES, bytesOf);
  /** By what stands before the number, and then by what behind it; null where the number may not change. */
  private readonly numbered = new Map<string, BoundedMemo<Piece | null>>();
  /** The items of what short pieces end in: those without commas often end alike. */
  private readonly ends = new BoundedMemo<readonly Item[]>(MOST_BYTES_OF_ENDS, (items) => ITEM_BYTES * items.length);
  /** Of all that was put into `numbered` since it was empty: no less than it holds. */
  private numberedBytes = 0;
  private readonly empty: Piece;
  private readonly cuts = new LineCuts();

  constructor(readonly vocabulary: Vocabulary) {
    this.empty = this.read("");
  }

  /** A piece that is this text. */
  of(text: string): Piece {
    if (text === "") return this.empty;
    return this.texts.get(text) ?? this.texts.of(text, (own) => this.read(own));
  }

  /** The piece that stands in a text where it was cut. */
  at(text: string, { starts, ends, numbers, numberEnds }: LineCuts, i: number): Piece {
    const start = starts[i]!;
    const number = numbers[i]!;
    const shared = number < 0 ? undefined : this.withNumber(text, start, number, numberEnds[i]!, ends[i]!);
    return shared ?? this.of(text.slice(start, ends[i]!));
  }

  /** A piece with a number that may change; undefined where it may not, as then the text is one of a kind. */
  private withNumber(text: string, from: number, start: number, end: number, to: number): Piece | undefined {
    const { numbersInNames } = this.vocabulary;
    if (numbersInNames.size > 0 && numbersInNames.has(text.slice(start, end))) return undefined;
    const rest = text.slice(end, to);
    const value = Number(text.slice(start, end));
    // Other numbers than likely tempos may mean something else; minutes are minutes.
    if ((value < SLOWEST || value > FASTEST) && !MINUTES.test(rest)) return undefined;
    const pieces = this.behind(text.slice(from, start));
    const known = pieces.get(rest);
    if (known !== undefined) return known ?? undefined;
    // of `60 to 60` nothing tells that with another number it is a range
    const piece = JOINED_NUMBER.test(rest)
      ? undefined
      : this.shape(ownText(text.slice(from, to)), start - from, end - from);
    pieces.set(rest, piece ?? null);
    if (piece) this.numberedBytes += bytesOf(piece);
    return piece;
  }

  private behind(opening: string): BoundedMemo<Piece | null> {
    const known = this.numbered.get(opening);
    if (known) return known;
    if (this.numbered.size >= MOST_OPENINGS || this.numberedBytes > MOST_BYTES) {
      this.numbered.clear();
      this.numberedBytes = 0;
    }
    const memo = new BoundedMemo<Piece | null>(MOST_BYTES_BEHIND, (piece) => (piece ? bytesOf(piece) : 0));
    this.numberedBytes += OPENING_BYTES;
    this.numbered.set(ownText(opening), memo);
    return memo;
  }

  /** The items of one part of a line, by its columns there. */
  itemsIn(line: string, start: number, end: number): readonly Item[] {
    const { cuts } = this;
    cuts.cut(line, start, end, 0);
    const items: Item[] = [];
    for (let i = 0; i < cuts.count; i++) for (const item of this.itemsOfPiece(line, cuts, i)) items.push(item);
    return items;
  }

  itemsOfPiece(line: string, cuts: LineCuts, i: number): readonly Item[] {
    const piece = this.at(line, cuts, i);
    const number = piece.number && line.slice(cuts.numbers[i]!, cuts.numberEnds[i]!);
    return itemsOf(piece, number, cuts.starts[i]!);
  }

  private read(text: string): Piece {
    const items = this.itemsFrom(text);
    return pieceOf(text, items, knownOf(items), this.vocabulary, { split: this.splitOf(text, items) });
  }

  /** As `readPart`; what stands behind the first item is read once for all pieces that end in it. */
  private itemsFrom(text: string): readonly Item[] {
    const opening = text.length <= LONGEST_WITH_END ? firstOfPart(text, this.vocabulary) : undefined;
    if (!opening) return readPart(text, this.vocabulary);
    const { first, next } = opening;
    const end = this.ends.of(text.slice(next), (own) => this.itemsFrom(own));
    return [first, ...end.map((item) => moved(item, next))];
  }

  /** The pieces of a text without commas, where each term means by itself what it means there. */
  private splitOf(text: string, items: readonly Item[]): readonly SplitPiece[] | undefined {
    // Words go together as typed, and notes go on with others only where nothing else stands beside them.
    const isJoined = ({ meaning: { type } }: Item): boolean => type === "unknown" || type === "note";
    if (items.length < 2 || items.some(isJoined)) return undefined;
    if (declarationWordAt(text, 0, text.length)) return undefined;
    if (items.some((item) => isNumber(item) && countsElse(item, text))) return undefined; // `18 bars 33-40`
    const split: SplitPiece[] = [];
    for (const { start, end, meaning } of items) {
      const piece = this.of(text.slice(start, end));
      const [only, more] = piece.items();
      if (more || !only || !isSame(only.meaning, meaning)) return undefined;
      split.push({ piece, start, end });
    }
    return split;
  }

  private shape(text: string, start: number, end: number): Piece | undefined {
    const items = readPart(text, this.vocabulary);
    const item = items.findIndex((each) => each.start <= start && start < each.end);
    if (item < 0 || !holds(items[item]!.meaning, Number(text.slice(start, end)))) return undefined;
    return pieceOf(text, items, knownOf(items), this.vocabulary, { number: { start, end, item } });
  }
}

/** A further number that goes on with the one before it. */
const JOINED_NUMBER = new RegExp(`^\\s*(?:${JOINTS.join("|")}|/)\\s*\\d`, "i");
/** Of texts without a number that may change. */
const MOST_BYTES = 4_000_000;
/** Openings such as `at ` and `at half=` are few; in lines without commas anything may stand before a number. */
const MOST_OPENINGS = 2000;
const OPENING_BYTES = 500;
const MOST_BYTES_BEHIND = 200_000;
const MOST_BYTES_OF_ENDS = 500_000;
/** In UTF-16 units. */
const LONGEST_WITH_END = 80;
const PIECE_BYTES = 400;
const ITEM_BYTES = 150;

function isSame(a: Meaning, b: Meaning): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

function bytesOf({ keptItems }: Piece): number {
  return PIECE_BYTES + ITEM_BYTES * keptItems;
}

/** A text cut out of another would keep the whole of that. */
function ownText(text: string): string {
  return ` ${text}`.slice(1);
}
