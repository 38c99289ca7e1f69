import type { Conventions } from "../journal/conventions.ts";
import { readEntry } from "../journal/read-entry.ts";
import type { Role } from "../syntax/line/entry-fold.ts";
import { AFTER_ARROW } from "../syntax/line/line-cuts.ts";
import type { LineReader } from "../syntax/line/line-reader.ts";
import { parseEntry } from "../syntax/line/parse-entry.ts";
import type { PartContext } from "../syntax/line/parts.ts";
import type { Piece } from "../syntax/line/piece.ts";
import { nameKey } from "../syntax/words/fold.ts";
import type { Fraction } from "../syntax/words/meaning.ts";
import { TupleMemo } from "../syntax/words/tuple-memo.ts";
import type { AttemptColumns } from "./attempt-columns.ts";
import { playedEntry } from "./played.ts";
import { type Counting, countingOf, rateBy } from "./rate.ts";
import type { Manner } from "./record.ts";
import { strandKeyOf } from "./strand-key.ts";

/** What attempts next to each other share: what was played and how, and how their tempos become rates. */
interface Group {
  readonly manner: Manner;
  readonly counting: Counting | undefined;
}

/** Of one head: a group for each change of how it was played. None where the line is no exercise. */
interface Groups {
  readonly groups: readonly Group[];
  /** A title played in single places: the same for each place that follows it. */
  readonly placed: Map<Piece, readonly Group[]>;
}

/** In about so many bytes. */
const MOST_BYTES = 6_000_000;
const GROUP_BYTES = 900;

const ARROW = {};
const PLACE = {};

/**
 * The attempts of entries. What tells the history how something was played is found out once for each set of pieces that say
 * it; only figures and outcomes are each line's own. That this is what reading the whole line tells is held by a property
 * (test/properties/entry-attempts.test.ts). It lasts as long as the words and the conventions that it was made for.
 */
export class EntryAttempts {
  private readonly memo = new TupleMemo<Groups | null>(
    MOST_BYTES,
    (found) => 100 + GROUP_BYTES * (found?.groups.length ?? 0),
  );
  /** The first piece of those that tell the same, and the first of each beat. */
  private readonly alike = new Map<string, object>();
  private readonly keys: object[] = [];
  private count = 0;
  /** For each piece of the line whether it is read for the groups, and in which group its tempo stands. */
  private readonly kept: boolean[] = [];
  private readonly groupAt: number[] = [];
  private groups = 0;
  private place: Piece | undefined;
  private placeKey = -1;

  constructor(
    private readonly context: PartContext,
    private readonly conventions: Conventions,
  ) {}

  /** Adds the attempts of the entry that the reader holds, which is not entangled; false where only the whole line tells them. */
  add(reader: LineReader, text: string, from: number, to: number, columns: AttemptColumns): boolean {
    this.takeKeys(reader);
    let found = this.memo.get(this.keys, this.count);
    if (found === undefined) {
      found = this.found(reader, text.slice(from, to));
      this.memo.set(this.keys, this.count, found);
    }
    if (found === null) return false;
    this.addAttempts(reader, this.inPlace(found), columns);
    return true;
  }

  private takeKeys({ cuts, pieces, roles }: LineReader): void {
    const { keys, kept, groupAt } = this;
    this.count = 0;
    this.groups = 0;
    this.place = undefined;
    this.placeKey = -1;
    let open = false;
    let beat: Fraction | undefined;
    for (let i = 0; i < cuts.count; i++) {
      const piece = pieces[i]!;
      const role = roles[i]!;
      kept[i] = false;
      if (cuts.after[i] === AFTER_ARROW) keys[this.count++] = ARROW;
      if (role === "tempo") {
        const own = piece.begins === "number" ? beat : piece.beat;
        if (!open || !isSame(own, beat)) {
          kept[i] = true;
          this.groups++;
          keys[this.count++] = this.keyOfBeat(own);
        }
        groupAt[i] = this.groups - 1;
        beat = own;
        open = true;
        if (!piece.tells) continue;
      } else if (role === "claim" || (i > 0 && role === "term" && !piece.tells)) continue;
      this.tell(piece, role, i);
      open = false;
    }
  }

  /** A piece that tells how it was played. */
  private tell(piece: Piece, role: Role, i: number): void {
    this.kept[i] = true;
    if (role === "bars" && this.place) {
      this.keys[this.placeKey] = this.place; // the place goes on: it is told by all its pieces
      this.place = undefined;
    }
    if (this.placeKey < 0 && piece.place !== undefined) {
      this.place = piece;
      this.placeKey = this.count;
      this.keys[this.count++] = PLACE;
      return;
    }
    this.keys[this.count++] = piece.toldAs === undefined ? piece : this.firstAs(piece.toldAs, piece);
  }

  private firstAs(key: string, piece: object): object {
    const known = this.alike.get(key);
    if (known) return known;
    this.alike.set(key, piece);
    return piece;
  }

  private keyOfBeat(beat: Fraction | undefined): object {
    return this.firstAs(`beat ${beat?.numerator} ${beat?.denominator}`, {});
  }

  private found(reader: LineReader, text: string): Groups | null {
    const { kept, context, conventions } = this;
    const parts = reader.parts((i) => kept[i]!);
    const end = reader.contentEnd() - reader.from;
    const entry = readEntry(parseEntry(text, reader.start - reader.from, end, parts, context), 0, context.vocabulary);
    const { attempts } = playedEntry(entry, conventions);
    if (attempts.length === 0) return { groups: [], placed: new Map() };
    if (attempts.length !== Math.max(1, this.groups)) return null;
    const groups = attempts.map(({ manner }, i) => {
      const { tempo, conditions } = entry.attempts[i]!;
      return { manner, counting: tempo && countingOf(entry, conditions, tempo, conventions) };
    });
    const placed = new Map<Piece, readonly Group[]>();
    if (this.place) placed.set(this.place, groups);
    return { groups, placed };
  }

  /** The groups for the place that the line names; places tell titles apart, and nothing else. */
  private inPlace({ groups, placed }: Groups): readonly Group[] {
    const { place } = this;
    if (!place || groups[0]?.manner.unit !== "beats") return groups;
    const known = placed.get(place);
    if (known) return known;
    const where = nameKey(place.place!) || null;
    const own = groups.map(({ manner, counting }) => {
      const there = { ...manner, where };
      return { manner: { ...there, strandKey: strandKeyOf(there) }, counting };
    });
    if (placed.size >= MOST_PLACES) placed.clear();
    placed.set(place, own);
    return own;
  }

  private addAttempts(reader: LineReader, groups: readonly Group[], columns: AttemptColumns): void {
    if (groups.length === 0) return;
    const { cuts, pieces, roles } = reader;
    if (this.groups === 0)
      columns.add(groups[0]!.manner, null, reader.start - reader.from, reader.contentEnd() - reader.from);
    for (let i = 0; i < cuts.count; i++) {
      if (roles[i] === "tempo") {
        const { manner, counting } = groups[this.groupAt[i]!]!;
        const rate = counting ? rateBy(counting, reader.bpmOf(i)) : null;
        columns.add(manner, rate, reader.tempoStart(i), reader.tempoEnd(i));
      }
      const { said } = pieces[i]!;
      if (said) columns.say(said.good, said.tense, said.tries);
    }
  }
}

const MOST_PLACES = 500;

function isSame(a: Fraction | undefined, b: Fraction | undefined): boolean {
  return a?.numerator === b?.numerator && a?.denominator === b?.denominator;
}
