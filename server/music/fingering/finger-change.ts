import { type Instrument, isInRange, type Range } from "../instruments/instrument.ts";
import { midi, type Note } from "../notes/note.ts";
import type { NotesToPlay } from "../patterns/notes-to-play.ts";
import { type Confidence, type Cover, type Fingering, fingeringOf } from "./fingering.ts";

/** What has to move from one fingering to another. It is the same in both directions. */
export interface Movement {
  /** How many of the seven fingers cover their hole otherwise than before; the thumb is told by itself. */
  readonly fingers: number;
  /** Whether some lift while others close, the thumb counted in where it comes or goes. */
  readonly contrary: boolean;
  /** Whether the thumb moves between closed, pinched and open. */
  readonly thumb: boolean;
  /** Whether a finger comes to a half hole or leaves one. */
  readonly halfHole: boolean;
  /** Whether one note is pinched and the other is not, so that the air changes with the thumb. */
  readonly register: boolean;
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
}

/**
 * What makes a step hard, each added where it is there: `cost` = fingers + 3 contrary + thumb + 2 half hole + 2
 * register + 4 bell. The weights are judgement (common practice, no source): fingers that go the same way are soonest
 * even, those that go against each other last; a half hole and a pinched thumb have to be aimed; for the bell the whole
 * instrument moves. They order steps on one instrument, and measure nothing: no unit, no player, no tempo.
 */
export const WEIGHTS = { finger: 1, contrary: 3, thumb: 1, halfHole: 2, register: 2, bell: 4 } as const;

export function movementBetween(from: Fingering, to: Fingering): Movement {
  const moved = to.holes.flatMap((cover, i) => (cover === from.holes[i] ? [] : [[from.holes[i]!, cover] as const]));
  const ways = [...moved, [from.thumb, to.thumb] as const].map(([before, after]) => wayOf(before, after));
  const parts = {
    fingers: moved.length,
    contrary: ways.includes("lifts") && ways.includes("closes"),
    thumb: from.thumb !== to.thumb,
    halfHole: moved.some((covers) => covers.includes("half")),
    register: (from.thumb === "half") !== (to.thumb === "half"),
    bell: from.bell !== to.bell,
  };
  return { ...parts, cost: costOf(parts) };
}

function costOf(parts: Omit<Movement, "cost">): number {
  return (
    WEIGHTS.finger * parts.fingers +
    WEIGHTS.contrary * Number(parts.contrary) +
    WEIGHTS.thumb * Number(parts.thumb) +
    WEIGHTS.halfHole * Number(parts.halfHole) +
    WEIGHTS.register * Number(parts.register) +
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
  return stepsOf(notes, instrument).map(({ fingerings, confidence, ...change }) => change);
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
  const pairs = new Map<string, HardStep>();
  for (const step of stepsOf(notes, instrument)) {
    if (![step.from, step.to].every((note) => isInRange(instrument, note))) continue;
    const pair = [midi(step.from), midi(step.to)].sort((a, b) => a - b).join(" ");
    if (step.cost > 0 && !pairs.has(pair)) pairs.set(pair, step);
  }
  return [...pairs.values()].sort((a, b) => b.cost - a.cost).slice(0, count);
}

function stepsOf(notes: readonly Note[], instrument: Fingered): readonly HardStep[] {
  const fingered = notes.map((note) => fingeringOf(instrument, note));
  return notes.slice(1).flatMap((to, i): HardStep[] => {
    const [a, b] = [fingered[i]!, fingered[i + 1]!];
    if (!a.known || !b.known) return [];
    return [
      {
        from: notes[i]!,
        to,
        ...movementBetween(a.fingering, b.fingering),
        fingerings: [a.fingering, b.fingering],
        confidence: [a.confidence, b.confidence],
      },
    ];
  });
}
