import type { DayNumber } from "../journal/calendar.ts";
import type { Block } from "../syntax/document/document.ts";
import type { DayColumns } from "./attempt-columns.ts";
import { type Share, sharedMinutes, type TimedDay } from "./minutes.ts";
import type { AttemptRecord, Manner } from "./record.ts";

/** A day that was read for the history: where it stands, its attempts, and what bears on how its time is shared out. */
export class DayAttempts {
  readonly records: readonly AttemptRecord[];
  /** Of each attempt in minutes, negative where shared out: an object for each would be most of what is kept. */
  #shares: readonly number[] | undefined;

  constructor(
    readonly day: DayNumber,
    readonly uri: string,
    readonly block: Block,
    readonly columns: DayColumns,
    private readonly time: TimedDay,
  ) {
    this.records = Array.from({ length: columns.count }, (_, i) => new DayAttempt(this, i));
  }

  /**
   * The share of one attempt in the time of its entry, which is dealt out equally among its subjects, and that of each
   * among the attempts at it; worked out when somebody asks for it. Shares stay fractions, as any figure that is shown
   * is the sum of many: it alone is rounded.
   */
  shareOf(attempt: number): Share {
    this.#shares ??= this.shares();
    const share = this.#shares[attempt]!;
    return { minutes: Math.abs(share), about: share < 0 };
  }

  phaseOf(attempt: number): string | undefined {
    const { entries, phases } = this.time;
    return phases[entries[this.columns.entry(attempt)]!.stretch]?.phase;
  }

  private shares(): readonly number[] {
    const ofEntries = sharedMinutes(this.time);
    const counts = this.countByEntry();
    return Array.from({ length: this.columns.count }, (_, attempt) => {
      const entry = this.columns.entry(attempt);
      const own = counts[entry]!;
      const { minutes, about } = ofEntries[entry]!; // which are some where they are shared out
      return ((about ? -1 : 1) * minutes) / own.length / own[this.columns.subject(attempt)]!;
    });
  }

  /** For each entry, how many attempts there are at each of its subjects. */
  private countByEntry(): readonly (readonly number[])[] {
    const counts = this.time.entries.map((): number[] => []);
    for (let i = 0; i < this.columns.count; i++) {
      const own = counts[this.columns.entry(i)]!;
      const subject = this.columns.subject(i);
      own[subject] = (own[subject] ?? 0) + 1;
    }
    return counts;
  }
}

/** One attempt of a day: a view of its columns. */
class DayAttempt implements AttemptRecord {
  constructor(
    private readonly of: DayAttempts,
    readonly order: number,
  ) {}

  get day(): DayNumber {
    return this.of.day;
  }
  get uri(): string {
    return this.of.uri;
  }
  get block(): Block {
    return this.of.block;
  }
  get rate(): number | null {
    return this.of.columns.rate(this.order);
  }
  get reached(): boolean | null {
    return this.of.columns.reached(this.order);
  }
  get count(): number {
    return this.of.columns.tries(this.order);
  }
  get got(): number {
    return this.of.columns.got(this.order);
  }
  get minutes(): number {
    return this.of.shareOf(this.order).minutes;
  }
  get about(): boolean {
    return this.of.shareOf(this.order).about;
  }
  get phase(): string | undefined {
    return this.of.phaseOf(this.order);
  }
  get line(): number {
    return this.of.columns.line(this.order);
  }
  get attempt(): number {
    return this.of.columns.attempt(this.order);
  }
  get start(): number {
    return this.of.columns.start(this.order);
  }
  get end(): number {
    return this.of.columns.end(this.order);
  }
  get instrument(): string | null {
    return this.manner.instrument;
  }
  get subject(): string {
    return this.manner.subject;
  }
  get subjectKey(): string {
    return this.manner.subjectKey;
  }
  get pattern(): string | null {
    return this.manner.pattern;
  }
  get movement(): string | null {
    return this.manner.movement;
  }
  get where(): string | null {
    return this.manner.where;
  }
  get reach(): Manner["reach"] {
    return this.manner.reach;
  }
  get tonguing(): Manner["tonguing"] {
    return this.manner.tonguing;
  }
  get evenness(): Manner["evenness"] {
    return this.manner.evenness;
  }
  get rhythm(): Manner["rhythm"] {
    return this.manner.rhythm;
  }
  get direction(): Manner["direction"] {
    return this.manner.direction;
  }
  get byHeart(): Manner["byHeart"] {
    return this.manner.byHeart;
  }
  get unit(): Manner["unit"] {
    return this.manner.unit;
  }
  get noteValue(): Manner["noteValue"] {
    return this.manner.noteValue;
  }
  get beat(): Manner["beat"] {
    return this.manner.beat;
  }
  get exerciseKey(): string {
    return this.manner.exerciseKey;
  }
  get strandKey(): string {
    return this.manner.strandKey;
  }

  private get manner(): Manner {
    return this.of.columns.manner(this.order);
  }
}
