import type { Item } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import { type Cut, isRemarkMark, type Part, separatorText } from "./cut.ts";
import { dateWord, isSpace, LONGEST_DATE } from "./day-line.ts";
import { dittoMark } from "./ditto-mark.ts";
import { EntryFold, type Role } from "./entry-fold.ts";
import { EntryRule } from "./entry-rule.ts";
import type { Line, SameWords } from "./line.ts";
import { AFTER_COLON, JOINED, LineCuts } from "./line-cuts.ts";
import { itemsOf, type Piece } from "./piece.ts";
import { PieceTable } from "./pieces.ts";

/** Longer lines are not read: one error says so. In UTF-16 units. */
export const LONGEST_LINE = 4096;

/**
 * What a line is as far as its pieces tell. `open` may be a declaration, a sentence or another thing that only the
 * words of the whole line tell (`parseLine`).
 */
export type LineKind = Line["type"] | "open";

const CONFLICT = /^(?:<{7}|>{7}|={7}|\|{7})(?:\s|$)/;

/**
 * Reads one line after another: in pieces, of which most were read before, and what these say together. It is the one
 * way from text to meaning; `parseLine` tells the same as an object. The fields are those of the line that was read
 * last.
 */
export class LineReader {
  /** Where the pieces stand in the text. */
  cuts: LineCuts;
  readonly pieces: Piece[] = [];
  kind: LineKind = "blank";
  /** Where the line begins in the text that it was read from. */
  from = 0;
  /** Of a day line, where its date begins. */
  dateStart = 0;
  /** Where what it says begins, behind white space and a bullet; of a day line where its date ends. */
  start = 0;
  /** The mark that stands for what the line above says, by its columns; what it says begins behind. */
  ditto: SameWords | undefined;

  // What an entry, or a phase, says together.
  /** Something on the line bears on the rest of it in a way that only the whole line tells. */
  tangled = false;
  /** As stated on the line, in minutes; undefined where it states none. */
  minutes: number | undefined;
  /** It has an outcome or was done. */
  counted = false;

  /** What each piece of an entry is in its line. */
  readonly roles: Role[] = [];

  private readonly asCut = new LineCuts();
  /** The pieces as cut, while what they consist of is put in their place. */
  private readonly whole: Piece[] = [];
  private readonly asSplit = new LineCuts();
  private readonly rule = new EntryRule();
  private readonly fold = new EntryFold();
  private text = "";

  /** @param table the pieces that were read with the vocabulary; readers that go on at the same time share it */
  constructor(
    vocabulary: Vocabulary,
    readonly table: PieceTable = new PieceTable(vocabulary),
  ) {
    this.cuts = this.asCut;
  }

  /** Reads the line between two offsets of a text, its line end left out. */
  read(text: string, from: number, to: number): LineKind {
    this.text = text;
    this.from = from;
    this.cuts = this.asCut;
    this.cuts.count = 0;
    this.ditto = undefined;
    this.kind = this.kindOf(text, from, to);
    return this.kind;
  }

  /**
   * The number of a piece that may change, as it stands on this line, where it is a tempo; undefined where it is none.
   */
  private tempoOf(i: number): number | undefined {
    return this.pieces[i]!.number?.item === 0 && this.pieces[i]!.hasTempo ? this.valueAt(i) : undefined;
  }

  /** Beats a minute of a piece that is a tempo: the top of a range. */
  bpmOf(i: number): number {
    return this.tempoOf(i) ?? this.pieces[i]!.bpm!;
  }

  /** Where the tempo of a piece stands on its line. */
  tempoStart(i: number): number {
    return this.cuts.starts[i]! - this.from + this.pieces[i]!.items()[0]!.start;
  }
  tempoEnd(i: number): number {
    const { number } = this.pieces[i]!;
    const longer = number ? this.cuts.numberEnds[i]! - this.cuts.numbers[i]! - (number.end - number.start) : 0;
    return this.cuts.starts[i]! - this.from + this.pieces[i]!.items()[0]!.end + longer;
  }

