import type { Conventions } from "../../journal/conventions.ts";
import { AFTER_ARROW, AFTER_COLON } from "../../syntax/line/line-cuts.ts";
import type { LineReader } from "../../syntax/line/line-reader.ts";
import { parseEntry } from "../../syntax/line/parse-entry.ts";
import { lineRead } from "../../syntax/line/parse-line.ts";
import type { PartContext } from "../../syntax/line/parts.ts";
import { BoundedMemo } from "../../syntax/words/bounded-memo.ts";
import { BESIDE } from "../../syntax/words/term-types.ts";
import { TupleMemo } from "../../syntax/words/tuple-memo.ts";
import type { LineContext } from "../context.ts";
import type { Finding, FindingEdit, Stretch } from "../finding.ts";
import { checkLine } from "./line.ts";

/**
 * A finding on one of the pieces that bear on each other: its columns, and those of its fixes, count from a piece's
 * beginning.
 */
interface PieceFinding {
  readonly finding: Finding;
  /** Of the pieces that bear, in their order. */
  readonly piece: number;
  /** For each edit of each fix, the piece that it stands in. */
  readonly edits: readonly (readonly number[])[];
}

/** A piece in its line: what stands behind its number is moved by the figures that it has more than the first one. */
interface PieceStretch extends Stretch {
  /** Where the number begins, from the beginning of the piece. */
  readonly behind: number;
  readonly longer: number;
}

/** In about so many bytes. */
const MOST_BYTES = 4_000_000;
const FINDING_BYTES = 1500;

const NONE: readonly Finding[] = [];
/** A line of one piece: a finding on the whole of it is then one on the piece. */
const ALONE = {};
const ARROW = {};
const COLON = {};

/**
 * The findings of entries, of which most were made before: only some pieces bear on each other (`MEANING_TRAITS`), and
 * what is found is found once for each set of them. That this is what checking the whole line finds is held by a
 * property (test/properties/day-findings.test.ts). It lasts as long as the words and the conventions that it was made
 * for.
 */
export class EntryFindings {
  /** Null where a finding, or its fix, takes in more of the line than one piece. */
  private readonly memo = new TupleMemo<readonly PieceFinding[] | null>(
    MOST_BYTES,
    (found) => 100 + FINDING_BYTES * (found?.length ?? 0),
  );
  private readonly whole = new BoundedMemo<readonly Finding[]>(
    MOST_BYTES,
    (found) => 100 + FINDING_BYTES * found.length,
  );
  private readonly keys: object[] = [];
  /** The pieces that bear, by their places in the line. */
  private readonly bearing: number[] = [];

  constructor(
    private readonly context: PartContext,
    private readonly conventions: Conventions,
  ) {}

  /** Of the entry that the reader holds, which is not entangled; by its columns in its line. */
  of(reader: LineReader, text: string, from: number, to: number): readonly Finding[] {
    const count = this.takeKeys(reader);
    let found = this.memo.get(this.keys, count);
    if (found === undefined) {
      found = this.found(reader, text.slice(from, to));
      this.memo.set(this.keys, count, found);
    }
    if (found === null) return this.ofWhole(reader, text.slice(from, to));
    return found.length === 0 ? NONE : found.map((each) => placed(each, this.stretches(reader)));
  }

  private ofWhole(reader: LineReader, text: string): readonly Finding[] {
    return this.whole.of(text, (own) => {
      const context = this.lineContext(own);
      return checkLine(lineRead(reader, own, context), context);
    });
  }

  private takeKeys({ cuts, pieces, roles }: LineReader): number {
    const { keys, bearing } = this;
    let count = 0;
    let beside = 0;
    bearing.length = 0;
    for (let i = 0; i < cuts.count; i++) beside |= roles[i] === "claim" ? BESIDE.claim : pieces[i]!.beside;
    if (cuts.count === 1) keys[count++] = ALONE;
    for (let i = 0; i < cuts.count; i++) {
      const piece = pieces[i]!;
      const after = cuts.after[i];
      const bears = piece.bears || (piece.bearsBeside & beside) !== 0;
      if (i > 0 && !bears && after !== AFTER_ARROW) continue;
      if (after === AFTER_ARROW) keys[count++] = ARROW;
      else if (after === AFTER_COLON) keys[count++] = COLON;
      keys[count++] = piece;
      bearing.push(i);
    }
    return count;
  }

  private found(reader: LineReader, text: string): readonly PieceFinding[] | null {
    const context = this.lineContext(text);
    // Tempos bear on nothing, but a bare number is one only behind another.
    const parts = reader.parts((i) => this.bearing.includes(i) || reader.roles[i] === "tempo");
    const end = reader.contentEnd() - reader.from;
    const line = parseEntry(text, reader.start - reader.from, end, parts, context);
    const stretches = this.stretches(reader);
    const found: PieceFinding[] = [];
    for (const each of checkLine(line, context)) {
      const within = withinPieces(each, stretches);
      if (!within) return null;
      found.push(within);
    }
    return found;
  }

  private lineContext(text: string): LineContext {
    return { ...this.context, conventions: this.conventions, text, head: false };
  }

  /** Where the pieces that bear stand in the line. */
  private stretches({ cuts, pieces, from }: LineReader): readonly PieceStretch[] {
    return this.bearing.map((i) => {
      const [start, end] = [cuts.starts[i]! - from, cuts.ends[i]! - from];
      const { number } = pieces[i]!;
      if (!number) return { start, end, behind: Number.POSITIVE_INFINITY, longer: 0 };
      const longer = cuts.numberEnds[i]! - cuts.numbers[i]! - (number.end - number.start);
      return { start, end, behind: number.start, longer };
    });
  }
}

/** Undefined where the finding or a fix goes beyond one piece. */
function withinPieces(finding: Finding, stretches: readonly PieceStretch[]): PieceFinding | undefined {
  const pieceOf = ({ start, end }: Stretch): number =>
    stretches.findIndex((piece) => piece.start <= start && end <= piece.end);
  const piece = pieceOf(finding);
  const edits = finding.fixes.map((fix) => fix.edits.map((edit) => (edit.further ? -1 : pieceOf(edit))));
  if (piece < 0 || edits.some((each) => each.includes(-1))) return undefined;
  const relative = (at: Stretch, to: number): Stretch => {
    const { start, behind, longer } = stretches[to]!;
    const column = (each: number): number => (each - start > behind ? each - start - longer : each - start);
    return { start: column(at.start), end: column(at.end) };
  };
  const fixes = finding.fixes.map((fix, i) => ({
    ...fix,
    edits: fix.edits.map((edit, k): FindingEdit => ({ ...edit, ...relative(edit, edits[i]![k]!) })),
  }));
  return { finding: { ...finding, ...relative(finding, piece), fixes }, piece, edits };
}

function placed({ finding, piece, edits }: PieceFinding, stretches: readonly PieceStretch[]): Finding {
  const at = ({ start, end }: Stretch, of: number): Stretch => {
    const { start: first, behind, longer } = stretches[of]!;
    const column = (each: number): number => (each > behind ? first + each + longer : first + each);
    return { start: column(start), end: column(end) };
  };
  const fixes = finding.fixes.map((fix, i) => ({
    ...fix,
    edits: fix.edits.map((edit, k) => ({ ...edit, ...at(edit, edits[i]![k]!) })),
  }));
  return { ...finding, ...at(finding, piece), fixes };
}
