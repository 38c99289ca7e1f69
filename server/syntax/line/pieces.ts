import { BoundedMemo } from "../words/bounded-memo.ts";
import type { Item } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { knownOf } from "./entry-rule.ts";
import { LineCuts } from "./line-cuts.ts";
import { readPart } from "./part.ts";
import { holds, itemsOf, type Piece, pieceOf } from "./piece.ts";

/**
 * The pieces that were read with one vocabulary: each text once, and of those that begin with a number (`at 60 clean`,
 * `12 min`) once for whatever number. It is bounded by bytes and by use, and dropped with the vocabulary.
 */
export class PieceTable {
  private readonly texts = new BoundedMemo<Piece>(MOST_BYTES, bytesOf);
  /** By what stands before the number and what behind it; null where the number may not change. */
  private readonly numbered = new BoundedMemo<Piece | null>(MOST_BYTES, (piece) => (piece ? bytesOf(piece) : 0));
  private readonly empty: Piece;
  private readonly cuts = new LineCuts();

  constructor(readonly vocabulary: Vocabulary) {
    this.empty = this.read("");
  }

  /** A piece that is this text. */
  of(text: string): Piece {
    return text === "" ? this.empty : this.texts.of(text, (own) => this.read(own));
  }

  /**
   * A piece with a number that may change; undefined where it may not, as then the text is one of a kind.
   *
   * @param start where the number begins, and `end` where it ends, in the text
   */
  withNumber(text: string, start: number, end: number): Piece | undefined {
    const number = text.slice(start, end);
    if (this.vocabulary.numbersInNames.has(number)) return undefined;
    const key = `${text.slice(0, start)}\n${text.slice(end)}`;
    return this.numbered.of(key, () => this.shape(ownText(text), start, end) ?? null) ?? undefined;
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
    const [start, end, number] = [cuts.starts[i]!, cuts.ends[i]!, cuts.numbers[i]!];
    const text = line.slice(start, end);
    const own = number < 0 ? undefined : line.slice(number, cuts.numberEnds[i]!);
    const shared = own === undefined ? undefined : this.withNumber(text, number - start, cuts.numberEnds[i]! - start);
    return shared ? itemsOf(shared, own, start) : itemsOf(this.of(text), undefined, start);
  }

  private read(text: string): Piece {
    const items = readPart(text, this.vocabulary);
    return pieceOf(text, items, knownOf(items), this.vocabulary);
  }

  private shape(text: string, start: number, end: number): Piece | undefined {
    const items = readPart(text, this.vocabulary);
    const item = items.findIndex((each) => each.start <= start && start < each.end);
    if (item < 0 || !holds(items[item]!.meaning, Number(text.slice(start, end)))) return undefined;
    return pieceOf(text, items, knownOf(items), this.vocabulary, { start, end, item });
  }
}

/** Of each of the two tables. */
const MOST_BYTES = 3_000_000;
const PIECE_BYTES = 400;
const ITEM_BYTES = 150;

function bytesOf({ items }: Piece): number {
  return PIECE_BYTES + ITEM_BYTES * items.length;
}

/** A text cut out of another would keep the whole of that. */
function ownText(text: string): string {
  return ` ${text}`.slice(1);
}