  private kindOf(text: string, from: number, to: number): LineKind {
    if (to - from > LONGEST_LINE) return "too long";
    let first = from;
    while (first < to && isSpace(text.charCodeAt(first))) first++;
    if (first === to) return "blank";
    const code = text.charCodeAt(first);
    if (code < 64 || code > 122 || hasFourDigits(text, first, to)) {
      const other = this.openingSign(text, from, first, to);
      if (other) return other;
    } else this.start = first;
    this.cut(text, this.start, to);
    if (this.start >= this.contentEnd()) return "prose";
    return this.ditto ? "open" : this.kindOfPieces();
  }

  /** The parts of the line, by their columns in it; of its pieces only those that are kept. */
  parts(isKept: (i: number) => boolean = () => true): Part[] {
    const parts: { start: number; end: number; after: Cut["after"]; items: Item[] }[] = [];
    let open: (typeof parts)[number] | undefined;
    for (let i = 0; i < this.cuts.count; i++) {
      const joined = this.cuts.after[i] === JOINED;
      if (!joined) open = undefined;
      if (!isKept(i)) continue;
      const [start, end] = [this.cuts.starts[i]! - this.from, this.cuts.ends[i]! - this.from];
      if (!open) {
        open = { start, end, after: joined ? "," : separatorText(this.cuts.after[i]!), items: [] };
        parts.push(open);
      }
      open.end = end;
      open.items.push(...this.itemsAt(i));
    }
    return parts;
  }

  /** The items of a piece, by their columns in the line. */
  itemsAt(i: number): readonly Item[] {
    const piece = this.pieces[i]!;
    const number = piece.number && this.text.slice(this.cuts.numbers[i]!, this.cuts.numberEnds[i]!);
    return itemsOf(piece, number, this.cuts.starts[i]! - this.from);
  }

  /** Where what stands before the remark ends. */
  contentEnd(): number {
    let end = this.cuts.remark;
    while (end > this.from && isSpace(this.text.charCodeAt(end - 1))) end--;
    return end;
  }

  /** Lines that a sign tells, and where a line begins behind its bullet. */
  private openingSign(text: string, from: number, first: number, to: number): LineKind | undefined {
    const line = text.slice(from, to);
    if (CONFLICT.test(line)) return "conflict marker";
    const date = dateWord(line);
    if (date) {
      this.dateStart = from + date.start;
      this.start = from + date.end;
      this.cut(text, this.start, to);
      return "day";
    }
    const ditto = dittoMark(line);
    if (ditto) {
      this.ditto = ditto;
      this.start = from + ditto.behind;
      return undefined;
    }
    const start = BULLET.exec(line)![0].length;
    this.start = Math.max(from + start, first);
    return isRemarkMark(line, start) ? "remark" : undefined;
  }

  private cut(text: string, from: number, to: number): void {
    const { asCut, table, pieces } = this;
    asCut.cut(text, from, to, this.from);
    this.cuts = asCut;
    let split = false;
    for (let i = 0; i < asCut.count; i++) {
      const piece = table.at(text, asCut, i);
      pieces[i] = piece;
      split ||= piece.split !== undefined;
    }
    if (split) this.split(asCut);
  }

  /** Puts what some pieces consist of in their place. */
  private split(asCut: LineCuts): void {
    const { asSplit, pieces, whole } = this;
    asSplit.count = 0;
    asSplit.remark = asCut.remark;
    for (let i = 0; i < asCut.count; i++) whole[i] = pieces[i]!;
    for (let i = 0; i < asCut.count; i++) {
      const piece = whole[i]!;
      const start = asCut.starts[i]!;
      const after = asCut.after[i]!;
      if (!piece.split) {
        pieces[asSplit.count] = piece;
        asSplit.push(start, asCut.ends[i]!, after, asCut.numbers[i]!, asCut.numberEnds[i]!);
        continue;
      }
      for (let k = 0; k < piece.split.length; k++) {
        const each = piece.split[k]!;
        pieces[asSplit.count] = each.piece;
        asSplit.push(start + each.start, start + each.end, k === 0 ? after : JOINED, -1, 0);
      }
    }
    this.cuts = asSplit;
  }

