import { FASTEST, SLOWEST } from "../words/tempo-words.ts";
import type { OnceBits } from "../words/term-types.ts";
import { AFTER_ARROW, AFTER_COLON, JOINED } from "./line-cuts.ts";
import type { Piece } from "./piece.ts";

/**
 * What a piece is in its line: a tempo with what was said of it, further bars of the place before it, part of a claim,
 * or anything else.
 */
export type Role = "tempo" | "bars" | "claim" | "term";

/**
 * Goes over the pieces of an entry from the left to the right, and tells whether they can be looked at each by itself.
 * Where they cannot (a thing is said twice, an outcome stands before its tempo, a second subject follows), the line is
 * entangled, and only the whole of it tells what it means.
 */
export class EntryFold {
  private tangled = false;
  private first = true;
  private once: OnceBits = 0;
  /** What may be said once for each tempo: before the first, and since the last. */
  private before: OnceBits = 0;
  private since: OnceBits = 0;
  /** What a bare number goes on with. */
  private open: "nothing" | "tempo" | "bars" = "nothing";
  private hasTempo = false;
  private barsLast = false;
  private state: "answered" | "leading" | "other" = "other";
  private outcomeLast = false;
  private outcomeBefore = false;
  private chain = false;
  private several = false;
  private notes = false;
  private noteLast = false;
  private claim = false;
  private colons = 0;
  /** How many tempos nothing is said of yet, and how many outcomes stand behind them: as many are dealt out. */
  private row = 0;
  private answers = 0;
  /** All tempos so far; behind several of which nothing was said one of them may be named again. */
  private readonly tempos: number[] = [];
  private hasRow = false;

  begin(): void {
    this.tangled = false;
    this.first = true;
    this.once = 0;
    this.before = 0;
    this.since = 0;
    this.open = "nothing";
    this.hasTempo = false;
    this.barsLast = false;
    this.state = "other";
    this.outcomeLast = false;
    this.outcomeBefore = false;
    this.chain = true;
    this.several = false;
    this.notes = false;
    this.noteLast = false;
    this.claim = false;
    this.colons = 0;
    this.row = 0;
    this.answers = 0;
    this.tempos.length = 0;
    this.hasRow = false;
  }

  /** @param number the piece's own number, where it has one that may change */
  take(piece: Piece, after: number, number: number | undefined): Role {
    if (piece.tangled || (this.once & piece.once) !== 0) this.tangled = true;
    this.once |= piece.once;
    this.takeSubject(piece, after);
    if (piece.begins === "nothing") return "term";
    if (this.claim) return "claim";
    if (piece.begins === "number" && this.open === "bars") return this.takeBars(piece);
    if (piece.hasTempo) this.takeTempo(piece, number);
    else this.takeTerm(piece);
    if (piece.said && !this.hasTempo) this.outcomeBefore = true;
    if (piece.ends !== "as before") this.state = piece.ends;
    else if (this.state === "other") this.state = "leading";
    this.outcomeLast = piece.endsInOutcome;
    this.answers += piece.outcomes;
    if (this.answers > 1 && this.answers <= this.row) this.tangled = true;
    return piece.hasTempo ? "tempo" : "term";
  }

  /** Whether the line is entangled. What stands behind the last tempo may not say again what stood before the first. */
  end(): boolean {
    return this.tangled || (this.hasTempo && (this.before & this.since) !== 0);
  }

  /** Only the first piece names what is practised; a chain, further notes and a claim go on with it. */
  private takeSubject(piece: Piece, after: number): void {
    if (this.noteLast && after === JOINED) this.tangled = true; // notes go on with others only by themselves
    this.noteLast = false;
    if (this.first) {
      this.first = false;
      this.chain = piece.subject;
      this.several = piece.opening === "several";
      this.notes = piece.opening === "figure";
      return;
    }
    if (after === AFTER_ARROW) {
      this.claim = false;
      if (!this.chain || !piece.subject) this.tangled = true;
      return;
    }
    this.chain = false;
    if (after === AFTER_COLON) {
      this.colons++;
      if (piece.claims()) {
        if (this.colons > 1 || !piece.onlyNotes || this.several) this.tangled = true;
        this.notes = true;
        this.claim = true;
        return;
      }
    }
    if (piece.subject && !(this.notes && piece.onlyNotes)) this.tangled = true;
    this.noteLast = piece.onlyNotes && !this.claim;
    this.notes &&= piece.onlyNotes;
    this.claim &&= this.notes;
  }

  /** `bars 1-8, 17-24`; a number behind a range of bars may be a tempo. */
  private takeBars(piece: Piece): Role {
    const isRange = piece.items()[0]?.meaning.type === "range";
    if (!this.barsLast || piece.items().length > 1 || !isRange) this.tangled = true;
    return "bars";
  }

  private takeTempo({ begins, oncePerTempo, bars, bpm }: Piece, number: number | undefined): void {
    if (begins === "number" && this.open !== "tempo") this.tangled = true;
    if (this.state === "leading" || (this.outcomeBefore && !this.hasTempo)) this.tangled = true;
    if (number !== undefined && (number < SLOWEST || number > FASTEST)) this.tangled = true;
    this.takeInRow(number ?? bpm ?? 0);
    this.hasTempo = true;
    this.open = bars ? "bars" : "tempo";
    this.barsLast = bars;
    this.since = oncePerTempo;
  }

  private takeInRow(bpm: number): void {
    if (this.hasRow && this.tempos.includes(bpm)) this.tangled = true;
    if (this.answers > 0) this.row = 0;
    this.answers = 0;
    this.row++;
    this.hasRow ||= this.row > 1;
    this.tempos.push(bpm);
  }

  private takeTerm({ begins, oncePerTempo, bars }: Piece): void {
    const said = this.hasTempo ? this.since : this.before;
    if ((said & oncePerTempo) !== 0) this.tangled = true;
    if (this.hasTempo) this.since |= oncePerTempo;
    else this.before |= oncePerTempo;
    if (begins === "tries" && !this.outcomeLast) this.tangled = true;
    this.barsLast = bars;
    if (bars) this.open = "bars";
  }
}
