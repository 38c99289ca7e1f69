import type { Entry } from "../../journal/model.ts";
import { isDrawn, variantsOf } from "../../music/patterns/pattern.ts";
import type { Item } from "../../syntax/words/meaning.ts";
import { type MeaningType, termType } from "../../syntax/words/term-types.ts";
import { termKey } from "../explain/term-key.ts";
import { type EntrySituation, lastItem } from "./situation.ts";

/** The order in which players write the terms of a line. */
const ORDER: readonly MeaningType[] = [
  "inversion",
  "pattern",
  "quoted",
  "variant",
  "place",
  "direction",
  "span",
  "articulation",
  "rhythm",
  "note value",
  "tempo",
  "without click",
  "outcome",
  "tries",
  "manner",
  "focus",
  "with",
  "instrument",
  "amount",
  "date",
  "done",
];

/** What a subject has no use for. */
const UNFIT: Readonly<Record<string, readonly MeaningType[]>> = {
  scale: ["place", "inversion"],
  chain: ["place", "inversion"],
  several: ["place"],
  chord: ["place"],
  figure: ["place", "inversion", "pattern", "quoted", "variant", "span"],
  technique: ["place", "inversion", "quoted", "variant"],
  title: ["pattern", "quoted", "variant", "inversion", "span"],
  activity: ORDER.filter((type) => !["manner", "focus", "with", "instrument", "amount", "done", "date"].includes(type)),
};

/** How well a term fits a place, 0 the best; undefined where the line has it or has no use for it. */
export type Fit = (type: MeaningType, key: string | undefined) => number | undefined;

/** The fit of every term at one place. */
export function fitAt(situation: EntrySituation): Fit {
  const { entry, items } = situation;
  const unfit = UNFIT[entry.subject?.type ?? "scale"] ?? [];
  const keys = new Set(items.map(({ meaning }) => termKey(meaning)));
  const closed = new Set(ORDER.filter((type) => isClosed(type, items)));
  const before = lastItem(entry.source.items)?.meaning.type;
  return (type, key) => {
    if (unfit.includes(type) || closed.has(type)) return undefined;
    if (key !== undefined && type !== "outcome" && type !== "tries" && keys.has(key)) return undefined;
    return openFit(type, key, situation, before);
  };
}

/**
 * Whether a line that has such a term takes no second one; one that may change with the tempo it takes after a tempo.
 */
function isClosed(offered: MeaningType, items: readonly Item[]): boolean {
  const type = namedPattern(offered);
  const standing = items.findLast(({ meaning }) => namedPattern(meaning.type) === type);
  if (!standing) return false;
  const said = type === "date" ? "once" : termType(type)?.said; // work has one day
  if (said !== "once for each tempo") return said === "once";
  const isHalf = standing.meaning.type === "articulation" && standing.meaning.half !== undefined;
  return !isHalf && !items.some(({ meaning, start }) => meaning.type === "tempo" && start > standing.start);
}

/** A name in quotes is that of a pattern. */
function namedPattern(type: MeaningType): MeaningType {
  return type === "quoted" ? "pattern" : type;
}

function openFit(
  type: MeaningType,
  key: string | undefined,
  situation: EntrySituation,
  before: MeaningType | undefined,
): number | undefined {
  const { entry, items, separated } = situation;
  switch (type) {
    case "tries":
      return before === "outcome" && !separated ? 0 : undefined;
    case "variant":
      return variantFit(key, entry, before);
    case "outcome":
      return outcomeFit(before, separated, items);
    case "amount":
      return 4;
    case "done":
      return entry.planned ? 2 : 8;
    case "direction":
      if (entry.pattern?.type === "known" && isDrawn(entry.pattern.id)) return undefined;
      if (key === "direction back and forth") return entry.subject?.type === "figure" ? 2 : 7;
      return isHalf(key) && before === "articulation" && !separated ? 1 : inOrder(type, before);
    case "place":
      return before === undefined ? 1 : inOrder(type, before);
    default:
      return inOrder(type, before);
  }
}

/** `slurred up`: what an articulation may hold for. */
function isHalf(key: string | undefined): boolean {
  return key === "direction up" || key === "direction down";
}

function inOrder(type: MeaningType, before: MeaningType | undefined): number {
  return before === undefined || ORDER.indexOf(type) > ORDER.indexOf(before) ? 2 : 5;
}

function variantFit(key: string | undefined, { pattern }: Entry, before: MeaningType | undefined): number | undefined {
  if (pattern?.type !== "known" || pattern.variant) return undefined;
  return variantsOf(pattern.id).some((variant) => key === `variant ${variant}`)
    ? before === "pattern"
      ? 1
      : 5
    : undefined;
}

/** An outcome answers a tempo; without one it fits after words such as `slow`, or late. */
function outcomeFit(before: MeaningType | undefined, separated: boolean, items: readonly Item[]): number {
  if (before === "tempo") return 0;
  if (before === "outcome" && !separated) return 3;
  if (before === "without click") return 1;
  return items.some(({ meaning }) => meaning.type === "without click" || meaning.type === "tempo") ? 4 : 6;
}