  private kindOfPieces(): LineKind {
    const first = this.pieces[0]!;
    const { opening } = first;
    if (opening === "phase" || opening === "line word") return this.kindOfFrame(first);
    if (first.declares || this.isLetterBeforeSubject()) return "open";
    const { cuts, pieces, rule } = this;
    rule.reset();
    for (let i = 0; i < cuts.count; i++) rule.take(pieces[i]!.known, cuts.after[i] === JOINED);
    if (!rule.isEntry) return "open";
    this.readEntry();
    return this.isStrange() ? "open" : "entry";
  }

  /** What was practised does not stand first, or words are not known: only the whole line tells what is meant. */
  private isStrange(): boolean {
    if (!this.pieces[0]!.known.opensEntry) return true;
    for (let i = 0; i < this.cuts.count; i++) if (this.pieces[i]!.strange) return true;
    return false;
  }

  /** `A: D dorian`, `A | F major`: a letter that is no tonic but stands for something else. */
  private isLetterBeforeSubject(): boolean {
    const { cuts, pieces, text } = this;
    if (cuts.count < 2 || !pieces[0]!.onlyNotes || !pieces[1]!.known.opensSubject) return false;
    return cuts.after[1] === AFTER_COLON || text.slice(cuts.ends[0], cuts.starts[1]).includes("|");
  }

  /** A line that opens with a phase, or with session, break, plan or rest, and is known throughout its first part. */
  private kindOfFrame(first: Piece): LineKind {
    const { cuts, pieces } = this;
    this.tangled = first.declares;
    this.minutes = undefined;
    for (let i = 0; i < cuts.count; i++) {
      const piece = pieces[i]!;
      const isPlain = piece.plainOfPhase && (i === 0 || piece.phase === undefined);
      this.tangled ||= !isPlain || piece.tangled || (piece.minutes !== undefined && this.minutes !== undefined);
      if (piece.minutes !== undefined) this.takeMinutes(i);
    }
    this.tangled ||= this.minutes === 0;
    return this.tangled || first.opening !== "phase" ? "open" : "phase";
  }

  /** The minutes that a piece states; undefined where it states none. */
  minutesAt(i: number): number | undefined {
    const piece = this.pieces[i]!;
    const { number, minutes } = piece;
    return number && piece.items()[number.item]!.meaning.type === "amount" ? this.valueAt(i) : minutes;
  }

  private takeMinutes(i: number): void {
    this.minutes ??= this.minutesAt(i);
  }

  private valueAt(i: number): number {
    const { cuts, text } = this;
    let value = 0;
    for (let at = cuts.numbers[i]!; at < cuts.numberEnds[i]!; at++) value = value * 10 + text.charCodeAt(at) - 48;
    return value;
  }

  /** What the pieces of an entry say together, from the left to the right. */
  private readEntry(): void {
    const { cuts, pieces, roles } = this;
    const fold = this.fold;
    fold.begin();
    this.minutes = undefined;
    this.counted = pieces[0]!.opening === "free";
    for (let i = 0; i < cuts.count; i++) {
      const piece = pieces[i]!;
      roles[i] = fold.take(piece, cuts.after[i]!, this.tempoOf(i));
      if (piece.counted) this.counted = true;
      if (piece.minutes !== undefined) this.takeMinutes(i);
    }
    this.tangled = fold.end() || this.minutes === 0;
  }
}

/** Of a year: only then a line that begins with a letter may open with a date, `Sat 28 Feb 2026`. */
function hasFourDigits(text: string, from: number, to: number): boolean {
  const end = Math.min(to, from + LONGEST_DATE);
  let digits = 0;
  for (let i = from; i < end; i++) {
    const code = text.charCodeAt(i);
    digits = code >= 48 && code <= 57 ? digits + 1 : 0;
    if (digits === 4) return true;
  }
  return false;
}

const BULLET = /^[\s\uFEFF]*(?:[-*•]\s+)?/;
