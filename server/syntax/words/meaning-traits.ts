import type { Meaning } from "./meaning.ts";

/** How a kind of meaning stands on its line. */
export interface MeaningTraits {
  /**
   * It can be at fault, or bears on whether another term is: the pieces that bear are checked together, once for each set of
   * them. What does not bear is right wherever it stands.
   */
  readonly bears: boolean;
  /** The history tells attempts by it: what was played, and in which way. */
  readonly tells: boolean;
  /** How often it may be said: once on a line, or once for each tempo; as often as one likes where nothing is said. */
  readonly once?: "line" | "tempo";
}

const SUBJECT: MeaningTraits = { bears: true, tells: true };
/** Stands on other lines than entries: a fault on one. */
const ELSEWHERE: MeaningTraits = { bears: true, tells: true };

/** Every kind of meaning says here how it stands; one that does not say so does not compile. */
export const MEANING_TRAITS: Readonly<Record<Meaning["type"], MeaningTraits>> = {
  scale: SUBJECT,
  chord: SUBJECT,
  title: SUBJECT,
  figure: SUBJECT,
  chain: SUBJECT,
  activity: SUBJECT,
  free: SUBJECT,
  "faulty subject": SUBJECT,
  kind: SUBJECT,
  "part of a kind": SUBJECT,
  "chord kind": SUBJECT,
  note: SUBJECT,
  quoted: SUBJECT,
  pattern: { bears: true, tells: true, once: "line" },
  variant: { bears: true, tells: true, once: "line" },
  inversion: { bears: true, tells: true, once: "line" },
  instrument: { bears: true, tells: true, once: "line" },
  span: { bears: true, tells: true, once: "tempo" },
  direction: { bears: true, tells: false, once: "tempo" },
  articulation: { bears: false, tells: true, once: "tempo" },
  rhythm: { bears: false, tells: true, once: "tempo" },
  "note value": { bears: false, tells: true, once: "tempo" },
  "without click": { bears: false, tells: false, once: "tempo" },
  manner: { bears: false, tells: true },
  place: { bears: false, tells: true },
  focus: { bears: false, tells: false, once: "line" },
  with: { bears: false, tells: false },
  sore: { bears: false, tells: false },
  amount: { bears: false, tells: false, once: "line" },
  done: { bears: false, tells: false, once: "line" },
  times: { bears: false, tells: false, once: "line" },
  tempo: { bears: false, tells: false },
  number: { bears: false, tells: false },
  range: { bears: false, tells: false },
  outcome: { bears: false, tells: false },
  tries: { bears: false, tells: false },
  signature: { bears: true, tells: false },
  steps: { bears: true, tells: false },
  unknown: ELSEWHERE,
  phase: ELSEWHERE,
  "line word": ELSEWHERE,
  clock: ELSEWHERE,
  weekday: ELSEWHERE,
  date: ELSEWHERE,
  goal: ELSEWHERE,
  bars: ELSEWHERE,
  days: ELSEWHERE,
  "last note": ELSEWHERE,
};

/** A bit for each kind of meaning that may be said once: the two halves of an articulation are two things. */
export type OnceBits = number;

const ONCE_KEYS = [
  ...(Object.keys(MEANING_TRAITS) as Meaning["type"][]).filter((type) => MEANING_TRAITS[type].once),
  "articulation up",
  "articulation down",
];

/** What a meaning is called where it may be said once: its type, and for half an articulation the half. */
export function onceKey(meaning: Meaning): string {
  return meaning.type === "articulation" && meaning.half ? `articulation ${meaning.half}` : meaning.type;
}

const ONCE_BITS: ReadonlyMap<string, OnceBits> = new Map(ONCE_KEYS.map((key, i) => [key, 1 << i]));

/** The bit of a meaning by its `onceKey`; 0 where it may be said as often as one likes. */
export function onceBit(key: string): OnceBits {
  return ONCE_BITS.get(key) ?? 0;
}
