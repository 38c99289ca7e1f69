import { isReached, triesReached } from "../journal/conditions.ts";
import type { Tries } from "../syntax/words/meaning.ts";
import type { Manner } from "./record.ts";

const UNSAID: Tries = { got: 1, count: 1 };

/** Figures of one attempt, side by side in one array. */
const LINE = 0;
const ENTRY = 1;
const SUBJECT = 2;
const ATTEMPT = 3;
const START = 4;
const END = 5;
const COUNT = 6;
const REACHED = 7;
const GOT = 8;
const FIGURES = 9;

const SAID_NOTHING = -1;

/**
 * The attempts of one day in columns: an object for each, in a journal of years, would be most of what is kept. What an
 * attempt says is asked by its place among those of the day.
 */
export class DayColumns {
  constructor(
    private readonly manners: readonly Manner[],
    /** NaN where there is none. A typed array of a dozen numbers would take several times as much memory. */
    private readonly rates: readonly number[],
    private readonly figures: Int32Array,
  ) {}

  get count(): number {
    return this.manners.length;
  }
  manner(i: number): Manner {
    return this.manners[i]!;
  }
  rate(i: number): number | null {
    const rate = this.rates[i]!;
    return Number.isNaN(rate) ? null : rate;
  }
  reached(i: number): boolean | null {
    const reached = this.figure(i, REACHED);
    return reached === SAID_NOTHING ? null : reached === 1;
  }
  tries(i: number): number {
    return this.figure(i, COUNT);
  }
  got(i: number): number {
    return this.figure(i, GOT);
  }
  line(i: number): number {
    return this.figure(i, LINE);
  }
  /** The place of its entry among those of the day. */
  entry(i: number): number {
    return this.figure(i, ENTRY);
  }
  /** Which of its entry's subjects it is at. */
  subject(i: number): number {
    return this.figure(i, SUBJECT);
  }
  attempt(i: number): number {
    return this.figure(i, ATTEMPT);
  }
  start(i: number): number {
    return this.figure(i, START);
  }
  end(i: number): number {
    return this.figure(i, END);
  }

  private figure(i: number, which: number): number {
    return this.figures[i * FIGURES + which]!;
  }
}

/** Takes the attempts of a day down, one after another. */
export class AttemptColumns {
  private manners: Manner[] = [];
  private rates: number[] = [];
  private figures: number[] = [];
  private line = 0;
  private entry = 0;
  private subject = 0;
  private attempt = 0;
  // Of the last attempt.
  private good = false;
  private amiss = false;
  private tries = UNSAID;

  /** What comes next are the attempts of the entry on a line. */
  begin(line: number, entry: number): void {
    this.line = line;
    this.entry = entry;
    this.goTo(0, 0);
  }

  /** What comes next is an attempt at one of the entry's subjects, and which of the entry's attempts. */
  goTo(subject: number, attempt: number): void {
    this.subject = subject;
    this.attempt = attempt;
  }

  add(manner: Manner, rate: number | null, start: number, end: number): void {
    this.manners.push(manner);
    this.rates.push(rate ?? Number.NaN);
    this.figures.push(this.line, this.entry, this.subject, this.attempt++, start, end, 1, SAID_NOTHING, 0);
    this.good = false;
    this.amiss = false;
    this.tries = UNSAID;
  }

  /** What was said of the last attempt, beside what was said before. */
  say(good: boolean, amiss: boolean, tries: Tries | undefined): void {
    this.good ||= good;
    this.amiss ||= amiss;
    this.tries = tries ?? this.tries;
    const { good: saidGood, tries: own } = this;
    this.answer(isReached(saidGood, this.amiss, own), own.count, triesReached(saidGood, this.amiss, own));
  }

  answer(reached: boolean | null, count: number, got: number): void {
    const last = this.figures.length - FIGURES;
    this.figures[last + REACHED] = reached === null ? SAID_NOTHING : Number(reached);
    this.figures[last + COUNT] = count;
    this.figures[last + GOT] = got;
  }

  clear(): void {
    this.manners = [];
    this.rates = [];
    this.figures = [];
  }

  /** The columns so far. */
  columns(): DayColumns {
    return new DayColumns(this.manners.slice(), this.rates.slice(), new Int32Array(this.figures));
  }
}
