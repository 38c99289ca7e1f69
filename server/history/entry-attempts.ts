import { attemptsOf } from "../journal/conditions.ts";
import type { Conventions } from "../journal/conventions.ts";
import { hasSeveral } from "../journal/each-subject.ts";
import type { Attempt, Entry, Reach } from "../journal/model.ts";
import { readEntry } from "../journal/read-entry.ts";
import type { Role } from "../syntax/line/entry-fold.ts";
import { AFTER_ARROW } from "../syntax/line/line-cuts.ts";
import type { LineReader } from "../syntax/line/line-reader.ts";
import { parseEntry } from "../syntax/line/parse-entry.ts";
import type { PartContext } from "../syntax/line/parts.ts";
import type { Piece } from "../syntax/line/piece.ts";
import type { Fraction, Item } from "../syntax/words/meaning.ts";
import { TupleMemo } from "../syntax/words/tuple-memo.ts";
import type { AttemptColumns } from "./attempt-columns.ts";
import { isExercise, mannerOf, type Told, toldBy } from "./played.ts";
import { type Counting, countingOf, rateBy } from "./rate.ts";
import type { Manner, ReachClass } from "./record.ts";
import { reachClassOf } from "./span-class.ts";

/** What was played: the entry without its ways of playing, or null where it is no exercise. */
interface What {
  readonly entry: Entry | null;
  /** It has several subjects, each with attempts of its own: only the whole line tells them. */
  readonly several: boolean;
  readonly told?: Told;
  /** How far it goes, by the span that is said of it. */
  readonly reaches: Map<Reach | undefined, ReachClass | null>;
  /** In each way that it was played so far; a title by its place, too. */
  readonly ways: Map<How, readonly Group[]>;
  readonly places: Map<Piece, Map<How, readonly Group[]>>;
}

/** In which ways: one attempt for each change of them, with any tempo. */
type How = readonly Attempt[];

/** What attempts next to each other share: what was played and how, and how their tempos become rates. */
interface Group {
  readonly manner: Manner;
  readonly counting: Counting | undefined;
}

/** Each in about so many bytes. */
const MOST_BYTES = 4_000_000;
const ENTRY_BYTES = 2000;
const ATTEMPT_BYTES = 400;
/** Places of one title that are kept. */
const MOST_PLACES = 500;

const ARROW = {};
const PLACE = {};
const NO_GROUPS: readonly Group[] = [];

/**
 * The attempts of entries. What was played is found out once for each set of pieces that say it, and so are the ways of
 * playing; only figures and outcomes are each line's own. That this is what reading the whole line tells is held by a
 * property (test/properties/entry-attempts.test.ts). It lasts as long as the words and the conventions it was made for.
 */
export class EntryAttempts {
  private readonly whats = new TupleMemo<What>(MOST_BYTES, () => ENTRY_BYTES);
  /** Null where the attempts are not one for each group. */
  private readonly hows = new TupleMemo<How | null>(MOST_BYTES, (how) => 100 + ATTEMPT_BYTES * (how?.length ?? 0));
  /** The first piece of those that tell the same, and one thing for each beat. */
  private readonly alike = new Map<string, object>();

  // Of the line that is looked at: its pieces that tell what, and how; for its tempos, in which group they stand.
  private readonly whatKeys: object[] = [];
  private whatCount = 0;
  private readonly howKeys: object[] = [];
  private howCount = 0;
  private readonly tellsWhat: boolean[] = [];
  private readonly tellsHow: boolean[] = [];
  private readonly beatAt: (Fraction | undefined)[] = [];
  private readonly groupAt: number[] = [];
  private groups = 0;
  private place: Piece | undefined;
  private placeKey = -1;
  private placed = false;

  constructor(
    private readonly context: PartContext,
    private readonly conventions: Conventions,
  ) {}

  /**
   * Adds the attempts of the entry that the reader holds, which is not entangled; false where only the whole line tells
   * them.
   */
  add(reader: LineReader, text: string, from: number, to: number, columns: AttemptColumns): boolean {
    this.takeKeys(reader);
    const what = this.what(reader, text, from, to);
    const how = what.several ? null : this.how(reader);
    if (!how) return false;
    this.addAttempts(reader, this.groupsOf(what, how), columns);
    return true;
  }

  private takeKeys({ cuts, pieces, roles }: LineReader): void {
    this.whatCount = 0;
    this.howCount = 0;
    this.groups = 0;
    this.place = undefined;
    this.placeKey = -1;
    this.placed = false;
    let open = false;
    let beat: Fraction | undefined;
    for (let i = 0; i < cuts.count; i++) {
      const piece = pieces[i]!;
      const role = roles[i]!;
      this.tellsWhat[i] = false;
      this.tellsHow[i] = false;
      if (cuts.after[i] === AFTER_ARROW) this.whatKeys[this.whatCount++] = ARROW;
      if (role === "tempo") {
        const own = piece.begins === "number" ? beat : piece.beat;
        if (!open || !isSame(own, beat)) {
          this.tellsHow[i] = true;
          this.groups++;
          this.howKeys[this.howCount++] = this.keyOfBeat(own);
        }
        this.beatAt[i] = own;
        this.groupAt[i] = this.groups - 1;
        beat = own;
        open = true;
      }
      if (role === "claim") continue;
      if (i === 0 || piece.tellsWhat || role === "bars") this.takeWhat(piece, role, i);
      if (!piece.tellsHow) continue;
      this.tellsHow[i] = true;
      this.howKeys[this.howCount++] = piece.toldAs === undefined ? piece : this.firstAs(piece.toldAs, piece);
      open = false;
    }
  }

