import type { DayNumber } from "../journal/model.ts";
import type { Block } from "../syntax/document.ts";
import type { Share } from "./minutes.ts";
import type { PlayedAttempt } from "./played.ts";
import type { AttemptRecord, Manner } from "./record.ts";

/** An attempt on its day. A journal of years has tens of thousands: what those of one line share stands once, in `manner`. */
export class DayAttempt implements AttemptRecord {
  readonly rate: number | null;
  readonly reached: boolean;
  readonly count: number;
  readonly minutes: number;
  readonly about: boolean;
  readonly uri: string;
  readonly block: Block;
  readonly line: number;
  private readonly manner: Manner;

  constructor(
    readonly day: DayNumber,
    readonly order: number,
    { manner, rate, reached, count }: PlayedAttempt,
    { minutes, about }: Share,
    { uri, block, line }: Pick<AttemptRecord, "uri" | "block" | "line">,
  ) {
    this.manner = manner;
    this.rate = rate;
    this.reached = reached;
    this.count = count;
    this.minutes = minutes;
    this.about = about;
    this.uri = uri;
    this.block = block;
    this.line = line;
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
}
