import { type Instrument, isInRange, type Range } from "../instruments/instrument.ts";
import { midi, type Note } from "../notes/note.ts";
import type { NotesToPlay } from "../patterns/notes-to-play.ts";
import {
  type Alternative,
  type Confidence,
  type Cover,
  type FingeredNote,
  type Fingering,
  fingeringOf,
} from "./fingering.ts";

/** What has to move from one fingering to another. It is the same in both directions. */
export interface Movement {
  /** How many of the seven fingers cover their hole otherwise than before; the thumb is told by itself. */
  readonly fingers: number;
  /** Whether some lift while others close, the thumb counted in where it comes or goes. */
  readonly contrary: boolean;
  /** Whether the thumb moves between closed, pinched and open. */
  readonly thumb: boolean;
  /** How many fingers come to a half hole or leave one. */
  readonly halfHoles: number;
  /** Whether one note is pinched and the other is not, so that the air changes with the thumb. */
  readonly register: boolean;
  /** Whether one note lies in the third register and the other does not. */
  readonly thirdRegister: boolean;
  /** Whether the bell is closed or opened. */
  readonly bell: boolean;
  /** See `WEIGHTS`. */
  readonly cost: number;
}

/** A step from one note of an exercise to the next, both as written. */
export interface FingerChange extends Movement {
  readonly from: Note;
  readonly to: Note;
}

/** A step worth practising by itself, with both its fingerings. */
export interface HardStep extends FingerChange {
  readonly fingerings: readonly [from: Fingering, to: Fingering];
  readonly confidence: readonly [from: Confidence, to: Confidence];
  /** With another fingering of one note or both, where a chart has one with which less moves. */
  readonly easier?: EasierStep;
}

export interface EasierStep {
  readonly movement: Movement;
  /** The notes that are fingered otherwise than usual, and the charts that do so. */
  readonly instead: readonly { readonly note: Note; readonly fingering: Alternative }[];
}

/**
 * What makes a step hard, each added as often as it is there: `cost` = fingers + 3 contrary + thumb + 2 half holes + 2
 * register + 2 third register + 4 bell. The weights are judgement (common practice, no source): fingers that go the
 * same way are soonest even, those that go against each other last; a half hole, a pinched thumb and the breath for the
 * third register have to be aimed; for the bell the whole instrument moves. They order steps on one instrument, and
 * measure nothing: no unit, no player, no tempo.
 */
export const WEIGHTS = {
  finger: 1,
  contrary: 3,
  thumb: 1,
  halfHole: 2,
  register: 2,
  thirdRegister: 2,
  bell: 4,
} as const;

export function movementBetween(from: Fingering, to: Fingering): Movement {
  const moved = to.holes.flatMap((cover, i) => (cover === from.holes[i] ? [] : [[from.holes[i]!, cover] as const]));
  const ways = [...moved, [from.thumb, to.thumb] as const].map(([before, after]) => wayOf(before, after));
  const parts = {
    fingers: moved.length,
    contrary: ways.includes("lifts") && ways.includes("closes"),
    thumb: from.thumb !== to.thumb,
    halfHoles: moved.filter((covers) => covers.includes("half")).length,
    register: (from.thumb === "half") !== (to.thumb === "half"),
    thirdRegister: from.thirdRegister !== to.thirdRegister,
    bell: from.bell !== to.bell,
  };
  return { ...parts, cost: costOf(parts) };
}

function costOf(parts: Omit<Movement, "cost">): number {
  return (
    WEIGHTS.finger * parts.fingers +
    WEIGHTS.contrary * Number(parts.contrary) +
    WEIGHTS.thumb * Number(parts.thumb) +
    WEIGHTS.halfHole * parts.halfHoles +
    WEIGHTS.register * Number(parts.register) +
    WEIGHTS.thirdRegister * Number(parts.thirdRegister) +
    WEIGHTS.bell * Number(parts.bell)
  );
}

/** Between closed and half a finger slides and the thumb rolls: neither lifts nor closes against the others. */
function wayOf(before: Cover, after: Cover): "lifts" | "closes" | "neither" {
  if (before === after || (before !== "open" && after !== "open")) return "neither";
  return after === "open" ? "lifts" : "closes";
}

type Fingered = Pick<Instrument, "family" | "fingering" | "low">;

/** Every step of an exercise in the order of playing, where both notes have a fingering; none where none are known. */
export function fingerChanges({ notes }: Pick<NotesToPlay, "notes">, instrument: Fingered): readonly FingerChange[] {
  return stepsOf(notes, instrument).map(({ change }) => change);
}

/**
 * The steps within the instrument's range that cost most, hardest first, each pair of notes once in whichever
 * direction; of equals the one that is played first. Fewer than `count` where there are no more, none where fingerings
 * are not known.
 */
export function hardestSteps(
  { notes }: Pick<NotesToPlay, "notes">,
  instrument: Fingered & Range,
  count: number,
): readonly HardStep[] {
  const pairs = new Map<string, FingeredStep>();
  for (const step of stepsOf(notes, instrument)) {
    const { from, to, cost } = step.change;
    if (![from, to].every((note) => isInRange(instrument, note))) continue;
    const pair = [midi(from), midi(to)].sort((a, b) => a - b).join(" ");
    if (cost > 0 && !pairs.has(pair)) pairs.set(pair, step);
  }
  const hardest = [...pairs.values()].sort((a, b) => b.change.cost - a.change.cost).slice(0, count);
  return hardest.map(hardStep);
}

interface FingeredStep {
  readonly change: FingerChange;
  readonly fingered: readonly [from: FingeredNote, to: FingeredNote];
}

function stepsOf(notes: readonly Note[], instrument: Fingered): readonly FingeredStep[] {
  const fingered = notes.map((note) => fingeringOf(instrument, note));
  return notes.slice(1).flatMap((to, i): FingeredStep[] => {
    const [a, b] = [fingered[i]!, fingered[i + 1]!];
    if (!a.known || !b.known) return [];
    return [{ change: { from: notes[i]!, to, ...movementBetween(a.fingering, b.fingering) }, fingered: [a, b] }];
  });
}

function hardStep({ change, fingered }: FingeredStep): HardStep {
  const [from, to] = fingered;
  const easier = easierStep(change, fingered);
  return {
    ...change,
    fingerings: [from.fingering, to.fingering],
    confidence: [from.confidence, to.confidence],
    ...(easier && { easier }),
  };
}

/** The least that has to move with fingerings of any chart; of equals the one with more of the usual ones. */
function easierStep({ from, to, cost }: FingerChange, [a, b]: FingeredStep["fingered"]): EasierStep | undefined {
  const instead = (note: Note, fingering: Alternative): EasierStep["instead"] => [{ note, fingering }];
  const ways: EasierStep[] = [
    ...a.alternatives.map((one) => ({ movement: movementBetween(one, b.fingering), instead: instead(from, one) })),
    ...b.alternatives.map((one) => ({ movement: movementBetween(a.fingering, one), instead: instead(to, one) })),
    ...a.alternatives.flatMap((one) =>
      b.alternatives.map((other) => ({
        movement: movementBetween(one, other),
        instead: [...instead(from, one), ...instead(to, other)],
      })),
    ),
  ];
  const least = Math.min(...ways.map(({ movement }) => movement.cost));
  return least < cost ? ways.find(({ movement }) => movement.cost === least) : undefined;
}
