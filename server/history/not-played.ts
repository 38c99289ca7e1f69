import type { BlockModel, Entry, Subject } from "../journal/model.ts";
import { endsPlan, formOfEntry } from "../journal/plan-form.ts";
import { isPlanRemark } from "../journal/plan-remark.ts";
import type { Line } from "../syntax/line/line.ts";
import type { Item } from "../syntax/words/meaning.ts";

/** A day line too, as it is where a plan below it is looked for. */
export function saysPlan(line: Line | undefined): boolean {
  if (line?.type === "day" || line?.type === "plan") return true;
  return line?.type === "phase" && wordIn(line.items, "plan") !== undefined;
}

/**
 * The lines that were planned and not played, with those that mean nothing without them.
 *
 * @param goes which of the entries: all of them, unless said
 */
export function linesNotPlayed(model: BlockModel, goes: (entry: Entry) => boolean = () => true): ReadonlySet<number> {
  const gone = new Set<number>();
  for (const entry of unplayed(model, goes)) {
    gone.add(entry.place.line);
    for (const line of planRemarksBelow(model, entry.place.line)) gone.add(line);
  }
  if (gone.size === 0) return gone;
  const lost = new Set(gone);
  for (const [i, { line, phase, planned }] of model.phases.entries())
    if (phase !== undefined && planned && model.lines[line]!.type === "phase" && hasLostAll(model, i, lost))
      gone.add(line);
  for (const line of pausesLeft(model, gone)) gone.add(line);
  if (isPlanLeft(model, gone)) return gone;
  for (const [line, read] of model.lines.entries()) {
    if (endsPlan(read) && !partsTime(model, line, gone)) gone.add(line);
    if (!saysPlan(read)) continue;
    if (read.type === "plan" && !read.remark) gone.add(line);
    for (const remark of planRemarksBelow(model, line)) gone.add(remark);
  }
  return gone;
}

/**
 * Which planned entries of a day Daystave wrote, as far as their form tells: each ends in its minutes. Where one has
 * its reasons below, they all have; where none has, what is played without notes may be the player's own.
 */
export function writtenByPlan(model: BlockModel, textOf: (line: number) => string): (entry: Entry) => boolean {
  const hasReasons = (line: number): boolean => planRemarksBelow(model, line).length > 0;
  const areWithReasons = model.entries.some(({ place }) => hasReasons(place.line));
  return ({ place: { line, end }, subject }) => {
    if (formOfEntry(textOf(line).slice(0, end)) !== "written") return false;
    if (hasReasons(line)) return true;
    return !areWithReasons && subject?.type !== "technique" && !isOwnActivity(subject);
  };
}

/** A plan has but one of its own. */
function isOwnActivity(subject: Subject | undefined): boolean {
  return subject?.type === "activity" && subject.name !== "listening";
}

/** Whether entries below an end of a plan would belong to a phase above without it. */
function partsTime({ phases, entries }: BlockModel, end: number, gone: ReadonlySet<number>): boolean {
  const stretch = phases.findIndex(({ line, phase }) => line === end && phase === undefined);
  const { sitting } = phases[stretch]!;
  const isUnderPhase = phases.some(
    (each, i) => i < stretch && each.sitting === sitting && each.phase !== undefined && !gone.has(each.line),
  );
  return isUnderPhase && entries.some((entry) => entry.stretch === stretch);
}

/** Not those that the player wrote something on, or that a line which was played goes on with. */
function unplayed({ entries }: BlockModel, mayGo: (entry: Entry) => boolean): readonly Entry[] {
  const found: Entry[] = [];
  let isNeeded = false;
  for (const entry of [...entries].reverse()) {
    const goes = entry.planned && mayGo(entry) && !isNeeded && !isWrittenOn(entry);
    if (goes) found.push(entry);
    else isNeeded = entry.source.follows === true;
  }
  return found;
}

function isWrittenOn({ remarks, source: { items } }: Entry): boolean {
  return remarks.length > 0 || items.some(({ meaning: { type } }) => type === "sore" || type === "unknown");
}

/** The lines that have nothing but a remark of the plan's own, below whatever it stands. */
export function linesOfPlanRemarks({ lines }: BlockModel): readonly number[] {
  return lines.flatMap((line, at) => (isPlans(line) ? [at] : []));
}

function planRemarksBelow({ lines }: BlockModel, line: number): readonly number[] {
  const found: number[] = [];
  for (let at = line + 1; isPlans(lines[at]) && !endsPlan(lines[at]!); at++) found.push(at);
  return found;
}

function isPlans(line: Line | undefined): boolean {
  return line?.type === "remark" && line.remark !== undefined && isPlanRemark(line.remark.text);
}

/** Whether nothing is left under a phase line of what stood there. */
function hasLostAll({ lines, phases }: BlockModel, stretch: number, gone: ReadonlySet<number>): boolean {
  const { line } = phases[stretch]!;
  if (lines[line]!.remark) return false;
  const end = phases[stretch + 1]?.line ?? lines.length;
  const below = lines.slice(line + 1, end);
  return (
    below.some((_, i) => gone.has(line + 1 + i)) &&
    below.every((each, i) => gone.has(line + 1 + i) || each.type === "blank" || each.type === "break" || isPlans(each))
  );
}

/** The lines of planned phases in which nothing was played, whatever else was written below them. */
export function phasesNotPlayed({ lines, phases, entries }: BlockModel, gone: ReadonlySet<number>): readonly number[] {
  return phases.flatMap(({ line, phase, planned }, i) => {
    const own = entries.filter(({ stretch }) => stretch === i);
    const isEmpty = own.length > 0 && own.every(({ place }) => gone.has(place.line));
    return phase !== undefined && planned && isEmpty && lines[line]!.type === "phase" && !lines[line]!.remark
      ? [line]
      : [];
  });
}

/** Planned pauses that are no longer between two things that were played. */
function pausesLeft(model: BlockModel, gone: ReadonlySet<number>): readonly number[] {
  const kept = model.entries.filter(({ place }) => !gone.has(place.line)).map(({ place }) => place.line);
  let isPlanned = false;
  return model.lines.flatMap((line, at) => {
    isPlanned ||= saysPlanItself(line);
    const isBetween = kept.some((each) => each < at) && kept.some((each) => each > at);
    return line.type === "break" && isPlanned && !isBetween && !line.remark ? [at] : [];
  });
}

function saysPlanItself(line: Line): boolean {
  return (
    line.type === "plan" || ((line.type === "day" || line.type === "phase") && wordIn(line.items, "plan") !== undefined)
  );
}

/** Whether anything stays that would count for what it does not once `plan` were gone. */
export function isPlanLeft(model: BlockModel, gone: ReadonlySet<number>): boolean {
  const isEmptyPhase = model.phases.some(({ phase, line, planned }, i) => {
    if (phase === undefined || !planned || gone.has(line)) return false;
    return !model.entries.some(({ stretch }) => stretch === i);
  });
  return isEmptyPhase || model.entries.some((entry) => entry.planned && !gone.has(entry.place.line));
}

export function wordIn(items: readonly Item[], word: "plan"): Item | undefined {
  return items.find(({ meaning }) => meaning.type === "line word" && meaning.id === word);
}
