import type { DayNumber } from "../journal/calendar.ts";
import type { Block } from "../syntax/document/document.ts";
import { type Share, sharedMinutes, type TimedDay } from "./minutes.ts";
import type { PlayedAttempt, PlayedEntry } from "./played.ts";
import type { AttemptRecord, Manner } from "./record.ts";

/** How the time of a day is shared out; worked out when somebody asks for it. */
export class DayTime {
  #shares: readonly Share[] | undefined;

  constructor(private readonly day: TimedDay & { readonly entries: readonly { readonly entry: PlayedEntry }[] }) {}

  /** The share of each attempt of an entry, by the entry's place in the day. */
  ofAttempt(entry: number): Share {
    this.#shares ??= sharedMinutes(this.day);
    const { minutes, about } = this.#shares[entry]!;
    return { minutes: minutes / this.day.entries[entry]!.entry.attempts.length, about };
  }
}

/** Where an entry stands: its day and the line there, and its place among the day's entries, by which its time is known. */
export interface EntryPlace extends Pick<AttemptRecord, "uri" | "block" | "line"> {
  readonly time: DayTime;
  readonly entry: number;
}

/** An attempt on its day. A journal of years has tens of thousands: what those of one line share stands once. */
export class DayAttempt implements AttemptRecord {
  constructor(
    readonly day: DayNumber,
    readonly order: number,
    private readonly played: PlayedAttempt,
    private readonly place: EntryPlace,
  ) {}

  get rate(): number | null {
    return this.played.rate;
  }
  get reached(): boolean {
    return this.played.reached;
  }
  get count(): number {
    return this.played.count;
  }
  get minutes(): number {
    return this.place.time.ofAttempt(this.place.entry).minutes;
  }
  get about(): boolean {
    return this.place.time.ofAttempt(this.place.entry).about;
  }
  get uri(): string {
    return this.place.uri;
  }
  get block(): Block {
    return this.place.block;
  }
  get line(): number {
    return this.place.line;
  }
  get instrument(): string | null {
    return this.played.manner.instrument;
  }
  get subject(): string {
    return this.played.manner.subject;
  }
  get subjectKey(): string {
    return this.played.manner.subjectKey;
  }
  get pattern(): string | null {
    return this.played.manner.pattern;
  }
  get movement(): string | null {
    return this.played.manner.movement;
  }
  get where(): string | null {
    return this.played.manner.where;
  }
  get reach(): Manner["reach"] {
    return this.played.manner.reach;
  }
  get tonguing(): Manner["tonguing"] {
    return this.played.manner.tonguing;
  }
  get evenness(): Manner["evenness"] {
    return this.played.manner.evenness;
  }
  get unit(): Manner["unit"] {
    return this.played.manner.unit;
  }
  get noteValue(): Manner["noteValue"] {
    return this.played.manner.noteValue;
  }
  get beat(): Manner["beat"] {
    return this.played.manner.beat;
  }
  get exerciseKey(): string {
    return this.played.manner.exerciseKey;
  }
  get strandKey(): string {
    return this.played.manner.strandKey;
  }
}
