import type { BlockModel, Entry } from "../journal/model.ts";
import { isPlanRemark } from "../journal/plan-remark.ts";
import type { Line } from "../syntax/line/line.ts";
import type { Item } from "../syntax/words/meaning.ts";
import { plannedStretches } from "./day-minutes.ts";

/** A day line too, as it is where a plan below it is looked for. */
export function saysPlan(line: Line | undefined): boolean {
  if (line?.type === "day" || line?.type === "plan") return true;
  return line?.type === "phase" && wordIn(line.items, "plan") !== undefined;
}

/** The lines that were planned and not played, with those that mean nothing without them. */
export function linesNotPlayed(model: BlockModel): ReadonlySet<number> {
  const gone = new Set<number>();
  for (const entry of unplayed(model)) {
    gone.add(entry.place.line);
    for (const line of planRemarksBelow(model, entry.place.line)) gone.add(line);
  }
  if (gone.size === 0) return gone;
  const lost = new Set(gone);
  const planned = plannedStretches(model);
  for (const [i, { line, phase }] of model.phases.entries())
    if (phase !== undefined && planned[i] && hasLostAll(model, i, lost)) gone.add(line);
  for (const line of pausesLeft(model, gone)) gone.add(line);
  if (isPlanLeft(model, gone)) return gone;
  for (const [line, read] of model.lines.entries()) {
    if (!saysPlan(read)) continue;
    if (read.type === "plan" && !read.remark) gone.add(line);
    for (const remark of planRemarksBelow(model, line)) gone.add(remark);
  }
  return gone;
}

/** Not those that the player wrote something on, or that a line which was played goes on with. */
function unplayed({ entries }: BlockModel): readonly Entry[] {
  const found: Entry[] = [];
  let isNeeded = false;
  for (const entry of [...entries].reverse()) {
    const goes = entry.planned && !isNeeded && !isWrittenOn(entry);
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
  for (let at = line + 1; isPlans(lines[at]); at++) found.push(at);
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
  const planned = plannedStretches(model);
  const isEmptyPhase = model.phases.some(({ phase, line }, i) => {
    if (phase === undefined || !planned[i] || gone.has(line)) return false;
    return !model.entries.some(({ stretch }) => stretch === i);
  });
  return isEmptyPhase || model.entries.some((entry) => entry.planned && !gone.has(entry.place.line));
}

export function wordIn(items: readonly Item[], word: "plan"): Item | undefined {
  return items.find(({ meaning }) => meaning.type === "line word" && meaning.id === word);
}
