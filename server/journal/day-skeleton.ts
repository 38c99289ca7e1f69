import type { PhaseFrame, Sitting } from "./model.ts";
import type { PlanForm } from "./plan-form.ts";

/** What counts of an entry for its day, however it was read. */
export interface EntryCount {
  /** As stated on the line. */
  readonly minutes?: number;
  /** It has an outcome or was `done`, so that it counts even where it was planned. */
  readonly counted: boolean;
  /** What the line tells of itself where it stands below `plan`. */
  readonly form?: PlanForm;
}

/**
 * Goes down the lines of a day once and keeps what they open: sittings, phases, plans, and the minutes stated below.
 */
export class DaySkeleton {
  readonly sittings: (Sitting & { readonly breaks: number[]; total?: number })[] = [];
  readonly phases: (PhaseFrame & { entryMinutes: number })[] = [];
  entries = 0;
  /** Entries that are planned and not done. */
  plannedEntries = 0;
  /** The indices of planned phases in which nothing was done. */
  readonly unplayedPhases = new Set<number>();
  rest = false;
  private dayPlanned = false;
  private phasePlanned = false;
  /** Above stands a line of this plan that Daystave wrote, as far as its form tells. */
  private planWritten = false;

  openDay(line: number, minutes: number | undefined, planned: boolean, rest: boolean): void {
    this.dayPlanned = planned;
    this.rest = rest;
    this.pushSitting(line, minutes);
  }

  openSitting(line: number, minutes: number | undefined): void {
    this.phasePlanned = false;
    this.pushSitting(line, minutes);
  }

  openPhase(line: number, phase: string, minutes: number | undefined, planned: boolean): void {
    this.ensureSitting(line);
    this.phasePlanned = planned;
    const sitting = this.sittings.length - 1;
    this.phases.push({ phase, line, minutes, sitting, planned: this.planned, entryMinutes: 0 });
    if (this.planned) this.unplayedPhases.add(this.phases.length - 1);
  }

  planDay(): void {
    this.dayPlanned = true;
    this.planWritten = false;
  }

  /** What stands below belongs to no phase of the plan. */
  endPlan(line: number): void {
    this.ensureSitting(line);
    this.dayPlanned = false;
    this.phasePlanned = false;
    this.planWritten = false;
    this.phases.push({ line, sitting: this.sittings.length - 1, planned: false, entryMinutes: 0 });
  }

  addBreak(line: number): void {
    this.ensureSitting(line);
    this.sittings.at(-1)!.breaks.push(line);
  }

  /** What a line says that it came to up to here: undefined where no amount is possible. Of a plan it says nothing. */
  addTotal(line: number, minutes: number | undefined): void {
    if (this.planned) return;
    this.ensureSitting(line);
    const sitting = this.sittings.at(-1)!;
    if (minutes !== undefined) sitting.total = Math.max(sitting.total ?? 0, minutes);
  }

  /**
   * Whether an entry here is planned, and not done. Below lines that Daystave wrote, which end in their minutes, one
   * that does not was played.
   */
  addEntry(line: number, { minutes = 0, counted, form }: EntryCount): boolean {
    this.ensureSitting(line);
    const isOwn = form === "played" || (this.planWritten && form !== "written");
    const planned = this.planned && !counted && !isOwn;
    if (this.planned && form === "written" && this.isTimedPhase) this.planWritten = true;
    this.entries++;
    if (planned) this.plannedEntries++;
    else {
      this.phases.at(-1)!.entryMinutes += minutes;
      this.unplayedPhases.delete(this.phases.length - 1);
    }
    return planned;
  }

  /** What comes next is planned. */
  get planned(): boolean {
    return this.dayPlanned || this.phasePlanned;
  }

  /** Everything written below the day is still ahead. */
  get allPlanned(): boolean {
    return this.dayPlanned
      ? this.entries === this.plannedEntries
      : this.entries > 0 && this.entries === this.plannedEntries;
  }

  /** As all phases of a plan are that Daystave writes. */
  private get isTimedPhase(): boolean {
    const { phase, minutes } = this.phases.at(-1)!;
    return phase !== undefined && minutes !== undefined;
  }

  private pushSitting(line: number, minutes: number | undefined): void {
    const { planned } = this;
    this.sittings.push({ line, minutes, planned, breaks: [] });
    this.phases.push({ line, sitting: this.sittings.length - 1, planned, entryMinutes: 0 });
  }

  /** A head has a sitting too, so that stray entries are read all the same. */
  private ensureSitting(line: number): void {
    if (!this.sittings.length) this.pushSitting(line, undefined);
  }
}
