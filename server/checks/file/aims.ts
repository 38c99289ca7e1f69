import type { AttemptRecord } from "../../history/record.ts";
import { metronomeOf } from "../../history/trend-words.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import { type Finding, finding } from "../finding.ts";
import { fileTexts } from "./file-texts.ts";

/** An aim whose date has passed. */
export function pastAim({ declared, line }: Declaration, today: DayNumber): Finding | undefined {
  if (declared?.type !== "aim" || declared.by === undefined || declared.by >= today) return undefined;
  return finding("aim-past", line, fileTexts.aimPast);
}

/** An aim at a tempo by a day that even the faster end of its trend does not lead to. */
export interface FarAim {
  readonly by: DayNumber;
  /** Near which it would be by then, in the strand's unit. */
  readonly likely: number;
  /** In which the aim is written. */
  readonly notation: Pick<AttemptRecord, "noteValue" | "beat">;
  /** Which it is of several that are aimed at. */
  readonly subject?: string;
}

/** What is said of such an aim. Whether it is one, the plan says (`shortOf`). */
export function farAim({ line }: Declaration, { by, likely, notation, subject }: FarAim): Finding {
  const near = Math.round(metronomeOf(likely, notation));
  return finding("aim-far", line, fileTexts.aimFar(subject, near, isoDate(by)));
}