  private takeWhat(piece: Piece, role: Role, i: number): void {
    this.tellsWhat[i] = true;
    if (this.place && (role === "bars" || piece.hasPlace)) {
      this.whatKeys[this.placeKey] = this.place; // there is more to the place: it is told by all its pieces
      this.place = undefined;
    }
    const isOnly = !this.placed && piece.place !== undefined && i > 0;
    this.placed ||= piece.hasPlace;
    if (isOnly) {
      this.place = piece;
      this.placeKey = this.whatCount;
      this.whatKeys[this.whatCount++] = PLACE;
      return;
    }
    this.whatKeys[this.whatCount++] = piece;
  }

  private firstAs(key: string, piece: object): object {
    const known = this.alike.get(key);
    if (known) return known;
    this.alike.set(key, piece);
    return piece;
  }

  private keyOfBeat(beat: Fraction | undefined): object {
    return beat ? this.firstAs(`beat ${beat.numerator} ${beat.denominator}`, {}) : NO_BEAT;
  }

  private what(reader: LineReader, text: string, from: number, to: number): What {
    const known = this.whats.get(this.whatKeys, this.whatCount);
    if (known) return known;
    const parts = reader.parts((i) => this.tellsWhat[i]!);
    const [start, end] = [reader.start - from, reader.contentEnd() - from];
    const line = parseEntry(text.slice(from, to), start, end, parts, this.context);
    const entry = readEntry(line, 0, this.context.vocabulary);
    const kept = { several: hasSeveral(entry.subject), reaches: new Map(), ways: new Map(), places: new Map() };
    const what = isExercise(entry)
      ? { entry, told: toldBy(entry, this.conventions), ...kept }
      : { entry: null, ...kept };
    this.whats.set(this.whatKeys, this.whatCount, what);
    return what;
  }

  private how(reader: LineReader): How | null {
    const known = this.hows.get(this.howKeys, this.howCount);
    if (known !== undefined) return known;
    const items: Item[] = [];
    for (let i = 0; i < reader.cuts.count; i++) if (this.tellsHow[i]) items.push(...this.itemsOf(reader, i));
    const attempts = attemptsOf(items, 0, { start: 0, end: 0 });
    const how = attempts.length === Math.max(1, this.groups) ? attempts : null;
    this.hows.set(this.howKeys, this.howCount, how);
    return how;
  }

  /** The items of a piece; a number that goes on with a tempo is one. */
  private itemsOf(reader: LineReader, i: number): readonly Item[] {
    const items = reader.itemsAt(i);
    if (reader.roles[i] !== "tempo") return items;
    const beat = this.beatAt[i];
    return [{ ...items[0]!, meaning: { type: "tempo", bpm: 1, ...(beat ? { beat } : {}) } }, ...items.slice(1)];
  }

  /** For each change of how it was played, what that comes to. */
  private groupsOf(what: What, how: How): readonly Group[] {
    const { entry } = what;
    if (!entry) return NO_GROUPS;
    const place = entry.subject?.type === "title" ? this.place : undefined;
    const ways = place ? waysInPlace(what, place) : what.ways;
    const known = ways.get(how);
    if (known) return known;
    const placed = place ? { ...entry, where: { ...entry.where, text: place.place! } } : entry;
    const told = place ? toldBy(placed, this.conventions) : what.told!;
    const groups = how.map(
      (attempt): Group => ({
        manner: mannerOf(placed, attempt, this.conventions, told, this.reachOf(what, placed, attempt)),
        counting: attempt.tempo && countingOf(placed, attempt.conditions, attempt.tempo, this.conventions),
      }),
    );
    ways.set(how, groups);
    return groups;
  }

  private reachOf({ reaches, told }: What, entry: Entry, { conditions }: Attempt): ReachClass | null {
    if (told!.unit === "beats") return null;
    const known = reaches.get(conditions.reach);
    if (known !== undefined) return known;
    const reach = reachClassOf(entry, conditions, this.conventions);
    reaches.set(conditions.reach, reach);
    return reach;
  }

  private addAttempts(reader: LineReader, groups: readonly Group[], columns: AttemptColumns): void {
    if (groups.length === 0) return;
    const { cuts, pieces, roles, from } = reader;
    if (this.groups === 0) columns.add(groups[0]!.manner, null, reader.start - from, reader.contentEnd() - from);
    for (let i = 0; i < cuts.count; i++) {
      if (roles[i] === "tempo") {
        const { manner, counting } = groups[this.groupAt[i]!]!;
        const rate = counting ? rateBy(counting, reader.bpmOf(i)) : null;
        columns.add(manner, rate, reader.tempoStart(i), reader.tempoEnd(i));
      }
      const { said } = pieces[i]!;
      if (said) columns.say(said.good, said.amiss, said.tries);
    }
  }
}

const NO_BEAT = {};

function waysInPlace({ places }: What, place: Piece): Map<How, readonly Group[]> {
  const known = places.get(place);
  if (known) return known;
  if (places.size >= MOST_PLACES) places.clear();
  const ways = new Map<How, readonly Group[]>();
  places.set(place, ways);
  return ways;
}

function isSame(a: Fraction | undefined, b: Fraction | undefined): boolean {
  return a?.numerator === b?.numerator && a?.denominator === b?.denominator;
}
