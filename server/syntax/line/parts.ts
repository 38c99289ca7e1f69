import type { Item, Meaning } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import type { Cut } from "./cut.ts";
import { readPart } from "./part.ts";

/** Parts read with one vocabulary, by their text. */
export class PartMemo {
  private readonly parts = new Map<string, readonly Item[]>();
  private readonly shapes = new Map<string, Shape | null>();

  /** The items of a part, by its text: the same array for the same text while the memo lasts. */
  read(text: string, vocabulary: Vocabulary): readonly Item[] {
    const known = this.parts.get(text);
    if (known) return known;
    const items = this.byShape(text, vocabulary);
    if (this.parts.size >= MOST_PARTS) this.parts.clear();
    this.parts.set(text, items);
    return items;
  }

  /**
   * Most parts that differ do so in one number: `8ths at 60 clean`, `8ths at 63 clean`. Where that number is a tempo, or a
   * bare one that goes on with one, the part is what the first of its shape was, with its own number. A declared name with
   * such a number in it could be a shape's first or any later: then nothing is read by its shape.
   */
  private byShape(text: string, vocabulary: Vocabulary): readonly Item[] {
    const number = NUMBER_OF_A_SHAPE.exec(text);
    if (!number || vocabulary.hasNumberedNames) return readPart(text, vocabulary);
    const at = number.index;
    const key = `${text.slice(0, at)}\n${text.slice(at + number[0].length)}`;
    const shape = this.shapes.get(key);
    if (shape) return filled(shape, number[0], text.length);
    const items = readPart(text, vocabulary);
    if (shape === undefined) {
      if (this.shapes.size >= MOST_PARTS) this.shapes.clear();
      this.shapes.set(key, shapeOf(items, at, number[0], text.length) ?? null);
    }
    return items;
  }
}

/** A number of two or three figures that stands by itself. */
const NUMBER_OF_A_SHAPE = /(?<=^|\s)[1-9]\d{1,2}(?=\s|$)/;

/** A part read once, and which of its items holds the number that others of its shape have instead. */
interface Shape {
  readonly items: readonly Item[];
  readonly holder: number;
  readonly length: number;
}

function shapeOf(items: readonly Item[], at: number, number: string, length: number): Shape | undefined {
  const holder = items.findIndex(({ start, end }) => start <= at && at < end);
  const meaning = items[holder]?.meaning;
  const holds =
    meaning?.type === "tempo"
      ? meaning.bpm === Number(number) && meaning.low === undefined
      : meaning?.type === "number";
  return holds ? { items, holder, length } : undefined;
}

function filled({ items, holder, length }: Shape, number: string, ownLength: number): readonly Item[] {
  const longer = ownLength - length;
  return items.map((item, i) => {
    if (i < holder) return item;
    const { start, end, meaning } = item;
    if (i > holder) return longer === 0 ? item : { start: start + longer, end: end + longer, meaning };
    const own: Meaning =
      meaning.type === "tempo" ? { ...meaning, bpm: Number(number) } : { type: "number", value: Number(number) };
    return { start, end: end + longer, meaning: own };
  });
}

/** Parts differ little in a journal; past this many something else is being fed in, and the memo starts over. */
const MOST_PARTS = 60_000;

/** One stretch of a line with what its words mean; columns are those of the line. */
export interface Part {
  readonly start: number;
  readonly end: number;
  readonly after: Cut["after"];
  readonly items: readonly Item[];
}

export interface PartContext {
  readonly vocabulary: Vocabulary;
  readonly memo: PartMemo;
}

export function partsOf(line: string, cuts: readonly Cut[], context: PartContext): Part[] {
  return cuts.map(({ start, end, after }) => ({
    start,
    end,
    after,
    items: moved(readPartOnce(line.slice(start, end), context), start),
  }));
}

/** The items of a part; columns count from its beginning. The same array for the same text while the memo lasts. */
export function readPartOnce(text: string, { vocabulary, memo }: PartContext): readonly Item[] {
  return memo.read(text, vocabulary);
}

function moved(items: readonly Item<Meaning>[], by: number): readonly Item[] {
  return by === 0 ? items : items.map(({ start, end, meaning }) => ({ start: start + by, end: end + by, meaning }));
}
